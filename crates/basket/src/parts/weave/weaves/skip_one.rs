//! Over one, under one on an even count, with one stave skipped in every round.

use std::ops::Range;

use super::answers::{Answers, Cell, Moves};
use crate::pattern::WeaveKind;
use crate::weave::diagonal::Diagonal;
use crate::weave::look::Eye;

/// One weaver in a spiral that passes two staves on one side once a round: it goes over one, under one on
/// one stave more than there are.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct SkipOne;

impl SkipOne {
    /// Staves, and rows, that lie on one side where one is skipped; on an odd count none is.
    const fn float(count: u32) -> u32 {
        if count.is_multiple_of(2) { 2 } else { 1 }
    }
}

impl Answers for SkipOne {
    fn cell(&self, row: u32, place: u32, count: u32) -> Cell {
        let travelled = u64::from(place) + u64::from(row) * u64::from(count);
        Cell::of_one(0, (travelled % (u64::from(count) + 1)).is_multiple_of(2))
    }
    fn period(&self) -> u32 {
        2
    }
    fn repeat(&self, count: u32) -> u32 {
        count
    }
    fn rows(&self, count: u32) -> u32 {
        count.saturating_add(1)
    }
    fn outward(&self) -> f64 {
        0.0
    }
    fn kind(&self) -> WeaveKind {
        WeaveKind::SkipOne
    }
    fn moves(&self) -> Moves {
        Moves::Skips
    }
    fn work(&self) -> f64 {
        0.5
    }
    fn suits(&self, count: u32) -> bool {
        count.is_multiple_of(2)
    }
    fn diagonal(&self, count: u32, _eye: Eye) -> Diagonal {
        if self.suits(count) { Diagonal::Skips } else { Diagonal::Alternates }
    }
    fn holds(&self, count: u32) -> bool {
        count > 1
    }
    fn float_staves(&self, rows: Range<u32>, count: u32) -> u32 {
        Self::float(count).min(rows.end.saturating_sub(rows.start))
    }
    fn float_rows(&self, rows: Range<u32>, count: u32) -> u32 {
        Self::float(count).min(rows.end.saturating_sub(rows.start))
    }
}
