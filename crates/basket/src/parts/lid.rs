//! The lid: a shallow vessel of its own, woven over its own mould, that drops into the rim of the basket and lies
//! there on a ledge.
//!
//! It is woven with its plaque down and turned over. All its levels are curves at an even distance from the
//! basket's foot, so that the room between both rims is the same all round.

use std::f64::consts::TAU;

use crate::form::{Across, Outline as _};
use crate::measure::Length;
use crate::parts::vessel::Vessel;
use crate::pattern::{FootSize, LidFit, LidLift, MouldForm, MouldPattern, MouldPieces, Outline, Side};
use crate::stock::Material;

/// How far the lid's rim lies on the ledge at least, pushed to the other side (common practice: 1/8 in).
pub const LEAST_OVERLAP: Length = Length::inches(0.125);
/// More rings side by side than a ledge is made of.
const MOST_RINGS: u32 = 3;
/// Places of a foot by which the smaller foot of a lid's mould is drawn.
const RAYS: u32 = 120;
/// Places between which these lie.
const PLACES: u32 = 4096;

/// The lid as computed.
#[derive(Clone, Debug, PartialEq)]
pub struct Lid {
    /// The lid itself, as it stands on its mould: plaque down.
    pub vessel: Vessel,
    /// The mould over which it is woven.
    pub mould: MouldPattern,
    /// How it sits on the basket.
    pub fit: LidFit,
    /// Room between its lashed rim and the basket's, all round; negative where it does not go in.
    pub clearance: Length,
    /// The room that is wanted.
    pub wanted: Length,
    /// The opening of the basket: from edge to edge within its lashed rim.
    pub mouth: Across,
    /// The lid over its lashed rim.
    pub across: Across,
    /// How far its top, with the plaque, lies above the top of the basket's rim.
    pub rises: Length,
    /// What it lies on.
    pub ledge: Ledge,
    /// What one lifts it by.
    pub lift: LidLift,
}

/// A ring, or some within each other, inside the wall below the inner hoop.
#[derive(Clone, Debug, PartialEq)]
pub struct Ledge {
    /// What it is bent from.
    pub stock: Material,
    /// Lengths to cut, the outermost ring first, with the lap.
    pub rings: Vec<Length>,
    /// The lap.
    pub lap: Length,
    /// Its lower edge, along the wall.
    pub along: Length,
    /// How far the lid's rim lies on it, where the lid is pushed to the other side.
    pub overlap: Length,
    /// From edge to edge within it.
    pub inside: Across,
}

/// Girth over 2π of the opening within a lashed rim.
pub(crate) fn mouth(body: &Vessel) -> Length {
    body.rim().inner_radius() - lashing(body)
}

/// Girth over 2π of a lashed rim, outside.
pub(crate) fn edge(lid: &Vessel) -> Length {
    lid.rim().outer_radius(lid.uprights()) + lashing(lid)
}

fn lashing(vessel: &Vessel) -> Length {
    vessel.lashing().map_or(Length::ZERO, |lashing| lashing.thickness())
}

impl Ledge {
    /// The ledge below the inner hoop for a lid that reaches so far out.
    pub(crate) fn of(body: &Vessel, stock: Material, edge: Length, clearance: Length) -> Self {
        let rim = body.rim();
        let along = (rim.along - stock.width).max(Length::ZERO);
        // Weavers touch the form, and the outermost ring lies against them.
        let wall = body.form.girth(along + stock.width / 2.0, Length::ZERO) / TAU;
        let reach = edge - clearance.max(Length::ZERO);
        let thickness = stock.thickness.max(Length::mm(0.1));
        let wanted = ((wall - reach + LEAST_OVERLAP) / thickness).ceil().clamp(1.0, f64::from(MOST_RINGS));
        let count = wanted as u32;
        let lap = rim.inner.scarf.lap;
        let ring = |number: u32| {
            // Flat sides outward and inward by turns, so that two rings lie flat on each other.
            let outside = wall - thickness * f64::from(number);
            let centroid =
                if number.is_multiple_of(2) { stock.centroid() } else { thickness - stock.centroid() };
            ((outside - centroid) * TAU).max(Length::ZERO) + lap
        };
        let inner = wall - thickness * f64::from(count);
        Self {
            rings: (0..count).map(ring).collect(),
            lap,
            along,
            overlap: reach - inner,
            inside: body.form.across_of_girth(inner.max(Length::ZERO) * TAU),
            stock,
        }
    }
}

/// The mould of a lid: `rim` and `plaque` are girths over 2π, the outline is at an even distance from the
/// basket's.
pub(crate) fn mould(
    body: &MouldPattern,
    vessel: &Vessel,
    [plaque, rim]: [Length; 2],
    height: Length,
) -> MouldPattern {
    let form = &vessel.form;
    let inset = plaque - Length::mm(form.outline.girth() / TAU);
    let less =
        |size: &FootSize| FootSize { length: size.length + inset * 2.0, width: size.width + inset * 2.0 };
    let outline = match &body.outline {
        Outline::Round => Outline::Round,
        Outline::Stadium(size) => Outline::Stadium(less(size)),
        Outline::Rectangle { size, corner } => {
            Outline::Rectangle { size: less(size), corner: (*corner + inset).max(Length::mm(0.1)) }
        }
        Outline::Oval { .. } | Outline::Traced(_) => Outline::Traced(rays(vessel, inset)),
    };
    let across = |radius: Length| form.across_of_girth(radius * TAU).length;
    let form = MouldForm::Drawn { base: across(plaque), rim: across(rim), height, side: Side::Bowl };
    MouldPattern { outline, form, pieces: MouldPieces::One }
}

/// A curve so far outside the basket's foot, by rays at even angles.
fn rays(vessel: &Vessel, out: Length) -> Vec<Length> {
    let place = |number: u32| {
        let at = vessel.form.outline.at(f64::from(number) / f64::from(PLACES));
        let [x, y] = [0, 1].map(|axis: usize| {
            let part = |of: [f64; 2]| of.get(axis).copied().unwrap_or_default();
            part(at.point) + part(at.outward) * out.to_mm()
        });
        (libm::atan2(y, x).rem_euclid(TAU), libm::hypot(x, y))
    };
    let mut places: Vec<(f64, f64)> = (0..PLACES).map(place).collect();
    places.sort_by(|a, b| a.0.total_cmp(&b.0));
    (0..RAYS)
        .map(|ray| {
            let angle = TAU * f64::from(ray) / f64::from(RAYS);
            let after = places.partition_point(|(at, _)| *at < angle);
            let count = places.len().max(1);
            let near = |index: usize| places.get(index % count).copied().unwrap_or_default();
            let (from, to) = (near(after + count - 1), near(after));
            let way = (to.0 - from.0).rem_euclid(TAU);
            let share = if way > 0.0 { (angle - from.0).rem_euclid(TAU) / way } else { 0.0 };
            Length::mm(from.1 + (to.1 - from.1) * share)
        })
        .collect()
}
