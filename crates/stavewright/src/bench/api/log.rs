//! The log of makings, the hand that is learned from it, and what every pattern was before.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

/// The log as it stands.
#[derive(Clone, Debug, Default, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct MakingLog {
    /// The makings, the last first.
    pub(crate) makings: Vec<Making>,
    /// Everybody who is named in it.
    pub(crate) makers: Vec<String>,
    /// Whose hand the workshop works with; none for the usual one.
    pub(crate) adopted: Option<String>,
}

/// A making that was written down.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct Making {
    /// Its number.
    pub(crate) number: u32,
    /// Title of the pattern.
    pub(crate) pattern: String,
    /// The day on which it was finished; empty if nobody said.
    pub(crate) made: String,
    /// Who made it; empty if nobody said.
    pub(crate) who: String,
    /// What was measured, to read.
    pub(crate) says: Vec<String>,
    /// What went wrong.
    pub(crate) went_wrong: String,
    /// Names of its photographs.
    pub(crate) photos: Vec<String>,
}

/// What can be written down of a pattern's making, with what was planned.
#[derive(Clone, Debug, Serialize, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct MakingForm {
    /// Title of the pattern.
    pub(crate) title: String,
    /// Its steps with work in them, in order.
    pub(crate) steps: Vec<MakingStep>,
    /// What was planned, to read: rows, weaver, staves.
    pub(crate) rows: String,
    /// How much weaver was planned.
    pub(crate) weaver: String,
    /// How many staves were planned.
    pub(crate) staves: String,
}

/// A step.
#[derive(Clone, Debug, Serialize, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct MakingStep {
    /// Its word.
    pub(crate) step: String,
    /// Its name.
    pub(crate) label: String,
    /// How long it was planned to take.
    pub(crate) planned: String,
}

/// A making as it is typed; empty where nothing was measured.
#[derive(Clone, Debug, Default, Serialize, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub(crate) struct MakingText {
    /// The day on which it was finished, as `2027-04-11`.
    pub(crate) made: String,
    /// Who made it; a name is the maker's to give.
    pub(crate) who: String,
    /// Whether by a learner.
    pub(crate) learner: bool,
    /// Minutes of work a step.
    pub(crate) minutes: Vec<MakingMinutes>,
    /// Length of all weavers on the basket.
    pub(crate) weaver: String,
    /// Rows.
    pub(crate) rows: String,
    /// Height of the weaving along the wall, wet.
    pub(crate) wet: String,
    /// The same, dry.
    pub(crate) dry: String,
    /// Girth of the weaving at its widest, wet.
    pub(crate) girth_wet: String,
    /// The same, dry.
    pub(crate) girth_dry: String,
    /// Staves that were made.
    pub(crate) staves: String,
    /// How many of them were spoilt.
    pub(crate) spoilt: String,
    /// The wood.
    pub(crate) wood: String,
    /// What went wrong.
    pub(crate) went_wrong: String,
    /// Names of photographs that were sent before.
    pub(crate) photos: Vec<String>,
}

/// How long a step took.
#[derive(Clone, Debug, Serialize, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub(crate) struct MakingMinutes {
    /// The word of the step.
    pub(crate) step: String,
    /// Minutes, as they are typed.
    pub(crate) minutes: String,
}

/// Something to do with the log; the answer is the log as it stands afterwards.
#[derive(Clone, Debug, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(tag = "do", rename_all = "kebab-case", deny_unknown_fields)]
pub(crate) enum LogAct {
    /// Write a making down.
    Log {
        /// File of its pattern, without `.toml`.
        pattern: String,
        /// What was measured.
        making: Box<MakingText>,
    },
    /// Forget makings for good, with their photographs.
    Forget {
        /// Their numbers.
        numbers: Vec<u32>,
    },
    /// Work with the hand that the log tells of.
    Adopt {
        /// Whose; of all if left out.
        #[cfg_attr(test, ts(optional = nullable))]
        who: Option<String>,
    },
    /// Work with the usual hand again.
    TakeBack,
}

/// A photograph that is kept.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct KeptPhoto {
    /// Its name.
    pub(crate) name: String,
}

/// What the log says of a hand.
#[derive(Clone, Debug, Default, Serialize, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct LearnedHand {
    /// From how many makings.
    pub(crate) makings: u32,
    /// How many are left out: their pattern is not here, or they measured something else.
    pub(crate) left_out: u32,
    /// Each figure beside the usual one, with the bounds within which it lies.
    pub(crate) figures: Vec<String>,
    /// Title of the pattern that was worked out with and without them.
    pub(crate) pattern: String,
    /// What it is with them, and was before.
    pub(crate) drafted: Vec<String>,
}

/// A text that a pattern had when it was saved.
#[derive(Clone, Debug, Serialize, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct PastVersion {
    /// Its number.
    #[cfg_attr(test, ts(type = "number"))]
    pub(crate) id: i64,
    /// When it was saved, in UTC, as `2026-10-18T14:05:00Z`.
    pub(crate) at: String,
    /// The text.
    pub(crate) source: String,
    /// In what it differs from the one before it; empty for the first.
    pub(crate) says: Vec<String>,
}
