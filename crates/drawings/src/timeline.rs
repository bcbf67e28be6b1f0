//! When each sample of a demonstration is worked on, dries and stands ready.

use kurbo::Rect;
use words::Words;

use crate::drawing::{Drawing, Label, Line, Tone};

/// Width of the days together, in mm.
const WIDTH: f64 = 112.0;
/// Room for the names of the samples, in mm.
const NAMES: f64 = 58.0;
/// Height of a row, of its band and of the marks in it, in mm.
const ROW: f64 = 7.5;
const BAND: f64 = 5.0;
const MARK: f64 = 2.6;
/// Least distance between the numbers of days, in mm.
const APART: f64 = 6.0;

/// Most lines between days; of more, every so many is drawn.
const MOST: u32 = 400;

/// Minutes in a day.
const DAY: f64 = 24.0 * 60.0;

/// A sample, in minutes before the show; of a time the earlier and larger moment comes first.
#[derive(Clone, Debug, PartialEq)]
pub struct Lane {
    /// Its name.
    pub name: String,
    /// When it is begun.
    pub begin: f64,
    /// When hands are at work on it.
    pub work: Vec<(f64, f64)>,
    /// When it holds a mould.
    pub mould: Option<(f64, f64)>,
}

/// A row for each sample, so many days running to the right up to the show: work dark, the time on a mould as
/// a light band, the rest a line. So many moulds are taken at once.
pub fn timeline(lanes: &[Lane], (days, moulds): (u32, u32), words: &Words) -> Drawing {
    let title = words.term("drawing-timeline");
    let args = [
        ("samples", u32::try_from(lanes.len()).unwrap_or(u32::MAX).into()),
        ("days", days.into()),
        ("moulds", moulds.into()),
    ];
    let mut drawing = Drawing::new("timeline", title, words.with("drawing-timeline-description", &args));
    let chart = Chart { days: days.max(1), rows: lanes.len() as f64 };
    chart.days(&mut drawing, words);
    for (index, lane) in lanes.iter().enumerate() {
        chart.row(&mut drawing, index, lane);
    }
    chart.key(&mut drawing, words);
    drawing.fitted(1.0)
}

/// A letter for each sample: A, B, C.
pub fn sample_letter(index: usize) -> String {
    let letter = u8::try_from(index % 26).unwrap_or(0) + b'A';
    let round = index / 26;
    let number = if round == 0 { String::new() } else { (round + 1).to_string() };
    format!("{}{number}", char::from(letter))
}

struct Chart {
    days: u32,
    rows: f64,
}

impl Chart {
    /// Where a moment lies, in minutes before the show.
    fn at(&self, minutes: f64) -> f64 {
        NAMES + WIDTH * (1.0 - minutes / (f64::from(self.days) * DAY))
    }

    fn days(&self, drawing: &mut Drawing, words: &Words) {
        let foot = self.rows * ROW;
        let every = (APART * f64::from(self.days) / WIDTH).ceil().max(1.0) as u32;
        let apart = self.days.div_ceil(MOST).max(1) as usize;
        for day in (0..=self.days).step_by(apart) {
            let x = self.at(f64::from(day) * DAY);
            drawing.line((x, -1.5), (x, foot), if day == 0 { Line::Outline } else { Line::Dimension });
            // The number of a day stands in its middle.
            if day > 0 && day % every == 0 {
                let middle = self.at((f64::from(day) - 0.5) * DAY);
                drawing.label(Label::new(day.to_string(), (middle, -3.0)).middle().sized(Label::SMALL));
            }
        }
        let heading = Label::new(words.term("drawing-timeline-days"), (NAMES - 2.0, -3.0));
        drawing.label(heading.end().sized(Label::SMALL));
        drawing.label(
            Label::new(words.term("drawing-timeline-show"), (self.at(0.0) + 1.0, -3.0)).sized(Label::SMALL),
        );
    }

    fn row(&self, drawing: &mut Drawing, index: usize, lane: &Lane) {
        let middle = (index as f64 + 0.5) * ROW;
        drawing.label(Label::new(lane.name.clone(), (0.0, middle)));
        let bar = |(from, to): (f64, f64), height: f64| {
            Rect::new(self.at(from), middle - height / 2.0, self.at(to), middle + height / 2.0)
        };
        if let Some(held) = lane.mould {
            drawing.fill(bar(held, BAND), Tone::Light);
        }
        drawing.line((self.at(lane.begin), middle), (self.at(0.0), middle), Line::Edge);
        for work in &lane.work {
            drawing.fill(bar(*work, MARK), Tone::Dark);
        }
    }

    fn key(&self, drawing: &mut Drawing, words: &Words) {
        let y = self.rows * ROW + 4.0;
        for (index, (id, tone, height)) in
            [("drawing-timeline-work", Tone::Dark, MARK), ("drawing-timeline-mould", Tone::Light, BAND)]
                .into_iter()
                .enumerate()
        {
            let x = NAMES + 45.0 * index as f64;
            drawing.fill(Rect::new(x, y - height / 2.0, x + 7.0, y + height / 2.0), tone);
            drawing.label(Label::new(words.term(id), (x + 9.0, y)).sized(Label::SMALL));
        }
    }
}
