//! The rim: both hoops with their scarfs, and the filler.

use basket::Piece;
use basket::lashing::FillerPiece;
use basket::rim::Hoop;

use super::colour;
use super::detail::Detail;
use super::maker::Maker;
use super::mesh::{Ends, toward};
use super::part::Part;
use super::section::{CrossSection, extent, section};
use super::shape::Shape;
use crate::around::Around;

/// Share of the lap at which the thin end of a scarf is cut off.
const BLUNT: f32 = 0.02;
/// Room between the mould and rings that lie beside it, in mm.
const BESIDE: f32 = 8.0;
/// Room at each end of a piece of filler, in mm, for an ear is flat and the filler curved.
const ROOM: f32 = 0.12;

impl Maker<'_> {
    /// The hoop outside the staves.
    pub(super) fn outer_hoop(&self) -> Part {
        let flat = self.basket.body.uprights().thickness.to_mm() as f32;
        let hoop = &self.basket.body.rim().outer;
        Part::new(Piece::OuterHoop, colour::stock(&hoop.stock), self.hoop(hoop, flat, 1.0))
    }

    /// The hoop inside the staves.
    pub(super) fn inner_hoop(&self) -> Part {
        let hoop = &self.basket.body.rim().inner;
        Part::new(Piece::InnerHoop, colour::stock(&hoop.stock), self.hoop(hoop, 0.0, -1.0))
    }

    /// Both hoops as rings, one inside the other, lying ready beside the mould on what it stands on.
    pub(super) fn rings_ready(&self) -> Vec<Part> {
        let basket = self.basket;
        let reach = (basket.body.rim().outer_radius(basket.body.uprights())).to_mm() as f32;
        let widest = basket.body.profile().widest().to_mm() as f32;
        let over = Around::of(basket).over(basket.body.form.height().to_mm()) as f32;
        let aside = reach + widest.max(reach) + 2.0 * over + BESIDE;
        let mut rings = self.outlined(vec![self.outer_hoop(), self.inner_hoop()]);
        let low = rings.iter().flat_map(|ring| &ring.mesh.positions).map(|at| at[2]).fold(f32::MAX, f32::min);
        let down = -basket.body.base().thickness.to_mm() as f32 - low;
        for ring in &mut rings {
            let corners = ring.mesh.positions.iter_mut().chain(ring.edges.iter_mut().flatten());
            corners.for_each(|at| (at[0], at[2]) = (at[0] + aside, at[2] + down));
        }
        rings
    }

    /// A hoop's section as (up from its lower edge, out from its flat side), counter-clockwise.
    pub(super) fn hoop_section(&self, hoop: &Hoop) -> CrossSection {
        let height = self.basket.body.rim().height.to_mm() as f32;
        let section = section(&hoop.stock, hoop.stock.width.to_mm() as f32, self.detail);
        section.iter().map(|[across, out]| [across + height / 2.0, *out]).collect()
    }

    /// A hoop whose flat lies `flat` out from the staves' inner face and whose round side looks out or in.
    ///
    /// It begins under the lap as a thin wedge on the staves, runs once round, and ends as a thin wedge
    /// over its own beginning, so that the pair keeps one thickness.
    fn hoop(&self, hoop: &Hoop, flat: f32, side: f32) -> Shape {
        let rim = &self.basket.body.rim();
        let section = self.hoop_section(hoop);
        let thick = section.iter().fold(0.0_f32, |thick, at| thick.max(at[1]));
        let low = rim.along.to_mm() as f32;
        let girth = (rim.girth.to_mm() as f32).max(1.0);
        let lap = (hoop.scarf.lap.to_mm() as f32 / girth).clamp(0.001, 0.45);
        let start = hoop.scarf.turn as f32 - lap / 2.0;
        let per = section.len();
        let mut positions = Vec::new();
        for turn in stations(start, lap, self.steps()) {
            let angle = toward(turn);
            let under = (turn - start) / lap;
            let over = (turn - start - 1.0) / lap;
            let wedge = |at: &[f32; 2]| {
                if under < 1.0 {
                    below(&section, *at, thick * under)
                } else if over > 0.0 {
                    above(&section, *at, thick * over)
                } else {
                    *at
                }
            };
            let ring: Vec<[f32; 3]> = section
                .iter()
                .map(wedge)
                .map(|[up, out]| self.surface.at(low + up).point(flat + side * out, angle))
                .collect();
            if side > 0.0 { positions.extend(ring) } else { positions.extend(ring.into_iter().rev()) }
        }
        Shape::long(positions, per)
    }

    /// Steps round the rim: at least two for each stave, so that a hoop lies on all of them.
    fn steps(&self) -> u32 {
        let by_curve = self.detail.segments(self.basket.body.rim().radius().to_mm() as f32);
        if self.detail == Detail::Full {
            by_curve.max(4 * self.basket.body.uprights().count)
        } else {
            by_curve
        }
    }

    /// Middle of the filler: out from the staves' inner face, and up from the hoops' lower edge.
    fn filler_middle(&self) -> Option<[f32; 2]> {
        let basket = self.basket;
        let filler = basket.body.filler()?;
        let up = basket.body.rim().height + filler.stock.thickness / 2.0;
        Some([(basket.body.uprights().thickness / 2.0).to_mm() as f32, up.to_mm() as f32])
    }

    /// Corners of the filler's section as (up from the hoops' lower edge, out).
    pub(super) fn filler_section(&self) -> Option<CrossSection> {
        let [out, up] = self.filler_middle()?;
        let stock = &self.basket.body.filler()?.stock;
        let half = stock.thickness.to_mm() as f32 / 2.0;
        let section = section(stock, stock.width.to_mm() as f32, self.detail);
        // The stock's flat side lies on the tips: its width runs out, its thickness up.
        Some(section.iter().rev().map(|[across, high]| [up - half + high, out + across]).collect())
    }

    /// The filler's pieces.
    pub(super) fn filler(&self) -> Vec<Part> {
        let basket = self.basket;
        let (Some(filler), Some(section)) = (basket.body.filler(), self.filler_section()) else {
            return Vec::new();
        };
        let low = basket.body.rim().along.to_mm() as f32;
        let per = section.len();
        let room = ROOM / (basket.body.rim().girth.to_mm() as f32).max(1.0);
        let piece = |(number, piece): (u32, &FillerPiece)| {
            let from = piece.from_turn as f32 + room;
            let whole = (piece.to_turn - piece.from_turn).abs() > 0.999;
            let span = if whole { 0.9995 } else { (piece.to_turn as f32 - room - from).rem_euclid(1.0) };
            let steps = (self.steps() as f32 * span).ceil().max(1.0) as u32;
            let positions: Vec<[f32; 3]> = (0..=steps)
                .flat_map(|step| {
                    let angle = toward(from + span * step as f32 / steps as f32);
                    section.iter().map(move |[up, out]| self.surface.at(low + up).point(*out, angle))
                })
                .collect();
            let shape = Shape::swept(positions, per, Ends::Capped, [per / 4, per * 3 / 4]);
            let substance = colour::stock(&filler.stock);
            Part::new(Piece::Filler(number), substance, shape)
        };
        (1..).zip(filler.pieces.iter().filter(|piece| piece.length.to_mm() > 1.0)).map(piece).collect()
    }
}

/// Places round a hoop in turns, from the thin end under the lap to the thin end over it.
fn stations(start: f32, lap: f32, steps: u32) -> Vec<f32> {
    let (from, to) = (start + lap * BLUNT, start + 1.0 + lap * (1.0 - BLUNT));
    let mut stations = vec![from, start + lap, start + 1.0, to];
    let first = (from * steps as f32).ceil() as i32;
    let last = (to * steps as f32).floor() as i32;
    stations.extend((first..=last).map(|step| step as f32 / steps as f32));
    stations.sort_by(f32::total_cmp);
    stations.dedup_by(|a, b| (*a - *b).abs() < 1e-5);
    stations
}

/// A corner of the part of a section that lies no further out than `cut`.
fn below(section: &CrossSection, [up, out]: [f32; 2], cut: f32) -> [f32; 2] {
    if out <= cut {
        return [up, out];
    }
    let [low, high] = extent(section, cut);
    [up.clamp(low, high), cut]
}

/// A corner of the part of a section that lies no nearer than `cut`.
fn above(section: &CrossSection, [up, out]: [f32; 2], cut: f32) -> [f32; 2] {
    if out >= cut {
        return [up, out];
    }
    let [low, high] = extent(section, cut);
    let middle = f32::midpoint(low, high);
    // What is cut off is spread over the cut, so that no two corners fall together.
    let share = (out + cut / 2.0) / (cut * 1.5);
    [middle + (if up < middle { low } else { high } - middle) * share, cut]
}
