//! The class as a maker writes it.

pub(super) mod clock;
mod days;
mod fault;
mod file;
mod raw;

use basket::pattern::{Ready, StepKind};
use basket::steps::Stage;
use jiff::civil::{Date, Time};
use jiff::tz::TimeZone;

use super::schedule::{Minute, Window};
pub use clock::Hours;
pub use fault::Fault;
pub use file::read;

/// A class. Its moments are minutes since 1970 began in Greenwich, so that waits are real hours whatever the
/// clocks do.
#[derive(Clone, Debug, PartialEq)]
pub struct Class {
    /// What it is called.
    pub title: String,
    /// The file of its pattern, as written.
    pub pattern: String,
    /// Where it is held.
    pub zone: TimeZone,
    /// Who comes.
    pub students: Vec<Students>,
    /// Its days, in order.
    pub days: Vec<Day>,
    /// How many moulds there are.
    pub moulds: u32,
    /// How many drills there are; none for enough.
    pub drills: Option<u32>,
    /// What the teacher has to stand by; none for nothing.
    pub teacher: Option<AtOnce>,
    /// What is done at tables that not all have room at; none for enough of them.
    pub tables: Option<AtOnce>,
    /// What may be done at home; none for nothing.
    pub home: Option<Home>,
    /// The samples that the teacher makes beforehand; none for none.
    pub samples: Option<Samples>,
}

/// Students who are alike.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Students {
    /// How many.
    pub count: u32,
    /// Whether they are learners or practised.
    pub learners: bool,
    /// When they come; none for the first session.
    pub from: Option<Minute>,
    /// What lies ready for them, besides what the pattern says.
    pub ready: Vec<Ready>,
}

/// A day of the class.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Day {
    /// Its date.
    pub date: Date,
    /// Its sessions, in order, by the clock on the wall.
    pub hours: Vec<Hours>,
}

/// Steps that only so many students can be at together.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct AtOnce {
    /// How many students at once.
    pub at_once: u32,
    /// Which steps.
    pub steps: Vec<StepKind>,
}

/// Steps that may be done at home, and when.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Home {
    /// Which steps.
    pub steps: Vec<StepKind>,
    /// The hours of each day from the first of the class to its last.
    pub hours: Hours,
}

/// Samples, each stopped at a stage.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Samples {
    /// The stages, one sample each.
    pub stages: Vec<Stage>,
    /// The teacher's hours on each day before the class and during it.
    pub hours: Hours,
    /// How many moulds there are for them, beside the students'; none for as many as are wanted.
    pub moulds: Option<u32>,
}

impl Class {
    /// How many students there are.
    pub fn count(&self) -> u32 {
        self.students.iter().map(|students| students.count).sum()
    }

    /// The sessions of all days.
    pub fn sessions(&self) -> Vec<Window> {
        let of_day = |day: &Day| -> Vec<Window> {
            day.hours.iter().filter_map(|hours| hours.on(day.date, &self.zone)).collect()
        };
        self.days.iter().flat_map(of_day).collect()
    }

    /// The hours at home that no session takes.
    pub fn hours_at_home(&self) -> Vec<Window> {
        let (Some(home), Some(first), Some(last)) = (&self.home, self.days.first(), self.days.last()) else {
            return Vec::new();
        };
        self.outside_sessions(&home.hours, (first.date, last.date))
    }

    /// These hours of so many days before the class and of the days of the class, up to a moment and without its
    /// sessions.
    pub fn hours_before(&self, hours: &Hours, (days, until): (i64, Minute)) -> Vec<Window> {
        let (Some(first), Some(last)) = (self.days.first(), self.days.last()) else { return Vec::new() };
        let from = first.date.checked_sub(jiff::Span::new().days(days)).unwrap_or(first.date);
        let hours = self.outside_sessions(hours, (from, last.date)).into_iter();
        let hours = hours.map(|window| Window { to: window.to.min(until), ..window });
        hours.filter(|window| window.from < window.to).collect()
    }

    /// These hours of each day, without the sessions.
    fn outside_sessions(&self, hours: &Hours, (first, last): (Date, Date)) -> Vec<Window> {
        let days = first.series(jiff::Span::new().days(1)).take_while(|date| *date <= last);
        let mut hours: Vec<Window> = days.filter_map(|date| hours.on(date, &self.zone)).collect();
        for session in self.sessions() {
            hours = hours.into_iter().flat_map(|window| less(window, session)).collect();
        }
        hours
    }

    /// The same class, gone on with for some days more: as its last day, and as far apart as its last two.
    #[must_use]
    pub fn longer(&self, days: u32) -> Self {
        let mut class = self.clone();
        let Some(last) = self.days.last() else { return class };
        let before = self.days.len().checked_sub(2).and_then(|index| self.days.get(index));
        let apart = before.map_or(1, |before| i64::from((last.date - before.date).get_days()).max(1));
        for more in 1..=i64::from(days) {
            if let Ok(date) = last.date.checked_add(jiff::Span::new().days(apart * more)) {
                class.days.push(Day { date, hours: last.hours.clone() });
            }
        }
        class
    }

    /// The day on which a moment lies, from 1; days of which it is past count.
    pub fn days_until(&self, moment: Minute) -> u32 {
        let begun = |day: &&Day| {
            let first = day.hours.first().and_then(|hours| hours.on(day.date, &self.zone));
            first.is_some_and(|window| window.from < moment)
        };
        u32::try_from(self.days.iter().filter(begun).count()).unwrap_or(u32::MAX)
    }

    /// Date and time by the clock on the wall.
    pub fn local(&self, moment: Minute) -> (Date, Time) {
        let local = clock::local(moment, &self.zone);
        (local.date(), local.time())
    }
}

/// What is left of a window beside another.
fn less(window: Window, taken: Window) -> impl Iterator<Item = Window> {
    let parts = [
        Window { from: window.from, to: window.to.min(taken.from) },
        Window { from: window.from.max(taken.to), to: window.to },
    ];
    parts.into_iter().filter(|part| part.from < part.to)
}
