//! The pins through hoops and staves.

use serde::Serialize;

use crate::measure::Length;
use crate::pattern::Every;
use crate::stock::{self, Material};

/// The pins as computed.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Pins {
    /// The pin.
    #[serde(serialize_with = "stock::name_only")]
    pub stock: Material,
    /// At each or every other stave.
    pub every: Every,
    /// The staves that are pinned, in order round the rim.
    pub staves: Vec<u32>,
    /// How many.
    pub count: u32,
    /// How many more to have at hand.
    pub spares: u32,
    /// Thickness to go through.
    #[serde(rename = "stack_mm")]
    pub stack: Length,
    /// Least length: the stack and enough to clinch.
    #[serde(rename = "length_needed_mm")]
    pub length_needed: Length,
    /// Length of the pin chosen.
    #[serde(rename = "length_mm")]
    pub length: Length,
    /// Diameter of the hole to drill.
    #[serde(rename = "drill_mm")]
    pub drill: Length,
    /// What happens where the round of pins closes.
    pub meeting: PinMeeting,
}

/// What happens where the round of pins closes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum PinMeeting {
    /// The spacing comes out even.
    Even,
    /// These two neighbours are both pinned.
    Neighbours(u32, u32),
}
