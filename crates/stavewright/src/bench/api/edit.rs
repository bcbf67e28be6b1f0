//! Changes to a pattern's text.

use std::collections::BTreeMap;

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use super::UnitsWord;

/// A value as a pattern file holds it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(untagged)]
#[schema(no_recursion)]
pub(crate) enum EditValue {
    /// `true` or `false`.
    Flag(bool),
    /// A whole number.
    Whole(i32),
    /// A number.
    Number(f64),
    /// A text, such as a length or a name.
    Text(String),
    /// A list.
    List(Vec<EditValue>),
    /// Keys and their values, written in braces.
    Table(BTreeMap<String, EditValue>),
}

impl From<&str> for EditValue {
    fn from(text: &str) -> Self {
        Self::Text(text.to_owned())
    }
}

/// One change.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(tag = "do", rename_all = "kebab-case", deny_unknown_fields)]
pub(crate) enum Edit {
    /// Writes a value, in place of the earlier one if there is one. Sections that are missing are made.
    Set {
        /// Which value.
        path: String,
        /// What to write.
        value: EditValue,
    },
    /// Writes a length in the file's own units, to the mark a maker can see: for dragging.
    Measure {
        /// Which value.
        path: String,
        /// The length in millimetres.
        mm: f64,
    },
    /// Takes a value, a section or an entry of a list out; what is not there stays away.
    Remove {
        /// Which value.
        path: String,
    },
    /// Puts an entry into a list; a list that is missing is made.
    Insert {
        /// Which list.
        path: String,
        /// Place of the new entry, counted from 1.
        at: u32,
        /// The entry.
        value: EditValue,
    },
    /// Moves an entry of a list.
    Move {
        /// Which list.
        path: String,
        /// Its place now, counted from 1.
        from: u32,
        /// Its place afterwards, counted from 1.
        to: u32,
    },
}

/// Changes to be made in order, all or none.
#[derive(Clone, Debug, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub(crate) struct EditRequest {
    /// The pattern.
    pub(crate) source: String,
    /// The changes.
    pub(crate) edits: Vec<Edit>,
    /// Whether a hand still moves: then what mends a finding is left out of the answer, which comes the sooner.
    #[serde(default)]
    #[cfg_attr(test, ts(optional = nullable, as = "Option<bool>"))]
    pub(crate) glance: bool,
    /// Language of the answer, such as `en`.
    #[cfg_attr(test, ts(optional = nullable))]
    pub(crate) language: Option<String>,
    /// Units that stand first in the answer; the pattern's own if left out.
    #[cfg_attr(test, ts(optional = nullable))]
    pub(crate) units: Option<UnitsWord>,
}
