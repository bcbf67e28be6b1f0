//! All ways to weave that the search looks at.

use crate::pattern::Rule;
use crate::weave::passing::{BAND, Passing};
use crate::weave::weaves::{Chase, Level, Reversed, SkipOne, Spiral, Twined};

/// Longest float of a twill that is looked at, in staves.
const LONGEST: u32 = 8;

/// Families of weaves, told apart so that no one family fills the list of proposals.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Family {
    Continuous,
    Chased,
    RowByRow,
    Twined,
}

pub(super) fn family(passing: &Passing) -> Family {
    let weave = passing.weave();
    if weave.twined() > 1 {
        Family::Twined
    } else if weave.weavers() > 1 {
        Family::Chased
    } else if weave.rise() == 0 {
        Family::RowByRow
    } else {
        Family::Continuous
    }
}

/// All ways to weave that are looked at.
pub(super) fn all() -> Vec<Passing> {
    let rules = (1..=LONGEST).flat_map(|over| (1..=LONGEST).map(move |under| Rule::new(over, under)));
    let mut ways: Vec<Passing> = rules.flat_map(with_rule).collect();
    ways.push(Passing::SkipOne(SkipOne));
    for weavers in 2..=5 {
        ways.extend([false, true].map(|step_up| Passing::Twined(Twined { weavers, step_up })));
    }
    ways
}

/// A rule in one round, chased, and row by row.
fn with_rule(rule: Rule) -> Vec<Passing> {
    let chase = |weavers| Passing::Chase(Chase { rule, weavers });
    let level = |step| Passing::Level(Level { rule, step });
    let mut ways = vec![Passing::Spiral(Spiral { rule }), chase(2), chase(3)];
    // A step of half the repeat has no lean, one of more leans the other way.
    let steps = (1..).take_while(|step| 2 * step < rule.repeat() as i32);
    ways.extend(steps.flat_map(|step| [level(step), level(-step)]));
    if !rule.is_plain() {
        ways.push(Passing::Reversed(Reversed { rule, band: BAND }));
    }
    ways
}

/// Whether a way goes round evenly on a count.
pub(super) fn fits(passing: &Passing, count: u32) -> bool {
    passing.weave().closes(count) && passing.weave().suits(count)
}
