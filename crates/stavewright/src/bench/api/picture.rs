//! Pictures in the round.

use serde::Deserialize;
use utoipa::ToSchema;

/// Which picture.
#[derive(Clone, Debug, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub(crate) struct PictureRequest {
    /// The pattern.
    pub(crate) source: String,
    /// The stage of the making, one of [`super::Shown::stages`]; finished if left out.
    #[cfg_attr(test, ts(optional = nullable))]
    pub(crate) stage: Option<String>,
    /// How fine; for a page if left out.
    #[cfg_attr(test, ts(optional = nullable))]
    pub(crate) detail: Option<DetailWord>,
    /// How the lid of a finished basket is shown; closed if left out.
    #[cfg_attr(test, ts(optional = nullable))]
    pub(crate) lid: Option<LidWord>,
    /// The file wanted; GLB if left out.
    #[cfg_attr(test, ts(optional = nullable))]
    pub(crate) format: Option<SolidFormat>,
}

/// How finely a picture is cut into triangles.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(rename_all = "lowercase")]
pub(crate) enum DetailWord {
    /// While something is dragged.
    Thumbnail,
    /// To look at.
    Page,
    /// To look at closely, and to print in three dimensions.
    Full,
}

/// How a lid is shown.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(rename_all = "lowercase")]
pub(crate) enum LidWord {
    /// Shut.
    Closed,
    /// Turned back on its hinge; one without a hinge, lifted straight up.
    Open,
    /// Beside the basket; one with a hinge is open.
    Off,
}

/// Files of solids.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(rename_all = "lowercase")]
pub(crate) enum SolidFormat {
    /// For the page.
    Glb,
    /// For printing in three dimensions.
    Stl,
    /// For printing in three dimensions, with parts and colours.
    #[serde(rename = "3mf")]
    ThreeMf,
}
