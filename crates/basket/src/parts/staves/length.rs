//! How long a stave is.

use super::foot::Bend;
use super::needs::Needs;
use crate::base::Base;
use crate::measure::Length;

/// Left above the rim to hold, band and trim (common practice: about 1 in).
pub const USUAL_TRIM: Length = Length::inches(1.0);
/// Lengths to cut are rounded up to this.
pub(super) const CUT_STEP: Length = Length::inches(1.0 / 16.0);

/// The parts of a stave's length.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LengthParts {
    /// In the groove.
    pub groove: Length,
    /// What the bend from the edge of the base onto the wall adds: the way round it, less the part of the
    /// wall that it keeps off.
    pub turn: Length,
    /// Along the mould to the top of the last row.
    pub wall: Length,
    /// Between the hoops.
    pub rim: Length,
    /// Left above the rim, to hold and trim.
    pub trim: Length,
}

impl LengthParts {
    /// The parts up to the rim, with what a given length to cut leaves for trimming (negative when it
    /// is too short); left open, the usual trim and whatever rounding up adds.
    pub(super) fn of(base: &Base, bend: &Bend, needs: &Needs<'_>, given: Option<Length>) -> Self {
        let parts = Self {
            groove: base.groove_depth,
            // Over a base that hides the wall, the stave keeps off more than there is.
            turn: bend.added().max(-needs.wall),
            wall: needs.wall,
            rim: needs.rim,
            trim: Length::ZERO,
        };
        parts.trimmed(given)
    }

    /// The same where the longest stave has so much farther to go up the wall.
    pub(super) fn along_paths(self, longer: Length, given: Option<Length>) -> Self {
        Self { wall: self.wall + longer, trim: Length::ZERO, ..self }.trimmed(given)
    }

    /// With what is left to trim of a given length or the usual one.
    fn trimmed(self, given: Option<Length>) -> Self {
        let bare = self.total();
        let length = given.unwrap_or_else(|| CUT_STEP * ((bare + USUAL_TRIM) / CUT_STEP - 1e-9).ceil());
        Self { trim: length - bare, ..self }
    }

    /// The whole length.
    pub fn total(&self) -> Length {
        self.groove + self.turn + self.wall + self.rim + self.trim
    }

    /// Where the foot ends, along the mould: below the mould's base, hence negative.
    pub(super) fn foot_along(&self) -> Length {
        -(self.groove + self.turn)
    }
}
