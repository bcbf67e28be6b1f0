//! Will it run? What a course does on a count of staves, and which counts near by suit it.

use serde::Serialize;

use crate::pattern::{CoursePattern, Way};
use crate::weave::diagonal::Diagonal;
use crate::weave::fabric::Fabric;
use crate::weave::look::Eye;
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

/// How the courses of a list do on a count.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Running {
    /// How many there are.
    pub courses: u32,
    /// How many run as wanted.
    pub run: u32,
    /// How many hold; one that does not is no weaving.
    pub hold: u32,
}

impl Running {
    /// Asks each course of a list.
    pub fn of(courses: &[CoursePattern], count: u32) -> Self {
        let how_many = |does: &dyn Fn(&CoursePattern) -> bool| {
            courses.iter().filter(|course| does(course)).count() as u32
        };
        Self {
            courses: courses.len() as u32,
            run: how_many(&|course| course.runs_on(count)),
            hold: how_many(&|course| course.fabric(count).holds()),
        }
    }

    /// Whether all run as wanted.
    pub const fn all(self) -> bool {
        self.run == self.courses
    }

    /// Whether one does not hold, so that the basket cannot be woven.
    pub const fn stops(self) -> bool {
        self.hold < self.courses
    }
}

impl CoursePattern {
    /// Whether the course runs on a count as wanted: it holds, its rows meet, it can do what its name says
    /// and a twill has a diagonal that leans as asked.
    pub fn runs_on(&self, count: u32) -> bool {
        let fabric = self.fabric(count);
        let leans = || !self.weave.has_diagonal() || self.leans_as_asked(fabric.diagonal(Eye::USUAL));
        fabric.holds() && fabric.closes() && fabric.suits() && leans()
    }

    /// Whether there is a diagonal that leans as the pattern asks.
    pub(super) fn leans_as_asked(&self, diagonal: Diagonal) -> bool {
        diagonal.lean().is_some_and(|lean| self.lean.is_none_or(|asked| asked == lean))
    }

    /// What the course does on the staves of a fabric, looked at over its rows.
    pub(super) fn verdict(&self, fabric: &Fabric, eye: Eye) -> Verdict {
        Verdict {
            holds: fabric.holds(),
            closes: fabric.closes(),
            diagonal: fabric.diagonal(eye),
            float_staves: fabric.float_staves(eye.rows),
            float_rows: fabric.float_rows(eye.rows),
            counts: self.counts_near(fabric.count),
            mends: self.mends(fabric.count),
        }
    }

    /// The nearest counts on which the course runs with its diagonal leaning to the other side than on this,
    /// nearest first; none where it has no diagonal or the pattern decides and not the count.
    pub fn turned_near(&self, count: u32) -> Vec<u32> {
        let decides = self.weave.has_diagonal() && self.rows_follow() != Way::RowByRow;
        let now = self.fabric(count).diagonal(Eye::USUAL).lean().filter(|_| decides);
        now.map_or_else(Vec::new, |now| Self { lean: Some(now.other()), ..self.clone() }.counts_near(count))
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
