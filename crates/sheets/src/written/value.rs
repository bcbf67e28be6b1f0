//! A value with its kind.

use basket::message;
use serde::Serialize;

use super::measure::{Degrees, Mm};

/// A value: an object with one key, which says what it is.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
pub(crate) enum Value {
    /// A length in millimetres.
    Mm(Mm),
    /// From one length to another, in millimetres.
    #[serde(rename = "mm")]
    Span([Mm; 2]),
    /// An angle in degrees.
    Deg(Degrees),
    /// A whole number of things.
    Count(i64),
    /// A plain number.
    Number(f64),
    /// A share of one.
    Share(f64),
    /// A time in minutes.
    Minutes(f64),
    /// A name, a pattern key or a value to type.
    Name(String),
    /// Several values in a row.
    List(Vec<Self>),
    /// One of the program's own words, by its identifier.
    Term(String),
}

impl From<&message::Value> for Value {
    fn from(value: &message::Value) -> Self {
        match value {
            message::Value::Length(length) => Self::Mm(length.into()),
            message::Value::Span(from, to) => Self::Span([from.into(), to.into()]),
            message::Value::Angle(angle) => Self::Deg(angle.into()),
            message::Value::Count(count) => Self::Count(*count),
            message::Value::Number(number, _) => Self::Number(*number),
            message::Value::Percent(share) => Self::Share(*share),
            message::Value::Minutes(minutes) => Self::Minutes(*minutes),
            message::Value::Name(name) | message::Value::Material(name) | message::Value::Colour(name) => {
                Self::Name(name.clone())
            }
            message::Value::List(values) => Self::List(values.iter().map(Self::from).collect()),
            message::Value::Term(term) => Self::Term((*term).to_owned()),
            message::Value::Said(message) => Self::Term(message.id.to_owned()),
        }
    }
}
