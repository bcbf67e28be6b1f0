//! Who does what when in a class, session beside session.

use kurbo::Rect;
use words::Words;

use crate::drawing::{Drawing, Label, Line, Tone};

/// Width of the sessions together, in mm.
const WIDTH: f64 = 212.0;
/// Room for the names, in mm.
const NAMES: f64 = 30.0;
/// Distance between sessions, in mm.
const BETWEEN: f64 = 1.6;
/// Height of all rows together that is filled, in mm, and of a row at the least and at the most: few rows are
/// lettered larger, to be read from across the room.
const ROWS: f64 = 100.0;
const ROW: [f64; 2] = [6.4, 10.5];
/// Height of a band and of the bars in it, as shares of a row.
const BAND: f64 = 0.88;
const BAR: f64 = 0.58;
/// Height of lettering, as a share of a row.
const LETTERING: f64 = 0.4;
/// The largest lettering of the key, in mm.
const KEY: f64 = 3.4;
/// Names of steps in a line of the key, where they fit.
const IN_LINE: usize = 3;
/// How much wider lettering may turn out with another typeface.
const WIDER: f64 = 1.15;

/// A session.
#[derive(Clone, Debug, PartialEq)]
pub struct Session {
    /// Minutes from any beginning that all share.
    pub from: f64,
    /// Its end.
    pub to: f64,
    /// Its day, where it is the first of it; else empty.
    pub day: String,
    /// When it begins and when it ends, by the clock.
    pub times: [String; 2],
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
    let [least, most] = ROW;
    let high = (ROWS / rows.len().max(1) as f64).clamp(least, most);
    let table = Table { sessions, scale: (WIDTH - gaps).max(1.0) / minutes.max(1.0), high };
    for (index, row) in rows.iter().enumerate() {
        table.band(&mut drawing, index, row);
    }
    table.hours(&mut drawing, rows.len());
    for (index, row) in rows.iter().enumerate() {
        table.row(&mut drawing, index, row);
    }
    table.heads(&mut drawing, rows.len());
    table.key_below(&mut drawing, rows.len(), (key, words));
    drawing.fitted(1.0)
}

struct Table<'t> {
    sessions: &'t [Session],
    scale: f64,
    /// Height of a row.
    high: f64,
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

    fn lettering(&self) -> f64 {
        (self.high * LETTERING).max(Label::SMALL)
    }

    fn small(&self, text: &str, at: (f64, f64)) -> Label {
        Label::new(text.to_owned(), at).sized(self.lettering())
    }

    /// Days and times, and a frame for each session.
    fn heads(&self, drawing: &mut Drawing, rows: usize) {
        let foot = rows as f64 * self.high;
        let line = self.lettering();
        // Where days are narrow, only every so many is named.
        let mut free = f64::MIN;
        for (session, x) in self.places() {
            let to = x + (session.to - session.from) * self.scale;
            drawing.stroke(Rect::new(x, 0.0, to, foot), Line::Dimension);
            let day = self.small(&session.day, (x, -2.4 * line));
            if !session.day.is_empty() && x > free {
                free = x + day.width() + 1.0;
                drawing.label(day.bold());
            }
            let [begins, ends] = &session.times;
            let (begins, ends) = (self.small(begins, (x, -line)), self.small(ends, (to, -line)).end());
            let both = begins.width() + ends.width() + line;
            if begins.width() < to - x {
                drawing.label(begins);
            }
            if both < to - x {
                drawing.label(ends);
            }
        }
    }

    /// A line at each full hour of a session.
    fn hours(&self, drawing: &mut Drawing, rows: usize) {
        for (session, x) in self.places() {
            let hours = ((session.to - session.from) / 60.0).ceil().max(0.0) as u32;
            for hour in 1..hours {
                let at = x + f64::from(hour) * 60.0 * self.scale;
                drawing.line((at, 0.0), (at, rows as f64 * self.high), Line::Hidden);
            }
        }
    }

    /// What of a stretch of time lies in sessions, so high a share of its row.
    fn boxes(&self, index: usize, bar: &Bar, share: f64) -> impl Iterator<Item = Rect> {
        let middle = (index as f64 + 0.5) * self.high;
        let half = share * self.high / 2.0;
        self.pieces(bar.from, bar.to).map(move |(from, to)| Rect::new(from, middle - half, to, middle + half))
    }

    /// While a mould is held.
    fn band(&self, drawing: &mut Drawing, index: usize, row: &Row) {
        for band in row.mould.iter().flat_map(|mould| self.boxes(index, mould, BAND)) {
            drawing.fill(band, Tone::Light);
        }
    }

    fn row(&self, drawing: &mut Drawing, index: usize, row: &Row) {
        let middle = (index as f64 + 0.5) * self.high;
        drawing.label(self.small(&row.name, (0.0, middle)));
        if let Some(mould) = &row.mould {
            drawing.label(self.small(&mould.letter, (NAMES - 2.0, middle)).end());
        }
        for work in &row.work {
            for bar in self.boxes(index, work, BAR) {
                drawing.shape(bar, Tone::White, Line::Edge);
                let letter = self.small(&work.letter, (bar.center().x, middle)).middle();
                if letter.width() < bar.width() {
                    drawing.label(letter);
                }
            }
        }
    }

    /// What the letters mean, in columns.
    fn key_below(&self, drawing: &mut Drawing, rows: usize, (key, words): (&[(String, String)], &Words)) {
        let line = self.lettering().min(KEY);
        let top = rows as f64 * self.high + 2.0 * line;
        let bands = [("class-timetable-work", Tone::White, 1.2), ("class-timetable-mould", Tone::Light, 1.6)];
        let label = |text: &str, at: (f64, f64)| Label::new(text.to_owned(), at).sized(line);
        let widest = key.iter().map(|(_, name)| label(name, (0.0, 0.0)).width()).fold(0.0, f64::max);
        let wanted = (widest * WIDER + 2.0 * line).max(1.0);
        let columns = ((WIDTH / wanted) as usize).clamp(1, IN_LINE);
        let column = WIDTH / columns as f64;
        for (index, (id, tone, high)) in bands.into_iter().enumerate() {
            let x = NAMES + WIDTH / 2.0 * index as f64;
            let half = high * line / 2.0;
            drawing.shape(Rect::new(x, top - half, x + 7.0, top + half), tone, Line::Dimension);
            drawing.label(label(&words.term(id), (x + 9.0, top)));
        }
        for (index, (letter, name)) in key.iter().enumerate() {
            let x = NAMES + column * (index % columns) as f64;
            let y = top + line * (2.2 + 1.5 * (index / columns) as f64);
            drawing.label(label(letter, (x, y)).bold());
            drawing.label(label(name, (x + 1.7 * line, y)));
        }
    }
}
