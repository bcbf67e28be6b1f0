//! One vessel: a body or a lid.

use basket::construction::Construction;
use basket::edge::Edge;
use basket::vessel;
use serde::Serialize;
use words::Words;

use super::base::Base;
use super::fittings::Pins;
use super::form::Form;
use super::lashing::{Filler, Lashing};
use super::rim::Rim;
use super::staves::Staves;
use super::vocabulary::Of;
use super::weave::Weave;

/// One vessel: a body or a lid.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(crate) struct Vessel {
    /// Which vessel it is.
    of: Of,
    /// The shape of the wall.
    form: Form,
    /// The wooden base.
    base: Base,
    /// The staves.
    pub(crate) staves: Staves,
    /// The weaving.
    pub(crate) weave: Weave,
    /// The hoops of the rim.
    rim: Rim,
    /// The filler over the stave tips, or `null`.
    filler: Option<Filler>,
    /// The lashing, or `null` where pins alone hold the rim.
    lashing: Option<Lashing>,
    /// The pins.
    pins: Pins,
}

impl Vessel {
    pub(super) fn of(of: basket::Of, vessel: &vessel::Vessel, words: &Words) -> Self {
        let vessel::Vessel { form, construction, weave, edge } = vessel;
        let Construction::Moulded { base, staves } = construction;
        let Edge::Rim { rim, filler, lashing, pins } = edge;
        Self {
            of: (&of).into(),
            form: form.into(),
            base: base.into(),
            staves: Staves::of(staves, words),
            weave: weave.into(),
            rim: rim.into(),
            filler: filler.as_ref().map(Filler::from),
            lashing: lashing.as_ref().map(Lashing::from),
            pins: pins.into(),
        }
    }
}
