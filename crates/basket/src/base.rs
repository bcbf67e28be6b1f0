//! The wooden base: disc, groove in its edge, screw hole and plug.
//!
//! The groove runs round the edge of the disc and opens outward; staves lie in it flat, each on a
//! radius, and turn up over the mould.

use serde::Serialize;

use crate::measure::Length;
use crate::stock::Wood;

/// The base as computed.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Base {
    /// Diameter of the disc.
    #[serde(rename = "diameter_mm")]
    pub diameter: Length,
    /// Thickness of the disc.
    #[serde(rename = "thickness_mm")]
    pub thickness: Length,
    /// How deep the groove goes in from the edge.
    #[serde(rename = "groove_depth_mm")]
    pub groove_depth: Length,
    /// How wide the groove is, from its lower to its upper cheek.
    #[serde(rename = "groove_width_mm")]
    pub groove_width: Length,
    /// Radius of the bottom of the groove, where the feet of the staves end.
    #[serde(rename = "groove_radius_mm")]
    pub groove_radius: Length,
    /// The wood.
    pub wood: Wood,
    /// Hole for the screw that holds the base on the mould.
    #[serde(rename = "screw_hole_mm")]
    pub screw_hole: Length,
    /// Diameter of the plug that closes the hole.
    #[serde(rename = "plug_diameter_mm")]
    pub plug_diameter: Length,
    /// How much wider the disc gets across the grain from a dry to a damp room.
    #[serde(rename = "movement_mm")]
    pub movement: Length,
}
