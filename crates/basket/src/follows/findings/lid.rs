//! Does the lid go in, does it stay up, and is it a good vessel itself?

use super::case::{Case, Measured as _};
use super::finding::{Finding, Grade};
use super::write;
use crate::cover::cover;
use crate::form::BOARD;
use crate::measure::Length;
use crate::message::Value;
use crate::parts::lid::{FLUSH, LEAST_DOWN, LEAST_OVERLAP, Lid, LidSeat};
use crate::pattern::{LidFit, Word as _, keys};
use crate::piece::{Of, Piece};
use crate::term::Term as _;

/// Flat weaving holds itself over this way from plaque to rim, and over a wider one when it rises by this share of it
/// (common practice: 2 in, and 1/16 in to the inch).
const HOLDS_FLAT: Length = Length::inches(2.0);
const DOME: f64 = 0.0625;
/// What a hand takes between a lid and the handle above it (common practice: 1 in).
const HAND: Length = Length::inches(1.0);

pub(super) fn check(case: &Case<'_>) -> Vec<Finding> {
    let Some(lid) = case.basket.lid.as_ref() else { return Vec::new() };
    let found = [
        too_tight(case, lid),
        badly_seated(case, lid),
        too_flat(case, lid),
        on_ears(case, lid),
        under_handle(case, lid),
    ];
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

/// What goes in, within what it goes into.
fn too_tight(case: &Case<'_>, lid: &Lid) -> Option<Finding> {
    let lacks = lid.wanted - lid.clearance;
    let grade = if lid.clearance > Length::ZERO { Grade::Care } else { Grade::Stop };
    lid.wanted.exceeds(lid.clearance).then(|| {
        let (code, larger) = match lid.seat {
            LidSeat::Over(_) => ("lid-clearance-cap", lacks),
            LidSeat::Ledge(_) | LidSeat::Collar(_) => ("lid-clearance", -lacks),
        };
        let finding = Finding::new(grade, code, Piece::Rim)
            .measured(lid.clearance, lid.wanted)
            .arg("inner", lid.goes_in())
            .arg("opening", lid.opening);
        let across = case.pattern.lid.as_ref().and_then(|wanted| wanted.across);
        let other = across.map(|across| across + larger * 2.0).map(|across| {
            if larger > Length::ZERO {
                write::at_least(across, case.units())
            } else {
                write::at_most(across, case.units())
            }
        });
        finding.maybe(keys::lid::ACROSS.path, other)
    })
}

fn badly_seated(case: &Case<'_>, lid: &Lid) -> Option<Finding> {
    match &lid.seat {
        LidSeat::Ledge(ledge) => {
            // Pushed to one side it must not slip off the ledge on the other.
            let grade = if ledge.overlap > Length::ZERO { Grade::Care } else { Grade::Stop };
            LEAST_OVERLAP.exceeds(ledge.overlap).then(|| {
                Finding::new(grade, "lid-ledge-narrow", Piece::Ledge)
                    .measured(ledge.overlap, LEAST_OVERLAP)
                    .arg("stock", &ledge.stock)
                    .arg("rings", ledge.rings.len() as u32)
            })
        }
        LidSeat::Over(over) => {
            let grade = if over.down > Length::ZERO { Grade::Care } else { Grade::Stop };
            LEAST_DOWN.exceeds(over.down).then(|| {
                let height = lid.vessel.form.height() + LEAST_DOWN - over.down;
                Finding::new(grade, "lid-cap-shallow", Piece::Rim)
                    .measured(over.down, LEAST_DOWN)
                    .remedy(keys::lid::HEIGHT.path, write::at_least(height, case.units()))
            })
        }
        LidSeat::Collar(collar) => collar.proud.abs().exceeds(FLUSH).then(|| {
            let finding =
                Finding::new(Grade::Care, "lid-not-flush", Piece::Rim).measured(collar.proud.abs(), FLUSH);
            let across = case.pattern.lid.as_ref().and_then(|wanted| wanted.across);
            let other = across.map(|across| write::at_most(across - collar.proud * 2.0, case.units()));
            finding.arg("lid", lid.across).maybe(keys::lid::ACROSS.path, other)
        }),
    }
}

/// Flat weaving over a wide way sinks in the middle; a little dome holds it.
fn too_flat(case: &Case<'_>, lid: &Lid) -> Option<Finding> {
    let [way, rise] = lid.flat()?;
    let wanted = way * DOME;
    (way > HOLDS_FLAT && wanted.exceeds(rise)).then(|| {
        Finding::new(Grade::Care, "lid-too-flat", Piece::Weaving)
            .measured(rise, wanted)
            .arg("way", way)
            .remedy(keys::lid::HEIGHT.path, write::at_least(BOARD + wanted, case.units()))
    })
}

/// Ears stand up out of the rim, where a cap or a lid on the rim has to lie.
fn on_ears(case: &Case<'_>, lid: &Lid) -> Option<Finding> {
    let ears = case.basket.ears.as_ref().map(|_| Piece::Ears);
    let piece = ears.or(case.basket.handle.as_ref().map(|_| Piece::Handle))?;
    (lid.seat.fit() != LidFit::DropIn).then(|| {
        Finding::new(Grade::Stop, "lid-on-ears", piece)
            .arg("fit", Value::Term(lid.seat.fit().term()))
            .remedy(keys::lid::FIT.path, write::name(LidFit::DropIn.word()))
    })
}

/// A bow over the lid leaves room for a hand that lifts it.
fn under_handle(case: &Case<'_>, lid: &Lid) -> Option<Finding> {
    let handle = case.basket.handle.as_ref()?;
    let bow = handle.bow()?;
    let room = handle.top() - bow.thickness - lid.rises - lid.lift_height();
    HAND.exceeds(room)
        .then(|| Finding::new(Grade::Care, "lid-under-handle", Piece::Handle).measured(room, HAND))
}
