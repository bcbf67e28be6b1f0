//! What stands in the place of a drawing that cannot be made, or would be too much: a frame that says so.

use basket::Basket;
use basket::limits::{CROSSINGS, ELEMENTS, TILES};
use basket::message::Value;
use kurbo::{Point, Rect};
use words::Words;

use crate::drawing::{Drawing, Label, Line};
use crate::text::wrapped;

/// Width of the frame, and room inside it, in mm.
const WIDTH: f64 = 84.0;
const ROOM: f64 = 3.0;
/// From line to line, in mm.
const LEADING: f64 = 4.2;

/// Why a drawing is left out.
pub(crate) enum Why {
    /// There is nothing to be seen of it: the wall closes, or its figures contradict each other.
    Nothing,
    /// The basket has not what it shows.
    Absent,
    /// It has more points and curves than are drawn.
    Elements,
    /// It has more crossings than are drawn one by one.
    Crossings(u64),
    /// It would be joined from so many pages.
    Tiles(u32),
}

impl Why {
    fn text(&self, words: &Words) -> String {
        let count = |count: u64| Value::from(u32::try_from(count).unwrap_or(u32::MAX));
        match *self {
            Self::Nothing => words.term("drawing-left-out-nothing"),
            Self::Absent => words.term("drawing-left-out-absent"),
            Self::Elements => words.with("drawing-left-out-elements", &[("most", count(ELEMENTS as u64))]),
            Self::Crossings(crossings) => {
                let args = [("crossings", count(crossings)), ("most", count(CROSSINGS))];
                words.with("drawing-left-out-crossings", &args)
            }
            Self::Tiles(pages) => words
                .with("drawing-left-out-tiles", &[("pages", pages.into()), ("most", count(TILES as u64))]),
        }
    }
}

/// A frame in the place of a drawing, with its name and title, that says why it is left out.
pub(crate) fn left_out(drawing: &Drawing, words: &Words, why: &Why) -> Drawing {
    let text = why.text(words);
    let description = format!("{} {text}", drawing.title);
    let mut plain = Drawing::new(drawing.name.clone(), drawing.title.clone(), description);
    let lines = wrapped(&text, WIDTH - 2.0 * ROOM, Label::SIZE);
    plain.stroke(Rect::new(0.0, 0.0, WIDTH, LEADING * lines.len() as f64 + 2.0 * ROOM), Line::Edge);
    for (line, number) in lines.into_iter().zip(0..) {
        let at = Point::new(ROOM, ROOM + LEADING * (f64::from(number) + 0.5));
        plain.label(Label::new(line, at));
    }
    plain.fitted(1.5)
}

/// A drawing, unless it was to show more than is drawn: then a frame that says so.
pub fn kept(drawing: Drawing, words: &Words) -> Drawing {
    if drawing.is_overfull() { left_out(&drawing, words, &Why::Elements) } else { drawing }
}

/// How many crossings a basket has, where they are more than are drawn one by one.
pub(crate) fn too_many_crossings(basket: &Basket) -> Option<Why> {
    let crossings = basket.body.crossings();
    (crossings > CROSSINGS).then_some(Why::Crossings(crossings))
}

#[cfg(test)]
mod tests {
    use basket::pattern::Units;
    use words::Language;

    use super::*;
    use crate::drawing::Item;

    #[test]
    fn a_drawing_of_too_many_lines_says_so_in_every_language() {
        for (language, says) in [(Language::English, "Not drawn"), (Language::German, "Nicht gezeichnet")] {
            let words = Words::new(language, Units::Inches);
            let mut drawing = Drawing::new("chart", "A chart", "");
            for _ in 0..=ELEMENTS / 2 {
                drawing.line((0.0, 0.0), (1.0, 1.0), Line::Fine);
            }
            let plain = kept(drawing, &words);
            assert_eq!((plain.name.as_str(), plain.title.as_str()), ("chart", "A chart"));
            assert!(plain.description.contains(says), "{}", plain.description);
            assert!(plain.items().len() < 10 && plain.width() < WIDTH + 5.0);
            let first = plain.items().iter().find_map(|item| match item {
                Item::Label(label) => Some(label.text.as_str()),
                Item::Path { .. } => None,
            });
            assert!(first.is_some_and(|text| text.starts_with(says)), "{first:?}");
        }
    }

    #[test]
    fn a_drawing_within_its_budget_is_kept() {
        let words = Words::new(Language::English, Units::Inches);
        let mut drawing = Drawing::new("chart", "A chart", "");
        drawing.line((0.0, 0.0), (1.0, 1.0), Line::Fine);
        assert_eq!(kept(drawing.clone(), &words), drawing);
    }
}
