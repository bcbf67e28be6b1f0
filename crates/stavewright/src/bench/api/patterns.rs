//! The pattern files of the folder.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use super::Problem;

/// A pattern file.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct PatternName {
    /// Name of the file without `.toml`.
    pub(crate) name: String,
    /// Title of the basket; the name where the file has none that can be read.
    pub(crate) title: String,
    /// What the text amounts to: two texts of one hash are the same.
    pub(crate) hash: String,
    /// When it was changed, in seconds since 1970.
    #[cfg_attr(test, ts(type = "number"))]
    pub(crate) modified: u64,
    /// Whether it can be read without problems.
    pub(crate) reads: bool,
    /// Whether a photograph is kept beside it.
    pub(crate) photo: bool,
}

/// A pattern file with its text.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct PatternText {
    /// Name of the file without `.toml`.
    pub(crate) name: String,
    /// The text.
    pub(crate) source: String,
    /// Its hash, for saving.
    pub(crate) hash: String,
}

/// A text to save.
#[derive(Clone, Debug, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub(crate) struct SaveRequest {
    /// The text.
    pub(crate) source: String,
    /// Hash of the file that it grew from; none for a new file.
    pub(crate) base_hash: Option<String>,
}

/// What was saved.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct Saved {
    /// Name of the file without `.toml`.
    pub(crate) name: String,
    /// Hash of its text.
    pub(crate) hash: String,
    /// What keeps it from being read; it was saved all the same.
    pub(crate) problems: Vec<Problem>,
}

/// A new name.
#[derive(Clone, Debug, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub(crate) struct NameRequest {
    /// The new name without `.toml`.
    pub(crate) to: String,
}

/// A pattern to start from.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct Scenario {
    /// Its name, fit for a file.
    pub(crate) name: String,
    /// Title of the basket.
    pub(crate) title: String,
    /// Its text.
    pub(crate) source: String,
}
