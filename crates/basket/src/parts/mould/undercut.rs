//! Whether a basket comes off its mould.

use serde::Serialize;

use super::profile::{Profile, Spot};
use crate::measure::Length;

/// Less than this is rounding in the computation, not a mould.
const ROUNDING: Length = Length::mm(1e-6);

/// How far a mould narrows toward the rim.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Undercut {
    /// Largest loss of radius.
    #[serde(rename = "depth_mm")]
    pub depth: Length,
    /// Height of the wide place.
    #[serde(rename = "wide_at_mm")]
    pub wide_at: Length,
    /// Height of the narrow place above it.
    #[serde(rename = "narrow_at_mm")]
    pub narrow_at: Length,
}

impl Undercut {
    /// The largest `r(z) − r(z')` over all `z < z'`: a mould in one piece comes out only if the
    /// radius never falls toward the rim (derived here). Zero, at height 0, when it lifts off.
    pub fn of(profile: &Profile) -> Self {
        let none = Self { depth: Length::ZERO, wide_at: Length::ZERO, narrow_at: Length::ZERO };
        let mut wide: Option<Spot> = None;
        let mut worst = none;
        for spot in profile.turning_spots() {
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

/// Least and largest radius of the draw-out core of a mould in sections: the sections move inward
/// by the undercut once the core is out, and the core itself must pass the neck. `None` when the
/// basket lifts off a mould in one piece; no core fits when the first is not below the second.
/// Derived here.
pub fn sectional_core(profile: &Profile) -> Option<(Length, Length)> {
    let undercut = Undercut::of(profile);
    let neck = profile.at(profile.along_at_height(undercut.narrow_at)).radius;
    (undercut.depth > Length::ZERO).then_some((undercut.depth, neck))
}
