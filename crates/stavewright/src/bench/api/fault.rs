//! What went wrong.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use super::{PatternText, Problem};

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
