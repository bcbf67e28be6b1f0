//! The handle.

use basket::fittings;
use serde::Serialize;

use super::measure::{Degrees, Mm};
use super::vocabulary::BailCurve;

/// The swinging handle.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(crate) struct Handle {
    /// The curve of the bail.
    curve: BailCurve,
    /// Half the distance between the pivots, at the bail's middle line.
    half_span_mm: Mm,
    /// Rise of the bail's middle line above the pivots.
    rise_mm: Mm,
    /// Corner radius of a three-centred bail, else `null`.
    corner_mm: Option<Mm>,
    /// Length of the middle line between the pivots.
    arc_mm: Mm,
    /// Length to cut: the arc and an end beyond each pivot.
    cut_mm: Mm,
    /// Width of the bail, seen from the side.
    width_mm: Mm,
    /// Thickness of the bail, seen from the front.
    thickness_mm: Mm,
    /// Height of the pivots above the rim.
    pivot_height_mm: Mm,
    /// Least room between the bail's rounded ends and the rim, all the way from where it rests on one side to
    /// where it rests on the other.
    swing_clearance_mm: Mm,
    /// Room between the bail's sides and the outer face of the rim as it goes down.
    side_clearance_mm: Mm,
    /// Where it comes to rest.
    fold: Fold,
    /// Where it rests: how far along the rim from an ear.
    rests_mm: Mm,
    /// Strain of the bail's outer face in its tightest bend.
    bend_strain: f64,
    /// The rivet.
    rivet: String,
    /// Thickness that the rivet goes through: bail, ear and washers.
    grip_mm: Mm,
    /// Length of rivet: the grip and 1.5 diameters to form the head.
    rivet_length_mm: Mm,
    /// Drill for the rivet.
    drill_mm: Mm,
    /// Rivets needed.
    rivets: u32,
    /// The burr that belongs to the rivet, or `null` where none is known.
    burr: Option<String>,
    /// Washers or burrs needed.
    washers: u32,
    /// How far the handle leans when the ears do not face each other.
    tilt_deg: Degrees,
}

/// Where a handle that is let down comes to rest.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[serde(rename_all = "snake_case")]
enum Fold {
    /// It passes outside the rim and rests on the wall, or hangs straight down.
    OnWall {
        /// Angle below level.
        below_level_deg: Degrees,
        /// How far its middle hangs below the pivots.
        drop_mm: Mm,
    },
    /// It rests on the rim.
    OnRim {
        /// Angle above level; negative: below.
        above_level_deg: Degrees,
    },
}

impl From<&fittings::Handle> for Handle {
    fn from(handle: &fittings::Handle) -> Self {
        let fittings::Handle {
            curve,
            half_span,
            rise,
            corner,
            arc,
            cut,
            width,
            thickness,
            pivot_height,
            swing_clearance,
            side_clearance,
            fold,
            rests,
            bend_strain,
            rivet,
            grip,
            rivet_length,
            drill,
            rivets,
            burr,
            washers,
            tilt,
        } = handle;
        Self {
            curve: curve.into(),
            half_span_mm: half_span.into(),
            rise_mm: rise.into(),
            corner_mm: corner.map(Mm::from),
            arc_mm: arc.into(),
            cut_mm: cut.into(),
            width_mm: width.into(),
            thickness_mm: thickness.into(),
            pivot_height_mm: pivot_height.into(),
            swing_clearance_mm: swing_clearance.into(),
            side_clearance_mm: side_clearance.into(),
            fold: fold.into(),
            rests_mm: rests.into(),
            bend_strain: *bend_strain,
            rivet: rivet.name.clone(),
            grip_mm: grip.into(),
            rivet_length_mm: rivet_length.into(),
            drill_mm: drill.into(),
            rivets: *rivets,
            burr: burr.as_ref().map(|burr| burr.name.clone()),
            washers: *washers,
            tilt_deg: tilt.into(),
        }
    }
}

impl From<&fittings::Fold> for Fold {
    fn from(fold: &fittings::Fold) -> Self {
        match fold {
            fittings::Fold::OnWall { below_level, drop } => {
                Self::OnWall { below_level_deg: below_level.into(), drop_mm: drop.into() }
            }
            fittings::Fold::OnRim { above_level } => Self::OnRim { above_level_deg: above_level.into() },
        }
    }
}
