//! What a maker calls the steps of the making.

use crate::message::Term;

/// A step of the making.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum StepKind {
    /// Cutting and shaping the staves.
    Cut,
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
    /// Drying and packing.
    Dry,
    /// The ears.
    Ears,
    /// The hoops.
    Rim,
    /// The pins.
    Pins,
    /// The lashing.
    Lashing,
    /// The handle.
    Handle,
    /// Off the mould.
    OffMould,
    /// The finish.
    Finish,
}

impl StepKind {
    /// All of them, by the words that a maker writes for them.
    pub const WORDS: [(&str, Self); 14] = [
        ("cut", Self::Cut),
        ("base", Self::Base),
        ("staves", Self::Staves),
        ("first rows", Self::FirstRows),
        ("half", Self::Half),
        ("rest", Self::Rest),
        ("dry", Self::Dry),
        ("ears", Self::Ears),
        ("rim", Self::Rim),
        ("pins", Self::Pins),
        ("lashing", Self::Lashing),
        ("handle", Self::Handle),
        ("off the mould", Self::OffMould),
        ("finish", Self::Finish),
    ];
}

impl Term for StepKind {
    fn term(self) -> &'static str {
        match self {
            Self::Cut => "step-cut",
            Self::Base => "step-base",
            Self::Staves => "step-staves",
            Self::FirstRows => "step-first",
            Self::Half => "step-half",
            Self::Rest => "step-rest",
            Self::Dry => "step-dry",
            Self::Ears => "step-ears",
            Self::Rim => "step-rim",
            Self::Pins => "step-pins",
            Self::Lashing => "step-lashing",
            Self::Handle => "step-handle",
            Self::OffMould => "step-off",
            Self::Finish => "step-finish",
        }
    }
}
