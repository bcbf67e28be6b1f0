//! What is wrong in a file, where, and how to mend it.

use std::fmt;
use std::ops::Range;

/// Something in a file that keeps it from being read.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Problem {
    /// What is wrong.
    pub message: String,
    /// Where, as a range of bytes in the text.
    pub span: Option<Range<usize>>,
    /// How to mend it.
    pub help: Option<String>,
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
