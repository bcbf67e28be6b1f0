//! What is known of the base.

use super::word::words;
use crate::measure::Length;
use crate::stock::Wood;

/// The wooden disc in whose groove the staves stand.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct BasePattern {
    /// Diameter of the disc.
    pub diameter: Option<Length>,
    /// Thickness of the disc.
    pub thickness: Option<Length>,
    /// How deep the groove goes in from the edge.
    pub groove_depth: Option<Length>,
    /// How wide the groove is, across its depth.
    pub groove_width: Option<Length>,
    /// The wood, or the woods of the strips it is glued up from, side by side.
    pub woods: Option<Vec<Wood>>,
    /// Hole for the screw that holds the base on the mould.
    pub screw_hole: Option<Length>,
    /// Where rings are turned in it.
    pub rings: Option<Rings>,
    /// Whether it is sealed before the weaving.
    pub sealed: Option<bool>,
}

/// On which face of a base rings are turned for show.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Rings {
    /// On neither.
    #[default]
    None,
    /// On the underside: they look out.
    Out,
    /// On the upper side: they look in.
    In,
}

words! { Rings:
    None = "none", "rings-none";
    Out = "out", "rings-out";
    In = "in", "rings-in";
}
