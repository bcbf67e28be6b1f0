//! Rows that each begin anew, set off from the row below.

use super::answers::{Answers, Cell, Moves};
use super::over_under;
use crate::pattern::{Direction, Lean, Rule, WeaveKind, Word};
use crate::weave::diagonal::Diagonal;
use crate::weave::look::Eye;

/// Over some, under some in rings that lie level: each row its own piece, or ended with a step up.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Level {
    /// Over how many, under how many.
    pub rule: Rule,
    /// By how many staves each row is set off from the one below, toward higher numbers.
    pub step: i32,
}

impl Level {
    /// How far into its rule a row begins.
    fn begun(self, row: u32) -> i64 {
        -i64::from(row) * i64::from(self.step)
    }
}

impl Answers for Level {
    fn cell(&self, row: u32, place: u32, _count: u32) -> Cell {
        over_under::cell(self.rule, i64::from(place) + self.begun(row), 0)
    }
    fn sides(&self, row: u32, begin: u32, count: u32) -> Vec<bool> {
        over_under::sides(self.rule, self.begun(row), begin, count)
    }
    fn period(&self) -> u32 {
        self.rule.repeat()
    }
    fn rows(&self, _count: u32) -> u32 {
        self.rule.repeat()
    }
    fn rise(&self) -> u32 {
        0
    }
    fn outward(&self) -> f64 {
        over_under::outward(self.rule)
    }
    fn kind(&self) -> WeaveKind {
        WeaveKind::of(self.rule)
    }
    fn keys(&self, direction: Direction) -> Vec<(&'static str, String)> {
        let lean = direction.seen(if self.step > 0 { Lean::Left } else { Lean::Right });
        let mut keys = vec![("way", "\"row by row\"".to_owned()), ("lean", format!("\"{}\"", lean.word()))];
        if self.step.unsigned_abs() > 1 {
            keys.push(("step", self.step.unsigned_abs().to_string()));
        }
        keys
    }
    fn moves(&self) -> Moves {
        Moves::EachRow(self.rule)
    }
    fn far_in_rule(&self, row: u32, _count: u32) -> i64 {
        self.begun(row)
    }
    fn work(&self) -> f64 {
        over_under::work(self.rule) + 5.5 + 0.5 * f64::from(self.step.unsigned_abs())
    }
    fn closes(&self, count: u32) -> bool {
        count.is_multiple_of(self.rule.repeat())
    }
    fn diagonal(&self, _count: u32, eye: Eye) -> Diagonal {
        Diagonal::of(self.rule, i64::from(self.step), eye)
    }
}
