//! The ellipse and its fuller relatives, `|x/a|ᵖ + |y/b|ᵖ = 1` (Gabriel Lamé, 1818).

use std::f64::consts::{FRAC_PI_2, PI, TAU};

use super::curve::GAUSS;
use super::outline::{Outline, OutlinePoint};

/// Panels in which a quarter is measured.
const PANELS: u32 = 512;
/// Least power: the ellipse. A smaller one has corners at the ends of its axes.
pub const LEAST_POWER: f64 = 2.0;
/// Most power: with it the corners are as tight as a mould's edge that is merely broken.
pub const MOST_POWER: f64 = 10.0;
/// Halvings by which the tightest place between two panels' ends is found.
const HALVINGS: u32 = 40;

/// An ellipse, or a superellipse. It begins at the end of its first axis.
#[derive(Clone, Debug, PartialEq)]
pub struct Oval {
    curve: Lame,
    /// The first quarter: places from the end of the first axis to that of the second.
    nodes: Vec<Node>,
    tightest: f64,
    area: f64,
}

/// The curve itself.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Lame {
    half: [f64; 2],
    power: f64,
}

/// A place in the table: the way to it, its angle from the first axis, and how fast that changes with the way.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Node {
    way: f64,
    angle: f64,
    rate: f64,
}

impl Oval {
    /// The curve with these half axes, in mm; a power out of bounds is brought within them.
    pub fn new(half: [f64; 2], power: f64) -> Self {
        let curve =
            Lame { half: half.map(|axis| axis.max(1e-3)), power: power.clamp(LEAST_POWER, MOST_POWER) };
        let angle = |number: u32| FRAC_PI_2 * f64::from(number) / f64::from(PANELS);
        let node = |way: f64, angle: f64| Node { way, angle, rate: 1.0 / curve.speed(angle) };
        let mut nodes = vec![node(0.0, 0.0)];
        let (mut way, mut area) = (0.0, 0.0);
        for number in 0..PANELS {
            let (from, to) = (angle(number), angle(number + 1));
            let (half, middle) = ((to - from) / 2.0, f64::midpoint(from, to));
            for (at, weight) in GAUSS {
                let angle = middle + half * at;
                let radius = curve.radius(angle);
                way += weight * half * curve.speed(angle);
                area += weight * half * radius * radius / 2.0;
            }
            nodes.push(node(way, to));
        }
        let bends = (0..=PANELS).map(|number| (number, curve.curvature(angle(number))));
        let (sharpest, _) = bends.fold((0, 0.0), |most, bend| if bend.1 > most.1 { bend } else { most });
        let between = [angle(sharpest.saturating_sub(1)), angle((sharpest + 1).min(PANELS))];
        Self { nodes, tightest: 1.0 / curve.sharpest(between), area: 4.0 * area, curve }
    }

    /// The same shape in another size.
    #[must_use]
    pub fn scaled(&self, factor: f64) -> Self {
        Self::new(self.curve.half.map(|axis| axis * factor), self.curve.power)
    }

    /// How far it reaches from edge to edge, along x and along y.
    pub fn across(&self) -> [f64; 2] {
        self.curve.half.map(|axis| 2.0 * axis)
    }

    /// Way from the end of one axis to that of the other.
    fn quarter(&self) -> f64 {
        self.nodes.last().map_or(0.0, |last| last.way)
    }

    /// The angle to which such a way leads in the first quarter: by a cubic through both ends of its panel
    /// and the rates there.
    fn angle(&self, way: f64) -> f64 {
        let after = self.nodes.partition_point(|node| node.way < way).clamp(1, PANELS as usize);
        let Some([from, to]) = self.nodes.get(after - 1..=after) else { return 0.0 };
        let width = to.way - from.way;
        let share = ((way - from.way) / width).clamp(0.0, 1.0);
        let rise = to.angle - from.angle;
        let (start, end) = (from.rate * width, to.rate * width);
        let (square, cube) = (3.0 * rise - 2.0 * start - end, start + end - 2.0 * rise);
        from.angle + share * (start + share * (square + share * cube))
    }
}

impl Outline for Oval {
    fn girth(&self) -> f64 {
        4.0 * self.quarter()
    }

    fn at(&self, turn: f64) -> OutlinePoint {
        let quarters = 4.0 * turn.rem_euclid(1.0);
        let number = (quarters as u32).min(3);
        let share = quarters - f64::from(number);
        let (share, signs) = match number {
            0 => (share, [1.0, 1.0]),
            1 => (1.0 - share, [-1.0, 1.0]),
            2 => (share, [-1.0, -1.0]),
            _ => (1.0 - share, [1.0, -1.0]),
        };
        let OutlinePoint { point, outward, curvature } = self.curve.at(self.angle(share * self.quarter()));
        let turned = |[x, y]: [f64; 2]| [x * signs[0], y * signs[1]];
        OutlinePoint { point: turned(point), outward: turned(outward), curvature }
    }

    fn tightest(&self) -> f64 {
        self.tightest
    }

    fn flattest(&self) -> f64 {
        1.0 / [0.0, FRAC_PI_2]
            .map(|angle| self.curve.curvature(angle))
            .into_iter()
            .fold(f64::INFINITY, f64::min)
    }

    fn short_of_circle(&self) -> f64 {
        let radius = self.girth() / TAU;
        PI * radius * radius - self.area
    }
}

impl Lame {
    /// How much each axis takes of the one: `(cos/a)ᵖ` and `(sin/b)ᵖ`.
    fn shares(&self, angle: f64) -> [f64; 2] {
        let (sin, cos) = libm::sincos(angle);
        let share = |reach: f64, axis: f64| libm::pow(reach.max(0.0) / axis, self.power);
        [share(cos, self.half[0]), share(sin, self.half[1])]
    }

    fn radius(&self, angle: f64) -> f64 {
        let [x, y] = self.shares(angle);
        libm::pow(x + y, -1.0 / self.power)
    }

    /// Way along the curve for a small angle, over that angle.
    fn speed(&self, angle: f64) -> f64 {
        let (sin, cos) = libm::sincos(angle);
        let slope = |reach: f64, axis: f64| libm::pow(reach.max(0.0) / axis, self.power - 1.0) / axis;
        let [x, y] = self.shares(angle);
        let radius = self.radius(angle);
        let change = (slope(cos, self.half[0]) * sin - slope(sin, self.half[1]) * cos) / (x + y);
        radius * libm::hypot(1.0, change)
    }

    /// A place of the first quarter, by the gradient of `(x/a)ᵖ + (y/b)ᵖ` and its change.
    fn at(&self, angle: f64) -> OutlinePoint {
        let (sin, cos) = libm::sincos(angle);
        let radius = self.radius(angle);
        let point = [radius * cos.max(0.0), radius * sin.max(0.0)];
        let power = self.power;
        let axes = [(point[0], self.half[0]), (point[1], self.half[1])];
        let shares = |less: f64| {
            axes.map(|(reach, half)| libm::pow(reach / half, power - less) / libm::pow(half, less))
        };
        let (first, second) = (shares(1.0), shares(2.0));
        let steep = libm::hypot(first[0], first[1]);
        let bent = (power - 1.0) * (second[0] * first[1] * first[1] + second[1] * first[0] * first[0]);
        OutlinePoint {
            point,
            outward: first.map(|part| part / steep),
            curvature: bent / (steep * steep * steep),
        }
    }

    fn curvature(&self, angle: f64) -> f64 {
        self.at(angle).curvature
    }

    /// The largest curvature between two angles between which it rises and falls once.
    fn sharpest(&self, [mut from, mut to]: [f64; 2]) -> f64 {
        for _ in 0..HALVINGS {
            let third = (to - from) / 3.0;
            let (low, high) = (from + third, to - third);
            if self.curvature(low) < self.curvature(high) { from = low } else { to = high }
        }
        [from, to, f64::midpoint(from, to)].map(|angle| self.curvature(angle)).into_iter().fold(0.0, f64::max)
    }
}
