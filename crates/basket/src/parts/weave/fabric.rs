//! A weave on a count of staves, cell by cell: which weaver is seen outside and which inside at every
//! crossing of a row and a stave. Everything else that is said of a weave is asked of it.

use std::ops::Range;

use super::diagonal::Diagonal;
use super::look::Eye;
use super::passing::Passing;
use super::weaves::{self, Cell, Moves};
use crate::measure::Length;
use crate::message::Message;
use crate::stock::Material;

/// A weave on a count of staves. Rows of a course are counted from 0 at its bottom, staves from 0.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Fabric {
    /// How weavers pass.
    pub passing: Passing,
    /// How many staves, at least one.
    pub count: u32,
    /// The stave at which the weave begins, be it in a course below.
    start: u32,
    /// Rows of the same weave below, from which this course goes on.
    below: u32,
    /// By how many staves beyond the start the first row of the course begins.
    first: u32,
    /// By how many staves each row that is woven by itself begins further round than the one below.
    spread: u32,
}

impl Fabric {
    /// A weave that begins at the first stave.
    pub fn new(passing: Passing, count: u32) -> Self {
        Self { passing, count: count.max(1), start: 0, below: 0, first: 0, spread: 0 }
    }

    /// The same from another stave.
    #[must_use]
    pub fn starting_at(self, stave: u32) -> Self {
        Self { start: stave % self.count, ..self }
    }

    /// The same where it goes on from so many rows of a course below.
    #[must_use]
    pub(super) fn over(self, below: &Self, rows: u32) -> Self {
        Self {
            start: below.start,
            below: below.below.saturating_add(rows),
            first: below.offset(rows),
            ..self
        }
    }

    /// The same with the beginnings of its rows spread round.
    #[must_use]
    pub(super) fn spread(self, spread: u32) -> Self {
        Self { spread, ..self }
    }

    /// The same with all its rows begun so many staves further round.
    #[must_use]
    pub(super) fn begun(self, further: u32) -> Self {
        Self { first: (self.first + further % self.count) % self.count, ..self }
    }

    /// What is seen at the crossing of a row and a stave.
    pub fn cell(&self, row: u32, stave: u32) -> Cell {
        self.passing.weave().cell(self.below.saturating_add(row), self.place(stave), self.count)
    }

    /// Whether a weaver is seen from outside.
    pub fn is_over(&self, row: u32, stave: u32) -> bool {
        self.cell(row, stave).outside.is_some()
    }

    /// Whether a weaver (from 0) that lies in a row passes outside a stave.
    pub fn is_outside(&self, row: u32, stave: u32, weaver: u32) -> bool {
        let cell = self.cell(row, stave);
        if self.twined() > 1 { cell.inside != Some(weaver) } else { cell.outside.is_some() }
    }

    /// Whether a weaver lies outside at each stave of a row, in the order in which it comes to them.
    fn sides(&self, row: u32) -> Vec<bool> {
        self.passing.weave().sides(self.below.saturating_add(row), self.offset(row), self.count)
    }

    /// The stave at a place of a row, counted from 0 where the row begins.
    pub fn stave_in(&self, row: u32, place: u32) -> u32 {
        (place % self.count + self.offset(row) + self.start) % self.count
    }

    /// The place of a stave in a row, counted from 0 where the row begins.
    pub fn place_in(&self, row: u32, stave: u32) -> u32 {
        (self.place(stave) + self.count - self.offset(row)) % self.count
    }

    /// How many staves a stave lies beyond where the weave begins.
    const fn place(&self, stave: u32) -> u32 {
        (stave % self.count + self.count - self.start) % self.count
    }

    /// By how many staves beyond where the weave begins a row begins.
    fn offset(&self, row: u32) -> u32 {
        let on = u64::from(self.first) + u64::from(row) * u64::from(self.spread);
        (on % u64::from(self.count)) as u32
    }

    /// So many first rows of the course as rows of the weave.
    fn rows(&self, rows: u32) -> Range<u32> {
        self.below..self.below.saturating_add(rows)
    }

    /// Places after which a row repeats.
    pub fn repeat(&self) -> u32 {
        self.passing.weave().repeat(self.count)
    }

    /// How many weavers are twisted round each other; one where none are.
    pub fn twined(&self) -> u32 {
        self.passing.weave().twined()
    }

    /// How many weavers are at work at a time; weavers laid side by side count as one.
    pub fn weavers(&self) -> u32 {
        self.passing.weave().weavers()
    }

    /// By how many rows a weaver rises in a round; none where each row begins anew.
    pub fn rise(&self) -> u32 {
        self.passing.weave().rise()
    }

    /// How far above its own width a weaver rises on its way over the others, and as far down again.
    pub(super) fn climb(&self, weaver: &Material) -> Length {
        self.passing.weave().climb(weaver)
    }

    /// Rows from one row of a weaver to its next: more than one where weavers take turns.
    pub fn every(&self) -> u32 {
        self.rise().max(1)
    }

    /// The first row of the course that a weaver (from 0) lays.
    pub(super) fn first_row_of(&self, weaver: u32) -> u32 {
        let every = self.every();
        (weaver % every + every - self.below % every) % every
    }

    /// How often one weaver changes sides in a row, the step to its own next row included.
    pub(super) fn changes(&self, row: u32) -> u32 {
        self.passing.weave().changes(self.below.saturating_add(row), self.offset(row), self.count)
    }

    /// By how much more of its way a weaver spends outside than inside, as a share: −1 to 1.
    pub(super) fn outward(&self) -> f64 {
        self.passing.weave().outward()
    }

    /// Whether each stave is crossed on both sides as rows go by, however many rows there are.
    pub fn holds(&self) -> bool {
        self.passing.weave().holds(self.count)
    }

    /// Whether each row meets the next, or itself where it begins anew, without a fault in the weave.
    pub fn closes(&self) -> bool {
        self.passing.weave().closes(self.count)
    }

    /// Whether it can do what its name says: one stave is skipped on an even count only.
    pub fn suits(&self) -> bool {
        self.passing.weave().suits(self.count)
    }

    /// What its lines do from row to row.
    pub fn diagonal(&self, eye: Eye) -> Diagonal {
        self.passing.weave().diagonal(self.count, eye)
    }

    /// Most staves that a weaver passes without changing sides within so many rows.
    pub fn float_staves(&self, rows: u32) -> u32 {
        self.passing.weave().float_staves(self.rows(rows), self.count)
    }

    /// Most rows of so many that a stave lies on one side.
    pub fn float_rows(&self, rows: u32) -> u32 {
        self.passing.weave().float_rows(self.rows(rows), self.count)
    }

    /// How its weavers go round.
    pub(super) fn moves(&self) -> Moves {
        self.passing.weave().moves()
    }

    /// By how many staves a row is set off from the one below it, further on above zero, by the shorter way round
    /// a rule that repeats after so many.
    pub(super) fn set_off(&self, row: u32, repeat: u32) -> i64 {
        let into = |row: u32| self.passing.weave().far_in_rule(self.below.saturating_add(row), self.count);
        let repeat = i64::from(repeat.max(1));
        let on = (into(row.saturating_sub(1)) - into(row)).rem_euclid(repeat);
        if 2 * on > repeat { on - repeat } else { on }
    }

    /// How the weaver passes the staves of a drawn row, to be said in words.
    pub(super) fn told(&self, row: u32) -> Message {
        weaves::told(self.stave_in(row, 0) + 1, &self.sides(row))
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::pattern::Rule;
    use crate::weave::weaves::{Chase, Level, Reversed, SkipOne, Spiral};

    /// A row told at once is the row told crossing by crossing, wherever it begins.
    #[test]
    fn sides_are_those_of_the_cells() {
        let rule = Rule::new(3, 2);
        let weaves = [
            Passing::Spiral(Spiral { rule }),
            Passing::Chase(Chase { rule, weavers: 3 }),
            Passing::Level(Level { rule, step: -2 }),
            Passing::Reversed(Reversed { rule, band: 4 }),
            Passing::SkipOne(SkipOne),
        ];
        for (passing, count) in weaves.into_iter().flat_map(|weave| [(weave.clone(), 3), (weave, 24)]) {
            let lower = Fabric::new(passing.clone(), count).starting_at(5);
            let fabric = Fabric::new(passing, count).over(&lower, 7).begun(11).spread(4);
            for row in 0..20 {
                let cells = (0..count).map(|place| fabric.is_over(row, fabric.stave_in(row, place)));
                assert_eq!(fabric.sides(row), cells.collect::<Vec<_>>(), "{fabric:?}, row {row}");
            }
        }
    }
}
