//! From a pattern to a basket, in making order.

use serde::Serialize;

use crate::base::Base;
use crate::choice::Choice;
use crate::cuts::Cut;
use crate::findings::Finding;
use crate::fittings::{Ears, Handle, Pins};
use crate::lashing::{Filler, Lashing};
use crate::mould::Mould;
use crate::pattern::{Finish, Units};
use crate::rim::Rim;
use crate::staves::Staves;
use crate::steps::Step;
use crate::weave::Weave;

/// Everything computed for one basket. A plain value: nothing in it changes once it is made.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Basket {
    /// Name of the basket.
    pub title: String,
    /// Units in which the maker thinks.
    pub units: Units,
    /// The mould.
    pub mould: Mould,
    /// The base.
    pub base: Base,
    /// The staves.
    pub staves: Staves,
    /// The weaving.
    pub weave: Weave,
    /// The rim.
    pub rim: Rim,
    /// The filler, if there is one.
    pub filler: Option<Filler>,
    /// The lashing.
    pub lashing: Lashing,
    /// The pins.
    pub pins: Pins,
    /// The ears, if there are any.
    pub ears: Option<Ears>,
    /// The handle, if there is one.
    pub handle: Option<Handle>,
    /// What protects it.
    pub finish: Finish,
    /// What Stavewright chose, and why.
    pub choices: Vec<Choice>,
    /// The cut list, in making order.
    pub cuts: Vec<Cut>,
    /// The steps, in making order.
    pub steps: Vec<Step>,
    /// The findings, heaviest first.
    pub findings: Vec<Finding>,
}

/// Computes the whole basket.
pub fn assemble(pattern: &crate::Pattern, catalogue: &crate::Catalogue) -> Basket {
    let _ = (pattern, catalogue);
    unimplemented!()
}
