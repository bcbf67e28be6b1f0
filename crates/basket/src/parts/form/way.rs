//! The way round a level between places that are near each other.

use super::{OutlinePoint, WallPoint};
use crate::measure::Length;

impl WallPoint {
    /// The way along the wall to another place of the same level.
    pub fn way_round_to(&self, other: &Self) -> Length {
        let [x, y, _] = [0, 1, 2].map(|part: usize| (other.point[part] - self.point[part]).to_mm());
        Length::mm(arc(libm::hypot(x, y), [self.curvature, other.curvature]))
    }
}

impl OutlinePoint {
    /// The way along the outline to another place of it, in mm.
    pub fn way_to(&self, other: &Self) -> f64 {
        let [x, y] = [0, 1].map(|part: usize| other.point[part] - self.point[part]);
        arc(libm::hypot(x, y), [self.curvature, other.curvature])
    }
}

/// An arc that bends so much at its ends: its chord, and what it is longer, `c³κ²/24`.
fn arc(chord: f64, [from, to]: [f64; 2]) -> f64 {
    chord * (1.0 + (chord * chord * f64::midpoint(from * from, to * to) / 24.0).min(1.0))
}
