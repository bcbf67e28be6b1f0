//! The way round a level between places that are near each other.

use super::WallPoint;
use crate::measure::Length;

impl WallPoint {
    /// The way along the wall to another place of the same level: the chord, and what an arc of so small a bend
    /// is longer, `c³κ²/24`.
    pub fn way_round_to(&self, other: &Self) -> Length {
        let [x, y, _] = [0, 1, 2].map(|part: usize| (other.point[part] - self.point[part]).to_mm());
        let chord = libm::hypot(x, y);
        let bend = f64::midpoint(self.curvature * self.curvature, other.curvature * other.curvature);
        Length::mm(chord * (1.0 + (chord * chord * bend / 24.0).min(1.0)))
    }
}
