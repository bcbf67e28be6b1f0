//! The two ears that hold the handle, and the ways to set them opposite on a count of staves.

use serde::Serialize;

use crate::measure::{Angle, Length};
use crate::pattern::{EarMaterial, EarPlacing};

/// The ears as computed.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Ears {
    /// What they are made of.
    pub material: EarMaterial,
    /// How they are placed.
    pub placing: EarPlacing,
    /// Width along the rim.
    #[serde(rename = "width_mm")]
    pub width: Length,
    /// Thickness.
    #[serde(rename = "thickness_mm")]
    pub thickness: Length,
    /// Height of the rivet hole above the rim.
    #[serde(rename = "hole_height_mm")]
    pub hole_height: Length,
    /// Length of the tail below the rim's lower edge.
    #[serde(rename = "tail_mm")]
    pub tail: Length,
    /// Length of one ear, from the tail's end to the top.
    #[serde(rename = "length_mm")]
    pub length: Length,
    /// The two ears.
    pub each: [Ear; 2],
    /// How far the second is off from facing the first.
    #[serde(rename = "off_opposite_deg")]
    pub off_opposite: Angle,
    /// The same along the rim.
    #[serde(rename = "off_opposite_mm")]
    pub off_opposite_rim: Length,
    /// How far the line through both ears misses the middle of the basket.
    #[serde(rename = "off_middle_mm")]
    pub off_middle: Length,
    /// All ways of placing, least error first.
    pub options: Vec<EarOption>,
}

/// One ear.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Ear {
    /// Its middle, as a fraction of the way round.
    pub turn: f64,
    /// The nearest stave.
    pub stave: u32,
    /// How far its middle is off that stave's, along the rim; positive toward higher numbers.
    #[serde(rename = "off_stave_mm")]
    pub off_stave: Length,
}

/// What one way of placing would give.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct EarOption {
    /// The way.
    pub placing: EarPlacing,
    /// How far off opposite.
    #[serde(rename = "off_opposite_deg")]
    pub off_opposite: Angle,
    /// The same along the rim.
    #[serde(rename = "off_opposite_mm")]
    pub off_opposite_rim: Length,
    /// The larger distance of an ear's middle from its stave's.
    #[serde(rename = "off_stave_mm")]
    pub off_stave: Length,
}
