//! What is known of the base.

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
    /// The wood.
    pub wood: Option<Wood>,
    /// Hole for the screw that holds the base on the mould.
    pub screw_hole: Option<Length>,
}
