//! One table of the file, read key by key; whatever is wrong is noted and reading goes on.

use std::cell::RefCell;
use std::ops::{Range, RangeInclusive};

use toml::Spanned;
use toml::de::{DeTable, DeValue};

use super::problem::Problem;
use super::text::{Text, nearest, one_of, shorten};
use crate::measure::{Length, LengthFault, Unit};
use crate::stock::{Catalogue, Kind, Material};

/// What every section needs while it is read.
#[derive(Clone, Copy)]
pub(super) struct Context<'c> {
    pub(super) catalogue: &'c Catalogue,
    pub(super) unit: Option<Unit>,
    pub(super) problems: &'c RefCell<Vec<Problem>>,
}

/// Which lengths make sense for a key.
#[derive(Clone, Copy)]
pub(super) struct Limits {
    least: Length,
    most: Length,
    zero: bool,
    help: &'static str,
}

/// A part of a basket or mould.
pub(super) const PART: Limits = Limits {
    least: Length::mm(0.05),
    most: Length::mm(5000.0),
    zero: false,
    help: "write a length from 0.05 mm to 5 m (16 ft)",
};
/// A place on a mould, which may be its base.
pub(super) const PLACE: Limits =
    Limits { zero: true, help: "write 0, or a length from 0.05 mm to 5 m (16 ft)", ..PART };
/// A run of material as it is sold.
pub(super) const RUN: Limits = Limits {
    least: Length::mm(1.0),
    most: Length::mm(10_000_000.0),
    zero: false,
    help: "write a length from 1 mm to 10000 m",
};

impl Context<'_> {
    pub(super) fn problem(&self, span: Range<usize>, message: String, help: impl Into<String>) {
        self.problems.borrow_mut().push(Problem { message, span: Some(span), help: Some(help.into()) });
    }

    /// The text of a value that should be a text.
    pub(super) fn text<'s>(&self, name: &str, value: &'s Spanned<DeValue<'_>>) -> Option<Text<'s>> {
        let text = value.get_ref().as_str().map(|text| Text { text, span: value.span() });
        if text.is_none() {
            self.not_a_text(name, value, "write it in quotes".to_owned());
        }
        text
    }

    fn not_a_text(&self, name: &str, value: &Spanned<DeValue<'_>>, help: String) {
        let message = format!("`{name}` must be a text in quotes, not {}", type_name(value.get_ref()));
        self.problem(value.span(), message, help);
    }

    /// A length that stands in the given part of a text.
    pub(super) fn length(
        &self,
        name: &str,
        text: &Text,
        part: Range<usize>,
        limits: Limits,
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
                self.problem(place, format!("`{name}`: {error}"), help);
                return None;
            }
        };
        if limits.least <= length && length <= limits.most || limits.zero && length == Length::ZERO {
            return Some(length);
        }
        let message = format!("`{name}` cannot be {}", shorten(written.trim()));
        self.problem(text.place(part), message, limits.help);
        None
    }

    /// A length value: a text with a unit.
    pub(super) fn length_value(
        &self,
        name: &str,
        value: &Spanned<DeValue<'_>>,
        limits: Limits,
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

/// A table with its name and the keys it knows.
pub(super) struct Section<'s, 'd> {
    pub(super) context: Context<'s>,
    path: &'s str,
    table: &'s DeTable<'d>,
    span: Range<usize>,
}

impl<'s, 'd> Section<'s, 'd> {
    /// Opens a table and notes the keys it does not know. `path` is empty for the whole file.
    pub(super) fn open(
        context: Context<'s>,
        path: &'s str,
        table: &'s DeTable<'d>,
        span: Range<usize>,
        keys: &[&'static str],
    ) -> Self {
        let section = Self { context, path, table, span };
        for key in table.keys() {
            let word: &str = key.get_ref();
            if !keys.contains(&word) {
                let help = match nearest(word, keys.iter().copied()) {
                    Some(near) => format!("did you mean `{near}`?"),
                    None => format!("known here: {}", keys.join(", ")),
                };
                context.problem(key.span(), format!("`{}` is not a known key", section.name(word)), help);
            }
        }
        section
    }

    /// The same table with another catalogue or unit.
    pub(super) fn with_context(self, context: Context<'s>) -> Self {
        Self { context, ..self }
    }

    /// The full name of a key, such as `mould.girths`.
    pub(super) fn name(&self, key: &str) -> String {
        let key = shorten(key);
        if self.path.is_empty() { key } else { format!("{}.{key}", self.path) }
    }

    pub(super) fn has(&self, key: &str) -> bool {
        self.table.contains_key(key)
    }

    pub(super) fn value(&self, key: &str) -> Option<&'s Spanned<DeValue<'d>>> {
        self.table.get(key)
    }

    /// Notes something wrong with the value of a key (or with the section when the key is absent).
    pub(super) fn problem(&self, key: &str, message: String, help: impl Into<String>) {
        let span = self.value(key).map_or(self.span.clone(), Spanned::span);
        self.context.problem(span, message, help);
    }

    /// Notes a key that must not be left out.
    pub(super) fn missing(&self, key: &str, example: &str) {
        let message = format!("`{}` is missing", self.name(key));
        self.context.problem(self.span.clone(), message, format!("write {example}"));
    }

    pub(super) fn text(&self, key: &str) -> Option<Text<'s>> {
        self.context.text(&self.name(key), self.value(key)?)
    }

    /// A title or a name: not empty, on one line, not endless.
    pub(super) fn title(&self, key: &str) -> Option<String> {
        let text = self.text(key)?;
        let title = text.text.trim();
        let Some(fault) = title_fault(title) else {
            return Some(title.to_owned());
        };
        self.problem(
            key,
            format!("`{}` {fault}", self.name(key)),
            "write one line of at most 120 characters",
        );
        None
    }

    pub(super) fn length(&self, key: &str) -> Option<Length> {
        self.length_within(key, PART)
    }

    pub(super) fn length_within(&self, key: &str, limits: Limits) -> Option<Length> {
        self.context.length_value(&self.name(key), self.value(key)?, limits)
    }

    pub(super) fn count(&self, key: &str, range: RangeInclusive<u32>) -> Option<u32> {
        let value = self.value(key)?;
        let count = whole_number(value.get_ref()).and_then(|number| u32::try_from(number).ok());
        let count = count.filter(|count| range.contains(count));
        if count.is_none() {
            let what = match value.get_ref() {
                DeValue::Integer(number) => shorten(number.as_str()),
                other => type_name(other).to_owned(),
            };
            let help =
                format!("write a whole number from {} to {}, without quotes", range.start(), range.end());
            self.problem(key, format!("`{}` cannot be {what}", self.name(key)), help);
        }
        count
    }

    /// A share, written in percent (`"4 %"`) or as a plain number (`0.04`).
    pub(super) fn share(&self, key: &str, range: RangeInclusive<f64>) -> Option<f64> {
        let value = self.value(key)?;
        let share = match value.get_ref() {
            DeValue::String(text) => percent(text),
            DeValue::Float(number) => number.as_str().parse().ok(),
            other => whole_number(other).map(|number| number as f64),
        };
        let share = share.filter(|share| range.contains(share));
        if share.is_none() {
            let (least, most) = (range.start() * 100.0, range.end() * 100.0);
            let help = format!("write a percentage from \"{least:.0} %\" to \"{most:.0} %\"");
            self.problem(key, format!("`{}` is not a share that makes sense here", self.name(key)), help);
        }
        share
    }

    /// One of a few words.
    pub(super) fn word<T: Copy>(&self, key: &str, words: &[(&'static str, T)]) -> Option<T> {
        let text = self.text(key)?;
        let found = words.iter().find(|(word, _)| *word == text.text).map(|(_, meaning)| *meaning);
        if found.is_none() {
            let valid: Vec<&str> = words.iter().map(|(word, _)| *word).collect();
            let help = match nearest(text.text, valid.iter().copied()) {
                Some(near) => format!("did you mean `{near}`?"),
                None => format!("write {}", one_of(&valid)),
            };
            self.problem(key, format!("`{}` cannot be `{}`", self.name(key), shorten(text.text)), help);
        }
        found
    }

    /// A material of one of these kinds.
    pub(super) fn stock(&self, key: &str, kinds: &[Kind]) -> Option<Material> {
        self.stock_value(key, self.value(key)?, kinds)
    }

    /// A material of one of these kinds, where the key's value or an entry of its list names it.
    pub(super) fn stock_value(
        &self,
        key: &str,
        value: &Spanned<DeValue<'_>>,
        kinds: &[Kind],
    ) -> Option<Material> {
        let text = self.context.text(&self.name(key), value)?;
        let fits = |material: &&Material| kinds.contains(&material.kind);
        match self.context.catalogue.material(text.text) {
            Some(material) if fits(&material) => return Some(material.clone()),
            Some(material) => {
                let words: Vec<&str> = kinds.iter().map(|kind| kind.words()).collect();
                let message = format!("`{}` cannot be a {}", self.name(key), material.kind.words());
                let help = format!("choose a material of the kind {}", one_of(&words));
                self.context.problem(value.span(), message, help);
            }
            None => {
                let known: Vec<&Material> = self.context.catalogue.materials.iter().filter(fits).collect();
                self.unknown_material(value, text.text, &known);
            }
        }
        None
    }

    /// Notes a name that is none of these materials.
    pub(super) fn unknown_material(&self, value: &Spanned<DeValue<'_>>, name: &str, known: &[&Material]) {
        let near = nearest(name, known.iter().flat_map(|material| material.names()));
        let near = near.and_then(|near| known.iter().find(|material| material.is_called(near)));
        let help = match near {
            Some(material) => format!("did you mean `{}`?", material.name),
            None => "look it up with `stavewright materials`, or add it under [materials]".to_owned(),
        };
        self.context.problem(value.span(), format!("`{}` is not a known material", shorten(name)), help);
    }

    /// A table inside this one.
    pub(super) fn section(&self, key: &'static str, path: &'s str, keys: &[&'static str]) -> Option<Self> {
        let value = self.value(key)?;
        if let DeValue::Table(table) = value.get_ref() {
            return Some(Self::open(self.context, path, table, value.span(), keys));
        }
        let message = format!("`{}` must be a section, not {}", self.name(key), type_name(value.get_ref()));
        let help = if self.path.is_empty() {
            format!("write [{path}] on a line of its own and its keys below")
        } else {
            format!("write {key} in braces: {key} = {{ {} = … }}", keys.join(" = …, "))
        };
        self.problem(key, message, help);
        None
    }

    /// A list of at most this many values.
    pub(super) fn list(&self, key: &str, most: usize) -> Option<&'s [Spanned<DeValue<'d>>]> {
        let value = self.value(key)?;
        let Some(list) = value.get_ref().as_array() else {
            let message = format!("`{}` must be a list, not {}", self.name(key), type_name(value.get_ref()));
            self.problem(key, message, "write a list in square brackets");
            return None;
        };
        if list.len() > most {
            let message = format!("`{}` has {} entries", self.name(key), list.len());
            self.problem(key, message, format!("at most {most} are read"));
            return None;
        }
        Some(list.as_ref())
    }
}

/// The entries of a table in the order in which they stand in the file.
pub(super) fn in_order<'s, 'd>(
    table: &'s DeTable<'d>,
) -> Vec<(&'s str, Range<usize>, &'s Spanned<DeValue<'d>>)> {
    let mut entries: Vec<_> =
        table.iter().map(|(key, value)| (&**key.get_ref(), key.span(), value)).collect();
    entries.sort_by_key(|(_, span, _)| span.start);
    entries
}

/// What is wrong with a title, if anything.
pub(super) fn title_fault(title: &str) -> Option<&'static str> {
    const LONGEST: usize = 120;
    if title.is_empty() {
        Some("is empty")
    } else if title.chars().any(char::is_control) {
        Some("has line breaks or signs that cannot be printed")
    } else if title.chars().count() > LONGEST {
        Some("is too long")
    } else {
        None
    }
}

pub(super) fn whole_number(value: &DeValue<'_>) -> Option<i64> {
    let number = value.as_integer()?;
    i64::from_str_radix(number.as_str(), number.radix()).ok()
}

fn percent(text: &str) -> Option<f64> {
    let number = text.trim().strip_suffix('%')?.trim_end().replace(',', ".");
    let plain = !number.is_empty() && number.chars().all(|sign| sign.is_ascii_digit() || sign == '.');
    number.parse::<f64>().ok().filter(|_| plain).map(|percent| percent / 100.0)
}

pub(super) fn type_name(value: &DeValue<'_>) -> &'static str {
    match value {
        DeValue::String(_) => "a text",
        DeValue::Integer(_) | DeValue::Float(_) => "a bare number",
        DeValue::Boolean(_) => "true or false",
        DeValue::Datetime(_) => "a date",
        DeValue::Array(_) => "a list",
        DeValue::Table(_) => "a section",
    }
}
