//! A level of the wall: how far it reaches, and two places on it that face each other.

use std::f64::consts::{PI, TAU};

use super::{Form, Outline as _, OutlinePoint};
use crate::measure::{Angle, Length};
use crate::pattern::EarAxis;

/// How near to its axis a place has to lie to be its end, in mm.
const NEAR: f64 = 1e-6;
/// How far, in turns, an axis meets the outline at most from where it would meet a circle.
const ASIDE: f64 = 0.24;
/// Halvings by which the end of an axis is found: to a billionth of the round.
const HALVINGS: u32 = 32;

/// A curve round the wall, at an even distance from its foot.
#[derive(Clone, Copy, Debug)]
pub struct Level<'a> {
    /// The wall.
    pub form: &'a Form,
    /// Its girth over 2π.
    pub radius: Length,
}

/// The straight way between two places of a level that face each other, or nearly.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Chord {
    /// Half its length.
    pub half: Length,
    /// How far it misses the middle of the wall.
    pub off_middle: Length,
    /// How far the second place is off from facing the first, seen from the middle.
    pub off_opposite: Angle,
}

impl Level<'_> {
    /// Half of how far it reaches along an axis.
    pub fn reach(&self, axis: Option<EarAxis>) -> Length {
        if self.form.outline.is_round() {
            return self.radius;
        }
        let across = self.form.across_of_girth(self.radius * TAU);
        (if axis == Some(EarAxis::Short) { across.width } else { across.length }) / 2.0
    }

    /// Where an axis meets it, as shares of the way round; the long one of a round wall where it begins.
    pub fn ends(&self, axis: Option<EarAxis>) -> [f64; 2] {
        let [x, y] = self.form.outline.across();
        let level = (axis == Some(EarAxis::Short)) == (x < y);
        let quarters = if self.form.outline.is_round() || level { [0.0, 0.5] } else { [0.25, 0.75] };
        quarters.map(|turn| self.meets(turn))
    }

    /// Where the ray in this direction from the middle, given in turns, meets the outline.
    fn meets(&self, turn: f64) -> f64 {
        let (sin, cos) = libm::sincos(turn * TAU);
        let beside = |turn: f64| {
            let [x, y] = self.form.outline.at(turn).point;
            cos * y - sin * x
        };
        if beside(turn).abs() < NEAR {
            return turn;
        }
        let (mut from, mut to) = (turn - ASIDE, turn + ASIDE);
        for _ in 0..HALVINGS {
            let middle = f64::midpoint(from, to);
            if beside(middle) < 0.0 { from = middle } else { to = middle }
        }
        f64::midpoint(from, to).rem_euclid(1.0)
    }

    /// A place on it, in mm from the middle.
    pub fn place(&self, turn: f64) -> [f64; 2] {
        let OutlinePoint { point: [x, y], outward: [out_x, out_y], .. } = self.form.outline.at(turn);
        let out = self.radius.to_mm() - self.form.outline.girth() / TAU;
        [x + out_x * out, y + out_y * out]
    }

    /// The chord between two places that are, along it, so far from facing each other: an angle of a circle
    /// of its girth.
    pub fn chord(&self, turns: [f64; 2], off: Angle) -> Chord {
        if self.form.outline.is_round() {
            let half = off.to_radians() / 2.0;
            return Chord {
                half: self.radius * libm::cos(half),
                off_middle: self.radius * libm::sin(half),
                off_opposite: off,
            };
        }
        let [first, second] = turns.map(|turn| self.place(turn));
        let length = libm::hypot(first[0] - second[0], first[1] - second[1]);
        let cross = first[0] * second[1] - first[1] * second[0];
        let dot = first[0] * second[0] + first[1] * second[1];
        Chord {
            half: Length::mm(length / 2.0),
            off_middle: Length::mm(cross.abs() / length.max(NEAR)),
            off_opposite: Angle::radians((PI - libm::atan2(cross, dot).abs()).max(0.0)),
        }
    }
}
