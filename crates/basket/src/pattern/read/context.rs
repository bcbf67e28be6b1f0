//! What every section needs while it is read.

use std::cell::RefCell;
use std::ops::Range;

use toml::Spanned;
use toml::de::DeValue;

use super::palette::Palette;
use super::problem::{Fault, Problem};
use super::raw::{type_name, type_term};
use super::text::{Text, nearest, one_of, shorten};
use crate::measure::{Length, LengthFault, Unit};
use crate::pattern::keys::Lengths;
use crate::stock::Catalogue;

/// What is known before a section is read, and where its problems are noted.
#[derive(Clone, Copy)]
pub(super) struct Context<'c> {
    pub(super) catalogue: &'c Catalogue,
    pub(super) unit: Option<Unit>,
    pub(super) palette: &'c Palette,
    pub(super) problems: &'c RefCell<Vec<Problem>>,
}

impl Context<'_> {
    pub(super) fn problem(&self, span: Range<usize>, fault: Fault, help: impl Into<String>) {
        let Fault { message, told } = fault;
        let (span, help) = (Some(span), Some(help.into()));
        self.problems.borrow_mut().push(Problem { message, span, help, fault: Some(told) });
    }

    /// The text of a value that should be a text.
    pub(super) fn text<'s>(&self, name: &str, value: &'s Spanned<DeValue<'_>>) -> Option<Text<'s>> {
        let text = value.get_ref().as_str().map(|text| Text { text, span: value.span() });
        if text.is_none() {
            self.not_a_text(name, value, "write it in quotes".to_owned());
        }
        text
    }

    /// Notes a word that stands under a key and is none of these.
    pub(super) fn unknown_word(&self, name: &str, word: &Text, known: &[&str]) {
        let near = nearest(word.text, known.iter().copied());
        let help = match near {
            Some(near) => format!("did you mean `{near}`?"),
            None => format!("write {}", one_of(known)),
        };
        let written = shorten(word.text);
        let fault = Fault::new("problem-word", format!("`{name}` cannot be `{written}`"));
        self.problem(word.span.clone(), fault.with("written", written).near(near), help);
    }

    fn not_a_text(&self, name: &str, value: &Spanned<DeValue<'_>>, help: String) {
        let message = format!("`{name}` must be a text in quotes, not {}", type_name(value.get_ref()));
        let fault = Fault::new("problem-not-text", message).with("found", type_term(value.get_ref()));
        self.problem(value.span(), fault, help);
    }

    /// A length that stands in the given part of a text.
    pub(super) fn length(
        &self,
        name: &str,
        text: &Text,
        part: Range<usize>,
        limits: Lengths,
    ) -> Option<Length> {
        let written = text.text.get(part.clone()).unwrap_or_default();
        let length = match Length::parse(written, self.unit) {
            Ok(length) => length,
            Err(error) => {
                let place = text.place(part.start + error.span.start..part.start + error.span.end);
                let help = match error.fault {
                    LengthFault::NoUnit => {
                        let written = written.trim();
                        format!(
                            "write \"{written} in\" or \"{written} mm\", or units = \"in\" at the top of the file"
                        )
                    }
                    _ => error.help(),
                };
                let fault = Fault { message: format!("`{name}`: {error}"), told: error.told() };
                self.problem(place, fault, help);
                return None;
            }
        };
        if limits.hold(length) {
            return Some(length);
        }
        let written = shorten(written.trim());
        let fault = Fault::new("problem-beyond", format!("`{name}` cannot be {written}"));
        self.problem(text.place(part), fault.with("written", written), limits.help);
        None
    }

    /// A length value: a text with a unit.
    pub(super) fn length_value(
        &self,
        name: &str,
        value: &Spanned<DeValue<'_>>,
        limits: Lengths,
    ) -> Option<Length> {
        let Some(text) = value.get_ref().as_str() else {
            let unit = self.unit.unwrap_or(Unit::Inch).symbol();
            let number = match value.get_ref() {
                DeValue::Integer(number) => number.as_str(),
                DeValue::Float(number)
                    if number.as_str().starts_with(|first: char| first.is_ascii_digit()) =>
                {
                    number.as_str()
                }
                _ => "5",
            };
            self.not_a_text(
                name,
                value,
                format!("write a length with its unit: \"{} {unit}\"", shorten(number)),
            );
            return None;
        };
        let text = Text { text, span: value.span() };
        self.length(name, &text, 0..text.text.len(), limits)
    }
}
