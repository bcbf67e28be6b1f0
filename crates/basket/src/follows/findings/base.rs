//! Does the base fit the mould, and will its wood stay still?

use super::case::{Case, Measured};
use super::finding::{Finding, Grade};
use super::write;
use crate::base::{INDOOR_SWING, movement};
use crate::measure::Length;
use crate::pattern::keys;
use crate::piece::{FloorPart, Piece};

/// How far a base may stand out beyond the mould's foot before it holds the staves off the mould
/// (common practice: 1/32 in).
const OVERHANG: Length = Length::inches(1.0 / 32.0);
/// How far the mould's foot may stand out beyond the base: over more than this the staves bridge
/// free between the two and bend where they like (common practice: 1/2 in).
const BRIDGE: Length = Length::inches(0.5);
/// A base that moves by more than this share of its groove's depth works the feet of the staves
/// loose (common practice: half, which is a quarter on each side).
const MOVEMENT_SHARE: f64 = 0.5;
/// Movement that is worth knowing of (common practice).
const MOVEMENT_WORTH_SAYING: Length = Length::mm(0.5);

pub(super) fn check(case: &Case<'_>) -> Vec<Finding> {
    [wider_than_mould(case), smaller_than_mould(case), wood_moves(case)].into_iter().flatten().collect()
}

/// Radius of the base less that of the mould's foot.
fn overhang(case: &Case<'_>) -> Length {
    case.basket.body.base().diameter / 2.0 - foot(case)
}

fn foot(case: &Case<'_>) -> Length {
    case.basket.body.form.profile.at(Length::ZERO).radius
}

/// The length of a base of this radius.
fn length(case: &Case<'_>, radius: Length) -> Length {
    radius * 2.0 + case.basket.body.base().over.length
}

fn wider_than_mould(case: &Case<'_>) -> Option<Finding> {
    let measured = overhang(case);
    measured.exceeds(OVERHANG).then(|| {
        Finding::new(Grade::Care, "base-wider-than-mould", Piece::Floor(FloorPart::Disc))
            .measured(measured, OVERHANG)
            .arg("diameter", case.basket.body.base().across())
            .arg("foot", case.basket.body.form.across(Length::ZERO, Length::ZERO))
            .remedy(keys::base::DIAMETER.path, write::at_most(length(case, foot(case)), case.units()))
    })
}

fn smaller_than_mould(case: &Case<'_>) -> Option<Finding> {
    let measured = -overhang(case);
    measured.exceeds(BRIDGE).then(|| {
        Finding::new(Grade::Care, "base-smaller-than-mould", Piece::Floor(FloorPart::Disc))
            .measured(measured, BRIDGE)
            .arg("diameter", case.basket.body.base().across())
            .arg("foot", case.basket.body.form.across(Length::ZERO, Length::ZERO))
            .remedy(
                keys::base::DIAMETER.path,
                write::at_least(length(case, foot(case) - BRIDGE), case.units()),
            )
    })
}

/// Wood moves across its grain with the air of the room; along it hardly at all (Forest Products
/// Laboratory, *Shrinkage of Wood*, R1650, 1947).
fn wood_moves(case: &Case<'_>) -> Option<Finding> {
    let base = case.basket.body.base();
    let limit = base.groove_depth * MOVEMENT_SHARE;
    if base.movement <= MOVEMENT_WORTH_SAYING {
        return None;
    }
    let grade = if base.movement.exceeds(limit) { Grade::Care } else { Grade::Note };
    let finding = Finding::new(grade, "base-wood-moves", Piece::Floor(FloorPart::Disc))
        .measured(base.movement, limit)
        .arg("wood", base.woods())
        .arg("side", base.movement / 2.0);
    Some(match grade {
        Grade::Note => finding,
        _ => finding
            .maybe(keys::base::WOOD.path, quieter_wood(case, limit))
            .remedy(keys::groove::DEPTH.path, write::at_least(base.movement / MOVEMENT_SHARE, case.units())),
    })
}

/// The wood that moves least, if it moves little enough.
fn quieter_wood(case: &Case<'_>, limit: Length) -> Option<String> {
    let base = case.basket.body.base();
    let quietest = case.catalogue.woods.iter().min_by(|a, b| a.tangential.total_cmp(&b.tangential))?;
    let movement = movement(base.across().width, quietest.tangential, INDOOR_SWING);
    (movement < limit * 0.98).then(|| write::name(&quietest.name))
}
