//! The way round the wall, for whatever outline: where a share of it lies at a level.

use std::f64::consts::TAU;

use basket::form::{Across, Form, Outline, OutlinePoint};
use basket::pattern::{Direction, EarAxis};
use basket::{Basket, Length};

/// Share of the round over which a bend is taken to be even.
const SHORT: f64 = 1e-3;

/// The levels of a wall. A level is known by its girth over 2π, here called its radius; numbers rise
/// counter-clockwise.
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
        let turn = turn + self.begin();
        let at = self.form.outline.at(if self.turned { -turn } else { turn });
        let sides = |[x, y]: [f64; 2]| {
            let y = if self.turned { -y } else { y };
            if self.from_end { [y, -x] } else { [x, y] }
        };
        OutlinePoint { point: sides(at.point), outward: sides(at.outward), ..at }
    }

    /// The place so far round on the level of a radius.
    pub(crate) fn place(&self, turn: f64, radius: f64) -> [f64; 2] {
        let OutlinePoint { point: [x, y], outward: [out_x, out_y], .. } = self.at(turn);
        if self.is_round() {
            return [radius * out_x, radius * out_y];
        }
        let out = radius - self.foot();
        [x + out * out_x, y + out * out_y]
    }

    /// Way along the level of a radius for a small share of its round.
    pub(crate) fn way(&self, turn: f64, radius: f64) -> f64 {
        let grown = 1.0 + self.curvature(turn) * (radius - self.foot());
        self.form.outline.girth() * grown.max(0.05)
    }

    /// How much the outline bends about here, as the mean over a short way: at the very end of its axis an oval that is
    /// fuller than an ellipse is flat.
    fn curvature(&self, turn: f64) -> f64 {
        if self.is_round() {
            return self.at(turn).curvature;
        }
        let [[from_x, from_y], [to_x, to_y]] = [-SHORT, SHORT].map(|step| self.at(turn + step).outward);
        let turned = (from_x * to_y - from_y * to_x).atan2(from_x * to_x + from_y * to_y);
        turned / (2.0 * SHORT * self.form.outline.girth())
    }

    /// Way along the level of a radius from the beginning.
    pub(crate) fn way_to(&self, turn: f64, radius: f64) -> f64 {
        if self.is_round() {
            return turn * TAU * radius;
        }
        let [x, y] = self.at(turn).outward;
        self.form.outline.girth() * turn + (radius - self.foot()) * y.atan2(x).rem_euclid(TAU)
    }

    /// How much further the half at the right reaches than the radius of its level.
    pub(crate) fn over(&self) -> f64 {
        let [length, width] = self.form.outline.across();
        let across = if self.from_end { width } else { length };
        if self.is_round() { 0.0 } else { across / 2.0 - self.foot() }
    }

    /// The level of a radius as a closed line.
    pub(crate) fn ring(&self, radius: f64, steps: u32) -> Vec<[f64; 2]> {
        (0..steps).map(|step| self.place(f64::from(step) / f64::from(steps), radius)).collect()
    }
}
