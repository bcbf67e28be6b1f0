//! Who does what when in a class, session beside session.

use kurbo::Rect;
use words::Words;

use crate::drawing::{Drawing, Label, Line, Tone};

/// Width of the sessions together, in mm.
const WIDTH: f64 = 212.0;
/// Room for the names, in mm.
const NAMES: f64 = 24.0;
/// Distance between sessions, in mm.
const BETWEEN: f64 = 1.6;
/// Height of a row, of its band and of the bars in it, in mm.
const ROW: f64 = 6.4;
const BAND: f64 = 5.6;
const BAR: f64 = 3.6;
/// Narrower than this no letter stands in a bar, in mm.
const LETTER: f64 = 2.6;
/// Names of steps in a line of the key.
const IN_LINE: usize = 3;

/// A session.
#[derive(Clone, Debug, PartialEq)]
pub struct Session {
    /// Minutes from any beginning that all share.
    pub from: f64,
    /// Its end.
    pub to: f64,
    /// Its day, where it is the first of it; else empty.
    pub day: String,
    /// When it begins, by the clock.
    pub time: String,
}

/// A stretch of time of one student.
#[derive(Clone, Debug, PartialEq)]
pub struct Bar {
    /// Its beginning.
    pub from: f64,
    /// Its end.
    pub to: f64,
    /// Its letter.
    pub letter: String,
}

/// A student.
#[derive(Clone, Debug, PartialEq)]
pub struct Row {
    /// The name.
    pub name: String,
    /// The work, each by the letter of its step.
    pub work: Vec<Bar>,
    /// While a mould is held; its letter.
    pub mould: Option<Bar>,
}

/// A row for each student, sessions beside each other as wide as they are long; time between them is left out.
pub fn timetable(sessions: &[Session], rows: &[Row], key: &[(String, String)], words: &Words) -> Drawing {
    let count = |things: usize| u32::try_from(things).unwrap_or(u32::MAX).into();
    let args = [("students", count(rows.len())), ("sessions", count(sessions.len()))];
    let about = words.with("class-timetable-description", &args);
    let mut drawing = Drawing::new("timetable", words.term("class-timetable"), about);
    let minutes: f64 = sessions.iter().map(|session| session.to - session.from).sum();
    let gaps = BETWEEN * sessions.len().saturating_sub(1) as f64;
    let table = Table { sessions, scale: (WIDTH - gaps).max(1.0) / minutes.max(1.0) };
    table.heads(&mut drawing, rows.len());
    for (index, row) in rows.iter().enumerate() {
        table.row(&mut drawing, index, row);
    }
    key_below(&mut drawing, rows.len(), (key, words));
    drawing.fitted(1.0)
}

struct Table<'t> {
    sessions: &'t [Session],
    scale: f64,
}

impl Table<'_> {
    /// Each session with the place at which it begins.
    fn places(&self) -> impl Iterator<Item = (&Session, f64)> {
        let mut x = NAMES;
        self.sessions.iter().map(move |session| {
            let place = x;
            x += (session.to - session.from) * self.scale + BETWEEN;
            (session, place)
        })
    }

    /// What is seen of a stretch of time: a piece in each session.
    fn pieces(&self, from: f64, to: f64) -> impl Iterator<Item = (f64, f64)> {
        self.places().filter_map(move |(session, x)| {
            let (from, to) = (from.max(session.from), to.min(session.to));
            let at = |moment: f64| x + (moment - session.from) * self.scale;
            (from < to).then(|| (at(from), at(to)))
        })
    }

    fn heads(&self, drawing: &mut Drawing, rows: usize) {
        let foot = rows as f64 * ROW;
        // Where days are narrow, only every so many is named.
        let mut free = f64::MIN;
        for (session, x) in self.places() {
            let to = x + (session.to - session.from) * self.scale;
            drawing.shape(Rect::new(x, 0.0, to, foot), Tone::White, Line::Dimension);
            let day = Label::new(session.day.clone(), (x, -6.6)).sized(Label::SMALL);
            if !session.day.is_empty() && x > free {
                free = x + day.width() + 1.0;
                drawing.label(day);
            }
            let time = Label::new(session.time.clone(), (x, -2.6)).sized(Label::SMALL);
            if time.width() < to - x {
                drawing.label(time);
            }
        }
    }

    fn row(&self, drawing: &mut Drawing, index: usize, row: &Row) {
        let middle = (index as f64 + 0.5) * ROW;
        let bar = |(from, to): (f64, f64), height: f64| {
            Rect::new(from, middle - height / 2.0, to, middle + height / 2.0)
        };
        drawing.label(Label::new(row.name.clone(), (0.0, middle)).sized(Label::SMALL));
        if let Some(mould) = &row.mould {
            for piece in self.pieces(mould.from, mould.to) {
                drawing.fill(bar(piece, BAND), Tone::Light);
            }
            drawing.label(Label::new(mould.letter.clone(), (NAMES - 2.0, middle)).end().sized(Label::SMALL));
        }
        for work in &row.work {
            for piece in self.pieces(work.from, work.to) {
                drawing.shape(bar(piece, BAR), Tone::White, Line::Edge);
                if piece.1 - piece.0 >= LETTER {
                    let at = (f64::midpoint(piece.0, piece.1), middle);
                    drawing.label(Label::new(work.letter.clone(), at).middle().sized(Label::SMALL));
                }
            }
        }
    }
}

/// What the letters mean, in columns.
fn key_below(drawing: &mut Drawing, rows: usize, (key, words): (&[(String, String)], &Words)) {
    let top = rows as f64 * ROW + 5.0;
    let bands = [("class-timetable-work", Tone::White, BAR), ("class-timetable-mould", Tone::Light, BAND)];
    for (index, (id, tone, height)) in bands.into_iter().enumerate() {
        let x = NAMES + 70.0 * index as f64;
        drawing.shape(Rect::new(x, top - height / 2.0, x + 7.0, top + height / 2.0), tone, Line::Dimension);
        drawing.label(Label::new(words.term(id), (x + 9.0, top)).sized(Label::SMALL));
    }
    for (index, (letter, name)) in key.iter().enumerate() {
        let x = NAMES + WIDTH / IN_LINE as f64 * (index % IN_LINE) as f64;
        let y = top + 6.0 + 4.4 * (index / IN_LINE) as f64;
        drawing.label(Label::new(letter.clone(), (x, y)).bold().sized(Label::SMALL));
        drawing.label(Label::new(name.clone(), (x + 5.0, y)).sized(Label::SMALL));
    }
}
