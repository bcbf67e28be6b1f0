//! How far places seen from above lie outside an outline.
//!
//! A convex outline is what all its supporting lines leave: a place lies as far outside it, or inside, as
//! outside the line from which it lies farthest.

use super::OutlinePoint;

/// Places of the outline that are looked at; of how many one before the others.
const PLACES: u32 = 512;
const COARSE: usize = 16;
/// An outline that bends less than this here is straight, in 1/mm.
const STRAIGHT: f64 = 1e-9;

/// Distances from an outline.
#[derive(Clone, Debug)]
pub struct Off {
    places: Vec<OutlinePoint>,
}

impl Off {
    /// Distances from the outline with these places at shares of its round.
    pub fn of(outline: &dyn Fn(f64) -> OutlinePoint) -> Self {
        let turn = |number: u32| f64::from(number) / f64::from(PLACES);
        Self { places: (0..PLACES).map(|number| outline(turn(number))).collect() }
    }

    /// How far outside the outline a place lies, in mm; negative inside.
    pub fn distance(&self, place: [f64; 2]) -> f64 {
        let nearest = self.nearest(place);
        let Some(at) = self.places.get(nearest) else { return 0.0 };
        if at.curvature < STRAIGHT {
            return outside(at, place);
        }
        // Between two of the places the outline runs as the circle that bends as it does.
        let radius = 1.0 / at.curvature;
        let ([x, y], [at_x, at_y], [out_x, out_y]) = (place, at.point, at.outward);
        let circle = libm::hypot(x - at_x + out_x * radius, y - at_y + out_y * radius) - radius;
        if outside(at, place) > -radius { circle } else { outside(at, place) }
    }

    /// Which of the places has the supporting line outside which a place lies farthest.
    fn nearest(&self, place: [f64; 2]) -> usize {
        let count = self.places.len();
        let off = |index: usize| self.places.get(index).map_or(f64::NEG_INFINITY, |at| outside(at, place));
        let larger = |best: usize, index: usize| if off(index) > off(best) { index } else { best };
        let mut best = (0..count).step_by(COARSE).fold(0, larger);
        let mut step = COARSE / 2;
        while step > 0 {
            best = [(best + count - step) % count, (best + step) % count].into_iter().fold(best, larger);
            step /= 2;
        }
        best
    }

    /// The share of the way round of the outline's place next to a place.
    pub fn turn(&self, [x, y]: [f64; 2]) -> f64 {
        let off = |at: &OutlinePoint| libm::hypot(x - at.point[0], y - at.point[1]);
        let nearest = self.places.iter().enumerate().min_by(|a, b| off(a.1).total_cmp(&off(b.1)));
        nearest.map_or(0.0, |(index, _)| index as f64 / f64::from(PLACES))
    }
}

/// How far outside the supporting line at a place of the outline another place lies.
fn outside(at: &OutlinePoint, [x, y]: [f64; 2]) -> f64 {
    (x - at.point[0]) * at.outward[0] + (y - at.point[1]) * at.outward[1]
}
