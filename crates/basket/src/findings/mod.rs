//! Checked facts about a basket: will it work, and what to change if not.

use serde::Serialize;

use crate::measure::Length;
use crate::message::Value;

/// How much a finding weighs.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "lowercase")]
pub enum Grade {
    /// Cannot be woven as written.
    Stop,
    /// Will show or give trouble.
    Care,
    /// Good to know.
    Note,
}

/// A checked fact. Its sentences stand in the message files under `finding-` and its code:
/// the message says what was found, its attribute `.why` why that matters, `.remedy` what mends it.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Finding {
    /// How much it weighs.
    pub grade: Grade,
    /// Which check, such as `weave-does-not-lock`.
    pub code: &'static str,
    /// Where on the basket.
    #[serde(rename = "where")]
    pub place: Place,
    /// What was measured.
    pub measured: Value,
    /// What it was measured against.
    pub limit: Value,
    /// Changes to the pattern that would mend it, best first; empty only for notes.
    pub remedies: Vec<Remedy>,
    /// Further values that the sentences mention.
    pub args: Vec<(&'static str, Value)>,
}

/// A change to the pattern.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Remedy {
    /// The pattern key, such as `staves.count`.
    pub key: String,
    /// The value to write, as TOML, such as `73` or `"3/32 in"`.
    pub value: String,
}

/// A part of the basket.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Part {
    /// The whole basket.
    Whole,
    /// The mould.
    Mould,
    /// The base.
    Base,
    /// The groove of the base.
    Groove,
    /// The staves.
    Staves,
    /// The weaving.
    Weave,
    /// The rim.
    Rim,
    /// The outer hoop.
    OuterHoop,
    /// The inner hoop.
    InnerHoop,
    /// The pins.
    Pins,
    /// The filler.
    Filler,
    /// The lashing.
    Lashing,
    /// The ears.
    Ears,
    /// The handle.
    Handle,
}

/// A place on the basket.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Place {
    /// The part.
    pub part: Part,
    /// Which one, where there are several: stave, row, course, pin or ear number.
    pub number: Option<u32>,
    /// Height above the mould's base.
    #[serde(rename = "height_mm")]
    pub height: Option<Length>,
}
