//! What a maker calls the steps of the making.

use super::word::words;

/// A step of the making.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum StepKind {
    /// Cutting and shaping the staves.
    Cut,
    /// Bending the handle.
    Bend,
    /// Sealing the base.
    Seal,
    /// The base on the mould.
    Base,
    /// The staves in the groove.
    Staves,
    /// The first rows.
    FirstRows,
    /// Weaving to half the height.
    Half,
    /// Weaving the rest.
    Rest,
    /// Weaving to where ears are woven in.
    ToEars,
    /// Drying and packing.
    Dry,
    /// The ears.
    Ears,
    /// The hoops, made as rings.
    Rings,
    /// Off the mould.
    OffMould,
    /// The hoops on their place.
    Rim,
    /// The pins.
    Pins,
    /// The lashing.
    Lashing,
    /// The handle.
    Handle,
    /// The plug in the base, and sanding.
    Plug,
    /// The lid, fitted.
    Lid,
    /// The finish.
    Finish,
}

words! { StepKind:
    Cut = "cut", "step-cut";
    Bend = "bend", "step-bend";
    Seal = "seal", "step-seal";
    Base = "base", "step-base";
    Staves = "staves", "step-staves";
    FirstRows = "first rows", "step-first";
    Half = "half", "step-half";
    Rest = "rest", "step-rest";
    ToEars = "to the ears", "step-to-ears";
    Dry = "dry", "step-dry";
    Ears = "ears", "step-ears";
    Rings = "rings", "step-rings";
    OffMould = "off the mould", "step-off";
    Rim = "rim", "step-rim";
    Pins = "pins", "step-pins";
    Lashing = "lashing", "step-lashing";
    Handle = "handle", "step-handle";
    Plug = "plug", "step-plug";
    Lid = "lid", "step-lid";
    Finish = "finish", "step-finish";
}
