//! Sentences from message files: turns what the computation says (identifiers and values) into
//! text in the reader's language, with lengths in the reader's units.

use basket::message::{Message, Value};
use basket::pattern::Units;
use basket::{Finding, Length};

/// A language that has a complete set of messages.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Language {
    /// English.
    #[default]
    English,
}

/// A reader: language and units.
pub struct Words {
    language: Language,
    units: Units,
}

/// A finding as sentences.
#[derive(Clone, Debug, PartialEq)]
pub struct FindingText {
    /// `stop`, `care` or `note`, in the reader's language.
    pub grade: String,
    /// What was found.
    pub what: String,
    /// Where.
    pub place: String,
    /// Why it matters.
    pub why: String,
    /// What mends it; empty when nothing has to be mended.
    pub remedy: String,
}

impl Words {
    /// Words for a reader.
    pub fn new(language: Language, units: Units) -> Self {
        Self { language, units }
    }
    /// A whole sentence.
    pub fn say(&self, message: &Message) -> String {
        todo!()
    }
    /// A message without values: a heading, a label, the name of a piece, a tool or a caution.
    pub fn term(&self, id: &str) -> String {
        todo!()
    }
    /// A message with values given on the spot.
    pub fn with(&self, id: &str, args: &[(&str, Value)]) -> String {
        todo!()
    }
    /// A value as it stands in a sentence.
    pub fn value(&self, value: &Value) -> String {
        todo!()
    }
    /// A length in the reader's own units, to the nearest 1/16 in or 0.5 mm: `5 5/8 in`.
    pub fn length(&self, length: Length) -> String {
        todo!()
    }
    /// A small length (gap, thickness), to the nearest 1/32 in or 0.1 mm.
    pub fn fine(&self, length: Length) -> String {
        todo!()
    }
    /// A length in both systems, the reader's own first: `5 5/8 in (143 mm)`.
    pub fn both(&self, length: Length) -> String {
        todo!()
    }
    /// A long run of material, in feet or metres, own system first: `161 ft (49.1 m)`.
    pub fn run(&self, length: Length) -> String {
        todo!()
    }
    /// A finding.
    pub fn finding(&self, finding: &Finding) -> FindingText {
        todo!()
    }
}
