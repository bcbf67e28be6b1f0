//! The poster for the wall of a classroom: the moments that everybody asks about, to be read from across the room.

use basket::message::Value;
use basket::pattern::Every;
use basket::{Basket, Draft, Length};
use drawings::stages::{Plate, unlettered};
use serde::Serialize;
use words::Words;

use crate::error::SheetError;
use crate::figures::Figure;
use crate::front;
use crate::paper::Paper;
use crate::press;
use crate::scribe::{Scribe, name};
use crate::templates::Templates;

/// Height of capitals as a share of the distance from which they are read: an inch for every 25 feet (common
/// practice of sign writers). The smallest letter that an eye of full acuity resolves is 5 minutes of arc high
/// (ISO 8596, from memory), 1 : 688 of the distance; this is 2.3 times that.
const CAPITALS: f64 = 1.0 / 300.0;
/// How many times as high as the text a heading is.
const HEADING: f64 = 1.5;
/// Height of capitals as a share of the type's size (Libertinus Serif, from its file: 658 of 1000).
const CAPITAL: f64 = 0.658;
/// White edge of each page of a poster in parts, and what neighbours share, in mm.
const EDGE: f64 = 10.0;
const OVERLAP: f64 = 10.0;

/// The size of a poster.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PosterSize {
    /// 420 × 594 mm (ISO 216).
    A2,
    /// 16 × 20 in, a usual size of frames.
    Inches16x20,
}

impl PosterSize {
    /// Width and height.
    pub const fn size(self) -> (Length, Length) {
        match self {
            Self::A2 => (Length::mm(420.0), Length::mm(594.0)),
            Self::Inches16x20 => (Length::inches(16.0), Length::inches(20.0)),
        }
    }
}

/// How a poster is wanted.
#[derive(Clone, Copy, Debug)]
pub struct Poster {
    /// Its size.
    pub size: PosterSize,
    /// From how far it is read.
    pub read_from: Length,
    /// The paper from which it is joined; none prints it whole.
    pub parts_on: Option<Paper>,
}

impl Poster {
    /// Least height of its capitals.
    pub fn capitals(&self) -> Length {
        self.read_from * CAPITALS
    }
}

#[derive(Serialize)]
struct Wall {
    width_mm: f64,
    height_mm: f64,
    text_mm: f64,
    heading_mm: f64,
    panels: Vec<Panel>,
    note: String,
    parts: Option<Parts>,
}

/// A moment: its drawing and what is said of it.
#[derive(Serialize)]
struct Panel {
    figure: String,
    title: String,
    text: String,
}

/// The pages from which it is joined.
#[derive(Serialize)]
struct Parts {
    width_mm: f64,
    height_mm: f64,
    edge_mm: f64,
    overlap_mm: f64,
    /// Where each page begins on the poster.
    each: Vec<Part>,
}

#[derive(Serialize)]
struct Part {
    x_mm: f64,
    y_mm: f64,
    says: String,
}

/// Sets the poster.
///
/// # Errors
/// [`SheetError::Template`] when the template is wrong.
pub fn poster(
    draft: &Draft,
    words: &Words,
    wanted: &Poster,
    templates: &Templates,
) -> Result<Vec<u8>, SheetError> {
    let scribe = Scribe::new(words);
    let (panels, figures) = panels(&draft.basket, &scribe);
    let (width, height) = wanted.size.size();
    let text = wanted.capitals().to_mm() / CAPITAL;
    let wall = Wall {
        width_mm: width.to_mm(),
        height_mm: height.to_mm(),
        text_mm: text,
        heading_mm: text * HEADING,
        panels,
        note: scribe.text("poster-note", &[("distance", wanted.read_from.into())]),
        parts: wanted.parts_on.map(|paper| parts(wanted.size, paper, &scribe)),
    };
    let paper = wanted.parts_on.unwrap_or_default();
    press::print("poster", templates, &front::files(draft, &scribe, (paper, &figures), wall)?)
}

/// Figures that a panel tells, by their names.
type Told = Vec<(&'static str, Value)>;

/// What is shown, as far as the basket has it, in making order.
fn panels(basket: &Basket, scribe: &Scribe<'_>) -> (Vec<Panel>, Vec<Figure>) {
    let told: [(Plate, &str, Option<Told>); 5] = [
        (Plate::FirstRows, "start", start(basket)),
        (Plate::Join, "join", join(basket)),
        (Plate::EarsSet, "ear", ears(basket)),
        (Plate::Scarf, "scarf", Some(vec![("lap", basket.body.rim().outer.scarf.lap.into())])),
        (Plate::LashingStart, "lashing", lashing(basket)),
    ];
    let mut panels = Vec::new();
    let mut figures = Vec::new();
    for (plate, id, args) in told {
        let (Some(args), true) = (args, plate.is_of(basket)) else { continue };
        let Some(drawing) = unlettered(basket, scribe.words, plate) else { continue };
        let figure = Figure::of(&drawing);
        panels.push(Panel {
            figure: figure.name.clone(),
            title: scribe.label(&format!("poster-{id}")),
            text: scribe.text(&format!("poster-{id}-text"), &args),
        });
        figures.push(figure);
    }
    (panels, figures)
}

fn start(basket: &Basket) -> Option<Told> {
    let first = basket.body.weave.courses.iter().find(|course| course.rows > 0)?;
    Some(vec![("stave", (first.fabric.stave_in(0, 0) + 1).into())])
}

fn join(basket: &Basket) -> Option<Told> {
    let mut joins = basket.body.weave.courses.iter().flat_map(|course| &course.joins);
    let back =
        joins.find_map(|join| join.cut_over.checked_sub(join.start_behind).filter(|back| *back > 0))?;
    Some(vec![("back", back.into())])
}

fn ears(basket: &Basket) -> Option<Told> {
    let each = &basket.ears.as_ref()?.each;
    let at = |ear: usize| Some(basket.body.uprights().nearest(each.get(ear)?.turn));
    Some(vec![("first", at(0)?.into()), ("second", at(1)?.into())])
}

fn lashing(basket: &Basket) -> Option<Told> {
    let every = match basket.body.lashing()?.every {
        Every::Stave => "every-stave",
        Every::OtherStave => "other-stave",
    };
    Some(vec![("every", name(every))])
}

/// The fewest pages of a paper, upright or lying, that cover a poster.
fn parts(size: PosterSize, paper: Paper, scribe: &Scribe<'_>) -> Parts {
    let (width, height) = size.size();
    let (narrow, long) = paper.size();
    let ways = [(narrow, long), (long, narrow)].map(|(page_width, page_height)| {
        let across = starts(width.to_mm(), page_width.to_mm() - 2.0 * EDGE);
        let down = starts(height.to_mm(), page_height.to_mm() - 2.0 * EDGE);
        (page_width.to_mm(), page_height.to_mm(), across, down)
    });
    let [upright, lying] = ways;
    let pages = |way: &(f64, f64, Vec<f64>, Vec<f64>)| way.2.len() * way.3.len();
    let (width_mm, height_mm, across, down) = if pages(&lying) < pages(&upright) { lying } else { upright };
    let count = across.len() * down.len();
    let places = down.iter().flat_map(|y| across.iter().map(move |x| (*x, *y)));
    let each = places.zip(1_u32..).map(|((x_mm, y_mm), number)| {
        let args = [("number", number.into()), ("count", u32::try_from(count).unwrap_or(u32::MAX).into())];
        Part { x_mm, y_mm, says: scribe.text("poster-part", &args) }
    });
    Parts { width_mm, height_mm, edge_mm: EDGE, overlap_mm: OVERLAP, each: each.collect() }
}

/// Where the pages along a side begin, each as long as `room`.
fn starts(side: f64, room: f64) -> Vec<f64> {
    let step = room - OVERLAP;
    let count = ((side - OVERLAP) / step).ceil().max(1.0) as u32;
    (0..count).map(|page| f64::from(page) * step).collect()
}

#[cfg(test)]
mod tests {
    use basket::pattern::Units;
    use words::Language;

    use super::*;

    #[test]
    fn the_pages_of_a_poster_cover_it() {
        let words = Words::new(Language::English, Units::Inches);
        // Worked out by hand: 16 in is 406.4 mm and takes three pages of 195.9 mm or two of 259.4 mm that share
        // 10 mm; 20 in is 508 mm and takes two or three. A2 takes 3 × 3 upright A4 or 2 × 4 lying.
        for (size, paper, count) in
            [(PosterSize::Inches16x20, Paper::Letter, 6), (PosterSize::A2, Paper::A4, 8)]
        {
            let parts = parts(size, paper, &Scribe::new(&words));
            assert_eq!(parts.each.len(), count, "{size:?}");
            let (width, height) = size.size();
            let room = [parts.width_mm, parts.height_mm].map(|side| side - 2.0 * EDGE);
            let reach = |of: fn(&Part) -> f64| parts.each.iter().map(of).fold(0.0, f64::max);
            assert!(reach(|part| part.x_mm) + room[0] >= width.to_mm() - 1e-9);
            assert!(reach(|part| part.y_mm) + room[1] >= height.to_mm() - 1e-9);
        }
    }

    #[test]
    fn capitals_grow_with_the_distance() {
        // An inch at 25 ft; at 10 ft four tenths of one.
        let at =
            |feet| Poster { size: PosterSize::A2, read_from: Length::feet(feet), parts_on: None }.capitals();
        assert!((at(25.0) - Length::inches(1.0)).abs() < Length::mm(1e-9));
        assert!((at(10.0) - Length::inches(0.4)).abs() < Length::mm(1e-9));
    }
}
