//! Labels for the bags: whose it is, what it is, what is in it and how long it soaks.

use planning::kits::{Bag, Kits};
use serde::Serialize;
use words::Words;

use super::amount::Clerk;
use super::leaf::print;
use crate::error::SheetError;
use crate::paper::Paper;
use crate::scribe::name;
use crate::templates::Templates;

/// Sheets of labels, by what one measures.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum LabelSize {
    /// 4 × 2 in, ten to a letter sheet.
    #[default]
    FourByTwo,
    /// 105 × 57 mm, ten to an A4 sheet.
    A4Ten,
    /// 99.1 × 67.7 mm, eight to an A4 sheet.
    A4Eight,
}

/// Measures of a sheet of labels, in millimetres.
#[derive(Serialize)]
struct Grid {
    width: f64,
    height: f64,
    columns: u32,
    rows: u32,
    left: f64,
    top: f64,
    gap: f64,
}

impl LabelSize {
    /// The paper that they come on.
    pub const fn paper(self) -> Paper {
        match self {
            Self::FourByTwo => Paper::Letter,
            Self::A4Ten | Self::A4Eight => Paper::A4,
        }
    }

    /// Common sizes of sheets (as printed on their boxes, from memory: lay a sheet over before printing all).
    fn grid(self) -> Grid {
        let (width, height, rows, left, top, gap) = match self {
            Self::FourByTwo => (101.6, 50.8, 5, 4.0, 12.7, 4.7),
            Self::A4Ten => (105.0, 57.0, 5, 0.0, 6.0, 0.0),
            Self::A4Eight => (99.1, 67.7, 4, 4.7, 13.1, 2.5),
        };
        Grid { width, height, columns: 2, rows, left, top, gap }
    }
}

#[derive(Clone, Debug, Serialize)]
struct Label {
    who: String,
    title: String,
    lines: Vec<String>,
    soak: String,
}

/// The labels of a class.
#[derive(Clone, Debug)]
pub struct Labels {
    title: String,
    size: LabelSize,
    each: Vec<Label>,
}

#[derive(Serialize)]
struct Page<'l> {
    name: String,
    grid: Grid,
    each: &'l [Label],
}

/// A label for each bag.
pub fn labels(title: &str, kits: &Kits, size: LabelSize, words: &Words) -> Labels {
    let clerk = Clerk::new(words);
    Labels {
        title: title.to_owned(),
        size,
        each: kits.bags.iter().map(|bag| label(kits, bag, &clerk)).collect(),
    }
}

impl Labels {
    /// The sheets of labels as PDF.
    ///
    /// # Errors
    /// [`SheetError::Template`] when the template is wrong.
    pub fn pdf(&self, words: &Words, templates: &Templates) -> Result<Vec<u8>, SheetError> {
        let name = Clerk::new(words).label("labels");
        let page = Page { name, grid: self.size.grid(), each: &self.each };
        print("labels", (&self.title, page), (words, self.size.paper()), templates)
    }
}

fn label(kits: &Kits, bag: &Bag, clerk: &Clerk) -> Label {
    let line = |(line, count): &(usize, u32)| {
        let cut = &kits.batches.get(*line)?.cut;
        let dyed = cut.colour.as_ref().map(|colour| format!(" ({})", clerk.words.colour(&colour.name)));
        Some(format!("{count} {}{}", clerk.words.cut(cut.of, cut.piece), dyed.unwrap_or_default()))
    };
    let soak = |minutes| clerk.text("soak", &[("time", name(clerk.scribe.minutes(minutes)))]);
    Label {
        who: bag.student.clone(),
        title: bag.title.clone(),
        lines: bag.holds.iter().filter_map(line).collect(),
        soak: bag.soak_minutes.map(soak).unwrap_or_default(),
    }
}
