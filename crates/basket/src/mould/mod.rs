//! The mould: its profile, what it holds and whether a basket comes off it.

mod profile;

use serde::Serialize;

use crate::measure::{Angle, Length};
use crate::pattern::Outline;
pub use profile::{Profile, Spot};

/// The mould as computed.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Mould {
    /// Shape seen from above.
    pub outline: Outline,
    /// Shape seen from the side.
    pub profile: Profile,
    /// Height from base to top.
    #[serde(rename = "height_mm")]
    pub height: Length,
    /// Way along the surface from base to top.
    #[serde(rename = "arc_mm")]
    pub arc: Length,
    /// Girth at the base.
    #[serde(rename = "girth_base_mm")]
    pub girth_base: Length,
    /// Girth at the top.
    #[serde(rename = "girth_top_mm")]
    pub girth_top: Length,
    /// Largest girth.
    #[serde(rename = "girth_widest_mm")]
    pub girth_widest: Length,
    /// What it holds, in litres.
    pub capacity_litres: f64,
    /// How far the mould narrows again above a wider place; zero when the basket lifts off.
    pub undercut: Undercut,
    /// Smallest draft angle (lean of the wall outward); negative where it leans in.
    #[serde(rename = "draft_deg")]
    pub draft: Angle,
}

/// How far a mould narrows toward the rim.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Undercut {
    /// Largest loss of radius.
    #[serde(rename = "depth_mm")]
    pub depth: Length,
    /// Height of the wide place.
    #[serde(rename = "wide_at_mm")]
    pub wide_at: Length,
    /// Height of the narrow place above it.
    #[serde(rename = "narrow_at_mm")]
    pub narrow_at: Length,
}
