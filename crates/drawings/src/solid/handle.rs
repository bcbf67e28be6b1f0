//! A handle on ears: a bail that swings on rivets and washers, or knobs on them.
//!
//! The bail stands upright. Holes are not cut in ears, bail and knobs; the rivet fills them.

use basket::Piece;
use basket::fittings::{Handle, Knobs, Rivets, SwingHandle};
use basket::pattern::HandleJoint;

use super::bow::{Bow, Strap, end};
use super::colour::{self, Substance};
use super::maker::Maker;
use super::mesh::Ends;
use super::part::Part;
use super::stand::Stand;

/// Thickness of the washer between an ear and what it holds, in mm, as the handle's span reckons it.
const WASHER: f32 = 0.8;
/// Radius and height of a rivet's head in diameters (common practice).
const HEAD: [f32; 2] = [1.0, 0.6];
/// Room between the top of an ear and the wood above it, in mm.
const ABOVE_EAR: f32 = 0.5;
/// Way over which two halves come together above an ear, in thicknesses of the ear and in mm.
const CLOSES: [f32; 2] = [6.0, 12.0];
/// A turned knob: how far out, as a share of its length, and how wide there, as a share of its radius.
pub(super) const KNOB: [[f32; 2]; 6] =
    [[0.0, 0.62], [0.22, 0.55], [0.5, 0.86], [0.7, 1.0], [0.9, 0.9], [1.0, 0.66]];

/// What a rivet holds, by distances from the ear's middle outward, in mm.
struct Hold<'a> {
    rivets: &'a Rivets,
    /// Under its head, and under the burr.
    faces: [f32; 2],
    /// Thickness of the burr.
    burr: f32,
    /// Where the washer between ear and handle lies, if there is one.
    washer: Option<f32>,
}

/// A rivet through what reaches so far in and out of the ear's middle, with a burr outside, and with
/// a washer between ear and handle where there is one.
fn pivot(stand: &Stand, number: u32, side: f32, hold: &Hold<'_>) -> Vec<Part> {
    let rivets = hold.rivets;
    let shank = rivets.stock.width.to_mm() as f32 / 2.0;
    let [inside, face] = hold.faces;
    let outside = face + hold.burr;
    let [head, height] = HEAD.map(|times| times * 2.0 * shank);
    let rivet = [
        [head * 0.4, inside - height],
        [head * 0.85, inside - height * 0.6],
        [head, inside],
        [shank, inside],
        [shank, outside],
        [head, outside],
        [head * 0.85, outside + height * 0.6],
        [head * 0.4, outside + height],
    ];
    let washer = |from: f32, thick: f32| {
        let reach = washer_radius(rivets);
        [[reach, from], [reach, from + thick], [shank, from + thick], [shank, from]]
    };
    let metal = colour::stock(&rivets.stock);
    let between = hold.washer.map(|from| (colour::WASHER, washer(from, WASHER)));
    let burr = (Substance { name: "burr", ..metal }, washer(face, hold.burr));
    let rivet = Part::new(Piece::Rivet(number), metal, stand.turned(side, &rivet, Ends::Capped));
    let each = rivets.washers / rivets.count.max(1);
    let first = (number - 1) * each + 1;
    let washers = between.into_iter().chain([burr]).zip(first..);
    let washers = washers.map(|((substance, profile), number)| {
        Part::new(Piece::Washer(number), substance, stand.turned(side, &profile, Ends::Joined))
    });
    std::iter::once(rivet).chain(washers).collect()
}

impl Maker<'_> {
    /// What the basket is lifted by, with its rivets and washers.
    pub(super) fn handle(&self) -> Vec<Part> {
        match &self.basket.handle {
            Some(Handle::Swing(swing)) => self.swing(swing),
            Some(Handle::Fixed(fixed)) => vec![self.fixed(fixed)],
            Some(Handle::Knobs(knobs)) => self.knobs(knobs),
            None => Vec::new(),
        }
    }

    fn swing(&self, handle: &SwingHandle) -> Vec<Part> {
        let Some(ears) = &self.basket.ears else { return Vec::new() };
        let stand = Stand::at(self, ears.each.map(|ear| ear.turn), self.pivot_height(ears));
        let (ear, thick) = (ears.thickness.to_mm() as f32, handle.bow.thickness.to_mm() as f32);
        let rivets = &handle.rivets;
        let straight = match handle.joint {
            HandleJoint::Outside => washer_radius(rivets),
            _ => ears.width.to_mm() as f32 / 2.0 + ABOVE_EAR,
        };
        let bow = Bow { curve: &handle.bow, stand: &stand, straight, detail: self.detail };
        let whole = end(&handle.bow);
        let shape = match handle.joint {
            HandleJoint::Outside => {
                let out = ear / 2.0 + thick / 2.0 + WASHER;
                bow.strap(&whole, &Strap { thick, out, offset: &|_| 0.0 })
            }
            HandleJoint::Slot => {
                let slot = handle.slot.unwrap_or_default().to_mm() as f32;
                bow.slotted(&whole, slot.min(thick * 0.9))
            }
            HandleJoint::Between => {
                let close = CLOSES[0] * ear + CLOSES[1];
                let parted = |up: f32| {
                    let share = ((up - straight) / close).clamp(0.0, 1.0);
                    ear / 2.0 * (1.0 - share * share * (3.0 - 2.0 * share))
                };
                let half = thick / 2.0;
                let inner = |up: f32| -half / 2.0 - parted(up);
                let outer = |up: f32| half / 2.0 + parted(up);
                let strap =
                    |offset: &dyn Fn(f32) -> f32| bow.strap(&whole, &Strap { thick: half, out: 0.0, offset });
                strap(&inner).and(strap(&outer))
            }
        };
        let grip = rivets.grip.to_mm() as f32;
        let hold = if handle.joint == HandleJoint::Outside {
            let face = ear / 2.0 + WASHER + thick;
            let burr = (grip - ear - thick - WASHER).max(0.2);
            Hold { rivets, faces: [-ear / 2.0, face], burr, washer: Some(ear / 2.0) }
        } else {
            let face = handle.at_ears(ears.thickness).to_mm() as f32 / 2.0;
            Hold { rivets, faces: [-face, face], burr: (grip - 2.0 * face).max(0.2), washer: None }
        };
        let bail = Part::new(Piece::Handle, colour::BAIL, shape);
        let pivots =
            [(1, 1.0), (2, -1.0)].into_iter().flat_map(|(number, side)| pivot(&stand, number, side, &hold));
        std::iter::once(bail).chain(pivots).collect()
    }

    fn knobs(&self, knobs: &Knobs) -> Vec<Part> {
        let Some(ears) = &self.basket.ears else { return Vec::new() };
        let stand = Stand::at(self, ears.each.map(|ear| ear.turn), self.pivot_height(ears));
        let (ear, length) = (ears.thickness.to_mm() as f32, knobs.length.to_mm() as f32);
        let rivets = &knobs.rivets;
        let from = ear / 2.0 + WASHER;
        let burr = (rivets.grip.to_mm() as f32 - ear - WASHER - length).max(0.2);
        let hold = Hold { rivets, faces: [-ear / 2.0, from + length], burr, washer: Some(ear / 2.0) };
        let radius = knobs.diameter.to_mm() as f32 / 2.0;
        let profile = KNOB.map(|[out, wide]| [radius * wide, from + length * out]);
        [(1, 1.0), (2, -1.0)]
            .into_iter()
            .flat_map(|(number, side)| {
                let shape = stand.turned(side, &profile, Ends::Capped);
                let knob = Part::new(Piece::Knob(number), colour::KNOB, shape);
                std::iter::once(knob).chain(pivot(&stand, number, side, &hold))
            })
            .collect()
    }
}

/// Outer radius of a washer: a little more than twice the rivet's (common practice).
fn washer_radius(rivets: &Rivets) -> f32 {
    rivets.stock.width.to_mm() as f32 + 1.0
}
