//! Moments, students and steps in words.

use basket::message::Value;
use basket::pattern::StepKind;
use planning::class::schedule::Minute;
use planning::class::written::Class;
use serde::Serialize;
use words::Words;

use crate::scribe::name;

/// A moment by the clock on the wall.
#[derive(Clone, Serialize)]
pub struct Moment {
    /// For programs: `2027-04-10T09:00`.
    pub at: String,
    /// Its day, to read.
    pub day: String,
    /// Its time, to read.
    pub time: String,
}

/// A stretch of work of one student.
#[derive(Serialize)]
pub struct StudentStep {
    /// When it begins.
    pub from: Moment,
    /// When it ends.
    pub to: Moment,
    /// The work.
    pub says: String,
    /// What comes after it, where something has to dry.
    pub then: String,
}

/// Tells of one class.
pub(super) struct Teller<'t> {
    pub(super) class: &'t Class,
    pub(super) words: &'t Words,
}

impl Teller<'_> {
    pub(super) fn moment(&self, moment: Minute) -> Moment {
        let (date, time) = self.class.local(moment);
        let two = |number: i8| name(format!("{number:02}"));
        let weekday = format!("class-weekday-{}", date.weekday().to_monday_one_offset());
        let args = [
            ("weekday", name(self.words.term(&weekday))),
            ("year", name(date.year().to_string())),
            ("month", two(date.month())),
            ("day", two(date.day())),
        ];
        Moment {
            at: format!("{date}T{:02}:{:02}", time.hour(), time.minute()),
            day: self.words.with("class-date", &args),
            time: format!("{:02}:{:02}", time.hour(), time.minute()),
        }
    }

    /// A message that tells of a moment.
    pub(super) fn at(&self, id: &str, moment: Minute) -> String {
        let moment = self.moment(moment);
        self.words.with(id, &[("day", name(moment.day)), ("time", name(moment.time))])
    }

    pub(super) fn student(&self, number: usize) -> String {
        self.words.with("class-student", &[("number", count(number + 1))])
    }

    pub(super) fn step(&self, kind: StepKind) -> String {
        self.words.name(kind)
    }
}

pub(super) fn count(number: usize) -> Value {
    Value::Count(i64::try_from(number).unwrap_or(i64::MAX))
}

/// A letter for each mould.
pub(super) fn letter(mould: u32) -> String {
    drawings::sample_letter(mould as usize)
}
