//! Where a bail comes to rest when it is let down.

use super::{Rest, Rested};
use crate::measure::{Angle, Length};

/// Where a handle that is let down comes to rest.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Fold {
    /// It passes outside the rim and rests on the wall, or hangs straight down.
    OnWall {
        /// Angle below level.
        below_level: Angle,
        /// How far its middle hangs below the pivots.
        drop: Length,
    },
    /// It rests on the rim.
    OnRim {
        /// Angle above level; negative: below.
        above_level: Angle,
    },
}

impl Fold {
    /// How a bail that rises this much lies when it has come to rest.
    pub fn of(rise: Length, rested: Rested) -> Self {
        let below = rested.below_level.to_radians();
        match rested.on {
            Some(Rest::Rim) => Self::OnRim { above_level: Angle::radians(-below) },
            Some(Rest::Wall) | None => {
                Self::OnWall { below_level: rested.below_level, drop: rise * libm::sin(below) }
            }
        }
    }
}
