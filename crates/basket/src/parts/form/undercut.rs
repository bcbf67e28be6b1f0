//! Whether a basket comes off its mould.

use super::levels::Levels;
use super::profile::{Profile, Spot};
use super::shape::Shape;
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
    pub(super) fn of(wall: (&Shape, &Profile, &Levels)) -> Self {
        Self::below(wall, wall.1.length())
    }

    /// The same of what lies below a place along the wall, on the side on which it is most.
    pub(super) fn below((outline, profile, levels): (&Shape, &Profile, &Levels), along: Length) -> Self {
        let top = profile.at(along.min(profile.length()));
        let spots = || profile.turning_spots().filter(|spot| spot.along < top.along).chain([top]);
        let sides = levels.sides(outline).into_iter().map(|side| Self::among(spots().map(side)));
        sides.fold(Self::NONE, |worst, side| if side.depth > worst.depth { side } else { worst })
    }

    const NONE: Self = Self { depth: Length::ZERO, wide_at: Length::ZERO, narrow_at: Length::ZERO };

    fn among(spots: impl Iterator<Item = Spot>) -> Self {
        let mut wide: Option<Spot> = None;
        let mut worst = Self::NONE;
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
