//! The weaves by name: the one place that tells them apart.

use super::weaves::{Answers, Chart, Chase, Level, Reversed, SkipOne, Spiral, Twined};
use crate::pattern::{CoursePattern, Lean, Rule, Way, WeaveKind};

/// Rows of a reversed twill before it turns, where the pattern does not say: enough to see the
/// arrow (common practice).
pub const BAND: u32 = 6;

/// How weavers pass the staves.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Passing {
    /// One weaver, or several laid as one, in a spiral.
    Spiral(Spiral),
    /// Several weavers that chase each other.
    Chase(Chase),
    /// Rows that each begin anew.
    Level(Level),
    /// Rows that each begin anew and turn back after a band of them.
    Reversed(Reversed),
    /// Over one, under one, with one stave skipped a round.
    SkipOne(SkipOne),
    /// Weavers twisted round each other.
    Twined(Twined),
    /// Drawn by hand.
    Drawn(Chart),
}

impl Passing {
    /// The weave to be asked.
    pub(super) fn weave(&self) -> &dyn Answers {
        match self {
            Self::Spiral(weave) => weave,
            Self::Chase(weave) => weave,
            Self::Level(weave) => weave,
            Self::Reversed(weave) => weave,
            Self::SkipOne(weave) => weave,
            Self::Twined(weave) => weave,
            Self::Drawn(weave) => weave,
        }
    }

    /// The weave of a course as written.
    pub(super) fn of(course: &CoursePattern) -> Self {
        let level = course.step_up || course.rows_follow() == Way::RowByRow;
        match course.weave {
            WeaveKind::Plain => over_under(course, Rule::PLAIN, level),
            WeaveKind::Twill(rule) | WeaveKind::Slew(rule) => over_under(course, rule, level),
            WeaveKind::ReversedTwill(rule) => {
                Self::Reversed(Reversed { rule, band: course.band.unwrap_or(BAND) })
            }
            WeaveKind::Chase(rule) => Self::Chase(Chase { rule, weavers: course.weavers() }),
            WeaveKind::SkipOne => Self::SkipOne(SkipOne),
            WeaveKind::Pairing | WeaveKind::Wale(_) => {
                Self::Twined(Twined { weavers: course.weavers(), step_up: level })
            }
            WeaveKind::Drawn => Self::Drawn(course.chart.as_ref().map(Chart::of).unwrap_or_default()),
        }
    }
}

/// Rows that begin level move on by the step, to the side to which the twill is to lean: numbers rise to the
/// left on a basket that stands on its base.
fn over_under(course: &CoursePattern, rule: Rule, level: bool) -> Passing {
    if !level {
        return Passing::Spiral(Spiral { rule });
    }
    let step = course.step.unwrap_or(1) as i32;
    Passing::Level(Level { rule, step: if course.lean == Some(Lean::Left) { step } else { -step } })
}
