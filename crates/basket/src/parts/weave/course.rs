//! From a course as written to what its weavers do.

use crate::pattern::Rule;
use crate::pattern::drawn::Drawn;
use crate::pattern::{CoursePattern, Lean, Way, WeaveKind};
use crate::weave::fabric::{Fabric, Follow, Passing};

/// Rows of a reversed twill before it turns, where the pattern does not say: enough to see the
/// arrow (common practice).
pub const BAND: u32 = 6;

impl CoursePattern {
    /// How the rows follow: one way runs on, the other begins each row anew.
    ///
    /// A reversed twill begins each row anew, for a weaver that runs on leans only one way.
    pub fn rows_follow(&self) -> Way {
        match self.weave {
            WeaveKind::ReversedTwill(_) => Way::RowByRow,
            WeaveKind::Chase(_) | WeaveKind::SkipOne => Way::Continuous,
            _ => self.way.unwrap_or(Way::Continuous),
        }
    }

    /// This course on a count of staves.
    pub fn fabric(&self, count: u32) -> Fabric {
        let start = self.start.unwrap_or(1).saturating_sub(1) % count.max(1);
        Fabric { passing: self.passing(), count, start, spread: 0 }
    }

    fn passing(&self) -> Passing {
        let level = self.step_up || self.rows_follow() == Way::RowByRow;
        match self.weave {
            WeaveKind::Plain => self.repeat(Rule::PLAIN, level),
            WeaveKind::Twill(rule) | WeaveKind::Slew(rule) => self.repeat(rule, level),
            WeaveKind::ReversedTwill(rule) => {
                Passing::Repeat { rule, follow: Follow::Reversed(self.band.unwrap_or(BAND)) }
            }
            WeaveKind::Chase(rule) => Passing::Repeat { rule, follow: Follow::Chase(self.weavers()) },
            WeaveKind::SkipOne => Passing::SkipOne,
            WeaveKind::Pairing | WeaveKind::Wale(_) => {
                Passing::Twined { weavers: self.weavers(), step_up: level }
            }
            WeaveKind::Drawn => Passing::Drawn(self.chart.as_ref().map(from_right).unwrap_or_default()),
        }
    }

    /// Rows that begin level move on by the step, to the side to which the twill is to lean: numbers rise to
    /// the left on a basket that stands on its base.
    fn repeat(&self, rule: Rule, level: bool) -> Passing {
        let step = self.step.unwrap_or(1) as i32;
        let step = if self.lean == Some(Lean::Left) { step } else { -step };
        let follow = if level { Follow::RowByRow(step) } else { Follow::Spiral };
        Passing::Repeat { rule, follow }
    }
}

/// Rows of a drawing in the order of the staves, which are numbered to the left.
fn from_right(drawn: &Drawn) -> Vec<Vec<bool>> {
    drawn.rows().iter().map(|row| row.iter().rev().copied().collect()).collect()
}
