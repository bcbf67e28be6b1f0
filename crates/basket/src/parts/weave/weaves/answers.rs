//! What every weave answers.

use std::ops::Range;

use crate::measure::Length;
use crate::pattern::{Direction, Rule, WeaveKind};
use crate::stock::Material;
use crate::weave::diagonal::Diagonal;
use crate::weave::look::Eye;

/// What is seen at the crossing of a row and a stave. Where no weaver is seen, the stave is.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Cell {
    /// Index of the weaver seen from outside.
    pub outside: Option<u32>,
    /// Index of the weaver seen from inside.
    pub inside: Option<u32>,
}

impl Cell {
    /// One weaver, on one side or the other.
    pub(super) const fn of_one(weaver: u32, over: bool) -> Self {
        if over {
            Self { outside: Some(weaver), inside: None }
        } else {
            Self { outside: None, inside: Some(weaver) }
        }
    }
}

/// How its weavers go round, as whoever weaves them is told.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Moves {
    /// Each weaver follows the rule and runs on from its row to its next.
    RunsOn(Rule),
    /// Each row follows the rule and begins anew.
    EachRow(Rule),
    /// The weavers are twisted: each passes in front of so many staves and behind one.
    Twined {
        /// Staves that a weaver passes in front of.
        over: u32,
    },
    /// Over one, under one, with a stave passed like the one before it.
    Skips,
    /// As drawn.
    Drawn,
}

/// The questions that a weave answers.
///
/// Rows count from 0 at the bottom of the weave, places from 0 at the stave at which it begins; `count` is
/// how many staves make a round, at least one.
pub(crate) trait Answers {
    /// What is seen at a row and a place.
    fn cell(&self, row: u32, place: u32, count: u32) -> Cell;
    /// How far into its rule a row is at the first place, where the weave follows one.
    fn far_in_rule(&self, _row: u32, _count: u32) -> i64 {
        0
    }
    /// Counts that differ by so many staves are woven alike.
    fn period(&self) -> u32;
    /// Rows after which the weave repeats upward.
    fn rows(&self, count: u32) -> u32;
    /// By how much more of its way a weaver spends outside than inside, as a share: −1 to 1.
    fn outward(&self) -> f64;
    /// The weave as a pattern names it.
    fn kind(&self) -> WeaveKind;
    /// How its weavers go round.
    fn moves(&self) -> Moves;
    /// What it asks of whoever weaves, weighed in staves more or less than wanted: a weaver more at a time,
    /// rows each begun and ended by themselves, a step up in every round, a rule to keep count of.
    fn work(&self) -> f64;

    /// The keys beside its name by which a pattern asks for it, with TOML values.
    fn keys(&self, _direction: Direction) -> Vec<(&'static str, String)> {
        Vec::new()
    }
    /// Places after which a row repeats.
    fn repeat(&self, _count: u32) -> u32 {
        self.period()
    }
    /// How many weavers are at work at a time; weavers laid side by side count as one.
    fn weavers(&self) -> u32 {
        1
    }
    /// How many weavers are twisted round each other; one where none are.
    fn twined(&self) -> u32 {
        1
    }
    /// By how many rows a weaver rises in a round; none where each row begins anew.
    fn rise(&self) -> u32 {
        1
    }
    /// How far above its own width a weaver rises on its way over the others, and as far down again.
    fn climb(&self, _weaver: &Material) -> Length {
        Length::ZERO
    }
    /// Rows before the first that was there already.
    fn rows_that_differ(&self, count: u32) -> u32 {
        self.rows(count)
    }
    /// Whether each row meets the next, or itself where it begins anew, without a fault in the weave.
    fn closes(&self, _count: u32) -> bool {
        true
    }
    /// Whether it can do what its name says.
    fn suits(&self, _count: u32) -> bool {
        true
    }
    /// What its lines do from row to row.
    fn diagonal(&self, _count: u32, _eye: Eye) -> Diagonal {
        Diagonal::None
    }

    /// Whether a weaver is seen outside at a row and a place.
    fn is_over(&self, row: u32, place: u32, count: u32) -> bool {
        self.cell(row, place, count).outside.is_some()
    }
    /// Whether the stave at a place is crossed on both sides as rows go by.
    fn is_crossed(&self, place: u32, count: u32) -> bool {
        let rows = self.rows_that_differ(count);
        let over = (0..rows).filter(|&row| self.is_over(row, place, count)).count() as u32;
        0 < over && over < rows
    }
    /// Whether every stave is, however many rows there are.
    fn holds(&self, count: u32) -> bool {
        is_crossed_everywhere(self, count)
    }
    /// Whether a weaver is seen outside at each stave of a row that begins at a place.
    fn sides(&self, row: u32, begin: u32, count: u32) -> Vec<bool> {
        (begin..count).chain(0..begin.min(count)).map(|place| self.is_over(row, place, count)).collect()
    }
    /// How often one weaver changes sides in a row that begins at a place, the step to its own next row
    /// included.
    fn changes(&self, row: u32, begin: u32, count: u32) -> u32 {
        let next = self.is_over(row.saturating_add(self.rise()), begin, count);
        let sides = self.sides(row, begin, count);
        let changed = sides.windows(2).filter(|pair| pair.first() != pair.last()).count() as u32;
        changed + u32::from(sides.last() != Some(&next))
    }
    /// Most staves that a weaver passes without changing sides within some rows.
    fn float_staves(&self, rows: Range<u32>, count: u32) -> u32 {
        let rows = rows.start..rows.end.min(rows.start.saturating_add(self.rows(count)));
        let round = |row: u32| self.sides(row, 0, count);
        let rise = self.rise();
        if rise == 0 {
            let ring = |row| longest(round(row).into_iter().chain(round(row)));
            return rows.map(ring).max().unwrap_or(0).min(count);
        }
        let own = |first: u32| longest((first..rows.end).step_by(rise as usize).flat_map(round));
        (rows.start..rows.end).take(rise as usize).map(own).max().unwrap_or(0)
    }
    /// Most rows of some that a stave lies on one side.
    fn float_rows(&self, rows: Range<u32>, count: u32) -> u32 {
        let all = rows.end.saturating_sub(rows.start);
        let seen = all.min(self.rows(count).saturating_mul(2));
        let column =
            |place| longest((0..seen).map(|row| self.is_over(rows.start.saturating_add(row), place, count)));
        let float = (0..count.min(self.repeat(count))).map(column).max().unwrap_or(0);
        // A stave that never changes sides lies so for all rows.
        if float == seen { all } else { float }
    }
}

/// Whether each stave is crossed on both sides, seen stave by stave.
pub(super) fn is_crossed_everywhere<A: Answers + ?Sized>(weave: &A, count: u32) -> bool {
    (0..count.min(weave.repeat(count))).all(|place| weave.is_crossed(place, count))
}

/// The longest run of one side.
fn longest(sides: impl Iterator<Item = bool>) -> u32 {
    let (mut longest, mut run, mut before) = (0, 0, None);
    for side in sides {
        run = if before == Some(side) { run + 1 } else { 1 };
        longest = longest.max(run);
        before = Some(side);
    }
    longest
}
