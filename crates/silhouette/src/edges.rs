//! The axis of the mould in the picture, and its two edges.

use crate::background::Difference;
use crate::failed::Failed;
use crate::fit;
use crate::shape::Found;

/// Most tilt that is straightened, in radians.
const MOST_TILT: f64 = 0.21;
/// Times that the axis is looked for anew with the edges found.
const ROUNDS: u32 = 6;
/// From where to where behind an edge the mould's own difference is measured, in pixels.
const BEHIND: [f64; 2] = [4.0, 10.0];
/// How far both sides may differ, as a share of the largest half width.
const MOST_LOPSIDED: f64 = 0.06;

/// The axis in the picture: a place on it, and how far it leans to the right, in radians.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Axis {
    /// The place, in pixels from the left and from above.
    pub through: [f64; 2],
    /// Its lean.
    pub tilt: f64,
}

impl Axis {
    /// The place in the picture so far up along the axis and so far to its right, in pixels.
    pub fn place(&self, up: f64, aside: f64) -> [f64; 2] {
        let (sin, cos) = libm::sincos(self.tilt);
        [self.through[0] + up * sin + aside * cos, self.through[1] - up * cos + aside * sin]
    }

    /// How far up along the axis and to its right a place of the picture lies.
    pub fn seen(&self, [x, y]: [f64; 2]) -> [f64; 2] {
        let (sin, cos) = libm::sincos(self.tilt);
        let (right, down) = (x - self.through[0], y - self.through[1]);
        [right * sin - down * cos, right * cos + down * sin]
    }
}

/// Where both edges lie at a height along the axis, in pixels.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Edge {
    /// Height along the axis.
    pub up: f64,
    /// How far the left edge lies to the left of the axis, and the right one to its right.
    pub sides: [f64; 2],
}

/// The mould in the picture.
pub(crate) struct Edges {
    pub(crate) axis: Axis,
    /// From below upward.
    pub(crate) places: Vec<Edge>,
    /// Lowest and highest place on the axis.
    pub(crate) ends: [f64; 2],
}

impl Edges {
    pub(crate) fn of(difference: &Difference, found: &Found) -> Result<Self, Failed> {
        let mut axis = Axis { through: found.middle, tilt: 0.0 };
        let [left, right, top, low] = found.bounds;
        let reach = libm::hypot((right - left) as f64, (low - top) as f64);
        // The more the mould flares, the less of its tilt the middles of its rows show; how much they do is
        // learnt from one round to the next.
        let mut shown = 1.0;
        let mut before: Option<[f64; 2]> = None;
        for _ in 0..ROUNDS {
            let edges = rows(difference, axis, reach);
            let middles: Vec<[f64; 2]> =
                inner(&edges).iter().map(|edge| [edge.up, (edge.sides[1] - edge.sides[0]) / 2.0]).collect();
            let [start, slope] = fit::line(&middles);
            if let Some([last, step]) = before
                && step.abs() > 1e-6
            {
                shown = ((last - slope) / step).clamp(0.25, 1.5);
            }
            let step = libm::atan(slope) / shown;
            before = Some([slope, step]);
            let tilt = axis.tilt + step;
            if !tilt.is_finite() || tilt.abs() > MOST_TILT {
                return Err(Failed::Leans);
            }
            axis = Axis { through: axis.place(0.0, start), tilt };
        }
        let edges = rows(difference, axis, reach);
        let widest = edges.iter().flat_map(|edge| edge.sides).fold(0.0, f64::max);
        let mut apart: Vec<f64> =
            inner(&edges).iter().map(|edge| (edge.sides[1] - edge.sides[0]).abs()).collect();
        apart.sort_by(f64::total_cmp);
        let lopsided = apart.get(apart.len() * 49 / 50).copied().unwrap_or(f64::INFINITY);
        if lopsided > MOST_LOPSIDED * widest {
            return Err(Failed::Lopsided);
        }
        let ends = ends(difference, axis, reach).ok_or(Failed::Nothing)?;
        Ok(Self { axis, places: edges, ends })
    }
}

/// Without the rows at both ends, where the mould's foot and top are seen as ellipses.
fn inner(edges: &[Edge]) -> &[Edge] {
    let skipped = edges.len() / 12;
    edges.get(skipped..edges.len() - skipped).unwrap_or_default()
}

/// Both edges at heights one pixel apart, from below upward.
fn rows(difference: &Difference, axis: Axis, reach: f64) -> Vec<Edge> {
    let steps = reach.ceil() as i64;
    let one = |up: i64| {
        let up = up as f64;
        let [left, right] = [-1.0, 1.0].map(|side| {
            crossing(reach, difference.threshold, |aside| {
                let [x, y] = axis.place(up, side * aside);
                difference.at(x, y)
            })
        });
        Some(Edge { up, sides: [left?, right?] })
    };
    (-steps..=steps).filter_map(one).collect()
}

/// Lowest and highest place on the axis.
fn ends(difference: &Difference, axis: Axis, reach: f64) -> Option<[f64; 2]> {
    let end = |way: f64| {
        crossing(reach, difference.threshold, |up| {
            let [x, y] = axis.place(way * up, 0.0);
            difference.at(x, y)
        })
    };
    Some([-end(-1.0)?, end(1.0)?])
}

/// How far out from a place within it the mould ends: where the difference falls through half of what it is a
/// little further in. None where the place itself is not within the mould.
fn crossing(reach: f64, threshold: f32, difference: impl Fn(f64) -> f32) -> Option<f64> {
    if difference(0.0) <= threshold {
        return None;
    }
    // From outside inward, so that a bright spot on the mould is no edge.
    let mut out = reach.ceil();
    while out > 0.0 && !(difference(out) > threshold && difference((out - 2.0).max(0.0)) > threshold) {
        out -= 1.0;
    }
    let [near, far] = BEHIND;
    let behind: Vec<f32> =
        (near as i32..=far as i32).map(|way| difference((out - f64::from(way)).max(0.0))).collect();
    let half = behind.iter().sum::<f32>() / behind.len() as f32 / 2.0;
    let mut from = (out - near).max(0.0);
    while from < reach {
        let [here, next] = [difference(from), difference(from + 1.0)];
        if next <= half {
            return Some(from + f64::from(((here - half) / (here - next).max(1e-6)).clamp(0.0, 1.0)));
        }
        from += 1.0;
    }
    None
}
