//! Will it run? What a course does on a count of staves, and which counts near by suit it.

use serde::Serialize;

use crate::pattern::{CoursePattern, Lean, WeaveKind};
use crate::weave::fabric::{Fabric, Follow, Passing, chase_is_even, chase_step};
use crate::weave::mends::Mend;

/// How many staves a weaver may pass without changing sides before it is loose enough to catch
/// (common practice), where the pattern does not say.
pub const FLOAT_STAVES: u32 = 4;
/// How many rows a stave may lie bare or hidden (common practice), where the pattern does not say.
pub const FLOAT_ROWS: u32 = 4;
/// How far from the count others are looked for.
const NEAR: u32 = 24;
/// How many counts are named on each side.
const NAMED: usize = 2;

/// What a course does on a count of staves.
#[derive(Clone, Debug, PartialEq, Eq, Serialize)]
pub struct Verdict {
    /// Whether each stave is crossed on both sides as rows go by.
    pub holds: bool,
    /// Whether each row meets the next (or itself) without a fault in the weave.
    pub closes: bool,
    /// What the diagonal does from row to row.
    pub diagonal: Diagonal,
    /// Most staves that a weaver passes without changing sides.
    pub float_staves: u32,
    /// Most rows that a stave lies on one side.
    pub float_rows: u32,
    /// The nearest counts on which the course runs as wanted, nearest first; at most two fewer and two
    /// more.
    pub counts: Vec<u32>,
    /// What would make it run as wanted on this count; empty where it does.
    pub mends: Vec<Mend>,
}

/// What the diagonal of a weave does from row to row.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Diagonal {
    /// Each row lies as the one below: nothing crosses.
    Stacks,
    /// Each row lies opposite to the one below: no diagonal.
    Alternates,
    /// It climbs by so many staves a row toward higher stave numbers, which is to the left on a basket
    /// that stands on its base; toward lower ones where the number is negative.
    Climbs(i32),
    /// It turns back after each band of rows.
    Turns,
    /// The weavers that chase each other do not step alike.
    Uneven,
    /// There is none to speak of.
    None,
}

impl Diagonal {
    /// From the staves by which each row is set off from the one below.
    fn of(on: i64, repeat: u32) -> Self {
        let repeat = i64::from(repeat.max(1));
        let step = on.rem_euclid(repeat);
        if step == 0 {
            Self::Stacks
        } else if 2 * step == repeat {
            Self::Alternates
        } else if 2 * step < repeat {
            Self::Climbs(step as i32)
        } else {
            Self::Climbs((step - repeat) as i32)
        }
    }

    /// The side to which it climbs, seen from outside on a basket that stands on its base.
    pub const fn lean(self) -> Option<Lean> {
        match self {
            Self::Climbs(step) if step < 0 => Some(Lean::Right),
            Self::Climbs(_) => Some(Lean::Left),
            _ => None,
        }
    }
}

impl Fabric {
    /// What the diagonal does from row to row.
    pub fn diagonal(&self) -> Diagonal {
        let count = i64::from(self.count);
        match &self.passing {
            Passing::Repeat { rule, follow } => match *follow {
                Follow::Spiral => Diagonal::of(-count, rule.repeat()),
                Follow::Chase(weavers) if !chase_is_even(self.count, weavers, *rule) => Diagonal::Uneven,
                Follow::Chase(weavers) => {
                    Diagonal::of(-i64::from(chase_step(self.count, weavers, *rule)), rule.repeat())
                }
                Follow::RowByRow(step) => Diagonal::of(i64::from(step), rule.repeat()),
                Follow::Reversed(_) => Diagonal::Turns,
            },
            Passing::SkipOne if self.count.is_multiple_of(2) => Diagonal::Climbs(1),
            Passing::SkipOne => Diagonal::Alternates,
            Passing::Twined { .. } | Passing::Drawn(_) => Diagonal::None,
        }
    }

    /// Whether each row meets the next, or itself where it begins anew, without a fault in the weave.
    pub fn closes(&self) -> bool {
        match &self.passing {
            Passing::Repeat { rule, follow: Follow::RowByRow(_) | Follow::Reversed(_) } => {
                self.count.is_multiple_of(rule.repeat())
            }
            Passing::Repeat { rule, follow: Follow::Chase(weavers) } => {
                chase_is_even(self.count, *weavers, *rule)
            }
            Passing::Drawn(_) => self.count.is_multiple_of(self.repeat().max(1)),
            _ => true,
        }
    }

    /// Most staves that a weaver passes without changing sides within so many rows.
    pub fn float_staves(&self, rows: u32) -> u32 {
        match self.passing {
            Passing::Twined { weavers, .. } => return weavers.saturating_sub(1).max(1),
            Passing::SkipOne => return self.skipped().min(rows),
            _ => {}
        }
        let rows = rows.min(self.rows_to_repeat());
        if self.begins_anew() {
            let ring = |row| longest(self.sides(row).chain(self.sides(row)));
            return (0..rows).map(ring).max().unwrap_or(0).min(self.count);
        }
        match &self.passing {
            Passing::Repeat { follow: Follow::Chase(weavers), .. } => {
                let weavers = (*weavers).max(1);
                let own = |weaver| {
                    longest((weaver..rows).step_by(weavers as usize).flat_map(|row| self.sides(row)))
                };
                (0..weavers).map(own).max().unwrap_or(0)
            }
            _ => longest((0..rows).flat_map(|row| self.sides(row))),
        }
    }

    /// The longest float where one stave is skipped a round, or none because the count is odd.
    const fn skipped(&self) -> u32 {
        if self.count.is_multiple_of(2) { 2 } else { 1 }
    }

    /// Most rows of so many that a stave lies on one side.
    pub fn float_rows(&self, rows: u32) -> u32 {
        match self.passing {
            Passing::Twined { .. } => return 1,
            Passing::SkipOne => return self.skipped().min(rows),
            _ => {}
        }
        let seen = rows.min(self.rows_to_repeat().saturating_mul(2));
        let column = |place| longest((0..seen).map(|row| self.is_over(row, self.stave_in(0, place))));
        let float = (0..self.count.min(self.repeat())).map(column).max().unwrap_or(0);
        // A stave that never changes sides lies so for all rows.
        if float == seen { rows } else { float }
    }
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

impl CoursePattern {
    /// Whether the course runs on a count as wanted: it holds, its rows meet, a twill has a diagonal
    /// that leans as asked, and where one is to be skipped one is.
    pub fn runs_on(&self, count: u32) -> bool {
        let fabric = self.fabric(count);
        let skips = self.weave != WeaveKind::SkipOne || count.is_multiple_of(2);
        fabric.holds() && fabric.closes() && skips && self.leans_as_wanted(&fabric)
    }

    fn leans_as_wanted(&self, fabric: &Fabric) -> bool {
        let (WeaveKind::Twill(rule) | WeaveKind::Slew(rule)) = self.weave else { return true };
        if rule.repeat() == 2 {
            return true;
        }
        let lean = fabric.diagonal().lean();
        lean.is_some() && (self.lean.is_none() || self.lean == lean)
    }

    /// What the course does on a count, over so many rows.
    pub fn verdict(&self, count: u32, rows: u32) -> Verdict {
        let fabric = self.fabric(count);
        Verdict {
            holds: fabric.holds(),
            closes: fabric.closes(),
            diagonal: fabric.diagonal(),
            float_staves: fabric.float_staves(rows),
            float_rows: fabric.float_rows(rows),
            counts: self.counts_near(count),
            mends: self.mends(count),
        }
    }

    /// The nearest counts other than this on which the course runs, nearest first.
    pub fn counts_near(&self, count: u32) -> Vec<u32> {
        let runs = |other: &u32| *other >= 3 && self.runs_on(*other);
        let fewer = (count.saturating_sub(NEAR)..count).rev().filter(runs).take(NAMED);
        let more = (count + 1..=count.saturating_add(NEAR)).filter(runs).take(NAMED);
        let mut counts: Vec<u32> = fewer.chain(more).collect();
        counts.sort_by_key(|other| other.abs_diff(count));
        counts
    }
}
