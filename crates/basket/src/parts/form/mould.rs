//! The mould over which a vessel is woven: whether it comes out again.

use std::f64::consts::FRAC_PI_2;

use super::profile::Profile;
use super::undercut::Undercut;
use crate::measure::Angle;

/// What is asked of a mould alone, beside its shape.
#[derive(Clone, Debug, PartialEq)]
pub struct Mould {
    /// How far it narrows again above a wider place; zero when the basket lifts off.
    pub undercut: Undercut,
    /// Smallest draft angle (lean of the wall outward); negative where it leans in.
    pub draft: Angle,
}

impl Mould {
    /// The mould of this side.
    pub fn of(profile: &Profile) -> Self {
        let leans = profile.turning_spots().map(|spot| spot.lean.to_radians());
        let draft = leans.fold(FRAC_PI_2, f64::min);
        Self { undercut: Undercut::of(profile), draft: Angle::radians(draft) }
    }
}
