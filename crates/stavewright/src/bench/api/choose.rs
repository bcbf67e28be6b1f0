//! Choosing by seeing: ways to weave, counts of staves, the first basket.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use super::{Edit, UnitsWord};

/// What is seen from outside.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(rename_all = "lowercase")]
pub(crate) enum LookWord {
    /// Lines that climb round the basket.
    Spiral,
    /// Lines straight up.
    Columns,
    /// Lines straight round.
    Bands,
    /// No line stands out.
    Checks,
    /// Lines that lean one way, then the other.
    Arrows,
    /// All alike.
    Plain,
}

/// To which side, as seen from outside on a basket that stands on its base.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(rename_all = "lowercase")]
pub(crate) enum SideWord {
    /// Up to the left.
    Left,
    /// Up to the right.
    Right,
}

/// A look that is wanted.
#[derive(Clone, Debug, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub(crate) struct Wish {
    /// Which; the best of each if left out.
    #[cfg_attr(test, ts(optional = nullable))]
    pub(crate) look: Option<LookWord>,
    /// For spirals: to which side they climb; either if left out.
    #[cfg_attr(test, ts(optional = nullable))]
    pub(crate) lean: Option<SideWord>,
    /// For spirals: how often a line goes round; any number if left out.
    #[cfg_attr(test, ts(optional = nullable))]
    pub(crate) turns: Option<f64>,
    /// The colours, one to three by their names; the staves' first.
    pub(crate) colours: Vec<String>,
}

/// Ways to weave a course so that it looks as wanted.
#[derive(Clone, Debug, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub(crate) struct WaysRequest {
    /// The pattern.
    pub(crate) source: String,
    /// Number of the course, counted from 1.
    pub(crate) course: u32,
    /// What is wanted.
    pub(crate) wish: Wish,
    /// How many ways to answer; six if left out.
    #[cfg_attr(test, ts(optional = nullable))]
    pub(crate) most: Option<u32>,
    /// Language of the answer, such as `en`.
    #[cfg_attr(test, ts(optional = nullable))]
    pub(crate) language: Option<String>,
    /// Units that stand first in the answer; the pattern's own if left out.
    #[cfg_attr(test, ts(optional = nullable))]
    pub(crate) units: Option<UnitsWord>,
}

/// What was found, best first.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct Ways {
    /// Each of them was woven on this basket.
    pub(crate) each: Vec<Way>,
}

/// A way to weave a course.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct Way {
    /// The look that it was searched for.
    pub(crate) look: LookWord,
    /// Name of the weave.
    pub(crate) weave: String,
    /// What is seen, in words.
    pub(crate) seen: String,
    /// How many staves it stands on.
    pub(crate) staves: u32,
    /// What it changes besides the weave, a sentence each.
    pub(crate) changes: Vec<String>,
    /// How it looks.
    pub(crate) picture: LittleChart,
    /// The changes.
    pub(crate) edits: Vec<Edit>,
}

/// A piece of the weaving as it is seen from outside, base below.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct LittleChart {
    /// What may be seen, as `#rrggbb`.
    pub(crate) colours: Vec<String>,
    /// For each row, the uppermost first, what is seen at each stave from left to right: an index into
    /// [`LittleChart::colours`], and whether it is a weaver.
    pub(crate) rows: Vec<Vec<(u16, bool)>>,
}

/// Which counts of staves there are near by.
#[derive(Clone, Debug, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub(crate) struct CountsRequest {
    /// The pattern.
    pub(crate) source: String,
    /// Language of the answer, such as `en`.
    #[cfg_attr(test, ts(optional = nullable))]
    pub(crate) language: Option<String>,
    /// Units that stand first in the answer; the pattern's own if left out.
    #[cfg_attr(test, ts(optional = nullable))]
    pub(crate) units: Option<UnitsWord>,
}

/// Counts of staves near by.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct Counts {
    /// From few to many.
    pub(crate) each: Vec<CountOfStaves>,
}

/// What a count of staves does.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct CountOfStaves {
    /// How many.
    pub(crate) count: u32,
    /// Whether it is the present one.
    pub(crate) now: bool,
    /// Whether every course runs on it as wanted.
    pub(crate) runs: bool,
    /// What is seen of the longest course, in words.
    pub(crate) seen: String,
    /// To which side that climbs, if it does.
    pub(crate) lean: Option<SideWord>,
    /// Gap between the staves at the rim, in both units.
    pub(crate) gap: String,
    /// Width of a stave at the rim, in both units.
    pub(crate) width: String,
    /// What to do to have it.
    pub(crate) edits: Vec<Edit>,
}

/// How the mould of a first basket is known.
#[derive(Clone, Debug, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(tag = "how", rename_all = "lowercase", deny_unknown_fields)]
pub(crate) enum FirstMould {
    /// By a guess, or of a mould that is still to be made.
    Guessed {
        /// Across at the rim, as a maker types it.
        across: String,
        /// How high; in keeping with the width if empty.
        high: String,
    },
    /// By a tape.
    Measured {
        /// Round the base.
        base: String,
        /// Round the top.
        top: String,
        /// From the base to the top.
        high: String,
    },
}

/// What handle a first basket is to have.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(rename_all = "lowercase")]
pub(crate) enum HandleWord {
    /// None.
    None,
    /// One that swings on ears.
    Swing,
    /// One that is fixed in the rim.
    Fixed,
    /// Two knobs.
    Knob,
}

/// What is asked for a first basket.
#[derive(Clone, Debug, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub(crate) struct FirstRequest {
    /// Name of the basket.
    pub(crate) title: String,
    /// Units of what was typed.
    pub(crate) typed_in: UnitsWord,
    /// The mould.
    pub(crate) mould: FirstMould,
    /// Name of the material at hand for staves; chosen if empty.
    pub(crate) staves: String,
    /// How it is to look; the weaving is chosen if no look is said.
    pub(crate) wish: Wish,
    /// Its handle.
    pub(crate) handle: HandleWord,
    /// Language of the answer and of the sheets, such as `en`.
    #[cfg_attr(test, ts(optional = nullable))]
    pub(crate) language: Option<String>,
    /// Units that stand first in the answer; those of what was typed if left out.
    #[cfg_attr(test, ts(optional = nullable))]
    pub(crate) units: Option<UnitsWord>,
}
