//! The sessions of a class as a calendar file.

use basket::message::Value;
use planning::class::Answer;
use planning::class::ics::{Calendar, Event};
use planning::class::schedule::Minute;
use words::Words;

use super::written::ClassPlan;
use crate::scribe::name;

/// A calendar file (iCalendar, RFC 5545) with an event for each session, which says who does what in it.
/// `written` is the moment at which it is made, in minutes since 1970 began in Greenwich.
pub fn calendar(answer: &Answer, plan: &ClassPlan, words: &Words, written: Minute) -> String {
    let class = &answer.class;
    let count = plan.sessions.len();
    let events =
        answer.problem.sessions.iter().zip(&plan.sessions).zip(1_u32..).map(|((time, session), number)| {
            let args = [
                ("title", name(class.title.clone())),
                ("number", Value::Count(number.into())),
                ("count", Value::Count(i64::try_from(count).unwrap_or(i64::MAX))),
            ];
            let lines = session.work.iter().map(|work| format!("{}: {}", work.student, work.does.join("; ")));
            Event {
                time: *time,
                summary: words.with("class-session-of", &args),
                description: lines.collect::<Vec<_>>().join("\n"),
            }
        });
    let events: Vec<Event> = events.collect();
    Calendar { name: &class.title, zone: &class.zone, written }.file(&events)
}
