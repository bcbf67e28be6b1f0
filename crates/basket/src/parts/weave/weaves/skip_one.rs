//! Over one, under one on an even count, with one stave skipped in every round.

use std::ops::Range;

use super::answers::{Answers, Cell, Moves, Told};
use crate::message::Message;
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
    fn told(&self, row: &Told) -> Message {
        // The last stave of the row below comes before the first.
        let before = row.row.checked_sub(1).map(|below| self.is_over(below, row.count - 1, row.count));
        let sides = || row.sides.iter().copied();
        let pairs = before.into_iter().chain(sides()).zip(sides().skip(usize::from(before.is_none())));
        let first = u32::from(before.is_none());
        let skipped = (first..).zip(pairs).find(|(_, (last, this))| last == this);
        match skipped {
            Some((place, _)) => {
                Message::new("weave-row-skip").with("stave", (row.begin - 1 + place) % row.count + 1)
            }
            None => Message::new("weave-row-skip-none").with("stave", row.begin),
        }
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
