//! A twill that leans one way for a band of rows and then the other.

use super::answers::{Answers, Cell, Moves};
use super::over_under;
use crate::pattern::{Rule, WeaveKind};
use crate::weave::diagonal::Diagonal;
use crate::weave::look::Eye;

/// Rows that each begin anew, one stave further each row, turning back after a band of them.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Reversed {
    /// Over how many, under how many.
    pub rule: Rule,
    /// Rows before it turns.
    pub band: u32,
}

impl Reversed {
    fn band(self) -> u32 {
        self.band.max(1)
    }

    /// How far into its rule a row begins.
    fn begun(self, row: u32) -> i64 {
        let band = self.band();
        let within = row % (2 * band);
        -i64::from(if within < band { within } else { 2 * band - within })
    }
}

impl Answers for Reversed {
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
        2 * self.band()
    }
    fn rise(&self) -> u32 {
        0
    }
    /// A band is walked back as it was walked up, and repeats with the rule.
    fn rows_that_differ(&self, _count: u32) -> u32 {
        self.band().min(self.rule.repeat() - 1) + 1
    }
    fn outward(&self) -> f64 {
        over_under::outward(self.rule)
    }
    fn kind(&self) -> WeaveKind {
        WeaveKind::ReversedTwill(self.rule)
    }
    fn moves(&self) -> Moves {
        Moves::EachRow(self.rule)
    }
    fn far_in_rule(&self, row: u32, _count: u32) -> i64 {
        self.begun(row)
    }
    fn work(&self) -> f64 {
        over_under::work(self.rule) + 6.5
    }
    fn closes(&self, count: u32) -> bool {
        count.is_multiple_of(self.rule.repeat())
    }
    fn diagonal(&self, _count: u32, _eye: Eye) -> Diagonal {
        Diagonal::Turns
    }
}
