//! A making, as it was written down.

use basket::Length;
use basket::pattern::StepKind;

/// A making, as it was written down. What was not measured is left out.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Record {
    /// Its number in the log.
    pub number: u32,
    /// The title of the pattern.
    pub pattern: String,
    /// Who made it; a name is the maker's to give.
    pub who: Option<String>,
    /// Whether by a learner.
    pub learner: bool,
    /// Minutes of work a step, waiting not counted.
    pub minutes: Vec<(StepKind, f64)>,
    /// Length of all weavers on the basket: taken, less what was left over.
    pub weaver: Option<Length>,
    /// How many rows were woven.
    pub rows: Option<u32>,
    /// Height of the weaving along the wall, still wet.
    pub wet: Option<Length>,
    /// The same, dried and packed.
    pub dry: Option<Length>,
    /// How many staves were made, and how many of them were spoilt.
    pub staves: Option<(u32, u32)>,
    /// What went wrong.
    pub went_wrong: Option<String>,
}
