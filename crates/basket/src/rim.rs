//! The two-piece split rim: hoops, scarfs and where they lie.

use serde::Serialize;

use crate::measure::Length;
use crate::stock::{self, Material};

/// The rim as computed.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Rim {
    /// Lower edge of the hoops, along the mould.
    #[serde(rename = "along_mm")]
    pub along: Length,
    /// Height of the hoops on the wall.
    #[serde(rename = "height_mm")]
    pub height: Length,
    /// Radius of the staves' inner face at the middle of the rim.
    #[serde(rename = "radius_mm")]
    pub radius: Length,
    /// Thickness through both hoops and the stave.
    #[serde(rename = "stack_mm")]
    pub stack: Length,
    /// The hoop outside the staves.
    pub outer: Hoop,
    /// The hoop inside the staves.
    pub inner: Hoop,
}

/// One hoop.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Hoop {
    /// Its stock.
    #[serde(serialize_with = "stock::name_only")]
    pub stock: Material,
    /// Length once round, at the neutral axis.
    #[serde(rename = "neutral_mm")]
    pub neutral: Length,
    /// Length to cut, with the lap.
    #[serde(rename = "cut_mm")]
    pub cut: Length,
    /// Strain of its outer fibre when bent to the rim.
    pub bend_strain: f64,
    /// The scarf that closes it.
    pub scarf: Scarf,
}

/// A long tapered overlap that closes a hoop.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Scarf {
    /// Length of the lap.
    #[serde(rename = "lap_mm")]
    pub lap: Length,
    /// Middle of the scarf, as a fraction of the way round.
    pub turn: f64,
    /// Stave nearest to its start.
    pub from_stave: u32,
    /// Stave nearest to its end.
    pub to_stave: u32,
    /// Distance along the rim from the scarf's nearer end to the nearest ear; none without ears.
    #[serde(rename = "clear_of_ear_mm")]
    pub clear_of_ear: Option<Length>,
    /// Distance along the rim between this scarf and the other hoop's.
    #[serde(rename = "clear_of_other_mm")]
    pub clear_of_other: Length,
}
