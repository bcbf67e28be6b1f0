//! The section of the rim: hoops, filler and the lashing round them.

use basket::lashing::{Hull, Lashing, RimSection};
use basket::{Basket, Length};
use kurbo::Point;

/// Steps round a rounded face.
const STEPS: u32 = 24;

/// The rim's section: `x` out from the staves' inner face, `y` up from the hoops' lower edge, in mm.
pub(crate) struct RimShape {
    pub(crate) outer: Vec<Point>,
    pub(crate) inner: Vec<Point>,
    pub(crate) filler: Option<Vec<Point>>,
    /// The lashing's outer face; without a lashing, what it would go round.
    pub(crate) lashing: Vec<Point>,
}

impl RimShape {
    pub(crate) fn of(basket: &Basket) -> Self {
        let section = RimSection::of(basket.body.rim(), basket.body.filler(), STEPS);
        let lashing = basket.body.lashing().map_or(Length::ZERO, Lashing::thickness);
        Self {
            outer: placed(&section.outer),
            inner: placed(&section.inner),
            filler: section.filler.as_deref().map(placed),
            lashing: placed(section.hull().grown(lashing).corners()),
        }
    }

    /// The part of the lashing seen from outside, from below upward.
    pub(crate) fn front(&self) -> Vec<Point> {
        let (low, high) =
            self.lashing.iter().fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), point| {
                (low.min(point.y), high.max(point.y))
            });
        let widest = |height: f64| {
            let edges = self.lashing.iter().zip(self.lashing.iter().cycle().skip(1));
            let crossings = edges.filter_map(|(a, b)| {
                let share = (height - a.y) / (b.y - a.y);
                (0.0..=1.0).contains(&share).then_some(a.x + (b.x - a.x) * share)
            });
            crossings.fold(f64::NEG_INFINITY, f64::max)
        };
        let steps = 10;
        (1..steps)
            .map(|step| low + (high - low) * f64::from(step) / f64::from(steps))
            .map(|height| Point::new(widest(height), height))
            .filter(|point| point.is_finite())
            .collect()
    }
}

/// The convex hull, from the leftmost point round against the clock.
pub(crate) fn hull(points: impl IntoIterator<Item = Point>) -> Vec<Point> {
    let places = points.into_iter().map(|at| (Length::mm(at.x), Length::mm(at.y)));
    placed(Hull::of(places).corners())
}

fn placed(outline: &[(Length, Length)]) -> Vec<Point> {
    outline.iter().map(|(out, up)| Point::new(out.to_mm(), up.to_mm())).collect()
}
