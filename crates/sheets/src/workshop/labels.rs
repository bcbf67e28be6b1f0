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
    /// 4 × 3 1/3 in, six to a letter sheet.
    LetterSix,
    /// 4 × 2 in, ten to an A4 sheet.
    A4FourByTwo,
    /// 105 × 57 mm, ten to an A4 sheet.
    A4Ten,
    /// 99.1 × 67.7 mm, eight to an A4 sheet.
    A4Eight,
    /// 63.5 × 72 mm, twelve to an A4 sheet.
    A4Twelve,
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
    /// Those that are taken where nobody says otherwise: 4 × 2 in.
    pub const fn usual(paper: Paper) -> Self {
        match paper {
            Paper::Letter => Self::FourByTwo,
            Paper::A4 => Self::A4FourByTwo,
        }
    }

    /// The paper that they come on.
    pub const fn paper(self) -> Paper {
        match self {
            Self::FourByTwo | Self::LetterSix => Paper::Letter,
            Self::A4FourByTwo | Self::A4Ten | Self::A4Eight | Self::A4Twelve => Paper::A4,
        }
    }

    /// Common sizes of sheets (as printed on their boxes, from memory: lay a sheet over before printing all).
    fn grid(self) -> Grid {
        let (width, height, columns, rows) = match self {
            Self::FourByTwo | Self::A4FourByTwo => (101.6, 50.8, 2, 5),
            Self::LetterSix => (101.6, 84.7, 2, 3),
            Self::A4Ten => (105.0, 57.0, 2, 5),
            Self::A4Eight => (99.1, 67.7, 2, 4),
            Self::A4Twelve => (63.5, 72.0, 3, 4),
        };
        let (left, top, gap) = match self {
            Self::FourByTwo | Self::LetterSix => (4.0, 12.7, 4.7),
            Self::A4FourByTwo => (3.4, 21.5, 0.0),
            Self::A4Ten => (0.0, 6.0, 0.0),
            Self::A4Eight => (4.7, 13.1, 2.5),
            Self::A4Twelve => (7.2, 4.5, 2.5),
        };
        Grid { width, height, columns, rows, left, top, gap }
    }
}

#[derive(Clone, Debug, Serialize)]
struct Label {
    class: String,
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

/// A label for each bag of these classes, each with the class's title.
pub fn labels(classes: &[(&str, &Kits)], size: LabelSize, words: &Words) -> Labels {
    let clerk = Clerk::new(words);
    let of_class = |(title, kits): &(&str, &Kits)| {
        kits.bags.iter().map(|bag| label(title, (kits, bag), &clerk)).collect()
    };
    let each: Vec<Vec<Label>> = classes.iter().map(of_class).collect();
    let titles = classes.iter().map(|(title, _)| *title).collect::<Vec<_>>();
    Labels { title: titles.join(", "), size, each: each.concat() }
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

fn label(class: &str, (kits, bag): (&Kits, &Bag), clerk: &Clerk) -> Label {
    let line = |(line, count): &(usize, u32)| {
        let cut = &kits.batches.get(*line)?.cut;
        let dyed = cut.colour.as_ref().map(|colour| format!(" ({})", clerk.words.colour(&colour.name)));
        Some(format!("{count} {}{}", clerk.words.cut(cut.of, cut.piece), dyed.unwrap_or_default()))
    };
    let soak = |minutes| clerk.text("soak", &[("time", name(clerk.scribe.minutes(minutes)))]);
    Label {
        class: class.to_owned(),
        who: bag.student.clone(),
        title: bag.title.clone(),
        lines: bag.holds.iter().filter_map(line).collect(),
        soak: bag.soak_minutes.map(soak).unwrap_or_default(),
    }
}
