//! The cut list, in making order.

use serde::Serialize;

use crate::measure::Length;
use crate::message::Message;

/// One line of the cut list.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Cut {
    /// Which piece: identifier of its name in the message files, such as `cut-stave`.
    pub piece: &'static str,
    /// Name of the material.
    pub material: String,
    /// How many for the basket.
    pub count: u32,
    /// How many more to have ready.
    pub spares: u32,
    /// Length of one piece.
    #[serde(rename = "length_mm")]
    pub length: Option<Length>,
    /// Width of one piece (diameter of a disc or rod).
    #[serde(rename = "width_mm")]
    pub width: Option<Length>,
    /// How to shape it, such as a taper.
    pub shape: Option<Message>,
    /// Length of all pieces with spares.
    #[serde(rename = "total_mm")]
    pub total: Option<Length>,
    /// What it is for.
    pub purpose: Message,
}
