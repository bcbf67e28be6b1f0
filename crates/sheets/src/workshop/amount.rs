//! Texts that all sheets of the workshop have in common.

use basket::Length;
use basket::cuts::Cut;
use basket::message::Value;
use planning::price::cents;
use rust_decimal::Decimal;
use words::Words;

use crate::scribe::Scribe;

/// Writes for one reader of a workshop's sheets.
pub(super) struct Clerk<'w> {
    pub words: &'w Words,
    pub scribe: Scribe<'w>,
}

impl<'w> Clerk<'w> {
    pub fn new(words: &'w Words) -> Self {
        Self { words, scribe: Scribe::new(words) }
    }
    /// The message `workshop-` and this identifier.
    pub fn label(&self, id: &str) -> String {
        self.words.term(&format!("workshop-{id}"))
    }
    /// The same with values.
    pub fn text(&self, id: &str, args: &[(&str, Value)]) -> String {
        self.words.with(&format!("workshop-{id}"), args)
    }
    /// The head of a table; what begins with `#` stands over figures.
    pub fn head(&self, columns: &[&str]) -> Vec<(String, bool)> {
        let one = |column: &&str| (self.label(column.trim_start_matches('#')), column.starts_with('#'));
        columns.iter().map(one).collect()
    }
    /// A length on one line; nothing where there is none.
    pub fn length(&self, length: Option<Length>) -> String {
        length.map(|length| self.scribe.line(length)).unwrap_or_default()
    }
    /// A length that is never broken between inches and their fraction.
    pub fn whole(&self, length: Length) -> String {
        self.words.length(length).replace(' ', "\u{a0}")
    }
    /// An amount to the cent.
    pub fn money(&self, amount: Decimal, currency: &str) -> String {
        self.words.money(&format!("{:.2}", cents(amount)), currency)
    }
    /// What a cut is cut from, with its colour.
    pub fn stock(&self, cut: &Cut) -> String {
        self.scribe.stock(cut)
    }
    /// A material in a colour, both by their names.
    pub fn material(&self, name: &str, colour: &str) -> String {
        let material = self.words.value(&Value::Material(name.to_owned()));
        if colour == "natural" { material } else { format!("{material}, {}", self.words.colour(colour)) }
    }
}
