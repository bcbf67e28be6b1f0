//! Two versions side by side.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use super::{Finding, UnitsWord};

/// Which versions.
#[derive(Clone, Debug, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub(crate) struct CompareRequest {
    /// One pattern.
    pub(crate) left: String,
    /// The other.
    pub(crate) right: String,
    /// Language of the answer, such as `en`.
    #[cfg_attr(test, ts(optional = nullable))]
    pub(crate) language: Option<String>,
    /// Units that stand first; the left pattern's own if left out.
    #[cfg_attr(test, ts(optional = nullable))]
    pub(crate) units: Option<UnitsWord>,
}

/// In what two versions differ.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct Comparison {
    /// Main figures of both, those that are the same too.
    pub(crate) figures: Vec<Pair>,
    /// Values of the form that differ.
    pub(crate) fields: Vec<Pair>,
    /// Lines of the cut list that differ.
    pub(crate) cuts: Vec<Pair>,
    /// Findings of the left alone.
    pub(crate) left_findings: Vec<Finding>,
    /// Findings of the right alone.
    pub(crate) right_findings: Vec<Finding>,
    /// Findings that both have, as the right has them.
    pub(crate) both_findings: Vec<Finding>,
}

/// A figure of both versions.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct Pair {
    /// Which: the figure's id, the value's path or the piece.
    pub(crate) id: String,
    /// Its name.
    pub(crate) label: String,
    /// On the left; none if it has it not.
    pub(crate) left: Option<String>,
    /// On the right; none if it has it not.
    pub(crate) right: Option<String>,
    /// Whether they are the same.
    pub(crate) same: bool,
}
