//! A finding, and how it is put together.

use crate::measure::Length;
use crate::message::Value;
use crate::piece::{Of, Piece};
use crate::term::Term;

/// How much a finding weighs.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Grade {
    /// Cannot be woven as written.
    Stop,
    /// Will show or give trouble.
    Care,
    /// Good to know.
    Note,
}

/// A checked fact. Its sentences stand in the message files under `finding-` and its code:
/// the message says what was found, its attribute `.why` why that matters, `.remedy` what mends it.
#[derive(Clone, Debug, PartialEq)]
pub struct Finding {
    /// How much it weighs.
    pub grade: Grade,
    /// Which check, such as `weave-does-not-lock`.
    pub code: &'static str,
    /// Where on the basket.
    pub place: Place,
    /// What was measured.
    pub measured: Value,
    /// What it was measured against.
    pub limit: Value,
    /// Changes to the pattern that mend it, best first: each was tried. Empty where none is known.
    pub remedies: Vec<Remedy>,
    /// Further values that the sentences mention.
    pub args: Vec<(&'static str, Value)>,
}

/// A change to the pattern.
#[derive(Clone, Debug, PartialEq)]
pub struct Remedy {
    /// The pattern key, such as `staves.count`.
    pub key: String,
    /// The value to write, as TOML, such as `73` or `"3/32 in"`.
    pub value: String,
    /// The cares that come with it, one of each kind; their own remedies are not looked for.
    pub brings: Vec<Finding>,
}

/// A place on the basket.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Place {
    /// The piece, or all of a sort.
    pub piece: Piece,
    /// Of which vessel.
    pub of: Of,
    /// Height above the mould's base.
    pub height: Option<Length>,
}

impl Term for Grade {
    fn term(self) -> &'static str {
        match self {
            Self::Stop => "grade-stop",
            Self::Care => "grade-care",
            Self::Note => "grade-note",
        }
    }
}

impl Finding {
    /// A finding that measures nothing yet.
    pub(super) fn new(grade: Grade, code: &'static str, place: impl Into<Place>) -> Self {
        let nothing = Value::Count(0);
        Self {
            grade,
            code,
            place: place.into(),
            measured: nothing.clone(),
            limit: nothing,
            remedies: Vec::new(),
            args: Vec::new(),
        }
    }

    /// What was measured, and against what.
    pub(super) fn measured(mut self, measured: impl Into<Value>, limit: impl Into<Value>) -> Self {
        (self.measured, self.limit) = (measured.into(), limit.into());
        self
    }

    pub(super) fn arg(mut self, name: &'static str, value: impl Into<Value>) -> Self {
        self.args.push((name, value.into()));
        self
    }

    /// Adds a change that mends it, after those already there.
    pub(super) fn remedy(mut self, key: impl Into<String>, value: impl Into<String>) -> Self {
        self.remedies.push(Remedy { key: key.into(), value: value.into(), brings: Vec::new() });
        self
    }

    /// Adds a change that mends it, if there is one.
    pub(super) fn maybe(self, key: &str, value: Option<String>) -> Self {
        match value {
            Some(value) => self.remedy(key, value),
            None => self,
        }
    }
}

impl Place {
    pub(super) fn at(mut self, height: Length) -> Self {
        self.height = Some(height);
        self
    }
}

impl From<Piece> for Place {
    fn from(piece: Piece) -> Self {
        Self { piece, of: Of::Body, height: None }
    }
}
