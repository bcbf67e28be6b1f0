//! The picture of a plan.

use basket::pattern::StepKind;
use drawings::{Bar, Drawing, Row, Session, timetable};
use planning::class::Answer;
use planning::class::schedule::{Turn, Window};
use words::Words;

use super::teller::{Teller, letter};

/// Students and sessions of one picture, so many of each at the most: a page holds no more that can be read.
const STUDENTS: usize = 20;
const SESSIONS: usize = 8;

/// Who does what when; several pictures where one page cannot hold it, none where there is no plan.
pub(super) fn pictures(answer: &Answer, words: &Words) -> Vec<Drawing> {
    let Some(found) = answer.found() else { return Vec::new() };
    let teller = Teller { class: &answer.class, words };
    let kinds = kinds(answer);
    let key: Vec<(String, String)> =
        kinds.iter().enumerate().map(|(index, kind)| (code(index), teller.step(*kind))).collect();
    let used = answer.problem.sessions.iter().filter(|session| session.from < found.plan.end);
    let sessions: Vec<Session> = sessions(&teller, used);
    let rows: Vec<Row> =
        found.plan.students.iter().enumerate().map(|of| row(&teller, (answer, &kinds), of)).collect();
    let parts =
        rows.chunks(STUDENTS).flat_map(|rows| sessions.chunks(SESSIONS).map(move |part| (rows, part)));
    let named = parts.enumerate().map(|(number, (rows, part))| {
        let mut drawing = timetable(part, rows, &key, words);
        drawing.name = format!("timetable-{}", number + 1);
        drawing
    });
    named.collect()
}

fn sessions<'s>(teller: &Teller, windows: impl Iterator<Item = &'s Window>) -> Vec<Session> {
    let mut sessions: Vec<Session> = Vec::new();
    let mut day = String::new();
    for window in windows {
        let (from, to) = (teller.moment(window.from), teller.moment(window.to));
        let new = sessions.len().is_multiple_of(SESSIONS) || from.day != day;
        day = from.day;
        let told = if new { day.clone() } else { String::new() };
        let times = [from.time, to.time];
        sessions.push(Session { from: window.from as f64, to: window.to as f64, day: told, times });
    }
    sessions
}

/// The steps of all groups, each once, in order.
fn kinds(answer: &Answer) -> Vec<StepKind> {
    let mut kinds: Vec<StepKind> = Vec::new();
    for lesson in answer.lessons.iter().flatten() {
        if !kinds.contains(&lesson.kind) {
            kinds.push(lesson.kind);
        }
    }
    kinds
}

fn code(index: usize) -> String {
    u8::try_from(index % 26).map_or_else(|_| String::new(), |index| char::from(b'a' + index).to_string())
}

fn row(teller: &Teller, (answer, kinds): (&Answer, &[StepKind]), (number, turn): (usize, &Turn)) -> Row {
    let bar = |window: Window, letter: String| Bar { from: window.from as f64, to: window.to as f64, letter };
    let work = answer.steps(turn).flat_map(|(lesson, placed)| {
        let index = kinds.iter().position(|kind| *kind == lesson.kind).unwrap_or(0);
        placed.work.iter().map(move |stretch| bar(*stretch, code(index)))
    });
    Row {
        name: teller.student(number),
        work: work.collect(),
        mould: turn.mould.map(|(mould, held)| bar(held, letter(mould))),
    }
}
