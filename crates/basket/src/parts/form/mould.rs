//! The mould over which a vessel is woven: whether it comes out again.

use std::f64::consts::FRAC_PI_2;

use super::levels::Levels;
use super::profile::Profile;
use super::shape::Shape;
use super::undercut::Undercut;
use crate::measure::{Angle, Length};
use crate::pattern::MouldPieces;

/// Room that a segment wants to come past the narrow place (common practice: 1/4 in).
const ROOM: Length = Length::inches(0.25);

/// What is asked of a mould alone, beside its shape.
#[derive(Clone, Debug, PartialEq)]
pub struct Mould {
    /// How far it narrows again above a wider place; zero when the basket lifts off.
    pub undercut: Undercut,
    /// Smallest draft angle (lean of the wall outward); negative where it leans in.
    pub draft: Angle,
    /// Whether it comes apart.
    pub pieces: MouldPieces,
}

impl Mould {
    /// The mould of this foot, side and levels.
    pub(super) fn of(wall: (&Shape, &Profile, &Levels), pieces: MouldPieces) -> Self {
        let (outline, profile, levels) = wall;
        let sides = levels.sides(outline);
        let leans = sides.iter().flat_map(|side| profile.turning_spots().map(side));
        let draft = leans.fold(FRAC_PI_2, |least, spot| least.min(spot.lean.to_radians()));
        Self { undercut: Undercut::of(wall), draft: Angle::radians(draft), pieces }
    }

    /// The least diameter of the core of a mould in pieces: once it is out, a segment has to move in by the
    /// depth of the undercut and a little more (derived here). None for a mould in one piece.
    pub fn core(&self) -> Option<Length> {
        (self.pieces == MouldPieces::Several).then(|| 2.0 * (self.undercut.depth + ROOM))
    }
}
