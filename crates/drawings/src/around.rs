//! The way round the wall, for whatever outline: where a share of it lies at a level.

use std::f64::consts::TAU;

use basket::form::{Across, Form, Level, Outline, OutlinePoint};
use basket::pattern::{Direction, EarAxis};
use basket::{Basket, Length};

/// Share of the round over which a bend is taken to be even.
const SHORT: f64 = 1e-3;
/// Least way along a level for its whole round, in girths of the foot: where it comes to a point.
const LEAST_WAY: f64 = 0.05;

/// The levels of a wall. A level is known by its height and by its girth over 2π, here called its radius; numbers
/// rise counter-clockwise.
#[derive(Clone, Copy)]
pub(crate) struct Around<'a> {
    form: &'a Form,
    /// Numbers rise the other way round than the outline runs.
    turned: bool,
    /// Seen from one of its ends: what lay there lies in front.
    from_end: bool,
}

impl<'a> Around<'a> {
    pub(crate) fn of(basket: &'a Basket) -> Self {
        let turned = basket.body.weave.direction == Direction::Right;
        Self { form: &basket.body.form, turned, from_end: false }
    }

    /// The wall as it is seen from the front, with the ears at the right and left: of an oval whose ears stand on
    /// its short axis, from an end.
    pub(crate) fn of_front(basket: &'a Basket) -> Self {
        let from_end = basket.in_rim().is_some_and(|ears| ears.axis == Some(EarAxis::Short));
        Self { from_end, ..Self::of(basket) }
    }

    /// How far what reaches so far reaches to the right and left together.
    pub(crate) fn across(&self, across: Across) -> Length {
        if self.from_end { across.width } else { across.length }
    }

    pub(crate) fn is_round(&self) -> bool {
        self.form.outline.is_round()
    }

    /// Radius of the foot.
    pub(crate) fn foot(&self) -> f64 {
        self.form.outline.girth() / TAU
    }

    /// The share of the way round that lies at the right.
    pub(crate) fn begin(&self) -> f64 {
        if self.from_end { 0.25 } else { 0.0 }
    }

    /// The place of the foot so far round from there.
    pub(crate) fn at(&self, turn: f64) -> OutlinePoint {
        if self.is_round() {
            let (sin, cos) = (turn * TAU).sin_cos();
            let radius = self.foot();
            return OutlinePoint {
                point: [radius * cos, radius * sin],
                outward: [cos, sin],
                curvature: 1.0 / radius,
            };
        }
        let at = self.form.outline.at(self.share(turn));
        OutlinePoint { point: self.seen(at.point), outward: self.seen(at.outward), ..at }
    }

    /// The level of a radius at a height above the mould's base, in mm.
    pub(crate) fn level(&self, height: f64, radius: f64) -> Round<'a> {
        Round { around: *self, level: self.form.level(Length::mm(height), Length::mm(radius)) }
    }

    /// The level of a radius at the foot.
    pub(crate) fn at_foot(&self, radius: f64) -> Round<'a> {
        self.level(0.0, radius)
    }

    /// How much further the half at the right reaches at a height than the radius of a level there.
    pub(crate) fn over(&self, height: f64) -> f64 {
        if self.is_round() {
            return 0.0;
        }
        // At every level of a height it is the same: this one is at hand.
        let level = self.form.level(Length::mm(height), Length::mm(self.foot()));
        (self.across(level.across()) / 2.0).to_mm() - self.foot()
    }

    /// A place or a direction as it is seen.
    fn seen(&self, [x, y]: [f64; 2]) -> [f64; 2] {
        let y = if self.turned { -y } else { y };
        if self.from_end { [y, -x] } else { [x, y] }
    }

    /// The share of the outline's own round that lies so far round.
    fn share(&self, turn: f64) -> f64 {
        let turn = turn + self.begin();
        if self.turned { -turn } else { turn }
    }
}

/// One level of a wall.
pub(crate) struct Round<'a> {
    around: Around<'a>,
    level: Level<'a>,
}

impl Round<'_> {
    /// The place so far round on it.
    pub(crate) fn place(&self, turn: f64) -> [f64; 2] {
        if self.around.is_round() {
            let [out_x, out_y] = self.around.at(turn).outward;
            let radius = self.level.radius().to_mm();
            return [radius * out_x, radius * out_y];
        }
        self.around.seen(self.level.place(self.around.share(turn)))
    }

    /// Way along it for a small share of its round, as the mean over a short way: at the very end of its axis an
    /// oval that is fuller than an ellipse is flat.
    pub(crate) fn way(&self, turn: f64) -> f64 {
        let girth = self.around.form.outline.girth();
        let least = girth * LEAST_WAY;
        if self.around.is_round() {
            return (self.level.radius().to_mm() * TAU).max(least);
        }
        let [from, to] = [-SHORT, SHORT].map(|step| self.around.share(turn + step));
        ((self.level.way_to(to) - self.level.way_to(from)).abs() / (2.0 * SHORT)).max(least)
    }

    /// Way along it from the beginning.
    pub(crate) fn way_to(&self, turn: f64) -> f64 {
        if self.around.is_round() {
            return turn * TAU * self.level.radius().to_mm();
        }
        let [from, to] = [0.0, turn].map(|turn| self.level.way_to(self.around.share(turn)));
        (to - from).abs()
    }

    /// It as a closed line.
    pub(crate) fn ring(&self, steps: u32) -> Vec<[f64; 2]> {
        (0..steps).map(|step| self.place(f64::from(step) / f64::from(steps))).collect()
    }
}
