//! The pieces from which the side of a mould is put together, each a curve of one parameter.

/// Nodes and weights of five-point Gauss–Legendre quadrature on −1..1 (exact to degree nine).
pub(super) const GAUSS: [(f64, f64); 5] = [
    (-0.906_179_845_938_664, 0.236_926_885_056_189_1),
    (-0.538_469_310_105_683_1, 0.478_628_670_499_366_5),
    (0.0, 0.568_888_888_888_888_9),
    (0.538_469_310_105_683_1, 0.478_628_670_499_366_5),
    (0.906_179_845_938_664, 0.236_926_885_056_189_1),
];

/// A piece of the side, run through from parameter 0 to 1. Millimetres and radians.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Piece {
    /// Radius and height as cubics of the parameter, lowest power first.
    Cubic { radius: [f64; 4], height: [f64; 4] },
    /// A part of an ellipse with upright and level axes.
    Ellipse { centre: (f64, f64), axes: (f64, f64), from: f64, to: f64 },
}

/// A place on a piece and how fast the parameter moves it.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct Point {
    pub(super) radius: f64,
    pub(super) height: f64,
    pub(super) radius_rate: f64,
    pub(super) height_rate: f64,
}

/// What quadrature sums up along a part of a piece.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct Sums {
    /// Way along the curve.
    pub(super) length: f64,
    /// Volume inside the surface it sweeps round the axis.
    pub(super) volume: f64,
}

impl Piece {
    /// A straight piece between two places `(radius, height)`.
    pub(super) fn line(from: (f64, f64), to: (f64, f64)) -> Self {
        Self::Cubic { radius: [from.0, to.0 - from.0, 0.0, 0.0], height: [from.1, to.1 - from.1, 0.0, 0.0] }
    }

    /// A cubic in height between two knots `(height, radius)` with the slopes dr/dz there.
    pub(super) fn between(from: (f64, f64), to: (f64, f64), slopes: (f64, f64)) -> Self {
        let step = to.0 - from.0;
        let rise = to.1 - from.1;
        let (start, end) = (slopes.0 * step, slopes.1 * step);
        Self::Cubic {
            radius: [from.1, start, 3.0 * rise - 2.0 * start - end, start + end - 2.0 * rise],
            height: [from.0, step, 0.0, 0.0],
        }
    }

    pub(super) fn at(&self, parameter: f64) -> Point {
        match *self {
            Self::Cubic { radius, height } => {
                let (radius, radius_rate) = cubic(radius, parameter);
                let (height, height_rate) = cubic(height, parameter);
                Point { radius, height, radius_rate, height_rate }
            }
            Self::Ellipse { centre, axes, from, to } => {
                let sweep = to - from;
                let (sin, cos) = libm::sincos(from + sweep * parameter);
                Point {
                    radius: centre.0 + axes.0 * cos,
                    height: centre.1 + axes.1 * sin,
                    radius_rate: -axes.0 * sin * sweep,
                    height_rate: axes.1 * cos * sweep,
                }
            }
        }
    }

    /// Whether the piece is straight, so that one panel measures it exactly.
    pub(super) fn is_straight(&self) -> bool {
        matches!(self, Self::Cubic { radius: [_, _, r2, r3], height: [_, _, h2, h3] }
            if [r2, r3, h2, h3].iter().all(|bend| **bend == 0.0))
    }

    /// Length and volume between two parameters.
    pub(super) fn sums(&self, from: f64, to: f64) -> Sums {
        use std::f64::consts::PI;
        let half = (to - from) / 2.0;
        let middle = f64::midpoint(from, to);
        GAUSS.iter().fold(Sums::default(), |sums, (node, weight)| {
            let point = self.at(middle + half * node);
            let share = weight * half;
            Sums {
                length: sums.length + share * point.speed(),
                volume: sums.volume + share * PI * point.radius * point.radius * point.height_rate,
            }
        })
    }
}

impl Point {
    pub(super) fn speed(&self) -> f64 {
        libm::hypot(self.radius_rate, self.height_rate)
    }
}

fn cubic([a, b, c, d]: [f64; 4], t: f64) -> (f64, f64) {
    (a + t * (b + t * (c + t * d)), b + t * (2.0 * c + t * 3.0 * d))
}
