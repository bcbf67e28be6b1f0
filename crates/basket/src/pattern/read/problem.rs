//! What is wrong in a file, where, and how to mend it.

use std::fmt;
use std::ops::Range;

use crate::message::{Message, Value};

/// Something in a file that keeps it from being read.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Problem {
    /// What is wrong.
    pub message: String,
    /// Where, as a range of bytes in the text.
    pub span: Option<Range<usize>>,
    /// How to mend it.
    pub help: Option<String>,
    /// What is wrong for those who do not read the file: under the name of the value, in their language. Values
    /// named `key` and `other` are paths of keys. None where only the file says it.
    pub fault: Option<Message>,
}

/// What is wrong, in the words of the file and for those who do not read it.
pub(super) struct Fault {
    pub(super) message: String,
    pub(super) told: Message,
}

impl Fault {
    pub(super) fn new(id: &'static str, message: String) -> Self {
        Self { message, told: Message::new(id) }
    }

    /// Adds what was perhaps meant, if that is known.
    pub(super) fn near(self, near: Option<&str>) -> Self {
        self.with("near", near.unwrap_or_default())
    }

    /// Adds how many there are.
    pub(super) fn count(self, count: usize) -> Self {
        self.with("count", u32::try_from(count).unwrap_or(u32::MAX))
    }

    /// Adds a value to the message.
    pub(super) fn with(self, name: &'static str, value: impl Into<Value>) -> Self {
        Self { told: self.told.with(name, value), ..self }
    }
}

impl Problem {
    /// Line and column at which the problem begins, both counted from 1, columns in characters.
    /// Line 1, column 1 for a problem of the whole file.
    pub fn line_column(&self, text: &str) -> (usize, usize) {
        let start = self.span.as_ref().map_or(0, |span| span.start.min(text.len()));
        let start = (0..=start).rev().find(|place| text.is_char_boundary(*place)).unwrap_or(0);
        let before = text.get(..start).unwrap_or_default();
        let line = before.matches('\n').count() + 1;
        let column = before.chars().rev().take_while(|character| *character != '\n').count() + 1;
        (line, column)
    }
}

impl fmt::Display for Problem {
    fn fmt(&self, formatter: &mut fmt::Formatter<'_>) -> fmt::Result {
        formatter.write_str(&self.message)?;
        match &self.help {
            Some(help) => write!(formatter, " ({help})"),
            None => Ok(()),
        }
    }
}

impl std::error::Error for Problem {}
