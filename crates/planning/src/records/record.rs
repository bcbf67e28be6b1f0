//! A making, as it was written down.

use basket::Length;
use basket::pattern::StepKind;
use jiff::civil::Date;

/// A making, as it was written down. What was not measured is left out.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Record {
    /// Its number in the log; zero as long as it is in none.
    pub number: u32,
    /// The title of the pattern.
    pub pattern: String,
    /// Which version of the pattern's file it was made from.
    pub version: Option<String>,
    /// The day on which it was finished.
    pub made: Option<Date>,
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
    /// Girth of the weaving at its widest, still wet.
    pub girth_wet: Option<Length>,
    /// The same, dried.
    pub girth_dry: Option<Length>,
    /// How many staves were made, and how many of them were spoilt.
    pub staves: Option<(u32, u32)>,
    /// The wood, in the maker's own words.
    pub wood: Option<String>,
    /// What went wrong.
    pub went_wrong: Option<String>,
    /// File names of photographs.
    pub photos: Vec<String>,
}

impl Record {
    /// Whether it says nothing but which pattern it is of.
    pub fn is_blank(&self) -> bool {
        let Self { number, pattern, version, learner, .. } = self;
        let (number, learner) = (*number, *learner);
        *self
            == Self { number, pattern: pattern.clone(), version: version.clone(), learner, ..Self::default() }
    }
}
