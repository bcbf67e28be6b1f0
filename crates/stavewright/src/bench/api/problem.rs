//! What is wrong in a pattern.

use basket::message::Message;
use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// Something in a pattern that keeps it from being read.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct Problem {
    /// What is wrong.
    pub(crate) message: String,
    /// How to mend it.
    pub(crate) help: Option<String>,
    /// The same for those who fill in the form, in their language and without the words of the file.
    pub(crate) told: String,
    /// Line, counted from 1.
    pub(crate) line: u32,
    /// Column in characters, counted from 1.
    pub(crate) column: u32,
    /// The value of the pattern that it concerns, if it lies in one.
    pub(crate) path: Option<String>,
    /// From what it is told.
    #[serde(skip)]
    pub(crate) fault: Option<Message>,
}
