//! What the computation wants to say, as an identifier and values: the sentence itself is made
//! from message files by the `words` crate, in the reader's language and units.

pub use crate::term::Term;

use crate::colour::Colour;
use crate::measure::{Angle, Length};
use crate::stock::{Material, Wood};

/// A value that stands in a sentence.
#[derive(Clone, Debug, PartialEq)]
pub enum Value {
    /// A length; printed in the reader's units.
    Length(Length),
    /// From one length to another; said once where both print alike.
    Span(Length, Length),
    /// An angle; printed in degrees.
    Angle(Angle),
    /// A whole number of things.
    Count(i64),
    /// A plain number, to be printed with at most this many decimals.
    Number(f64, u8),
    /// A share of one, printed in percent.
    Percent(f64),
    /// A time in minutes.
    Minutes(f64),
    /// A word that is not translated: a title, a pattern key or a value to type.
    Name(String),
    /// The name of a material as the catalogue has it; printed as the reader's language calls it.
    Material(String),
    /// The name of a colour; printed as the reader's language calls it.
    Colour(String),
    /// Several values in a row.
    List(Vec<Self>),
    /// A word that is translated: the identifier of another message.
    Term(&'static str),
    /// Words that are translated and mention values of their own.
    Said(Message),
}

impl Value {
    /// Numbers in rising order, those that follow each other as from and to: `1–4, 18, 39–43`.
    pub fn runs(numbers: &[u32]) -> Self {
        let mut runs: Vec<(u32, u32)> = Vec::new();
        for number in numbers.iter().copied() {
            match runs.last_mut() {
                Some((_, to)) if to.checked_add(1) == Some(number) => *to = number,
                _ => runs.push((number, number)),
            }
        }
        let told = runs.into_iter().map(|(from, to)| match to - from {
            0 => from.to_string(),
            1 => format!("{from}, {to}"),
            _ => format!("{from}–{to}"),
        });
        Self::Name(told.collect::<Vec<_>>().join(", "))
    }
}

/// A sentence to be: an identifier in the message files and the values it mentions.
#[derive(Clone, Debug, PartialEq)]
pub struct Message {
    /// Identifier in the message files.
    pub id: &'static str,
    /// Values by the name under which the sentence mentions them.
    pub args: Vec<(&'static str, Value)>,
}

impl Message {
    /// A message without values.
    pub fn new(id: &'static str) -> Self {
        Self { id, args: Vec::new() }
    }

    /// Adds a value.
    #[must_use]
    pub fn with(mut self, name: &'static str, value: impl Into<Value>) -> Self {
        self.args.push((name, value.into()));
        self
    }
}

impl From<Message> for Value {
    fn from(message: Message) -> Self {
        Self::Said(message)
    }
}
impl From<Length> for Value {
    fn from(length: Length) -> Self {
        Self::Length(length)
    }
}
impl From<Angle> for Value {
    fn from(angle: Angle) -> Self {
        Self::Angle(angle)
    }
}
impl From<u32> for Value {
    fn from(count: u32) -> Self {
        Self::Count(i64::from(count))
    }
}
impl From<&str> for Value {
    fn from(name: &str) -> Self {
        Self::Name(name.to_owned())
    }
}
impl From<&Material> for Value {
    fn from(material: &Material) -> Self {
        Self::Material(material.name.clone())
    }
}
impl From<&Wood> for Value {
    fn from(wood: &Wood) -> Self {
        Self::Material(wood.name.clone())
    }
}
impl From<&Colour> for Value {
    fn from(colour: &Colour) -> Self {
        Self::Colour(colour.name.clone())
    }
}
impl From<String> for Value {
    fn from(name: String) -> Self {
        Self::Name(name)
    }
}
