//! The lashing and the filler under it.

use basket::lashing;
use serde::Serialize;

use super::measure::Mm;
use super::vocabulary::{Every, LashingStyle};

/// The filler over the stave tips.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(crate) struct Filler {
    /// Its stock.
    stock: String,
    /// The pieces, between the ears or once round.
    pieces: Vec<FillerPiece>,
    /// Length of all pieces.
    length_mm: Mm,
}

/// One piece of filler.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
struct FillerPiece {
    /// Length to cut.
    length_mm: Mm,
    /// Where it begins, as a fraction of the way round.
    from_turn: f64,
    /// Where it ends, as a fraction of the way round; smaller than `from_turn` when the piece runs on past
    /// the first stave.
    to_turn: f64,
}

/// The lashing that binds the rim.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(crate) struct Lashing {
    /// The strand.
    weaver: String,
    /// Once round or crossed.
    style: LashingStyle,
    /// How often it goes round the rim.
    every: Every,
    /// How many wraps in all.
    wraps: u32,
    /// Way round the rim's section, at the strand's neutral axis.
    round_mm: Mm,
    /// Step along the rim from wrap to wrap.
    step_mm: Mm,
    /// Length on the rim when every wrap is pulled into a helix.
    tight_mm: Mm,
    /// Length on the rim when each wrap goes round and then steps along.
    net_mm: Mm,
    /// Length left at each end of a strand.
    tail_mm: Mm,
    /// Length to lay out, with tails and a spare.
    length_mm: Mm,
    /// How long one strand is.
    strand_mm: Mm,
    /// How many strands.
    strands: u32,
    /// Staves at which a new strand begins.
    joins: Vec<u32>,
}

impl From<&lashing::Filler> for Filler {
    fn from(filler: &lashing::Filler) -> Self {
        let lashing::Filler { stock, pieces, length } = filler;
        Self {
            stock: stock.name.clone(),
            pieces: pieces.iter().map(FillerPiece::from).collect(),
            length_mm: length.into(),
        }
    }
}

impl From<&lashing::FillerPiece> for FillerPiece {
    fn from(piece: &lashing::FillerPiece) -> Self {
        let lashing::FillerPiece { length, from_turn, to_turn } = piece;
        Self { length_mm: length.into(), from_turn: *from_turn, to_turn: *to_turn }
    }
}

impl From<&lashing::Lashing> for Lashing {
    fn from(lashing: &lashing::Lashing) -> Self {
        let lashing::Lashing {
            weaver,
            style,
            every,
            wraps,
            round,
            step,
            tight,
            net,
            tail,
            length,
            strand,
            strands,
            joins,
        } = lashing;
        Self {
            weaver: weaver.name.clone(),
            style: style.into(),
            every: every.into(),
            wraps: *wraps,
            round_mm: round.into(),
            step_mm: step.into(),
            tight_mm: tight.into(),
            net_mm: net.into(),
            tail_mm: tail.into(),
            length_mm: length.into(),
            strand_mm: strand.into(),
            strands: *strands,
            joins: joins.clone(),
        }
    }
}
