//! A table of a kits file, read key by key; whatever is wrong is noted and reading goes on.

use std::cell::RefCell;
use std::ops::{Range, RangeInclusive};

use basket::Length;
use basket::message::{Message, Value};
use jiff::civil::Date;
use planning::class::written::Fault;
use rust_decimal::Decimal;
use toml::Spanned;
use toml::de::{DeTable, DeValue};

/// More than this is no amount of a workshop.
const MOST: u32 = 10_000_000;
/// The same for minutes and hours.
const LONGEST: f64 = 100_000.0;
/// What a cut may take away.
const KERF: RangeInclusive<f64> = 0.0..=50.0;
/// Longer texts are shortened where they are repeated.
const SHOWN: usize = 60;

/// What is wrong in a file, in the order in which it is found.
pub(super) type Faults = RefCell<Vec<Fault>>;

/// A table, and where it stands.
pub(super) struct Table<'f, 'd> {
    values: &'f DeTable<'d>,
    span: Range<usize>,
    faults: &'f Faults,
}

impl<'f, 'd> Table<'f, 'd> {
    /// Opens a table that knows these keys alone.
    pub(super) fn open(
        table: &'f DeTable<'d>,
        span: Range<usize>,
        known: &[&'static str],
        faults: &'f Faults,
    ) -> Self {
        let own = Self { values: table, span, faults };
        for key in table.keys() {
            let word: &str = key.get_ref();
            if !known.contains(&word) {
                let says = like(["kits-fault-key-near", "kits-fault-key"], word, known.iter().copied());
                own.fault(key.span(), says.with("key", short(word)));
            }
        }
        own
    }

    pub(super) fn fault(&self, span: Range<usize>, says: Message) {
        self.faults.borrow_mut().push(Fault { says, span: Some(span) });
    }

    pub(super) fn value(&self, key: &str) -> Option<&'f Spanned<DeValue<'d>>> {
        self.values.get(key)
    }

    /// Where a key stands; where it does not, the table.
    pub(super) fn span(&self, key: &str) -> Range<usize> {
        self.value(key).map_or(self.span.clone(), Spanned::span)
    }

    fn wrong(&self, key: &'static str, id: &'static str) {
        self.fault(self.span(key), Message::new(id).with("key", key).with("value", self.written(key)));
    }

    /// A value as it was written, as far as it is shown.
    fn written(&self, key: &str) -> Value {
        let written = match self.value(key).map(Spanned::get_ref) {
            Some(DeValue::String(text)) => text.to_string(),
            Some(DeValue::Integer(number)) => number.to_string(),
            Some(DeValue::Float(number)) => number.to_string(),
            Some(DeValue::Boolean(flag)) => flag.to_string(),
            Some(DeValue::Datetime(moment)) => moment.to_string(),
            Some(DeValue::Array(_)) => "[…]".to_owned(),
            Some(DeValue::Table(_)) => "{…}".to_owned(),
            None => String::new(),
        };
        short(&written)
    }

    pub(super) fn text(&self, key: &'static str) -> Option<&'f str> {
        let text = self.value(key)?.get_ref().as_str().filter(|text| !text.trim().is_empty());
        if text.is_none() {
            self.wrong(key, "kits-fault-text");
        }
        text
    }

    /// A text that may be empty.
    pub(super) fn any_text(&self, key: &'static str) -> Option<&'f str> {
        let text = self.value(key)?.get_ref().as_str();
        if text.is_none() {
            self.wrong(key, "kits-fault-text");
        }
        text
    }

    /// A text that must not be left out.
    pub(super) fn needed(&self, key: &'static str) -> Option<&'f str> {
        if self.value(key).is_none() {
            self.fault(self.span.clone(), Message::new("kits-fault-missing").with("key", key));
        }
        self.text(key)
    }

    /// A whole number; the usual one where it is left out, or wrong.
    pub(super) fn whole(&self, key: &'static str, usual: u32, range: RangeInclusive<u32>) -> u32 {
        let Some(value) = self.value(key) else { return usual };
        let number = value.get_ref().as_integer().filter(|number| number.radix() == 10);
        let number =
            number.and_then(|number| number.as_str().parse().ok()).filter(|number| range.contains(number));
        number.unwrap_or_else(|| {
            let says = Message::new("class-fault-number").with("key", key).with("value", self.written(key));
            self.fault(value.span(), says.with("from", *range.start()).with("to", *range.end()));
            usual
        })
    }

    /// Minutes or hours; none where they are left out.
    pub(super) fn time(&self, key: &'static str) -> f64 {
        let Some(value) = self.value(key) else { return 0.0 };
        let number = match value.get_ref() {
            DeValue::Integer(number) => number.as_str().parse().ok(),
            DeValue::Float(number) => number.as_str().parse().ok(),
            _ => None,
        };
        let number = number.filter(|number| (0.0..=LONGEST).contains(number));
        if number.is_none() {
            self.wrong(key, "kits-fault-time");
        }
        number.unwrap_or(0.0)
    }

    /// An amount, or a share, written as text, so that it stays decimal.
    pub(super) fn amount(&self, key: &'static str) -> Option<Decimal> {
        let amount = self.value(key)?.get_ref().as_str().and_then(|text| text.parse::<Decimal>().ok());
        let amount = amount.filter(|amount| !amount.is_sign_negative() && *amount <= Decimal::from(MOST));
        if amount.is_none() {
            self.wrong(key, "kits-fault-amount");
        }
        amount
    }

    pub(super) fn day(&self, key: &'static str) -> Option<Date> {
        let day = self.value(key)?.get_ref().as_str().and_then(|text| text.parse().ok());
        if day.is_none() {
            self.wrong(key, "kits-fault-day");
        }
        day
    }

    /// What a cut takes away; nothing where it is left out.
    pub(super) fn kerf(&self, key: &'static str) -> Length {
        let Some(value) = self.value(key) else { return Length::ZERO };
        let length = value.get_ref().as_str().and_then(|text| Length::parse(text, None).ok());
        let length = length.filter(|length| KERF.contains(&length.to_mm()));
        if length.is_none() {
            self.wrong(key, "kits-fault-kerf");
        }
        length.unwrap_or(Length::ZERO)
    }

    /// A table under a key.
    pub(super) fn table(&self, key: &'static str) -> Option<(&'f DeTable<'d>, Range<usize>)> {
        let value = self.value(key)?;
        let table = value.get_ref().as_table();
        if table.is_none() {
            self.wrong(key, "kits-fault-section");
        }
        table.map(|table| (table, value.span()))
    }

    /// Values of a list, each with its place.
    pub(super) fn list(&self, key: &'static str) -> Option<&'f [Spanned<DeValue<'d>>]> {
        let list = self.value(key)?.get_ref().as_array();
        if list.is_none() {
            self.wrong(key, "kits-fault-list");
        }
        list.map(AsRef::as_ref)
    }
}

/// A message for a word that is like one of those that are known, or for one that is like none.
pub(super) fn like<'k>(
    [near, none]: [&'static str; 2],
    word: &str,
    known: impl Iterator<Item = &'k str> + Clone,
) -> Message {
    let likeness = |one: &str| strsim::jaro_winkler(&word.to_lowercase(), one);
    let nearest = known.clone().map(|one| (likeness(one), one)).filter(|(like, _)| *like > 0.8);
    match nearest.max_by(|a, b| a.0.total_cmp(&b.0)) {
        Some((_, nearest)) => Message::new(near).with("nearest", nearest),
        None => Message::new(none).with("all", Value::Name(known.collect::<Vec<_>>().join(", "))),
    }
}

/// A text as far as it is shown.
pub(super) fn short(text: &str) -> Value {
    Value::Name(text.chars().take(SHOWN).collect())
}
