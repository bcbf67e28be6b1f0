//! The lashing that binds the rim, and the filler under it.

use serde::Serialize;

use crate::measure::Length;
use crate::pattern::{Every, LashingStyle};
use crate::stock::{self, Material};

/// The lashing as computed.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Lashing {
    /// The strand.
    #[serde(serialize_with = "stock::name_only")]
    pub weaver: Material,
    /// Once round or crossed.
    pub style: LashingStyle,
    /// How often it goes round the rim.
    pub every: Every,
    /// How many wraps in all.
    pub wraps: u32,
    /// Way round the rim's section, at the strand's neutral axis.
    #[serde(rename = "round_mm")]
    pub round: Length,
    /// Step along the rim from wrap to wrap.
    #[serde(rename = "step_mm")]
    pub step: Length,
    /// Length on the rim when every wrap is pulled into a helix.
    #[serde(rename = "tight_mm")]
    pub tight: Length,
    /// Length on the rim when each wrap goes round and then steps along.
    #[serde(rename = "net_mm")]
    pub net: Length,
    /// Length left at each end of a strand.
    #[serde(rename = "tail_mm")]
    pub tail: Length,
    /// Length to lay out, with tails and a spare.
    #[serde(rename = "length_mm")]
    pub length: Length,
    /// How long one strand is.
    #[serde(rename = "strand_mm")]
    pub strand: Length,
    /// How many strands.
    pub strands: u32,
    /// Staves at which a new strand begins.
    pub joins: Vec<u32>,
}

/// The filler as computed.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Filler {
    /// Its stock.
    #[serde(serialize_with = "stock::name_only")]
    pub stock: Material,
    /// The pieces, between the ears or once round.
    pub pieces: Vec<FillerPiece>,
    /// Length of all pieces.
    #[serde(rename = "length_mm")]
    pub length: Length,
}

/// One piece of filler.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct FillerPiece {
    /// Length to cut.
    #[serde(rename = "length_mm")]
    pub length: Length,
    /// Where it begins, as a fraction of the way round.
    pub from_turn: f64,
    /// Where it ends, as a fraction of the way round.
    pub to_turn: f64,
}
