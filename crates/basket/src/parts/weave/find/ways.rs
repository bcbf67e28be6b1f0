//! All ways to weave on a count that the search looks at.

use crate::pattern::Rule;
use crate::weave::course::BAND;
use crate::weave::fabric::{Fabric, Follow, Passing, chase_is_even};

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

pub(super) const fn family(passing: &Passing) -> Family {
    match passing {
        Passing::Repeat { follow: Follow::Chase(_), .. } => Family::Chased,
        Passing::Repeat { follow: Follow::RowByRow(_) | Follow::Reversed(_), .. } => Family::RowByRow,
        Passing::Twined { .. } => Family::Twined,
        _ => Family::Continuous,
    }
}

/// All ways to weave that are looked at.
pub(super) fn all() -> Vec<Passing> {
    let rules = (1..=LONGEST).flat_map(|over| (1..=LONGEST).map(move |under| Rule::new(over, under)));
    let mut ways: Vec<Passing> = rules.flat_map(with_rule).collect();
    ways.push(Passing::SkipOne);
    for weavers in 2..=5 {
        ways.extend([false, true].map(|step_up| Passing::Twined { weavers, step_up }));
    }
    ways
}

/// A rule in one round, chased, and row by row.
fn with_rule(rule: Rule) -> impl Iterator<Item = Passing> {
    let mut follows = vec![Follow::Spiral, Follow::Chase(2), Follow::Chase(3)];
    // A step of half the repeat has no lean, one of more leans the other way.
    follows.extend(
        (1..)
            .take_while(|step| 2 * step < rule.repeat() as i32)
            .flat_map(|step| [Follow::RowByRow(step), Follow::RowByRow(-step)]),
    );
    if rule.repeat() > 2 {
        follows.push(Follow::Reversed(BAND));
    }
    follows.into_iter().map(move |follow| Passing::Repeat { rule, follow })
}

/// Whether a way goes round evenly on a count: rows begun afresh meet themselves only where the repeat
/// divides the count; weavers that chase follow alike only on some counts; one is skipped on even ones.
pub(super) fn fits(passing: &Passing, count: u32) -> bool {
    match passing {
        Passing::Repeat { rule, follow: Follow::Chase(weavers) } => chase_is_even(count, *weavers, *rule),
        Passing::Repeat { rule, follow: Follow::RowByRow(_) | Follow::Reversed(_) } => {
            count.is_multiple_of(rule.repeat())
        }
        Passing::SkipOne => count.is_multiple_of(2),
        Passing::Repeat { .. } | Passing::Twined { .. } | Passing::Drawn(_) => true,
    }
}

/// Counts that differ by this many staves are woven alike.
pub(super) fn repeat(passing: &Passing) -> u32 {
    match passing {
        Passing::Repeat { rule, .. } => rule.repeat(),
        Passing::SkipOne => 2,
        Passing::Twined { weavers, .. } => (*weavers).max(1),
        Passing::Drawn(rows) => rows.first().map_or(1, Vec::len).max(1) as u32,
    }
}

/// What a weave asks of the weaver, weighed in staves more or less than wanted: a weaver more at a time,
/// rows each begun and ended by themselves, a step up in every round, a rule to keep count of.
pub(super) fn work(passing: &Passing) -> f64 {
    match passing {
        Passing::Repeat { rule, follow } => {
            let counting = if *rule == Rule::new(1, 1) { 0.0 } else { 0.5 };
            let uneven = if rule.over() * 2 == rule.repeat() { 0.0 } else { 0.25 };
            let following = match follow {
                Follow::Spiral => 0.0,
                Follow::Chase(weavers) => 1.5 * f64::from(weavers.saturating_sub(1)),
                Follow::RowByRow(step) => 5.5 + 0.5 * f64::from(step.abs()),
                Follow::Reversed(_) => 6.5,
            };
            counting + uneven + following
        }
        Passing::SkipOne => 0.5,
        Passing::Twined { weavers, step_up } => f64::from(*weavers) * 0.75 + if *step_up { 1.0 } else { 0.0 },
        Passing::Drawn(_) => 8.0,
    }
}

/// How many weavers are at work at a time.
pub(super) const fn weavers(fabric: &Fabric) -> u32 {
    match fabric.passing {
        Passing::Repeat { follow: Follow::Chase(weavers), .. } | Passing::Twined { weavers, .. } => weavers,
        _ => 1,
    }
}
