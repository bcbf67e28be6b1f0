//! Parts put together on a round wall, laid round a foot of another shape.
//!
//! On the round wall every level has the girth that it has here, so that only the way round is laid otherwise.
//! Staves keep their width: where the outline bends more or less than the circle, the gaps take up the difference.

use std::f64::consts::TAU;

use basket::piece::FloorPart;
use basket::{Length, Piece};

use super::maker::Maker;
use super::part::Part;
use crate::around::Around;

/// Most of the way from stave to stave that is kept for the stave.
const MOST_STAVE: f64 = 0.94;

impl Maker<'_> {
    /// The same parts round the mould's own foot.
    pub(super) fn outlined(&self, mut parts: Vec<Part>) -> Vec<Part> {
        let around = Around::of(self.basket);
        if around.is_round() {
            return parts;
        }
        let laid = self.laid();
        let root = self.basket.body.base().groove_radius();
        for part in &mut parts {
            let Some(least) = least_radius(part.piece, root) else { continue };
            let corners = part.mesh.positions.iter_mut().chain(part.edges.iter_mut().flatten());
            corners.for_each(|at| *at = laid.place(*at, least));
            part.turned = None;
        }
        parts
    }

    /// The way round for places of a round wall.
    pub(super) fn laid(&self) -> Laid<'_> {
        let uprights = self.basket.body.uprights();
        let around = Around::of(self.basket);
        Laid { around, count: f64::from(uprights.count.max(1)), width: uprights.width.to_mm() }
    }
}

/// From which radius on a part follows the outline; none where it does not at all. The hole in the middle of the
/// base stays round.
fn least_radius(piece: Piece, root: Length) -> Option<f64> {
    match piece {
        Piece::Floor(FloorPart::Disc) => Some(root.to_mm() * 0.999),
        // A handle stands in the plane through both ears, and follows nothing.
        Piece::Floor(_) | Piece::Handle | Piece::Rivet(_) | Piece::Washer(_) | Piece::Knob(_) => None,
        _ => Some(0.0),
    }
}

pub(super) struct Laid<'a> {
    around: Around<'a>,
    count: f64,
    width: f64,
}

impl Laid<'_> {
    pub(super) fn place(&self, [x, y, height]: [f32; 3], least: f64) -> [f32; 3] {
        let (x, y) = (f64::from(x), f64::from(y));
        let radius = x.hypot(y);
        if radius < least {
            return [x as f32, y as f32, height];
        }
        let turn = (y.atan2(x) / TAU).rem_euclid(1.0);
        let stave = (turn * self.count).round() / self.count;
        let aside = (turn - stave) * TAU * radius;
        let local = self.around.way(stave, radius);
        let [round, here] = [TAU * radius, local].map(|girth| girth / self.count / 2.0);
        let stave_half = (self.width / 2.0).min(MOST_STAVE * round.min(here));
        let kept = aside.abs().min(stave_half);
        let share = (aside.abs() - kept) / (round - stave_half).max(1e-9);
        let laid = (kept + share * (here - stave_half)) * aside.signum();
        let [x, y] = self.around.place(stave + laid / local, radius);
        [x as f32, y as f32, height]
    }
}
