//! Putting a finding together.

use super::{Finding, Grade, Place, Remedy};
use crate::measure::Length;
use crate::message::Value;
use crate::piece::{Of, Piece};

impl Finding {
    pub(super) fn new(
        grade: Grade,
        code: &'static str,
        place: impl Into<Place>,
        measured: impl Into<Value>,
        limit: impl Into<Value>,
    ) -> Self {
        Self {
            grade,
            code,
            place: place.into(),
            measured: measured.into(),
            limit: limit.into(),
            remedies: Vec::new(),
            args: Vec::new(),
        }
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
