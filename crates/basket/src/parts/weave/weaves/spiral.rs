//! One weaver, or several laid as one, that runs on in a spiral.

use super::answers::{Answers, Cell, Moves};
use super::over_under;
use crate::pattern::{Rule, WeaveKind};
use crate::weave::diagonal::Diagonal;
use crate::weave::look::Eye;

/// Over some, under some, again and again without end.
///
/// Stave `i` (from 0) in round `q` on `n` staves is crossed on the outside when
/// `(i + q·n) mod (over + under) < over` (derived for this project).
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Spiral {
    /// Over how many, under how many.
    pub rule: Rule,
}

impl Answers for Spiral {
    fn cell(&self, row: u32, place: u32, count: u32) -> Cell {
        over_under::cell(self.rule, i64::from(place) + begun(row, count), 0)
    }
    fn sides(&self, row: u32, begin: u32, count: u32) -> Vec<bool> {
        over_under::sides(self.rule, begun(row, count), begin, count)
    }
    fn period(&self) -> u32 {
        self.rule.repeat()
    }
    fn rows(&self, _count: u32) -> u32 {
        self.rule.repeat()
    }
    fn outward(&self) -> f64 {
        over_under::outward(self.rule)
    }
    fn kind(&self) -> WeaveKind {
        WeaveKind::of(self.rule)
    }
    fn moves(&self) -> Moves {
        Moves::RunsOn(self.rule)
    }
    fn far_in_rule(&self, row: u32, count: u32) -> i64 {
        begun(row, count)
    }
    fn work(&self) -> f64 {
        over_under::work(self.rule)
    }
    fn diagonal(&self, count: u32, eye: Eye) -> Diagonal {
        Diagonal::of(self.rule, -i64::from(count), eye)
    }
    fn holds(&self, count: u32) -> bool {
        over_under::locks(self.rule, count)
    }
}

/// How many staves have been passed when a row begins.
fn begun(row: u32, count: u32) -> i64 {
    i64::from(row) * i64::from(count)
}
