//! What the lines of a weave do from row to row.

use serde::Serialize;

use crate::pattern::{Lean, Rule};
use crate::weave::line::{Line, climbing};
use crate::weave::look::Eye;

/// What the diagonal of a weave does from row to row.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Diagonal {
    /// Each row lies as the one below: nothing crosses.
    Stacks,
    /// Each row lies opposite to the one below: no diagonal.
    Alternates,
    /// The eye follows it up so many rows and along so many staves, positive toward higher numbers: to the
    /// left on a basket that stands on its base.
    Climbs {
        /// Along so many staves.
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

impl Diagonal {
    /// What the eye makes of a rule whose rows are each set off by so many staves from the one below.
    pub(super) fn of(rule: Rule, step: i64, eye: Eye) -> Self {
        let repeat = i64::from(rule.repeat());
        if step % repeat == 0 {
            return Self::Stacks;
        }
        if 2 * step % repeat == 0 {
            return Self::Alternates;
        }
        let climbs = |line: Line| Self::Climbs { staves: line.staves as i32, rows: line.rows };
        climbing(rule, step, eye).map_or(Self::None, climbs)
    }

    /// The side to which it climbs, seen from outside on a basket that stands on its base.
    pub const fn lean(self) -> Option<Lean> {
        match self {
            Self::Climbs { staves, .. } if staves < 0 => Some(Lean::Right),
            Self::Climbs { .. } | Self::Skips => Some(Lean::Left),
            _ => None,
        }
    }
}
