//! A mould traced from a photograph.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use super::{Edit, UnitsWord};

/// A photograph to be traced.
#[derive(Clone, Debug, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub(crate) struct TraceRequest {
    /// The photograph as JPEG or PNG, in base64.
    pub(crate) photo: String,
    /// The girth at the widest place, as it is typed; empty where it was not taped.
    pub(crate) girth: String,
    /// The height, where no girth was taped.
    pub(crate) height: String,
    /// Distance from the lens to the middle of the mould; empty where it is not known.
    pub(crate) distance: String,
    /// Whether the mould stands on its rim.
    pub(crate) foot_up: bool,
    /// Units of the pattern.
    pub(crate) units: UnitsWord,
    /// Language of the answer, such as `en`.
    #[cfg_attr(test, ts(optional = nullable))]
    pub(crate) language: Option<String>,
}

/// What was traced.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct TracedMould {
    /// What to do to give the pattern this mould.
    pub(crate) edits: Vec<Edit>,
    /// How far to trust it, a sentence each.
    pub(crate) said: Vec<String>,
    /// Width and height of the photograph in pixels.
    pub(crate) size: [u32; 2],
    /// From its pixels to mm right of the axis and below the foot: six numbers as SVG has them in `matrix`.
    pub(crate) matrix: [f64; 6],
    /// Both edges as they were found, in pixels.
    pub(crate) edges: [Vec<[f64; 2]>; 2],
}
