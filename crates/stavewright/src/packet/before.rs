//! What a packet that stands already says otherwise: values that the pattern leaves open, and that came
//! out differently though the pattern is the same.

use std::io::Read;
use std::path::Path;

use basket::choice::Choice;
use basket::message::Value;
use basket::{Draft, Length};
use serde::Deserialize;
use words::Words;

use super::names::{KNOWN_BY, PATTERN};
use crate::input;

/// The longest file of a packet that is read again, in bytes: the largest basket has a few megabytes.
const LONGEST: u64 = 50_000_000;

/// A value that the pattern leaves open and that came out differently.
#[derive(Debug, PartialEq)]
pub(crate) struct Changed<'d> {
    /// What was chosen before.
    pub(crate) before: Value,
    /// What is chosen now, under its key.
    pub(crate) now: &'d Choice,
}

impl Changed<'_> {
    /// The line of a pattern that keeps the value from before, if one can be written.
    pub(crate) fn keep(&self) -> Option<String> {
        let value = match &self.before {
            Value::Length(length) => format!("\"{:.2} mm\"", length.to_mm()),
            Value::Count(count) => count.to_string(),
            Value::Name(name) => toml_edit::Value::from(name.as_str()).to_string().trim().to_owned(),
            _ => return None,
        };
        Some(format!("{} = {value}", self.now.key))
    }
}

/// What comes out differently than in the packet of a folder; nothing where none stands there, where it
/// cannot be read, or where its pattern was another.
pub(crate) fn changed<'d>(folder: &Path, source: &str, draft: &'d Draft, words: &Words) -> Vec<Changed<'d>> {
    if text(&folder.join(PATTERN)).is_some_and(|pattern| pattern != source) {
        return Vec::new();
    }
    let computed = text(&folder.join(KNOWN_BY)).and_then(|text| serde_json::from_str::<Computed>(&text).ok());
    let before = computed.map(|computed| computed.choices).unwrap_or_default();
    let changed = |now: &'d Choice| {
        let before = before.iter().find(|before| before.key == now.key)?.value.told()?;
        // What is printed alike is alike to a maker.
        (words.value(&before) != words.value(&now.value)).then_some(Changed { before, now })
    };
    draft.basket.choices.iter().filter_map(changed).collect()
}

fn text(path: &Path) -> Option<String> {
    let mut text = String::new();
    input::open(path).ok()?.take(LONGEST).read_to_string(&mut text).ok()?;
    Some(text)
}

/// The computed basket of a packet, as far as it is asked here.
#[derive(Deserialize)]
struct Computed {
    choices: Vec<Chosen>,
}

#[derive(Deserialize)]
struct Chosen {
    key: String,
    value: Written,
}

/// A value as `basket.json` writes it. Only one that a pattern could hold is read.
#[derive(Deserialize)]
#[serde(untagged)]
enum Written {
    Length { mm: f64 },
    Count { count: i64 },
    Name { name: String },
    Other(serde::de::IgnoredAny),
}

impl Written {
    fn told(&self) -> Option<Value> {
        match self {
            Self::Length { mm } => Some(Value::Length(Length::mm(*mm))),
            Self::Count { count } => Some(Value::Count(*count)),
            Self::Name { name } => Some(Value::Name(name.clone())),
            Self::Other(_) => None,
        }
    }
}
