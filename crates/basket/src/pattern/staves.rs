//! What is known of the staves.

use super::word::words;
use crate::colour::Colour;
use crate::measure::Length;
use crate::stock::Material;

/// What is known of the staves.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct StavesPattern {
    /// How many.
    pub count: Option<u32>,
    /// From which stock.
    pub stock: Option<Material>,
    /// Full width, where the stock is cut narrower.
    pub width: Option<Length>,
    /// Wanted gap between staves at the rim.
    pub gap: Option<Length>,
    /// The taper.
    pub taper: Option<TaperPattern>,
    /// Length to cut.
    pub length: Option<Length>,
    /// How many extra staves to shape.
    pub spares: Option<u32>,
    /// Where they are spaced evenly, on a mould that is not round.
    pub spacing: Option<Spacing>,
    /// Full width of those at the two tight ends, where gaps grow.
    pub ends: Option<Length>,
    /// Which face of an oval or half round stave looks out.
    pub oval_side: Option<OvalSide>,
    /// Colours of the staves, in order round and then again; empty: natural.
    pub colours: Vec<Colour>,
}

/// Where staves are spaced evenly.
#[derive(Clone, Copy, Debug, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Spacing {
    /// At the foot (usual): each begins square to the edge of the base.
    Foot,
    /// At the foot and at the rim: those at the bends lean.
    Rim,
}

words! { Spacing:
    Foot = "foot", "staves-spacing-foot";
    Rim = "rim", "staves-spacing-rim";
}

/// Which face of a stave looks outward.
#[derive(Clone, Copy, Debug, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum OvalSide {
    /// The rounded face looks out (usual).
    Out,
    /// The rounded face lies on the mould.
    In,
}

words! { OvalSide:
    Out = "out", "oval-side-out";
    In = "in", "oval-side-in";
}

/// A straight taper toward the foot.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TaperPattern {
    /// Distance above the mould's base, along the mould, at which full width begins.
    pub from: Length,
    /// Width at the foot.
    pub foot: Length,
}
