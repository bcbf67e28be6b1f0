//! The mould: its profile, what it holds and whether a basket comes off it.

mod capacity;
mod curve;
mod pchip;
mod profile;
mod undercut;

use std::f64::consts::TAU;

use serde::Serialize;

use crate::measure::{Angle, Length};
use crate::pattern::{Form, MouldPattern, Outline, Side};
pub use capacity::{
    LITRES_PER_IMPERIAL_QUART, LITRES_PER_US_QUART, MM3_PER_LITRE, litres_to_imperial_quarts,
    litres_to_us_quarts,
};
pub use profile::{Profile, Spot};
pub use undercut::{Undercut, sectional_core};

/// The mould as computed.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Mould {
    /// Shape seen from above.
    pub outline: Outline,
    /// Shape seen from the side.
    pub profile: Profile,
    /// Height from base to top.
    #[serde(rename = "height_mm")]
    pub height: Length,
    /// Way along the surface from base to top.
    #[serde(rename = "arc_mm")]
    pub arc: Length,
    /// Girth at the base.
    #[serde(rename = "girth_base_mm")]
    pub girth_base: Length,
    /// Girth at the top.
    #[serde(rename = "girth_top_mm")]
    pub girth_top: Length,
    /// Largest girth.
    #[serde(rename = "girth_widest_mm")]
    pub girth_widest: Length,
    /// What it holds, in litres.
    pub capacity_litres: f64,
    /// How far the mould narrows again above a wider place; zero when the basket lifts off.
    pub undercut: Undercut,
    /// Smallest draft angle (lean of the wall outward); negative where it leans in.
    #[serde(rename = "draft_deg")]
    pub draft: Angle,
}

impl Mould {
    /// The mould that a pattern describes. Figures that make no shape give a flat or pointed one;
    /// all results are finite.
    pub fn of(pattern: &MouldPattern) -> Self {
        let profile = profile_of(&pattern.form);
        let top = profile.at(profile.length());
        let widest = profile.turning_spots().map(|spot| spot.girth()).fold(Length::ZERO, Length::max);
        let draft = profile.turning_spots().map(|spot| spot.lean.to_radians()).fold(f64::INFINITY, f64::min);
        Self {
            outline: pattern.outline,
            height: profile.height(),
            arc: profile.length(),
            girth_base: profile.at(Length::ZERO).girth(),
            girth_top: top.girth(),
            girth_widest: widest,
            capacity_litres: profile.volume_mm3() / MM3_PER_LITRE,
            undercut: Undercut::of(&profile),
            draft: Angle::radians(draft.min(std::f64::consts::FRAC_PI_2)),
            profile,
        }
    }
}

/// What a tape reads over staves of this thickness where it reads `girth` over the bare mould.
pub fn girth_over(girth: Length, thickness: Length) -> Length {
    girth + thickness * TAU
}

fn profile_of(form: &Form) -> Profile {
    match form {
        Form::Girths(girths) => {
            let places: Vec<_> = girths.iter().map(|girth| (girth.height, girth.girth / TAU)).collect();
            Profile::through(&places)
        }
        Form::Drawn { base, rim, height, side } => {
            let (base, rim) = (*base / 2.0, *rim / 2.0);
            match side {
                Side::Straight => Profile::cone(base, base, *height),
                Side::Cone => Profile::cone(base, rim, *height),
                Side::Bowl => Profile::bowl(base, rim, *height),
            }
        }
    }
}
