//! States of the basket in the making.

use crate::term::Term;
use crate::weave::Weave;

/// Rows that make a start, where the first course is longer than a start (common practice).
const START: u32 = 4;

/// A state of the basket that a step reaches.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Stage {
    /// Material cut and shaped, nothing assembled.
    Prepared,
    /// The base is screwed on the mould.
    BaseOnMould,
    /// All staves stand in the groove under a band.
    StavesSet,
    /// The first rows are woven.
    FirstRows,
    /// The body is half woven.
    HalfWoven,
    /// The weaving is done, dried and packed.
    Woven,
    /// The ears are set.
    EarsSet,
    /// The hoops are scarfed and clamped.
    RimClamped,
    /// The tips are trimmed and the pins are in.
    Pinned,
    /// Filler and lashing are on.
    Lashed,
    /// The handle swings.
    Handled,
    /// Finished.
    Finished,
}

impl Stage {
    /// All of them, in making order.
    pub const ALL: [Self; 12] = [
        Self::Prepared,
        Self::BaseOnMould,
        Self::StavesSet,
        Self::FirstRows,
        Self::HalfWoven,
        Self::Woven,
        Self::EarsSet,
        Self::RimClamped,
        Self::Pinned,
        Self::Lashed,
        Self::Handled,
        Self::Finished,
    ];

    /// How many rows are woven by then: at first the first course if it is short, else a few rows of it.
    pub fn rows(self, weave: &Weave) -> u32 {
        let first = weave.courses.first().map_or(0, |course| course.rows);
        let start = if first <= START * 2 { first } else { START }.min(weave.rows);
        match self {
            Self::Prepared | Self::BaseOnMould | Self::StavesSet => 0,
            Self::FirstRows => start,
            Self::HalfWoven => (weave.rows / 2).max(start),
            _ => weave.rows,
        }
    }

    /// Its name, fit for a file and a command line, such as `half-woven`.
    pub fn name(self) -> &'static str {
        self.term().trim_start_matches("stage-")
    }

    /// The stage of this name.
    pub fn named(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|stage| stage.name() == name)
    }
}

impl Term for Stage {
    fn term(self) -> &'static str {
        match self {
            Self::Prepared => "stage-prepared",
            Self::BaseOnMould => "stage-base-on-mould",
            Self::StavesSet => "stage-staves-set",
            Self::FirstRows => "stage-first-rows",
            Self::HalfWoven => "stage-half-woven",
            Self::Woven => "stage-woven",
            Self::EarsSet => "stage-ears-set",
            Self::RimClamped => "stage-rim-clamped",
            Self::Pinned => "stage-pinned",
            Self::Lashed => "stage-lashed",
            Self::Handled => "stage-handled",
            Self::Finished => "stage-finished",
        }
    }
}
