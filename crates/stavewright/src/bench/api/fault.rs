//! What went wrong.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use super::PatternText;

/// Why a request was not done. The status code says the class, this the particulars.
#[derive(Clone, Debug, Serialize, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct Fault {
    /// What is wrong.
    pub(crate) what: String,
    /// Where: a file, a key, a header.
    #[serde(rename = "where")]
    pub(crate) place: String,
    /// How to mend it.
    pub(crate) how_to_mend: String,
    /// What is wrong in the pattern, where that is why.
    pub(crate) problems: Vec<Problem>,
    /// The file as it stands now, where it changed outside the bench.
    pub(crate) present: Option<PatternText>,
}

/// Something in a pattern that keeps it from being read.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct Problem {
    /// What is wrong.
    pub(crate) message: String,
    /// How to mend it.
    pub(crate) help: Option<String>,
    /// Line, counted from 1.
    pub(crate) line: u32,
    /// Column in characters, counted from 1.
    pub(crate) column: u32,
    /// The value of the pattern that it concerns, if it lies in one.
    pub(crate) path: Option<String>,
}
