//! Parts put together on a round wall, laid round a foot of another shape.
//!
//! On the round wall every level has the girth that it has here, so that only the way round is laid otherwise.
//! Staves keep their width: where the outline bends more or less than the circle, the gaps take up the difference.

use std::f64::consts::TAU;

use basket::form::Profile;
use basket::piece::FloorPart;
use basket::uprights::Uprights;
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
        let profile = self.basket.body.profile();
        Laid { around, uprights, profile, count: f64::from(uprights.count.max(1)) }
    }
}

/// From which radius on a part follows the outline; none where it does not at all. The hole in the middle of the
/// base stays round.
fn least_radius(piece: Piece, root: Length) -> Option<f64> {
    match piece {
        Piece::Floor(FloorPart::Disc) => Some(root.to_mm() * 0.999),
        // A handle stands in the plane through both ears, and follows nothing.
        Piece::Floor(_)
        | Piece::Lift
        | Piece::Handle
        | Piece::Rivet(_)
        | Piece::Washer(_)
        | Piece::Knob(_) => None,
        _ => Some(0.0),
    }
}

pub(super) struct Laid<'a> {
    around: Around<'a>,
    uprights: &'a Uprights,
    profile: &'a Profile,
    count: f64,
}

impl Laid<'_> {
    /// Where the stave of this index stands at a height, as a share of the way round, and how many times as far
    /// as its foot its neighbours stand on one side or the other.
    fn stave(&self, index: f64, height: f64, side: f64) -> (f64, f64) {
        let even = index / self.count;
        if self.uprights.paths.is_empty() {
            return (even, 1.0);
        }
        let along = self.profile.along_at_height(Length::mm(height));
        let [here, next] =
            [index, index + side].map(|index| self.uprights.turn_between(index / self.count, along));
        (here, ((next - here) * side * self.count).max(0.0))
    }

    /// A place laid with the stave that is nearest.
    pub(super) fn place(&self, [x, y, height]: [f32; 3], least: f64) -> [f32; 3] {
        let (x, y) = (f64::from(x), f64::from(y));
        let radius = x.hypot(y);
        if radius < least {
            return [x as f32, y as f32, height];
        }
        let turn = (y.atan2(x) / TAU).rem_euclid(1.0);
        let index = (turn * self.count).round();
        let aside = (turn - index / self.count) * TAU * radius;
        let (stave, apart) = self.stave(index, f64::from(height), aside.signum());
        let level = self.around.level(f64::from(height), radius);
        let local = level.way(stave);
        let [round, here] = [TAU * radius, local * apart].map(|girth| girth / self.count / 2.0);
        let number = (index as u32) % self.uprights.count.max(1) + 1;
        let stave_half = (self.uprights.full_width(number).to_mm() / 2.0).min(MOST_STAVE * round.min(here));
        let kept = aside.abs().min(stave_half);
        let share = (aside.abs() - kept) / (round - stave_half).max(1e-9);
        let laid = (kept + share * (here - stave_half)) * aside.signum();
        let [x, y] = level.place(stave + laid / local);
        [x as f32, y as f32, height]
    }
}
