//! The section of the rim: hoops, filler and the lashing round them.

use basket::Basket;
use basket::stock::{Kind, Material};
use kurbo::Point;

/// Steps round a section.
const STEPS: u32 = 24;

/// The rim's section: `x` out from the staves' inner face, `y` up from the hoops' lower edge, in mm.
pub(crate) struct RimShape {
    pub(crate) outer: Vec<Point>,
    pub(crate) inner: Vec<Point>,
    pub(crate) filler: Option<Vec<Point>>,
    /// The lashing's outer face.
    pub(crate) lashing: Vec<Point>,
}

impl RimShape {
    pub(crate) fn of(basket: &Basket) -> Self {
        let (rim, stave) = (basket.body.rim(), basket.body.uprights().thickness.to_mm());
        let outer = hoop(&rim.outer.stock, stave, 1.0);
        let inner = hoop(&rim.inner.stock, 0.0, -1.0);
        let filler = basket.body.filler().map(|filler| {
            let (width, thickness) = (filler.stock.width.to_mm(), filler.stock.thickness.to_mm());
            let middle = Point::new(stave / 2.0, rim.height.to_mm() + thickness / 2.0);
            round(middle, width / 2.0, thickness / 2.0)
        });
        let all = outer.iter().chain(&inner).chain(filler.iter().flatten()).copied().collect();
        let lashing = grown(&hull(all), basket.body.lashing().weaver.thickness.to_mm());
        Self { outer, inner, filler, lashing }
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

/// A hoop whose flat face lies at `flat` and whose other face looks to `side`.
fn hoop(stock: &Material, flat: f64, side: f64) -> Vec<Point> {
    let (half, thickness) = (stock.width.to_mm() / 2.0, stock.thickness.to_mm());
    match stock.kind {
        Kind::HalfRoundReed => (0..=STEPS)
            .map(|step| (f64::from(step) / f64::from(STEPS) - 0.5) * std::f64::consts::PI)
            .map(|angle| Point::new(flat + side * thickness * angle.cos(), half + half * angle.sin()))
            .collect(),
        Kind::FlatOvalReed => (0..=STEPS)
            .map(|step| f64::from(step) / f64::from(STEPS) * 2.0 - 1.0)
            .map(|up| Point::new(flat + side * thickness * (1.0 - 0.7 * up * up), half + half * up))
            .chain([Point::new(flat, 2.0 * half), Point::new(flat, 0.0)])
            .collect(),
        Kind::RoundReed => round(Point::new(flat + side * half, half), half, half),
        _ => [(0.0, 0.0), (thickness, 0.0), (thickness, 2.0 * half), (0.0, 2.0 * half)]
            .map(|(x, y)| Point::new(flat + side * x, y))
            .to_vec(),
    }
}

fn round(middle: Point, half_width: f64, half_height: f64) -> Vec<Point> {
    (0..STEPS)
        .map(|step| f64::from(step) / f64::from(STEPS) * std::f64::consts::TAU)
        .map(|angle| Point::new(middle.x + half_width * angle.cos(), middle.y + half_height * angle.sin()))
        .collect()
}

/// The convex hull, from the leftmost point round (Andrew's monotone chain, 1979).
pub(crate) fn hull(mut points: Vec<Point>) -> Vec<Point> {
    points.sort_by(|a, b| a.x.total_cmp(&b.x).then(a.y.total_cmp(&b.y)));
    let lower = chain(points.iter().copied());
    let upper = chain(points.iter().rev().copied());
    lower.into_iter().chain(upper).collect()
}

/// One side of the hull without its last point.
fn chain(points: impl Iterator<Item = Point>) -> Vec<Point> {
    let mut side: Vec<Point> = Vec::new();
    for point in points {
        while let [.., a, b] = side[..] {
            if (b - a).cross(point - a) > 0.0 {
                break;
            }
            side.pop();
        }
        side.push(point);
    }
    side.pop();
    side
}

/// A convex outline moved outward: each corner along the mean of its sides' outward directions.
fn grown(outline: &[Point], by: f64) -> Vec<Point> {
    let count = outline.len();
    (0..count)
        .map(|index| {
            let (before, here, after) =
                (outline[(index + count - 1) % count], outline[index], outline[(index + 1) % count]);
            let along = (here - before).normalize() + (after - here).normalize();
            let out = kurbo::Vec2::new(along.y, -along.x).normalize();
            if out.is_finite() { here + out * by } else { here }
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_hull_of_a_square_leaves_out_what_lies_inside() {
        let points = [(0.0, 0.0), (2.0, 0.0), (1.0, 1.0), (2.0, 2.0), (0.0, 2.0), (1.0, 0.5)];
        let hull = hull(points.map(Point::from).to_vec());
        assert_eq!(hull, [(0.0, 0.0), (2.0, 0.0), (2.0, 2.0), (0.0, 2.0)].map(Point::from));
    }
}
