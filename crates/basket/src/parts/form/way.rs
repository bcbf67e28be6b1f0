//! The way round a level between places that are near each other.

use super::{OutlinePoint, WallPoint};
use crate::measure::Length;

impl WallPoint {
    /// The way along the wall to another place of the same level.
    pub fn way_round_to(&self, other: &Self) -> Length {
        let ([x, y, _], [to_x, to_y, _]) = (self.point, other.point);
        let chord = libm::hypot((to_x - x).to_mm(), (to_y - y).to_mm());
        Length::mm(arc(chord, [self.curvature, other.curvature]))
    }
}

impl OutlinePoint {
    /// The way along the outline to another place of it, in mm.
    pub fn way_to(&self, other: &Self) -> f64 {
        let ([x, y], [to_x, to_y]) = (self.point, other.point);
        arc(libm::hypot(to_x - x, to_y - y), [self.curvature, other.curvature])
    }
}

/// An arc that bends so much at its ends: its chord, and what it is longer, `c³κ²/24`.
fn arc(chord: f64, [from, to]: [f64; 2]) -> f64 {
    chord * (1.0 + (chord * chord * f64::midpoint(from * from, to * to) / 24.0).min(1.0))
}
