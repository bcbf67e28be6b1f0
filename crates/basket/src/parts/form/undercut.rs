//! Whether a basket comes off its mould.

use super::profile::{Profile, Spot};
use crate::measure::Length;

/// Less than this is rounding in the computation, not a mould.
const ROUNDING: Length = Length::mm(1e-6);

/// How far a mould narrows toward the rim.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Undercut {
    /// Largest loss of radius.
    pub depth: Length,
    /// Height of the wide place.
    pub wide_at: Length,
    /// Height of the narrow place above it.
    pub narrow_at: Length,
}

impl Undercut {
    /// The largest `r(z) − r(z')` over all `z < z'`: a mould in one piece comes out only if the
    /// radius never falls toward the rim (derived here). Zero, at height 0, when it lifts off.
    pub(super) fn of(profile: &Profile) -> Self {
        Self::among(profile.turning_spots())
    }

    /// The same of what lies below a place along the wall.
    pub fn below(profile: &Profile, along: Length) -> Self {
        let top = profile.at(along.min(profile.length()));
        let lower = profile.turning_spots().filter(|spot| spot.along < top.along);
        Self::among(lower.chain([top]))
    }

    fn among(spots: impl Iterator<Item = Spot>) -> Self {
        let none = Self { depth: Length::ZERO, wide_at: Length::ZERO, narrow_at: Length::ZERO };
        let mut wide: Option<Spot> = None;
        let mut worst = none;
        for spot in spots {
            let widest = wide.filter(|widest| widest.radius >= spot.radius).unwrap_or(spot);
            let depth = widest.radius - spot.radius;
            if depth > worst.depth.max(ROUNDING) {
                worst = Self { depth, wide_at: widest.height, narrow_at: spot.height };
            }
            wide = Some(widest);
        }
        worst
    }
}
