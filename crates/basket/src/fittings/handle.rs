//! The swinging handle: bail, rivets, swing clearance and how far it folds.

use serde::Serialize;

use crate::measure::{Angle, Length};
use crate::pattern::BailCurve;
use crate::stock::{self, Material};

/// The handle as computed.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Handle {
    /// The curve of the bail.
    pub curve: BailCurve,
    /// Half the distance between the pivots, at the bail's middle line.
    #[serde(rename = "half_span_mm")]
    pub half_span: Length,
    /// Rise of the bail's middle line above the pivots.
    #[serde(rename = "rise_mm")]
    pub rise: Length,
    /// Corner radius of a three-centred bail.
    #[serde(rename = "corner_mm")]
    pub corner: Option<Length>,
    /// Length of the middle line between the pivots.
    #[serde(rename = "arc_mm")]
    pub arc: Length,
    /// Length to cut: the arc and an end beyond each pivot.
    #[serde(rename = "cut_mm")]
    pub cut: Length,
    /// Width of the bail, seen from the side.
    #[serde(rename = "width_mm")]
    pub width: Length,
    /// Thickness of the bail, seen from the front.
    #[serde(rename = "thickness_mm")]
    pub thickness: Length,
    /// Height of the pivots above the rim.
    #[serde(rename = "pivot_height_mm")]
    pub pivot_height: Length,
    /// Room between the bail's rounded ends and the rim below the pivot.
    #[serde(rename = "swing_clearance_mm")]
    pub swing_clearance: Length,
    /// Room between the bail's sides and the outer face of the rim as it goes down.
    #[serde(rename = "side_clearance_mm")]
    pub side_clearance: Length,
    /// Where it comes to rest.
    pub fold: Fold,
    /// Strain of the bail's outer face in its tightest bend.
    pub bend_strain: f64,
    /// The rivet.
    #[serde(serialize_with = "stock::name_only")]
    pub rivet: Material,
    /// Thickness that the rivet goes through: bail, ear and washers.
    #[serde(rename = "grip_mm")]
    pub grip: Length,
    /// Length of rivet: the grip and 1.5 diameters to form the head.
    #[serde(rename = "rivet_length_mm")]
    pub rivet_length: Length,
    /// Drill for the rivet.
    #[serde(rename = "drill_mm")]
    pub drill: Length,
    /// Rivets needed.
    pub rivets: u32,
    /// Washers or burrs needed.
    pub washers: u32,
    /// How far the handle leans when the ears do not face each other.
    #[serde(rename = "tilt_deg")]
    pub tilt: Angle,
}

/// Where a handle that is let down comes to rest.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Fold {
    /// It passes outside the rim and rests on the wall.
    OnWall {
        /// Angle below level.
        #[serde(rename = "below_level_deg")]
        below_level: Angle,
        /// How far its middle hangs below the pivots.
        #[serde(rename = "drop_mm")]
        drop: Length,
    },
    /// It is no wider than the rim and rests on it.
    OnRim {
        /// Angle above level.
        #[serde(rename = "above_level_deg")]
        above_level: Angle,
    },
}
