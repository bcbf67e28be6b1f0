//! A class as a problem, and what is asked about it.

use super::lesson::{Lesson, Source};
use super::schedule::{Group, Problem, Progress};
use super::written::{Class, Students};

/// What is being done while a class is planned.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Doing {
    /// Its plan is sought.
    Planning(Progress),
    /// It does not fit, or may not: changes are tried, so many so far.
    Trying(u32),
}

/// How many days a class would have to have.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct DaysNeeded {
    /// For the slowest student, if nobody else came.
    pub alone: Option<Days>,
    /// For all, if nobody had to wait for a mould.
    pub with_moulds: Option<Days>,
    /// For all, with what there is.
    pub for_all: Option<Days>,
}

/// A number of days with which there is a plan.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Days {
    /// How many.
    pub enough: u32,
    /// With fewer than these there is none; the same where that is proven.
    pub at_least: u32,
}

/// What is to be planned of a class, and the steps of each group.
pub(super) fn problem(class: &Class, source: &Source) -> (Problem, Vec<Vec<Lesson>>) {
    let lessons: Vec<Vec<Lesson>> =
        class.students.iter().map(|students| source.lessons(students, class)).collect();
    let sessions = class.sessions();
    let first = sessions.first().map_or(0, |session| session.from);
    let group = |(students, lessons): (&Students, &Vec<Lesson>)| Group {
        students: students.count,
        from: students.from.unwrap_or(first),
        on_mould: false,
        tasks: lessons.iter().map(|lesson| lesson.task).collect(),
    };
    let problem = Problem {
        groups: class.students.iter().zip(&lessons).map(group).collect(),
        sessions,
        home: class.hours_at_home(),
        moulds: class.moulds,
        drills: class.drills.unwrap_or(u32::MAX),
        tables: class.tables.as_ref().map_or(u32::MAX, |tables| tables.at_once),
        hands: class.teacher.as_ref().map_or(u32::MAX, |teacher| teacher.at_once),
    };
    (problem, lessons)
}
