//! A plane curve of straight stretches and arcs that run into each other without a kink, in the plane of
//! radius and height. Lengths are millimetres, headings radians up from level outward.

use std::f64::consts::TAU;

/// A place in the plane: radius and height, in mm.
pub(super) type Point = (f64, f64);

/// Fewest and most steps in which an arc is given as points.
const STEPS: (f64, f64) = (1.0, 256.0);
/// Finest sagitta for which points are given, in mm.
const FINEST: f64 = 1e-6;

/// A straight stretch or an arc.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
struct Stretch {
    start: Point,
    heading: f64,
    /// One over its radius, in 1/mm: above zero where it bends up and inward.
    curvature: f64,
    length: f64,
}

/// Stretches one after the other.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Curve {
    stretches: [Stretch; 5],
}

/// A place on a curve: the way to it, where it is, and where the curve heads there.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct On {
    pub(super) way: f64,
    pub(super) point: Point,
    pub(super) heading: f64,
}

impl Curve {
    /// A curve that sets out level, of stretches that are each given by curvature and length.
    pub(super) fn level_from(start: Point, stretches: [(f64, f64); 5]) -> Self {
        let (mut start, mut heading) = (start, 0.0);
        let stretches = stretches.map(|(curvature, length)| {
            let stretch = Stretch { start, heading, curvature, length: length.max(0.0) };
            start = stretch.at(stretch.length);
            heading = stretch.heading_at(stretch.length);
            stretch
        });
        Self { stretches }
    }

    pub(super) fn length(&self) -> f64 {
        self.stretches.iter().map(|stretch| stretch.length).sum()
    }

    /// The place so far along the curve; before and beyond its ends it runs on straight.
    pub(super) fn at(&self, way: f64) -> On {
        let [first, .., last] = &self.stretches;
        if way < 0.0 {
            return On { way, point: on_from(first.start, first.heading, way), heading: first.heading };
        }
        let mut left = way;
        for stretch in &self.stretches {
            if left <= stretch.length {
                return On { way, ..stretch.on(left) };
            }
            left -= stretch.length;
        }
        let heading = last.heading_at(last.length);
        On { way, point: on_from(last.at(last.length), heading, left), heading }
    }

    /// Places from one end to the other so close that the chords between them stay within this many mm of
    /// the curve.
    pub(super) fn places(&self, tolerance: f64) -> impl Iterator<Item = On> + '_ {
        let mut before = 0.0;
        let steps = self.stretches.iter().filter(|stretch| stretch.length > 0.0).flat_map(move |stretch| {
            let (from, steps) = (before, stretch.steps(tolerance));
            before += stretch.length;
            (1..=steps).map(move |step| {
                let way = stretch.length * (f64::from(step) / f64::from(steps));
                On { way: from + way, ..stretch.on(way) }
            })
        });
        std::iter::once(self.at(0.0)).chain(steps)
    }

    /// How far a point lies from the curve: above zero on its outer side, to the right of where it
    /// heads, and below zero on its inner side.
    pub(super) fn outside(&self, point: Point) -> f64 {
        let stretches = self.stretches.iter().filter(|stretch| stretch.length > 0.0);
        let off = stretches.map(|stretch| stretch.outside(point)).reduce(nearer);
        off.unwrap_or_else(|| self.at(0.0).off(point))
    }

    /// How far from a point the curve lies in a direction (of length 1); none where it does not.
    pub(super) fn in_direction(&self, from: Point, direction: Point) -> Option<f64> {
        let met = self.stretches.iter().flat_map(|stretch| stretch.met(from, direction));
        met.flatten().filter(|distance| *distance >= 0.0).reduce(f64::min)
    }
}

impl On {
    /// Distance of a point, with the sign of the side on which it lies: above zero to the right.
    fn off(&self, point: Point) -> f64 {
        let (sin, cos) = libm::sincos(self.heading);
        let (across, up) = (point.0 - self.point.0, point.1 - self.point.1);
        let distance = libm::hypot(across, up);
        if across * sin < up * cos { -distance } else { distance }
    }
}

impl Stretch {
    fn on(&self, way: f64) -> On {
        On { way, point: self.at(way), heading: self.heading_at(way) }
    }

    fn heading_at(&self, way: f64) -> f64 {
        self.heading + self.curvature * way
    }

    fn at(&self, way: f64) -> Point {
        let turned = self.curvature * way;
        if turned == 0.0 {
            return on_from(self.start, self.heading, way);
        }
        // The chord of an arc heads half way between its ends and is sin(turn/2)/(turn/2) as long.
        let half = turned / 2.0;
        on_from(self.start, self.heading + half, way * (libm::sin(half) / half))
    }

    /// Middle of the circle of an arc.
    fn centre(&self) -> Point {
        let (sin, cos) = libm::sincos(self.heading);
        (self.start.0 - sin / self.curvature, self.start.1 + cos / self.curvature)
    }

    /// Steps in which the chords keep this close to the arc: a chord over the angle `a` lies
    /// `R(1 − cos(a/2))` from it.
    fn steps(&self, tolerance: f64) -> u32 {
        let share = (tolerance.max(FINEST) * self.curvature.abs()).min(1.0);
        let angle = 2.0 * libm::acos(1.0 - share);
        let turned = (self.curvature * self.length).abs();
        let (fewest, most) = STEPS;
        if turned > 0.0 { (turned / angle).ceil().clamp(fewest, most) as u32 } else { 1 }
    }

    /// Way to the place on the circle or the line that lies square to a point; it may lie beyond the ends.
    fn square_to(&self, point: Point) -> f64 {
        if self.curvature == 0.0 {
            let (sin, cos) = libm::sincos(self.heading);
            return (point.0 - self.start.0) * cos + (point.1 - self.start.1) * sin;
        }
        let centre = self.centre();
        let side = self.curvature.signum();
        let heading = libm::atan2(side * (point.0 - centre.0), side * (centre.1 - point.1));
        (side * (heading - self.heading)).rem_euclid(TAU) / self.curvature.abs()
    }

    fn outside(&self, point: Point) -> f64 {
        let square = self.square_to(point).min(self.length).max(0.0);
        [0.0, square, self.length].map(|way| self.on(way).off(point)).into_iter().fold(f64::INFINITY, nearer)
    }

    /// Distances at which a line from a point in a direction (of length 1) meets the stretch.
    fn met(&self, from: Point, direction: Point) -> [Option<f64>; 2] {
        let on = |distance: f64| {
            let point = (from.0 + direction.0 * distance, from.1 + direction.1 * distance);
            let way = self.square_to(point);
            (distance.is_finite() && (-1e-9..=self.length + 1e-9).contains(&way)).then_some(distance)
        };
        if self.curvature == 0.0 {
            let (sin, cos) = libm::sincos(self.heading);
            let (across, up) = (self.start.0 - from.0, self.start.1 - from.1);
            return [on((across * sin - up * cos) / (direction.0 * sin - direction.1 * cos)), None];
        }
        let centre = self.centre();
        let (across, up) = (centre.0 - from.0, centre.1 - from.1);
        let (ahead, aside) =
            (across * direction.0 + up * direction.1, across * direction.1 - up * direction.0);
        let radius = 1.0 / self.curvature;
        let half_chord = (radius * radius - aside * aside).sqrt();
        [on(ahead - half_chord), on(ahead + half_chord)]
    }
}

/// The smaller of two distances, whatever their signs.
fn nearer(one: f64, other: f64) -> f64 {
    if other.abs() < one.abs() { other } else { one }
}

/// The place so far on from another in the direction of a heading.
fn on_from(point: Point, heading: f64, way: f64) -> Point {
    let (sin, cos) = libm::sincos(heading);
    (point.0 + way * cos, point.1 + way * sin)
}
