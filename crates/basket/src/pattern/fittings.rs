//! What is known of ears and handle.

use super::word::words;
use crate::measure::Length;
use crate::stock::{Material, Wood};

/// The two ears that hold the handle.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct EarsPattern {
    /// What they are made of.
    pub material: Option<EarMaterial>,
    /// The wood of wooden ears.
    pub wood: Option<Wood>,
    /// How they get into the basket.
    pub way: Option<EarWay>,
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

/// The swinging handle.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct HandlePattern {
    /// The curve of the bail.
    pub curve: Option<BailCurve>,
    /// Rise of the bail's middle above the pivots.
    pub rise: Option<Length>,
    /// Radius of the corners of a three-centred bail.
    pub corner: Option<Length>,
    /// Width of the bail, seen from the side.
    pub width: Option<Length>,
    /// Thickness of the bail, seen from the front.
    pub thickness: Option<Length>,
    /// The rivet.
    pub rivet: Option<Material>,
}

/// Whether a handle swings on its ears, or is not there.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum HandleKind {
    /// It swings.
    Swing,
    /// There is none.
    None,
}

words! { HandleKind:
    Swing = "swing", "handle-kind-swing";
    None = "none", "handle-kind-none";
}

/// The curve of a bail.
#[derive(Clone, Copy, Debug, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum BailCurve {
    /// Half a circle.
    Semicircle,
    /// Two corner arcs joined by a flatter one.
    ThreeCentred,
    /// Half an ellipse.
    HalfEllipse,
}

words! { BailCurve:
    Semicircle = "semicircle", "bail-curve-semicircle";
    ThreeCentred = "three-centred", "bail-curve-three-centred";
    HalfEllipse = "half-ellipse", "bail-curve-half-ellipse";
}
