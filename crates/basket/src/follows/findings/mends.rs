//! Remedies mend: each is tried on the pattern before it is offered.

use super::case::Case;
use super::families::found;
use super::finding::{Finding, Grade, Remedy};
use crate::assemble::assemble;
use crate::pattern::Pattern;
use crate::stock::Catalogue;

/// Crossings that are woven in trying remedies, at most; what would take more is not offered.
const MOST_CROSSINGS: u64 = 2_000_000;

/// How many values of one key are offered: one on either side.
const OF_A_KEY: usize = 2;
/// Ways to weave on a count, told beside what does not run there: they mend that, not themselves.
const WAYS: &str = "weave-mend";

/// Keeps the remedies after which their finding is gone and no stop is there that was not there before;
/// notes what care they bring. A remedy that brings none goes before one that does.
pub(super) fn keep(case: &Case<'_>, findings: &mut [Finding]) {
    let before: Vec<Finding> = findings.to_vec();
    let vessel = &case.basket.body;
    let crossings = u64::from(vessel.uprights().count) * u64::from(vessel.weave.rows.max(1));
    let mut left = MOST_CROSSINGS;
    for finding in findings.iter_mut().filter(|finding| finding.code != WAYS) {
        let offered = std::mem::take(&mut finding.remedies);
        for remedy in offered {
            if finding.remedies.iter().filter(|kept| kept.key == remedy.key).count() >= OF_A_KEY {
                continue;
            }
            let Some(rest) = left.checked_sub(crossings) else { break };
            left = rest;
            finding.remedies.extend(tried(case, finding, remedy, &before));
        }
        finding.remedies.sort_by_key(|remedy| !remedy.brings.is_empty());
    }
}

/// The remedy with what it brings, if it mends.
fn tried(case: &Case<'_>, finding: &Finding, remedy: Remedy, before: &[Finding]) -> Option<Remedy> {
    let mended = case.pattern.amended(&remedy.key, &remedy.value, case.catalogue)?;
    let after = findings_of(&mended, case.catalogue, case);
    let still = after.iter().any(|left| {
        let lighter = left.grade == Grade::Note && finding.grade != Grade::Note;
        let same = left.place.piece == finding.place.piece && left.place.of == finding.place.of;
        left.code == finding.code && same && !lighter
    });
    let new = |grade: Grade| {
        after.iter().filter(move |left| {
            left.grade == grade && before.iter().all(|old| old.code != left.code || old.grade > left.grade)
        })
    };
    if still || new(Grade::Stop).next().is_some() {
        return None;
    }
    let mut brings: Vec<Finding> = Vec::new();
    for care in new(Grade::Care) {
        if brings.iter().all(|said| said.code != care.code) {
            brings.push(Finding { remedies: Vec::new(), ..care.clone() });
        }
    }
    Some(Remedy { brings, ..remedy })
}

fn findings_of(pattern: &Pattern, catalogue: &Catalogue, case: &Case<'_>) -> Vec<Finding> {
    let basket = assemble(pattern, catalogue, &case.basket.hand);
    found(&Case { pattern, catalogue, basket: &basket, steps: case.steps })
}
