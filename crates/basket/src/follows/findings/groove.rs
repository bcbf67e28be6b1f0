//! Does the groove hold the staves, and does the disc hold the groove?

use super::case::{Case, Measured};
use super::finding::{Finding, Grade};
use super::write;
use crate::measure::Length;
use crate::pattern::keys;
use crate::piece::{FloorPart, Piece};

/// Room that a stave may have between the cheeks before it rattles and has to be wedged
/// (common practice: about 1 mm, a shaving of reed).
const SLACK: Length = Length::mm(1.0);
/// Least depth that keeps the feet when the staves shrink (common practice: 3/16 in; a learner's
/// weblog of 2008 tells of a basket whose staves came out of its base when it dried).
const SHALLOWEST: Length = Length::inches(3.0 / 16.0);
/// Wood that must stay between the groove and the plug (common practice: 1/4 in).
const CORE: Length = Length::inches(0.25);
/// Thinnest cheek beside the groove that does not break off (common practice: 5/64 in).
const THINNEST_CHEEK: Length = Length::inches(5.0 / 64.0);
/// A cheek also wants this share of the groove's depth, for it stands on its root like a fence
/// (common practice: a third).
const CHEEK_SHARE: f64 = 1.0 / 3.0;

pub(super) fn check(case: &Case<'_>) -> Vec<Finding> {
    [too_narrow(case), too_wide(case), too_shallow(case), too_deep(case), cheek_thin(case)]
        .into_iter()
        .flatten()
        .collect()
}

fn too_narrow(case: &Case<'_>) -> Option<Finding> {
    let (width, stave) = (case.basket.body.base().groove_width, case.basket.body.uprights().thickness);
    width.falls_short_of(stave).then(|| {
        Finding::new(Grade::Stop, "groove-too-narrow", Piece::Floor(FloorPart::Groove))
            .measured(width, stave)
            .arg("stock", &case.basket.body.staves().stock)
            .remedy(keys::groove::WIDTH.path, write::at_least(stave, case.units()))
    })
}

fn too_wide(case: &Case<'_>) -> Option<Finding> {
    let (width, stave) = (case.basket.body.base().groove_width, case.basket.body.uprights().thickness);
    let limit = stave + SLACK;
    width.exceeds(limit).then(|| {
        Finding::new(Grade::Care, "groove-too-wide", Piece::Floor(FloorPart::Groove))
            .measured(width, limit)
            .arg("thickness", stave)
            .remedy(keys::groove::WIDTH.path, write::at_least(stave + SLACK / 4.0, case.units()))
    })
}

fn too_shallow(case: &Case<'_>) -> Option<Finding> {
    let depth = case.basket.body.base().groove_depth;
    depth.falls_short_of(SHALLOWEST).then(|| {
        Finding::new(Grade::Care, "groove-too-shallow", Piece::Floor(FloorPart::Groove))
            .measured(depth, SHALLOWEST)
            .remedy(keys::groove::DEPTH.path, write::at_least(SHALLOWEST, case.units()))
    })
}

fn too_deep(case: &Case<'_>) -> Option<Finding> {
    let base = case.basket.body.base();
    let core = base.groove_radius() - base.plug_diameter / 2.0;
    if !core.falls_short_of(CORE) {
        return None;
    }
    let grade = if core <= Length::ZERO { Grade::Stop } else { Grade::Care };
    let deepest = base.groove_depth - (CORE - core);
    let finding = Finding::new(grade, "groove-too-deep", Piece::Floor(FloorPart::Groove))
        .measured(core, CORE)
        .arg("depth", base.groove_depth)
        .arg("plug", base.plug_diameter);
    Some(if deepest >= SHALLOWEST {
        finding.remedy(keys::groove::DEPTH.path, write::at_most(deepest, case.units()))
    } else {
        let diameter = base.across().length + (CORE - core) * 2.0;
        finding.remedy(keys::base::DIAMETER.path, write::at_least(diameter, case.units()))
    })
}

fn cheek_thin(case: &Case<'_>) -> Option<Finding> {
    let base = case.basket.body.base();
    let cheek = (base.thickness - base.groove_width) / 2.0;
    let limit = THINNEST_CHEEK.max(base.groove_depth * CHEEK_SHARE);
    cheek.falls_short_of(limit).then(|| {
        let grade = if cheek <= Length::ZERO { Grade::Stop } else { Grade::Care };
        Finding::new(grade, "groove-cheek-thin", Piece::Floor(FloorPart::Groove))
            .measured(cheek, limit)
            .arg("thickness", base.thickness)
            .arg("width", base.groove_width)
            .remedy(
                keys::base::THICKNESS.path,
                write::at_least(base.groove_width + limit * 2.0, case.units()),
            )
    })
}
