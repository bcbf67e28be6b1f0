//! What is known of the ears.

use super::word::words;
use crate::measure::Length;

/// The two ears that hold the handle.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct EarsPattern {
    /// What they are made of.
    pub material: Option<EarMaterial>,
    /// How they are placed when no stave faces another.
    pub placing: Option<EarPlacing>,
    /// Width along the rim.
    pub width: Option<Length>,
    /// Thickness.
    pub thickness: Option<Length>,
    /// Height of the rivet hole above the rim.
    pub hole_height: Option<Length>,
    /// Length of the tail that goes down behind the weaving.
    pub tail: Option<Length>,
}

/// What ears are made of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum EarMaterial {
    /// Sheet brass.
    Brass,
    /// Oak, shaved.
    Oak,
    /// Bone.
    Bone,
}

words! { EarMaterial:
    Brass = "brass", "ear-material-brass";
    Oak = "oak", "ear-material-oak";
    Bone = "bone", "ear-material-bone";
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
