//! Units by name.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// Units by the words of a pattern.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(rename_all = "lowercase")]
pub(crate) enum UnitsWord {
    /// Inches and fractions.
    In,
    /// Millimetres.
    Mm,
}
