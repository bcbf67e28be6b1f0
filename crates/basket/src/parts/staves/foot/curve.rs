//! A plane curve of straight stretches and arcs that run into each other without a kink, in the plane of
//! radius and height. Lengths are millimetres, headings radians up from level outward.

use std::f64::consts::PI;

/// A place in the plane, or a direction of length 1: radius and height, in mm.
pub(super) type Point = (f64, f64);

/// Fewest and most steps in which an arc is given as points.
const STEPS: (f64, f64) = (1.0, 256.0);
/// Finest sagitta for which points are given, in mm.
const FINEST: f64 = 1e-6;

/// A straight stretch or an arc.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Stretch {
    from: On,
    /// One over its radius, in 1/mm: above zero where it bends up and inward.
    curvature: f64,
    length: f64,
    to: On,
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
    ahead: Point,
}

impl Curve {
    /// A curve that sets out level, of stretches that are each given by curvature and length.
    pub(super) fn level_from(start: Point, stretches: [(f64, f64); 5]) -> Self {
        let mut from = On { way: 0.0, point: start, heading: 0.0, ahead: (1.0, 0.0) };
        let stretches = stretches.map(|(curvature, length)| {
            let stretch = Stretch::of(from, curvature, length.max(0.0));
            from = stretch.to;
            stretch
        });
        Self { stretches }
    }

    pub(super) fn length(&self) -> f64 {
        self.end().way
    }

    /// The place so far along the curve; before and beyond its ends it runs on straight.
    pub(super) fn at(&self, way: f64) -> On {
        if way < 0.0 {
            return self.start().straight_on(way);
        }
        let holding = self.stretches.iter().find(|stretch| way <= stretch.to.way);
        holding.map_or_else(
            || self.end().straight_on(way - self.length()),
            |stretch| stretch.at(way - stretch.from.way),
        )
    }

    /// Places from one end to the other so close that the chords between them stay within this many mm of
    /// the curve.
    pub(super) fn places(&self, tolerance: f64) -> impl Iterator<Item = On> + '_ {
        let steps = self.stretches.iter().filter(|stretch| stretch.length > 0.0).flat_map(move |stretch| {
            let steps = stretch.steps(tolerance);
            (1..=steps).map(move |step| stretch.at(stretch.length * (f64::from(step) / f64::from(steps))))
        });
        std::iter::once(self.start()).chain(steps)
    }

    /// How far a point lies from the curve: above zero on its outer side, to the right of where it
    /// heads, and below zero on its inner side.
    pub(super) fn outside(&self, point: Point) -> f64 {
        let ends = [self.start().off(point), self.end().off(point)];
        self.stretches
            .iter()
            .filter_map(|stretch| stretch.square_off(point))
            .chain(ends)
            .fold(f64::INFINITY, |nearest, off| if off.abs() < nearest.abs() { off } else { nearest })
    }

    /// How far from a point the curve lies in a direction; none where it does not.
    pub(super) fn in_direction(&self, from: Point, direction: Point) -> Option<f64> {
        let met = self.stretches.iter().flat_map(|stretch| stretch.met(from, direction));
        met.flatten().filter(|distance| *distance >= 0.0).reduce(f64::min)
    }

    fn start(&self) -> On {
        let [first, ..] = &self.stretches;
        first.from
    }

    fn end(&self) -> On {
        let [.., last] = &self.stretches;
        last.to
    }
}

impl On {
    /// The place so far straight ahead.
    fn straight_on(self, way: f64) -> Self {
        let point = (self.point.0 + way * self.ahead.0, self.point.1 + way * self.ahead.1);
        Self { way: self.way + way, point, ..self }
    }

    /// How far a point lies ahead, and how far to the right.
    fn seen(self, point: Point) -> (f64, f64) {
        let (across, up) = (point.0 - self.point.0, point.1 - self.point.1);
        (across * self.ahead.0 + up * self.ahead.1, across * self.ahead.1 - up * self.ahead.0)
    }

    /// Distance of a point, above zero to the right and below to the left.
    fn off(self, point: Point) -> f64 {
        let (ahead, right) = self.seen(point);
        let distance = libm::hypot(ahead, right);
        if right < 0.0 { -distance } else { distance }
    }
}

impl Stretch {
    fn of(from: On, curvature: f64, length: f64) -> Self {
        let unended = Self { from, curvature, length, to: from };
        Self { to: unended.at(length), ..unended }
    }

    fn at(&self, way: f64) -> On {
        let turned = self.curvature * way;
        if turned == 0.0 {
            return self.from.straight_on(way);
        }
        // The chord of an arc heads half way between its ends and is sin(turn/2)/(turn/2) as long.
        let half = turned / 2.0;
        let (sin, cos) = libm::sincos(self.from.heading + half);
        let chord = way * (libm::sin(half) / half);
        let heading = self.from.heading + turned;
        let (up, across) = libm::sincos(heading);
        let point = (self.from.point.0 + chord * cos, self.from.point.1 + chord * sin);
        On { way: self.from.way + way, point, heading, ahead: (across, up) }
    }

    /// Middle of the circle of an arc.
    fn centre(&self) -> Point {
        let (radius, On { point, ahead, .. }) = (1.0 / self.curvature, self.from);
        (point.0 - radius * ahead.1, point.1 + radius * ahead.0)
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

    /// Whether a point lies square to a place on the stretch: not behind its beginning nor ahead of its end.
    fn faces(&self, point: Point) -> bool {
        let (begun, unended) = (self.from.seen(point).0 >= 0.0, self.to.seen(point).0 <= 0.0);
        if (self.curvature * self.length).abs() > PI { begun || unended } else { begun && unended }
    }

    /// How far a point that the stretch faces lies from it, above zero to the right.
    fn square_off(&self, point: Point) -> Option<f64> {
        if self.length == 0.0 || !self.faces(point) {
            return None;
        }
        if self.curvature == 0.0 {
            return Some(self.from.seen(point).1);
        }
        let centre = self.centre();
        let distance = libm::hypot(point.0 - centre.0, point.1 - centre.1);
        Some(self.curvature.signum() * (distance - 1.0 / self.curvature.abs()))
    }

    /// Distances at which a line from a point in a direction meets the stretch.
    fn met(&self, from: Point, direction: Point) -> [Option<f64>; 2] {
        let at = |distance: f64| (from.0 + direction.0 * distance, from.1 + direction.1 * distance);
        let on = |distance: f64| (distance.is_finite() && self.faces(at(distance))).then_some(distance);
        if self.curvature == 0.0 {
            let ahead = self.from.ahead;
            let turned = direction.0 * ahead.1 - direction.1 * ahead.0;
            return [on(-self.from.seen(from).1 / turned), None];
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
