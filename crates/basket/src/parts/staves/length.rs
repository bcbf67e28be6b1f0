//! How long a stave is, and how it bends from the groove up onto the mould.

use std::f64::consts::{FRAC_PI_2, PI};

use serde::Serialize;

use super::Needs;
use crate::base::Base;
use crate::form::Form;
use crate::measure::Length;

/// Left above the rim to hold and trim (common practice).
pub const USUAL_TRIM: Length = Length::inches(0.5);
/// Lengths to cut are rounded up to this.
const CUT_STEP: Length = Length::inches(1.0 / 16.0);

/// The parts of a stave's length.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct LengthParts {
    /// In the groove.
    #[serde(rename = "groove_mm")]
    pub groove: Length,
    /// From the edge of the base round the bend to the mould's foot.
    #[serde(rename = "turn_mm")]
    pub turn: Length,
    /// Along the mould to the top of the last row.
    #[serde(rename = "wall_mm")]
    pub wall: Length,
    /// Between the hoops.
    #[serde(rename = "rim_mm")]
    pub rim: Length,
    /// Left above the rim, to hold and trim.
    #[serde(rename = "trim_mm")]
    pub trim: Length,
}

/// The bend from the groove up onto the mould.
///
/// The stave leaves the groove level at half the base's thickness, and must have turned by `φ` up
/// to the slope of the mould's foot when it has risen that half thickness. A circular bend that does
/// so has radius `R = rise / (1 − cos φ)` and length `Rφ`; where the mould's foot lies further out,
/// the stave first runs on level. Derived here.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Turn {
    pub(super) radius: Length,
    pub(super) way: Length,
}

impl Turn {
    pub(super) fn of(form: &Form, base: &Base) -> Self {
        let foot = form.profile.at(Length::ZERO);
        let angle = (FRAC_PI_2 - foot.lean.to_radians()).clamp(0.0, PI);
        let rise = (base.thickness / 2.0).max(Length::ZERO);
        let share = 1.0 - libm::cos(angle);
        // A foot that is nearly level needs no bend to speak of; the base's own size bounds it.
        let widest = foot.radius.max(rise);
        let radius = if share > 0.0 { (rise / share).min(widest) } else { widest };
        let level = foot.radius - base.diameter / 2.0 - radius * libm::sin(angle);
        Self { radius, way: radius * angle + level.max(Length::ZERO) }
    }
}

impl LengthParts {
    /// The parts up to the rim, with what a given length to cut leaves for trimming (negative when it
    /// is too short); left open, the usual trim and whatever rounding up adds.
    pub(super) fn of(base: &Base, turn: Turn, needs: &Needs<'_>, given: Option<Length>) -> Self {
        let parts = Self {
            groove: base.groove_depth,
            turn: turn.way,
            wall: needs.wall,
            rim: needs.rim,
            trim: Length::ZERO,
        };
        let bare = parts.total();
        let length = given.unwrap_or_else(|| CUT_STEP * ((bare + USUAL_TRIM) / CUT_STEP - 1e-9).ceil());
        Self { trim: length - bare, ..parts }
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
