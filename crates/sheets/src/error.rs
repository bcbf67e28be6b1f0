//! What can go wrong while a sheet is made.

use std::fmt;

use thiserror::Error;

/// Why a sheet or a file of the packet could not be made.
#[derive(Debug, Error)]
pub enum SheetError {
    /// A template is wrong. Points at each mistake.
    #[error("the sheet `{sheet}` could not be made:\n{}", list(.mistakes))]
    Template {
        /// The sheet.
        sheet: String,
        /// The mistakes, in the order in which they were met.
        mistakes: Vec<Mistake>,
    },
    /// The data could not be written as JSON.
    #[error("the data could not be written as JSON: {0}")]
    Json(#[from] serde_json::Error),
    /// The cut list could not be written as CSV.
    #[error("the cut list could not be written as CSV: {0}")]
    Csv(#[from] csv::Error),
}

/// One mistake in a template.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Mistake {
    /// Where it is; none when no single place is to blame.
    pub at: Option<Position>,
    /// What is wrong.
    pub message: String,
    /// How it may be mended.
    pub hints: Vec<String>,
}

impl Mistake {
    /// A mistake for which no single place is to blame.
    pub(crate) fn without_place(message: String) -> Self {
        Self { at: None, message, hints: Vec::new() }
    }
}

/// A place in a template.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Position {
    /// File, such as `handout.typ`.
    pub file: String,
    /// Line, counted from 1.
    pub line: usize,
    /// Column in characters, counted from 1.
    pub column: usize,
}

impl fmt::Display for Position {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}:{}:{}", self.file, self.line, self.column)
    }
}

impl fmt::Display for Mistake {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        if let Some(at) = &self.at {
            write!(f, "{at}: ")?;
        }
        f.write_str(&self.message)?;
        self.hints.iter().try_for_each(|hint| write!(f, "\n  hint: {hint}"))
    }
}

fn list(mistakes: &[Mistake]) -> String {
    mistakes.iter().map(ToString::to_string).collect::<Vec<_>>().join("\n")
}
