//! Does the lid go in, does it stay up, and is it a good vessel itself?

use super::case::{Case, Measured as _};
use super::finding::{Finding, Grade, Place};
use super::write;
use crate::cover::cover;
use crate::measure::Length;
use crate::parts::lid::{LEAST_OVERLAP, Lid};
use crate::pattern::keys;
use crate::piece::{Of, Piece};

/// What a hand takes between a lid and the handle above it (common practice: 1 in).
const HAND: Length = Length::inches(1.0);
/// How far what lifts a lid stands up (common practice).
const LIFT: Length = Length::inches(0.625);

pub(super) fn check(case: &Case<'_>) -> Vec<Finding> {
    let Some(lid) = case.basket.lid.as_ref() else { return Vec::new() };
    let found = [too_tight(case, lid), off_ledge(lid), under_handle(case, lid)];
    let mut findings: Vec<Finding> = found.into_iter().flatten().collect();
    for finding in &mut findings {
        finding.place.of = Of::Lid;
    }
    findings
}

/// What is `found` on the lid's own vessel, as on any. Its keys are the basket's, which a remedy must not change, but for its
/// count.
pub(super) fn of_vessel(case: &Case<'_>, found: fn(&Case<'_>) -> Vec<Finding>) -> Vec<Finding> {
    let (Some(lid), Some(wanted)) = (case.basket.lid.as_ref(), case.pattern.lid.as_ref()) else {
        return Vec::new();
    };
    let Some(alone) = case.basket.lid_alone() else { return Vec::new() };
    let pattern = cover(case.pattern, wanted, lid.mould.clone());
    let own = Case { pattern: &pattern, catalogue: case.catalogue, basket: &alone, steps: case.steps };
    let mut findings = found(&own);
    for remedy in findings.iter_mut().flat_map(|finding| &mut finding.remedies) {
        if remedy.key == keys::staves::COUNT.path {
            keys::lid::COUNT.path.clone_into(&mut remedy.key);
        } else if remedy.key == keys::staves::STOCK.path {
            keys::lid::STAVES.path.clone_into(&mut remedy.key);
        }
    }
    for finding in &mut findings {
        finding.remedies.retain(|remedy| remedy.key.starts_with("lid."));
        finding.place.of = Of::Lid;
    }
    findings
}

/// Its lashed rim within the basket's.
fn too_tight(case: &Case<'_>, lid: &Lid) -> Option<Finding> {
    let lacks = lid.wanted - lid.clearance;
    let grade = if lid.clearance > Length::ZERO { Grade::Care } else { Grade::Stop };
    lid.wanted.exceeds(lid.clearance).then(|| {
        let place = Place::from(Piece::Rim);
        let finding = Finding::new(grade, "lid-clearance", place)
            .measured(lid.clearance, lid.wanted)
            .arg("lid", lid.across)
            .arg("mouth", lid.mouth);
        let across = case.pattern.lid.as_ref().and_then(|wanted| wanted.across);
        finding.maybe(
            keys::lid::ACROSS.path,
            across.map(|across| write::at_most(across - lacks * 2.0, case.units())),
        )
    })
}

/// Pushed to one side it must not slip off the ledge on the other.
fn off_ledge(lid: &Lid) -> Option<Finding> {
    let overlap = lid.ledge.overlap;
    let grade = if overlap > Length::ZERO { Grade::Care } else { Grade::Stop };
    LEAST_OVERLAP.exceeds(overlap).then(|| {
        Finding::new(grade, "lid-ledge-narrow", Piece::Ledge)
            .measured(overlap, LEAST_OVERLAP)
            .arg("stock", &lid.ledge.stock)
            .arg("rings", lid.ledge.rings.len() as u32)
    })
}

/// A bow over the lid leaves room for a hand that lifts it.
fn under_handle(case: &Case<'_>, lid: &Lid) -> Option<Finding> {
    let handle = case.basket.handle.as_ref()?;
    let bow = handle.bow()?;
    let room = handle.top() - bow.thickness - lid.rises - LIFT;
    HAND.exceeds(room)
        .then(|| Finding::new(Grade::Care, "lid-under-handle", Piece::Handle).measured(room, HAND))
}
