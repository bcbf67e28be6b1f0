//! Flat drawings, and the weaving as cells.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use super::{ColourName, UnitsWord};

/// Which drawing.
#[derive(Clone, Debug, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub(crate) struct DrawingRequest {
    /// The pattern.
    pub(crate) source: String,
    /// Its name, one of [`super::Shown::drawings`].
    pub(crate) name: String,
    /// Language of its labels, such as `en`.
    #[cfg_attr(test, ts(optional = nullable))]
    pub(crate) language: Option<String>,
    /// Units that stand first; the pattern's own if left out.
    #[cfg_attr(test, ts(optional = nullable))]
    pub(crate) units: Option<UnitsWord>,
}

/// From which side the weaving is looked at.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(rename_all = "lowercase")]
pub(crate) enum FaceWord {
    /// From outside.
    Outside,
    /// From inside.
    Inside,
}

/// Which side of the weaving.
#[derive(Clone, Debug, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub(crate) struct ChartRequest {
    /// The pattern.
    pub(crate) source: String,
    /// From which side; outside if left out.
    #[cfg_attr(test, ts(optional = nullable))]
    pub(crate) face: Option<FaceWord>,
    /// Language of the answer, such as `en`.
    #[cfg_attr(test, ts(optional = nullable))]
    pub(crate) language: Option<String>,
}

/// The weaving, crossing by crossing.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct Chart {
    /// How many staves.
    pub(crate) staves: u32,
    /// Whether stave numbers rise to the left as one looks at it (they do from outside, base down).
    pub(crate) numbers_rise_left: bool,
    /// What may be seen at a crossing.
    pub(crate) seen: Vec<Seen>,
    /// Each row from the base upward.
    pub(crate) rows: Vec<ChartRow>,
    /// Where strands are joined.
    pub(crate) joins: Vec<ChartJoin>,
}

/// What may be seen at a crossing.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct Seen {
    /// The weaver within its course, counted from 1; none where the stave is seen.
    pub(crate) weaver: Option<u32>,
    /// Its colour.
    pub(crate) colour: ColourName,
}

/// One row.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct ChartRow {
    /// Its number, counted from 1 at the base.
    pub(crate) number: u32,
    /// Number of its course, counted from 1.
    pub(crate) course: u32,
    /// For each stave from 1 up an index into [`Chart::seen`].
    pub(crate) cells: Vec<u16>,
}

/// A join.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct ChartJoin {
    /// Row in which the spent strand ends.
    pub(crate) row: u32,
    /// Stave over which it is cut.
    pub(crate) cut_over: u32,
    /// Stave behind which the new one starts.
    pub(crate) start_behind: u32,
    /// Whether the colour changes.
    pub(crate) recolour: bool,
}
