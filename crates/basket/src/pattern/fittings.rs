//! What is known of the ears.

use super::word::words;
use crate::measure::Length;
use crate::stock::Wood;

/// The two ears that hold the handle.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct EarsPattern {
    /// What they are made of.
    pub material: Option<EarMaterial>,
    /// The wood of wooden ears.
    pub wood: Option<Wood>,
    /// How they get into the basket.
    pub way: Option<EarWay>,
    /// At the ends of which axis they stand, where the mould is not round.
    pub axis: Option<EarAxis>,
    /// How they are placed when no stave faces another.
    pub placing: Option<EarPlacing>,
    /// Width along the rim.
    pub width: Option<Length>,
    /// Thickness.
    pub thickness: Option<Length>,
    /// Height of the rivet hole above the rim.
    pub hole_height: Option<Length>,
    /// Length of the tail below the rim.
    pub tail: Option<Length>,
}

/// What ears are made of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum EarMaterial {
    /// Sheet brass.
    Brass,
    /// Wood, shaved.
    Wood,
    /// Oak, shaved.
    Oak,
    /// Bone.
    Bone,
}

words! { EarMaterial:
    Brass = "brass", "ear-material-brass";
    Wood = "wood", "ear-material-wood";
    Oak = "oak", "ear-material-oak";
    Bone = "bone", "ear-material-bone";
}

/// How ears get into the basket.
#[derive(Clone, Copy, Debug, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum EarWay {
    /// The tail is laid on the outside of its stave and woven in with the next rows.
    WovenIn,
    /// The tail is pushed down behind the finished weaving.
    PushedDown,
    /// The tail runs to the base as a stave.
    AsStave,
}

words! { EarWay:
    WovenIn = "woven-in", "ear-way-woven-in";
    PushedDown = "pushed-down", "ear-way-pushed-down";
    AsStave = "as-stave", "ear-way-as-stave";
}

/// An axis of a mould that is not round.
#[derive(Clone, Copy, Debug, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum EarAxis {
    /// From end to end.
    Long,
    /// From side to side.
    Short,
}

words! { EarAxis:
    Long = "long", "ear-axis-long";
    Short = "short", "ear-axis-short";
}

/// How two ears are placed on a count of staves.
#[derive(Clone, Copy, Debug, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum EarPlacing {
    /// Each ear on the middle of a stave, as near to opposite as the count allows.
    OnStaves,
    /// One ear on a stave, the other in the gap that faces it.
    StaveAndGap,
    /// Both ears a quarter pitch off their staves, exactly opposite.
    Shared,
    /// Exactly opposite, wherever the staves are.
    ByAngle,
}

words! { EarPlacing:
    OnStaves = "on-staves", "ear-placing-on-staves";
    StaveAndGap = "stave-and-gap", "ear-placing-stave-and-gap";
    Shared = "shared", "ear-placing-shared";
    ByAngle = "by-angle", "ear-placing-by-angle";
}
