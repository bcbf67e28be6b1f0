//! The handle.

use basket::fittings;
use serde::Serialize;

use super::fittings::Ears;
use super::measure::{Degrees, Mm};
use super::vocabulary::{BailCurve, HandleJoint, HandleMade};

/// What one lifts the basket by; `kind` says which it is.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[serde(tag = "kind", rename_all = "kebab-case")]
pub(crate) enum Handle {
    /// A bail that swings on two ears.
    Swing(Swing),
    /// A bow whose ends stand in the rim.
    Fixed(Fixed),
    /// A knob on each ear.
    Knob(Knobs),
}

/// The bow of a handle.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
struct Bow {
    /// Who bends it.
    made: HandleMade,
    /// Its curve.
    curve: BailCurve,
    /// Half the distance between its feet, at its middle line: its pivots, or where it leaves the rim.
    half_span_mm: Mm,
    /// Rise of its middle line above its feet.
    rise_mm: Mm,
    /// Corner radius of a three-centred one, else `null`.
    corner_mm: Option<Mm>,
    /// Length of its middle line between its feet.
    arc_mm: Mm,
    /// Its whole length: the arc and an end beyond each foot.
    cut_mm: Mm,
    /// Its width, seen from the side.
    width_mm: Mm,
    /// Its thickness, seen from the front.
    thickness_mm: Mm,
    /// Strain of the outer face in its tightest bend.
    bend_strain: f64,
}

/// The rivets on the ears.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
struct Rivets {
    /// The rivet.
    rivet: String,
    /// Thickness that it goes through.
    grip_mm: Mm,
    /// Length of rivet: the grip and 1.5 diameters to form the head.
    rivet_length_mm: Mm,
    /// Drill for it.
    drill_mm: Mm,
    /// Rivets needed.
    rivets: u32,
    /// The burr that belongs to it, or `null` where none is known.
    burr: Option<String>,
    /// Washers or burrs needed.
    washers: u32,
}

/// A swinging handle.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(crate) struct Swing {
    #[serde(flatten)]
    bow: Bow,
    /// How it meets its ears.
    joint: HandleJoint,
    /// Width of the slot in each end, or `null` without slots.
    slot_mm: Option<Mm>,
    /// Height of the pivots above the rim.
    pivot_height_mm: Mm,
    /// How much of an ear shows between the rim and the end of the handle.
    shows_mm: Mm,
    /// Least room between the bail's rounded ends and the rim, all the way from where it rests on one side to
    /// where it rests on the other.
    swing_clearance_mm: Mm,
    /// Room between the bail's sides and the outer face of the rim as it goes down.
    side_clearance_mm: Mm,
    /// Where it comes to rest.
    fold: Fold,
    /// Where it rests: how far along the rim from an ear.
    rests_mm: Mm,
    #[serde(flatten)]
    rivets: Rivets,
    /// How far the handle leans when the ears do not face each other.
    tilt_deg: Degrees,
}

/// A fixed handle.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(crate) struct Fixed {
    #[serde(flatten)]
    bow: Bow,
    /// Its ends, which stand in the rim as ears do.
    ends: Ears,
    /// Length of each end, from the top of the rim down.
    leg_mm: Mm,
    /// How far it leans when its ends do not face each other.
    tilt_deg: Degrees,
}

/// Two knobs.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(crate) struct Knobs {
    /// Diameter of a knob.
    diameter_mm: Mm,
    /// How far it stands out.
    length_mm: Mm,
    /// Height of its middle above the rim.
    pivot_height_mm: Mm,
    /// Room between a knob and the lashed rim below it.
    rim_room_mm: Mm,
    #[serde(flatten)]
    rivets: Rivets,
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
        match handle {
            fittings::Handle::Swing(swing) => Self::Swing(Swing::from(&**swing)),
            fittings::Handle::Fixed(fixed) => Self::Fixed(Fixed::from(&**fixed)),
            fittings::Handle::Knobs(knobs) => Self::Knob(Knobs::from(&**knobs)),
        }
    }
}

impl From<&fittings::Bow> for Bow {
    fn from(bow: &fittings::Bow) -> Self {
        let fittings::Bow { made, curve, half_span, rise, corner, arc, cut, width, thickness, bend_strain } =
            bow;
        Self {
            made: made.into(),
            curve: curve.into(),
            half_span_mm: half_span.into(),
            rise_mm: rise.into(),
            corner_mm: corner.map(Mm::from),
            arc_mm: arc.into(),
            cut_mm: cut.into(),
            width_mm: width.into(),
            thickness_mm: thickness.into(),
            bend_strain: *bend_strain,
        }
    }
}

impl From<&fittings::Rivets> for Rivets {
    fn from(rivets: &fittings::Rivets) -> Self {
        let fittings::Rivets { stock, grip, length, drill, count, burr, washers } = rivets;
        Self {
            rivet: stock.name.clone(),
            grip_mm: grip.into(),
            rivet_length_mm: length.into(),
            drill_mm: drill.into(),
            rivets: *count,
            burr: burr.as_ref().map(|burr| burr.name.clone()),
            washers: *washers,
        }
    }
}

impl From<&fittings::SwingHandle> for Swing {
    fn from(handle: &fittings::SwingHandle) -> Self {
        let fittings::SwingHandle {
            bow,
            joint,
            slot,
            pivot_height,
            shows,
            swing_clearance,
            side_clearance,
            fold,
            rests,
            rivets,
            tilt,
        } = handle;
        Self {
            bow: bow.into(),
            joint: joint.into(),
            slot_mm: slot.map(Mm::from),
            pivot_height_mm: pivot_height.into(),
            shows_mm: shows.into(),
            swing_clearance_mm: swing_clearance.into(),
            side_clearance_mm: side_clearance.into(),
            fold: fold.into(),
            rests_mm: rests.into(),
            rivets: rivets.into(),
            tilt_deg: tilt.into(),
        }
    }
}

impl From<&fittings::FixedHandle> for Fixed {
    fn from(handle: &fittings::FixedHandle) -> Self {
        let fittings::FixedHandle { bow, ends, leg, tilt } = handle;
        Self { bow: bow.into(), ends: ends.into(), leg_mm: leg.into(), tilt_deg: tilt.into() }
    }
}

impl From<&fittings::Knobs> for Knobs {
    fn from(knobs: &fittings::Knobs) -> Self {
        let fittings::Knobs { diameter, length, pivot_height, rim_room, rivets } = knobs;
        Self {
            diameter_mm: diameter.into(),
            length_mm: length.into(),
            pivot_height_mm: pivot_height.into(),
            rim_room_mm: rim_room.into(),
            rivets: rivets.into(),
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
