//! What stands round the wall, whatever its foot: all that weaving, edge and fittings ask of it.

use crate::measure::Length;

/// Keeps divisions by a length finite.
const LEAST: Length = Length::mm(1e-6);

/// The uprights of a wall: strips of one thickness, evenly spread, wider from the foot to a place on the
/// wall and of full width above it.
#[derive(Clone, Debug, PartialEq)]
pub struct Uprights {
    /// How many.
    pub count: u32,
    /// Thickness.
    pub thickness: Length,
    /// Full width.
    pub width: Length,
    /// Width at the foot.
    pub foot: Length,
    /// Where the foot ends, along the wall: negative.
    pub foot_along: Length,
    /// Where full width begins, along the wall.
    pub full_from: Length,
}

impl Uprights {
    /// Where an upright (numbered from 1) stands, as a share of the way round.
    pub fn turn(&self, number: u32) -> f64 {
        f64::from(number.saturating_sub(1)) / f64::from(self.count.max(1))
    }

    /// The upright nearest to a share of the way round.
    pub fn nearest(&self, turn: f64) -> u32 {
        let count = f64::from(self.count.max(1));
        let index = (turn.rem_euclid(1.0) * count).round() % count;
        index as u32 + 1
    }

    /// Width of an upright this far along the wall.
    pub fn width_at(&self, along: Length) -> Length {
        let share = (along - self.foot_along) / (self.full_from - self.foot_along).max(LEAST);
        self.foot + (self.width - self.foot) * share.clamp(0.0, 1.0)
    }

    /// Way from the middle of one upright to that of the next on a girth.
    pub fn pitch(&self, girth: Length) -> Length {
        girth / f64::from(self.count.max(1))
    }
}
