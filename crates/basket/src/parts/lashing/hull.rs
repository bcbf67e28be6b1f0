//! The convex hull of a section: the way that a strand pulled tight takes round it.

use std::f64::consts::{PI, TAU};

use crate::measure::Length;

/// The most by which the outline of a hull that is moved outward turns at one corner.
const TURN: f64 = PI / 12.0;

/// A convex outline. Its corners are places in a plane, as (to the right, up), and run against the
/// clock.
#[derive(Clone, Debug, PartialEq)]
pub struct Hull {
    corners: Vec<(Length, Length)>,
}

impl Hull {
    /// The convex hull of places (Andrew's monotone chain: A. M. Andrew, Another efficient algorithm
    /// for convex hulls in two dimensions, Information Processing Letters 9, 1979).
    pub fn of(places: impl IntoIterator<Item = (Length, Length)>) -> Self {
        let mut places: Vec<[f64; 2]> =
            places.into_iter().map(|(right, up)| [right.to_mm(), up.to_mm()]).collect();
        places.sort_by(|[ax, ay], [bx, by]| ax.total_cmp(bx).then(ay.total_cmp(by)));
        places.dedup();
        let mut corners = chain(places.iter().copied());
        corners.extend(chain(places.iter().rev().copied()));
        if corners.is_empty() {
            corners.extend(places.first());
        }
        Self { corners: corners.into_iter().map(|[x, y]| (Length::mm(x), Length::mm(y))).collect() }
    }

    /// Its corners, as (to the right, up).
    pub fn corners(&self) -> &[(Length, Length)] {
        &self.corners
    }

    /// Its sides, each as the corners at both ends.
    pub fn sides(&self) -> impl Iterator<Item = [(Length, Length); 2]> + '_ {
        let next = self.corners.iter().cycle().skip(1);
        self.corners.iter().zip(next).map(|(from, to)| [*from, *to])
    }

    /// Length of the curve that runs so far outside it, rounding its corners: `P + 2πd` (Jakob
    /// Steiner, 1840).
    pub fn girth(&self, outside: Length) -> Length {
        let side =
            |[from, to]: [(Length, Length); 2]| libm::hypot((to.0 - from.0).to_mm(), (to.1 - from.1).to_mm());
        Length::mm(self.sides().map(side).sum()) + TAU * outside
    }

    /// The outline so far outside it. What runs round a corner is drawn by sides that touch the round,
    /// 15 degrees apart at most, so that nowhere it lies more than a hundredth of `by` too far out.
    #[must_use]
    pub fn grown(&self, by: Length) -> Self {
        let before = self.corners.iter().cycle().skip(self.corners.len().saturating_sub(1));
        let corners = before.zip(self.sides()).flat_map(|(before, [here, after])| {
            let (into, out) = (way(*before, here), way(here, after));
            let turn = libm::atan2(into[0] * out[1] - into[1] * out[0], into[0] * out[0] + into[1] * out[1]);
            let steps = (turn.abs() / TURN).ceil().max(1.0);
            let step = turn / steps;
            let reach = by / libm::cos(step / 2.0);
            // The way out lies a quarter turn to the right of the way along.
            let first = libm::atan2(-into[0], into[1]) + step / 2.0;
            (0..steps as u32).map(move |number| {
                let direction = first + step * f64::from(number);
                (here.0 + reach * libm::cos(direction), here.1 + reach * libm::sin(direction))
            })
        });
        Self { corners: corners.collect() }
    }
}

fn way(from: (Length, Length), to: (Length, Length)) -> [f64; 2] {
    [(to.0 - from.0).to_mm(), (to.1 - from.1).to_mm()]
}

/// One side of a hull without its last place.
fn chain(places: impl Iterator<Item = [f64; 2]>) -> Vec<[f64; 2]> {
    let mut side: Vec<[f64; 2]> = Vec::new();
    for place in places {
        while let [.., a, b] = side[..] {
            let (along, aside) = ([b[0] - a[0], b[1] - a[1]], [place[0] - a[0], place[1] - a[1]]);
            if along[0] * aside[1] - along[1] * aside[0] > 0.0 {
                break;
            }
            side.pop();
        }
        side.push(place);
    }
    side.pop();
    side
}

#[cfg(test)]
mod tests {
    use super::*;

    fn hull(places: &[(f64, f64)]) -> Hull {
        Hull::of(places.iter().map(|(x, y)| (Length::mm(*x), Length::mm(*y))))
    }

    #[test]
    fn what_lies_inside_a_square_is_left_out() {
        let square = hull(&[(0.0, 0.0), (2.0, 0.0), (1.0, 1.0), (2.0, 2.0), (0.0, 2.0), (1.0, 0.0)]);
        assert_eq!(square, hull(&[(0.0, 0.0), (2.0, 0.0), (2.0, 2.0), (0.0, 2.0)]));
        assert_eq!(square.corners().len(), 4);
    }

    /// A square of 2 with its corners rounded by 3: sides of 2 and a circle. Drawn by sides that touch
    /// the circle, 6 to a quarter: 24·2·3·tan(π/24) of circle, and 3/cos(π/24) at the farthest.
    #[test]
    fn a_square_that_is_moved_outward_is_rounded_at_its_corners() {
        let square = hull(&[(-1.0, -1.0), (1.0, -1.0), (1.0, 1.0), (-1.0, 1.0)]);
        let grown = square.grown(Length::mm(3.0));
        let rounds = 144.0 * libm::tan(PI / 24.0);
        assert!((grown.girth(Length::ZERO).to_mm() - 8.0 - rounds).abs() < 1e-9, "{grown:?}");
        assert!((square.girth(Length::mm(3.0)).to_mm() - 8.0 - 6.0 * PI).abs() < 1e-12);
        let right = grown.corners().iter().map(|(x, _)| x.to_mm()).fold(0.0, f64::max);
        assert!((right - 4.0).abs() < 1e-9);
    }

    #[test]
    fn few_places_make_a_hull_too() {
        assert_eq!(hull(&[]).girth(Length::mm(1.0)), Length::mm(TAU));
        assert_eq!(hull(&[(1.0, 1.0), (1.0, 1.0)]).corners().len(), 1);
        assert!((hull(&[(0.0, 0.0), (3.0, 4.0)]).girth(Length::ZERO).to_mm() - 10.0).abs() < 1e-12);
        for few in [hull(&[(1.0, 1.0)]), hull(&[(0.0, 0.0), (3.0, 4.0)])] {
            let grown = few.grown(Length::mm(1.0));
            assert!(grown.corners().iter().all(|(x, y)| x.to_mm().is_finite() && y.to_mm().is_finite()));
        }
    }
}
