//! Sentences from message files: turns what the computation says (identifiers and values) into
//! text in the reader's language, with lengths in the reader's units.
//!
//! The messages are Fluent files, one file a subject, under `messages/` in a folder a language.
//! This crate never panics on an unknown identifier: it prints the identifier, and its tests
//! assert that every identifier that `basket` uses has a message in every language.

mod compared;
mod finding;
mod keys;
mod language;
mod materials;
mod messages;
mod numbers;
mod schema;

use std::borrow::Cow;

use basket::form::Across;
use basket::measure::Printing;
use basket::message::Term;
use basket::message::{Message, Value};
use basket::pattern::{StepKind, Units};
use basket::piece::FloorPart;
use basket::{Angle, Length, Of, Piece};
use fluent_bundle::{FluentArgs, FluentValue};

pub use basket::pattern::Language;
pub use finding::FindingText;
pub use keys::KeyText;
pub use language::page_texts;

/// A reader: language and units.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Words {
    language: Language,
    units: Units,
}

impl Words {
    /// Words for a reader.
    pub fn new(language: Language, units: Units) -> Self {
        Self { language, units }
    }
    /// The reader's language.
    pub fn language(&self) -> Language {
        self.language
    }
    /// The reader's units.
    pub fn units(&self) -> Units {
        self.units
    }
    /// A whole sentence.
    pub fn say(&self, message: &Message) -> String {
        self.with(message.id, &message.args)
    }
    /// A message without values: a heading, a label, the name of a piece, a tool or a caution.
    pub fn term(&self, id: &str) -> String {
        self.with(id, &[])
    }
    /// The name of one of the computation's own words: a stage, a weave, the material of an ear.
    pub fn name(&self, word: impl Term) -> String {
        self.term(word.term())
    }
    /// The name of what a line of the cut list is cut for: of a course its weaver.
    pub fn cut(&self, of: Of, piece: Piece) -> String {
        self.of(of, self.term(&format!("{}.cut", piece_term(of, piece))))
    }
    /// A text about one vessel of a basket; of a lid it says so.
    pub fn of(&self, of: Of, text: String) -> String {
        match of {
            Of::Body => text,
            Of::Lid => self.with("of-lid", &[("text", Value::Name(text))]),
        }
    }
    /// The heading of a step; of a lid it says so.
    pub fn step(&self, of: Of, kind: StepKind) -> String {
        let term = match (of, kind) {
            (Of::Lid, StepKind::Lid) => return self.name(kind),
            (Of::Lid, StepKind::Seal) => "step-lid-own-seal",
            (Of::Lid, StepKind::Base) => "step-lid-own-base",
            (Of::Lid, StepKind::OffMould) => "step-lid-own-off",
            _ => kind.term(),
        };
        self.of(of, self.term(term))
    }
    /// A message with values given on the spot.
    ///
    /// An attribute of a message is asked for after a dot: `finding-undercut.why`. An identifier
    /// without a message comes back as it is.
    pub fn with(&self, id: &str, args: &[(&str, Value)]) -> String {
        let mut values = FluentArgs::with_capacity(args.len());
        for (name, value) in args {
            values.set(Cow::Borrowed(*name), self.fluent(value));
        }
        language::messages(self.language).format(id, &values).unwrap_or_else(|| id.to_owned())
    }
    /// An amount of money, from its digits, with the currency as the maker calls it.
    pub fn money(&self, digits: &str, currency: &str) -> String {
        let own = digits.replace('.', language::decimal_mark(self.language));
        format!("{own}{}{currency}", if currency.is_empty() { "" } else { "\u{a0}" })
    }
    /// Whether there is a message of this identifier.
    pub fn has(&self, id: &str) -> bool {
        language::messages(self.language).contains(id)
    }
    /// A value as it stands in a sentence.
    pub fn value(&self, value: &Value) -> String {
        match value {
            Value::Length(length) => self.length_in_sentence(*length),
            Value::Span(from, to) => self.span(*from, *to),
            Value::Angle(angle) => self.angle(*angle),
            Value::Count(count) => count.to_string(),
            Value::Number(number, decimals) => numbers::decimal(*number, *decimals, self.language),
            Value::Percent(share) => self.percent(*share),
            Value::Minutes(minutes) => self.minutes(*minutes),
            Value::Name(name) => name.clone(),
            Value::Material(name) => self.material(name),
            Value::Colour(name) => self.colour(name),
            Value::List(values) => {
                values.iter().map(|value| self.value(value)).collect::<Vec<_>>().join(", ")
            }
            Value::Term(id) => self.term(id),
            Value::Said(message) => self.say(message),
        }
    }
    /// A length in the reader's own units, to the nearest 1/16 in or 0.5 mm: `5 5/8 in`.
    pub fn length(&self, length: Length) -> String {
        numbers::length(length, self.units, self.language)
    }
    /// A small length (gap, thickness), to the nearest 1/32 in or 0.1 mm. Where the fraction only stands near the
    /// length, the millimetres stand beside it, so that two sizes never look alike: `3/32 in (2.3 mm)`.
    pub fn fine(&self, length: Length) -> String {
        if numbers::is_told_by_fraction(length, self.units) {
            return self.fraction(length);
        }
        self.fine_both(length)
    }
    /// The same in both systems, the reader's own first.
    pub fn fine_both(&self, length: Length) -> String {
        let other = numbers::fine(length, other(self.units), self.language);
        format!("{} ({other})", self.fraction(length))
    }
    /// A length in both systems, the reader's own first: `5 5/8 in (143 mm)`.
    pub fn both(&self, length: Length) -> String {
        let other = numbers::length(length, other(self.units), self.language);
        format!("{} ({other})", self.length(length))
    }
    /// A length in both systems, the reader's own first, each to the marks that are worked to in it.
    pub fn both_to_marks(&self, length: Length, marks: impl Fn(Units) -> Printing) -> String {
        let [own, other] = [self.units, other(self.units)]
            .map(|units| numbers::to_marks(length, marks(units), self.language));
        format!("{own} ({other})")
    }
    /// How far something reaches: its diameter, or its length and width.
    pub fn across(&self, across: Across) -> String {
        if across.is_round() {
            return self.both(across.length);
        }
        let [length, width] = [across.length, across.width].map(|side| Value::Name(self.both(side)));
        self.with("length-by-width", &[("length", length), ("width", width)])
    }
    /// A long run of material, in feet or metres, own system first: `161 ft (49.1 m)`.
    pub fn run(&self, length: Length) -> String {
        let other = numbers::run(length, other(self.units), self.language);
        format!("{} ({other})", numbers::run(length, self.units, self.language))
    }
    /// A time: `20 min`, `1 h 30 min`, `24 h`, `2 days`.
    pub fn minutes(&self, minutes: f64) -> String {
        let whole = minutes.round() as i64;
        let (hours, rest) = (whole / 60, whole % 60);
        let (id, args) = match (hours, rest) {
            (0, _) => ("unit-minutes", vec![("minutes", Value::Count(rest))]),
            (_, 0) => ("unit-hours", vec![("hours", Value::Count(hours))]),
            _ => {
                ("unit-hours-minutes", vec![("hours", Value::Count(hours)), ("minutes", Value::Count(rest))])
            }
        };
        self.with(id, &args)
    }

    fn fraction(&self, length: Length) -> String {
        numbers::fine(length, self.units, self.language)
    }
    fn angle(&self, angle: Angle) -> String {
        format!("{}°", numbers::decimal(angle.to_degrees(), 1, self.language))
    }
    fn percent(&self, share: f64) -> String {
        self.with(
            "unit-percent",
            &[("number", Value::Name(numbers::decimal(share * 100.0, 1, self.language)))],
        )
    }
    /// Long lengths as runs, the rest as a maker marks them. Gaps, thicknesses and drills also in
    /// millimetres, for a fraction of an inch hides the difference between two of them.
    fn length_in_sentence(&self, length: Length) -> String {
        let size = length.abs();
        if size < Length::inches(0.25) && size > Length::ZERO && self.units == Units::Inches {
            self.fine_both(length)
        } else if size < Length::inches(0.5) {
            self.fine(length)
        } else if size > Length::feet(6.0) {
            numbers::run(length, self.units, self.language)
        } else {
            self.length(length)
        }
    }
    /// From one share to another in whole percent, in tenths where both are small; said once where both print
    /// alike: `6–12 %`.
    pub fn shares(&self, from: f64, to: f64) -> String {
        let decimals = u8::from(to < 0.02);
        let [from, to] = [from, to].map(|share| numbers::decimal(share * 100.0, decimals, self.language));
        if from == to {
            return self.with("unit-percent", &[("number", Value::Name(from))]);
        }
        self.with("unit-percent-span", &[("from", Value::Name(from)), ("to", Value::Name(to))])
    }
    /// Said once where both lengths print alike.
    fn span(&self, from: Length, to: Length) -> String {
        let (from, to) = (self.length_in_sentence(from), self.length_in_sentence(to));
        if from == to {
            return from;
        }
        self.with("unit-span", &[("from", Value::Name(from)), ("to", Value::Name(to))])
    }
    /// Counts stay numbers, so that messages can choose a plural; all else becomes text.
    fn fluent<'a>(&self, value: &Value) -> FluentValue<'a> {
        match value {
            Value::Count(count) => FluentValue::from(*count),
            other => FluentValue::from(self.value(other)),
        }
    }
}

fn other(units: Units) -> Units {
    match units {
        Units::Inches => Units::Millimetres,
        Units::Millimetres => Units::Inches,
    }
}

/// The term of a piece; the disc of a lid is its plaque.
fn piece_term(of: Of, piece: Piece) -> &'static str {
    match (of, piece) {
        (Of::Lid, Piece::Floor(FloorPart::Disc)) => "piece-plaque",
        _ => piece.term(),
    }
}
