//! A level of the wall as chains ask it.

use super::chain::{Bow, Vector};
use crate::form::{Form, Level};
use crate::measure::Length;

/// A level of the wall at a height, in mm.
pub(super) struct Rung<'a> {
    level: Level<'a>,
    height: f64,
}

impl<'a> Rung<'a> {
    /// The level this far along, on a surface `outward` from the form.
    pub(super) fn at(form: &'a Form, along: Length, outward: Length) -> Self {
        let height = form.profile.at(along).height.to_mm();
        Self { level: form.level_at(along).grown(outward), height }
    }

    /// The level itself.
    pub(super) const fn level(&self) -> &Level<'a> {
        &self.level
    }

    /// A place on it.
    pub(super) fn place(&self, turn: f64) -> Vector {
        let [x, y] = self.level.place(turn);
        Vector([x, y, self.height])
    }

    /// The direction round it at a place, toward higher numbers.
    pub(super) fn beside(&self, turn: f64) -> Vector {
        let [x, y] = self.level.at(turn).outward;
        Vector([-y, x, 0.0])
    }

    /// The piece of it about a place, so far to either side.
    pub(super) fn bow(&self, turn: f64, reach: f64) -> Bow {
        Bow::through(turn, reach, [-reach, 0.0, reach].map(|aside| self.place(turn + aside)))
    }
}
