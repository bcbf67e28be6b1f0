//! Weaves that go over some staves and under some, again and again: what they have in common.

use super::answers::Cell;
use crate::pattern::Rule;

/// What a weaver that follows a rule does so far into it: outside first, then inside.
pub(super) fn cell(rule: Rule, into: i64, weaver: u32) -> Cell {
    Cell::of_one(weaver, into.rem_euclid(i64::from(rule.repeat())) < i64::from(rule.over()))
}

/// On which side a weaver lies at each stave of a row that begins at a place, so far into its rule at the place
/// from which all are counted.
pub(super) fn sides(rule: Rule, into: i64, begin: u32, count: u32) -> Vec<bool> {
    let run = |from: u32, to: u32| {
        let mut step = (into + i64::from(from)).rem_euclid(i64::from(rule.repeat())) as u32;
        (from..to).map(move |_| {
            let over = step < rule.over();
            step = if step + 1 < rule.repeat() { step + 1 } else { 0 };
            over
        })
    };
    run(begin, count).chain(run(0, begin.min(count))).collect()
}

/// Whether every stave is crossed on both sides where each row is set off by so many staves from the one
/// below, on staves enough for one repeat: `gcd(step, over + under) ≤ min(over, under)` (derived for this
/// project).
pub(super) fn locks(rule: Rule, step: u32) -> bool {
    gcd(step, rule.repeat()) <= rule.over().min(rule.under())
}

pub(super) fn outward(rule: Rule) -> f64 {
    share(f64::from(rule.over()), f64::from(rule.under()))
}

/// By how much more there is of one than of the other.
pub(super) fn share(over: f64, under: f64) -> f64 {
    (over - under) / (over + under).max(1.0)
}

/// What a rule asks of whoever weaves: to keep count of it.
pub(super) fn work(rule: Rule) -> f64 {
    let counting = if rule == Rule::PLAIN { 0.0 } else { 0.5 };
    let uneven = if rule.over() == rule.under() { 0.0 } else { 0.25 };
    counting + uneven
}

/// Greatest common divisor.
pub(super) const fn gcd(a: u32, b: u32) -> u32 {
    if b == 0 { a } else { gcd(b, a % b) }
}
