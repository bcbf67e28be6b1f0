//! Where the sessions of a class end, and what to do before everybody leaves.

use basket::limits::TABLE_ROWS;
use basket::message::Value;
use basket::teaching::{Part, Session, sessions};

use super::table::{Column, Table, Width};
use super::{Block, Source};
use crate::scribe::name;

/// Minutes of work in a session: a day of five hours, as classes are usually announced (common practice).
const SESSION: f64 = 5.0 * 60.0;

impl<'a> Source<'a> {
    pub(super) fn sessions(&self) -> Vec<Block<'a>> {
        let scribe = self.scribe;
        let columns = vec![
            Column::right(scribe.label("session"), Width::Mm(16.0)),
            Column::left(scribe.label("session-steps"), Width::Share(1.6)),
            Column::right(scribe.label("learner"), Width::Mm(24.0)),
            Column::left(scribe.label("before-leaving"), Width::Share(1.0)),
        ];
        let all = sessions(&self.draft.steps, SESSION);
        let row = |(session, number): (&Session, u32)| {
            vec![
                number.into(),
                session.parts.iter().map(|part| self.part_of(part)).collect::<Vec<_>>().join("; ").into(),
                scribe.minutes(session.minutes()).into(),
                self.before_leaving(session).into(),
            ]
        };
        let rows = all.iter().zip(1..).take(TABLE_ROWS).map(row);
        let note = scribe.text("sessions-note", &[("length", Value::Minutes(SESSION))]);
        vec![Block::Text { text: note }, Block::Table { table: Table::new(columns, rows).wide() }]
    }

    fn part_of(&self, part: &Part) -> String {
        let title = format!("{}. {}", part.step, self.scribe.words.step(part.of, part.kind));
        let id = match (part.goes_on, part.ends) {
            (false, true) => return title,
            (false, false) => "session-begin",
            (true, true) => "session-end",
            (true, false) => "session-on",
        };
        self.scribe.text(id, &[("step", name(title))])
    }

    fn before_leaving(&self, session: &Session) -> String {
        let band = session.needs_band.then(|| self.scribe.label("leave-banded"));
        let wait = session.wait_minutes;
        let dry = (wait > 0.0).then(|| self.scribe.text("leave-to-dry", &[("time", Value::Minutes(wait))]));
        band.into_iter().chain(dry).collect::<Vec<_>>().join(" ")
    }
}
