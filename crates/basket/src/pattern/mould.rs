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
    /// How its levels follow from its foot.
    pub levels: Levels,
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

/// Shape of a mould's foot seen from above.
#[derive(Clone, Debug, Default, PartialEq)]
pub enum Outline {
    /// A circle.
    #[default]
    Round,
    /// An ellipse, or a fuller one.
    Oval {
        /// Its length and width.
        size: FootSize,
        /// How much of the way from an ellipse to its rectangle it fills, toward the corners.
        fullness: f64,
    },
    /// Two straight sides and two round ends.
    Stadium(FootSize),
    /// A rectangle with rounded corners.
    Rectangle {
        /// Its length and width.
        size: FootSize,
        /// Radius of its corners.
        corner: Length,
    },
    /// As it was traced: from its middle to its edge at even steps of angle, counter-clockwise from the end
    /// of its length.
    Traced(Vec<Length>),
}

/// Length and width of a mould's foot.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FootSize {
    /// Over all, along its longer axis.
    pub length: Length,
    /// Over all, along its shorter axis.
    pub width: Length,
}

impl Outline {
    /// Takes another radius of its corners, or else another width; none where it has no such figure.
    pub(super) fn round_ends(&mut self, corners: bool, to: Length) -> Option<()> {
        let figure = match self {
            Self::Rectangle { corner, .. } if corners => corner,
            Self::Rectangle { size, .. } | Self::Oval { size, .. } | Self::Stadium(size) if !corners => {
                &mut size.width
            }
            _ => return None,
        };
        *figure = to;
        Some(())
    }

    /// Which shape it is.
    pub const fn kind(&self) -> OutlineKind {
        match self {
            Self::Round => OutlineKind::Round,
            Self::Oval { .. } => OutlineKind::Oval,
            Self::Stadium(_) => OutlineKind::Stadium,
            Self::Rectangle { .. } => OutlineKind::Rectangle,
            Self::Traced(_) => OutlineKind::Traced,
        }
    }
}

/// How the levels of a mould follow from its foot, where it is not round.
#[derive(Clone, Debug, Default, PartialEq)]
pub enum Levels {
    /// Each lies at an even distance from the foot all round: as much wider at the ends as at the sides.
    #[default]
    Even,
    /// Each is the foot in another size: wider at the ends than at the sides.
    Scaled,
    /// The side of the ends and that of the long sides differ: widths along the shorter axis, upward from the
    /// foot's own.
    Widths(Vec<WidthAt>),
}

/// How wide a mould is along its shorter axis at a height.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WidthAt {
    /// Height above the mould's base.
    pub height: Length,
    /// From side to side there.
    pub width: Length,
}

/// How the levels of a mould follow from its foot, where no widths are given.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum LevelsKind {
    /// At an even distance from it.
    #[default]
    Even,
    /// The same shape in another size.
    Scaled,
}

words! { LevelsKind:
    Even = "even", "levels-even";
    Scaled = "scaled", "levels-scaled";
}

/// A shape of a mould's foot seen from above.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum OutlineKind {
    /// A circle.
    #[default]
    Round,
    /// An ellipse, or a fuller one.
    Oval,
    /// Two straight sides and two round ends.
    Stadium,
    /// A rectangle with rounded corners.
    Rectangle,
    /// As it was traced.
    Traced,
}

words! { OutlineKind:
    Round = "round", "outline-round";
    Oval = "oval", "outline-oval";
    Stadium = "stadium", "outline-stadium";
    Rectangle = "rectangle", "outline-rectangle";
    Traced = "traced", "outline-traced";
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
        /// Diameter at the base; of a foot that is not round, its length.
        base: Length,
        /// Diameter or length at the rim.
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
    /// A board: level out to a rounded edge, and upright there.
    Board,
}

words! { Side:
    Straight = "straight", "side-straight";
    Cone = "cone", "side-cone";
    Bowl = "bowl", "side-bowl";
    Board = "board", "side-board";
}
