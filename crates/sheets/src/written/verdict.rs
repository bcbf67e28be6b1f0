//! Whether a course runs.

use basket::weave;
use serde::Serialize;

use super::vocabulary::Mend;

/// What a course does on its count of staves.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(super) struct Verdict {
    /// Whether each stave is crossed on both sides as rows go by.
    holds: bool,
    /// Whether each row meets the next (or itself) without a fault in the weave.
    closes: bool,
    /// What the diagonal does from row to row.
    diagonal: Diagonal,
    /// Most staves that a weaver passes without changing sides.
    float_staves: u32,
    /// Most rows that a stave lies on one side.
    float_rows: u32,
    /// The nearest counts of staves on which the course runs as wanted, nearest first.
    counts: Vec<u32>,
    /// What would make it run as wanted on this count; empty where it does.
    mends: Vec<Mend>,
}

/// What the diagonal of a weave does from row to row.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
enum Diagonal {
    /// Each row lies as the one below: nothing crosses.
    Stacks,
    /// Each row lies opposite to the one below: no diagonal.
    Alternates,
    /// The eye follows it up so many rows and along so many staves.
    Climbs {
        /// Along so many staves, positive toward higher numbers.
        staves: i32,
        /// Up so many rows.
        rows: u32,
    },
    /// The stave that is skipped in a round lies one stave further in each.
    Skips,
    /// It turns back after each band of rows.
    Turns,
    /// The weavers that chase each other do not step alike.
    Uneven,
    /// There is none to speak of.
    None,
}

impl From<&weave::Verdict> for Verdict {
    fn from(verdict: &weave::Verdict) -> Self {
        let weave::Verdict { holds, closes, diagonal, float_staves, float_rows, counts, mends } = verdict;
        Self {
            holds: *holds,
            closes: *closes,
            diagonal: diagonal.into(),
            float_staves: *float_staves,
            float_rows: *float_rows,
            counts: counts.clone(),
            mends: mends.iter().map(Mend::from).collect(),
        }
    }
}

impl From<&weave::Diagonal> for Diagonal {
    fn from(diagonal: &weave::Diagonal) -> Self {
        match diagonal {
            weave::Diagonal::Stacks => Self::Stacks,
            weave::Diagonal::Alternates => Self::Alternates,
            weave::Diagonal::Climbs { staves, rows } => Self::Climbs { staves: *staves, rows: *rows },
            weave::Diagonal::Skips => Self::Skips,
            weave::Diagonal::Turns => Self::Turns,
            weave::Diagonal::Uneven => Self::Uneven,
            weave::Diagonal::None => Self::None,
        }
    }
}
