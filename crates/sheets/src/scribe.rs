//! Lengths and labels as the sheets print them: both systems of measure, the reader's own first.

use basket::cuts::Cut;
use basket::message::Value;
use basket::pattern::Units;
use basket::{Colour, Length};
use words::Words;

/// From here on a length is a run of material, in feet or metres, and no longer a piece.
const RUN: Length = Length::feet(6.0);

/// Writes for one reader.
pub(crate) struct Scribe<'a> {
    pub(crate) words: &'a Words,
    other: Words,
}

impl<'a> Scribe<'a> {
    pub(crate) fn new(words: &'a Words) -> Self {
        let other = match words.units() {
            Units::Inches => Units::Millimetres,
            Units::Millimetres => Units::Inches,
        };
        Self { words, other: Words::new(words.language(), other) }
    }

    /// A text of the sheets: the message `sheet-` and this identifier.
    pub(crate) fn label(&self, id: &str) -> String {
        self.words.term(&format!("sheet-{id}"))
    }
    /// A text of the sheets with values.
    pub(crate) fn text(&self, id: &str, args: &[(&str, Value)]) -> String {
        self.words.with(&format!("sheet-{id}"), args)
    }
    /// A small length in both systems: `1/4 in (6.4 mm)`.
    pub(crate) fn fine(&self, length: Length) -> String {
        self.words.fine_both(length)
    }
    /// A piece or a run in both systems, one a line.
    pub(crate) fn lines(&self, length: Length) -> Vec<String> {
        if length < RUN {
            return vec![self.words.length(length), self.other.length(length)];
        }
        let both = self.words.run(length);
        match both.strip_suffix(')').and_then(|text| text.split_once(" (")) {
            Some((own, other)) => vec![own.to_owned(), other.to_owned()],
            None => vec![both],
        }
    }
    /// A piece or a run in both systems, on one line.
    pub(crate) fn line(&self, length: Length) -> String {
        if length < RUN { self.words.both(length) } else { self.words.run(length) }
    }
    /// What a line of the cut list is cut from, with its colour where it is dyed: `cane fine, blue`.
    pub(crate) fn stock(&self, cut: &Cut) -> String {
        self.in_colour(self.words.value(&cut.stock.name()), cut.colour.as_ref())
    }
    /// A material with its colour where it is dyed.
    pub(crate) fn in_colour(&self, material: String, colour: Option<&Colour>) -> String {
        match colour.filter(|colour| colour.name != Colour::natural().name) {
            Some(colour) => format!("{material}, {}", self.words.colour(&colour.name)),
            None => material,
        }
    }
    /// A time.
    pub(crate) fn minutes(&self, minutes: f64) -> String {
        self.words.value(&Value::Minutes(minutes))
    }
}

/// A text as a value in a sentence.
pub(crate) fn name(text: impl Into<String>) -> Value {
    Value::Name(text.into())
}
