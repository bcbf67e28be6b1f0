//! The mould as its maker gives it.

use super::word::words;
use crate::measure::Length;

/// The shape over which the basket is woven.
#[derive(Clone, Debug, PartialEq)]
pub struct MouldPattern {
    /// Shape seen from above.
    pub outline: Outline,
    /// Shape seen from the side.
    pub form: MouldForm,
    /// Whether it comes apart.
    pub pieces: MouldPieces,
}

impl MouldPattern {
    /// Takes over the rim of another mould, where both are drawn from three figures.
    pub(super) fn widen(&mut self, over: Self) {
        if let (MouldForm::Drawn { rim, side, .. }, MouldForm::Drawn { rim: wider, .. }) =
            (&mut self.form, over.form)
        {
            *rim = wider;
            if *side == Side::Straight {
                *side = Side::Cone;
            }
        }
    }
}

/// Shape of a mould seen from above.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Outline {
    /// A circle at every height.
    #[default]
    Round,
}

words! { Outline:
    Round = "round", "outline-round";
}

/// Whether a mould comes apart.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum MouldPieces {
    /// It is one piece.
    #[default]
    One,
    /// Segments stand round a core that draws out first.
    Several,
}

words! { MouldPieces:
    One = "one", "mould-pieces-one";
    Several = "several", "mould-pieces-several";
}

/// Shape of a mould seen from the side.
#[derive(Clone, Debug, PartialEq)]
pub enum MouldForm {
    /// Tape measurements: girth at heights, base upward.
    Girths(Vec<Girth>),
    /// Drawn from three figures.
    Drawn {
        /// Diameter at the base.
        base: Length,
        /// Diameter at the rim.
        rim: Length,
        /// Height from base to rim.
        height: Length,
        /// How the side runs between them.
        side: Side,
    },
}

/// One tape measurement round a mould.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Girth {
    /// Height above the mould's base.
    pub height: Length,
    /// What the tape read.
    pub girth: Length,
}

/// How the side of a drawn mould runs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Side {
    /// Straight up: base and rim have one diameter.
    Straight,
    /// A straight slope from base to rim.
    Cone,
    /// A curve that ends upright at the rim.
    Bowl,
}

words! { Side:
    Straight = "straight", "side-straight";
    Cone = "cone", "side-cone";
    Bowl = "bowl", "side-bowl";
}
