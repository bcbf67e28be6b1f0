//! Do the staves fit the groove, the mould and the weaver?

use super::case::{Case, Measured};
use super::finding::{Finding, Grade, Place};
use super::foot::stave_too_stiff;
use super::write;
use crate::measure::Length;
use crate::pattern::keys;
use crate::piece::{FloorPart, Piece};
use crate::staves::{GapAt, USUAL_TRIM, least_foot};
use crate::weave::Course;

/// A foot narrower than this share of the least foot cannot be shaved without breaking (common practice).
const HOPELESS_SHARE: f64 = 0.5;
/// Openings in the wall are not larger than this (a how-to article on plaited baskets gives 3/8 in
/// for the squares of a base; taken over for walls).
const WIDEST_GAP: Length = Length::inches(3.0 / 8.0);
/// Least length above the rim by which a stave can be pulled tight and trimmed (common practice: 1/4 in).
const LEAST_TRIM: Length = Length::inches(0.25);
/// Waste above the trim that is worth saving (common practice: 2 in).
const WASTE: Length = Length::inches(2.0);
/// Counts outside these are rare on a mould (published counts for mould baskets run from 27 on a
/// 5 in base to 107 on a girth of 800 mm; common practice beyond them).
const USUAL_COUNTS: (u32, u32) = (21, 151);

pub(super) fn check(case: &Case<'_>) -> Vec<Finding> {
    [
        overlap_in_groove(case),
        foot_too_thin(case),
        gap_too_small(case),
        gap_too_wide(case),
        stave_too_stiff(case),
        too_short(case),
        wasteful(case),
        count_surprising(case),
    ]
    .into_iter()
    .flatten()
    .collect()
}

/// Flat feet on radii touch at a width of `2 r tan(π/n)` at the bottom of the groove.
fn overlap_in_groove(case: &Case<'_>) -> Option<Finding> {
    let staves = case.basket.body.staves();
    staves.taper.foot.exceeds(staves.foot_touch).then(|| {
        let finding = Finding::new(Grade::Stop, "staves-overlap-in-groove", Piece::Floor(FloorPart::Groove))
            .measured(staves.taper.foot, staves.foot_touch)
            .arg("count", staves.uprights.count);
        let foot = write::at_most(staves.foot_touch, case.units());
        let taper = write::taper(staves.taper.from, &foot, case.units());
        let count = count_for_foot(case, staves.taper.foot).to_string();
        let smallest = staves.foot_touch - write::step(staves.foot_touch, case.units());
        if smallest > least_foot(staves.uprights.width) {
            finding.remedy(keys::staves::TAPER.path, taper).remedy(keys::staves::COUNT.path, count)
        } else {
            finding.remedy(keys::staves::COUNT.path, count).remedy(keys::staves::TAPER.path, taper)
        }
    })
}

/// The least foot is the one that the taper is solved for.
fn foot_too_thin(case: &Case<'_>) -> Option<Finding> {
    let staves = case.basket.body.staves();
    let limit = least_foot(staves.uprights.width);
    staves.taper.foot.falls_short_of(limit).then(|| {
        let grade = if staves.taper.foot < limit * HOPELESS_SHARE { Grade::Stop } else { Grade::Care };
        let foot = write::at_least(limit, case.units());
        Finding::new(grade, "foot-too-thin", Piece::Uprights)
            .measured(staves.taper.foot, limit)
            .arg("count", staves.uprights.count)
            .arg("width", staves.uprights.width)
            .remedy(keys::staves::TAPER.path, write::taper(staves.taper.from, &foot, case.units()))
    })
}

/// The largest odd count at which feet of this width stand side by side.
fn count_for_foot(case: &Case<'_>, foot: Length) -> u32 {
    let half_angle = (foot / (case.basket.body.base().crowded_radius() * 2.0)).atan();
    write::odd_at_most(std::f64::consts::PI / half_angle)
}

/// The weaver has to pass between two staves.
fn gap_too_small(case: &Case<'_>) -> Option<Finding> {
    let (gap, course) = woven(case)
        .filter(|(gap, course)| gap.gap.falls_short_of(course.weaver.thickness))
        .min_by(|a, b| {
        (a.0.gap - a.1.weaver.thickness).to_mm().total_cmp(&(b.0.gap - b.1.weaver.thickness).to_mm())
    })?;
    let thickness = course.weaver.thickness;
    // Damp cane squeezes through half its thickness at most (common practice).
    let grade = if gap.gap < thickness / 2.0 { Grade::Stop } else { Grade::Care };
    let place = Place::from(Piece::Uprights).at(gap.height);
    Some(
        Finding::new(grade, "gap-too-small", place)
            .measured(gap.gap, thickness)
            .arg("weaver", &course.weaver)
            .arg("width", gap.width)
            .remedy(
                keys::staves::COUNT.path,
                write::odd_at_most(girth(case, gap) / (gap.width + thickness)).to_string(),
            ),
    )
}

fn gap_too_wide(case: &Case<'_>) -> Option<Finding> {
    let limit = |gap: &GapAt| gap.width.min(WIDEST_GAP);
    let (gap, course) = woven(case)
        .filter(|(gap, _)| gap.gap.exceeds(limit(gap)))
        .max_by(|a, b| (a.0.gap - limit(a.0)).to_mm().total_cmp(&(b.0.gap - limit(b.0)).to_mm()))?;
    let place = Place::from(Piece::Uprights).at(gap.height);
    let count = write::odd_at_least(girth(case, gap) / (gap.width + limit(gap)));
    Some(
        Finding::new(Grade::Care, "gap-too-wide", place)
            .measured(gap.gap, limit(gap))
            .arg("weaver", &course.weaver)
            .remedy(keys::staves::COUNT.path, count.to_string()),
    )
}

/// Gaps that are woven over, each with its course.
fn woven<'a>(case: &Case<'a>) -> impl Iterator<Item = (&'a GapAt, &'a Course)> {
    let weave = &case.basket.body.weave;
    case.basket.body.staves().gaps.iter().filter_map(|gap| {
        weave
            .courses
            .iter()
            .find(|course| gap.along >= course.from && gap.along <= course.to)
            .map(|course| (gap, course))
    })
}

/// All pitches together at the height of a gap.
fn girth(case: &Case<'_>, gap: &GapAt) -> Length {
    (gap.gap + gap.width) * f64::from(case.basket.body.uprights().count)
}

fn needed(case: &Case<'_>) -> Length {
    let parts = &case.basket.body.staves().length_parts;
    parts.groove + parts.turn + parts.wall + parts.rim
}

fn too_short(case: &Case<'_>) -> Option<Finding> {
    let staves = case.basket.body.staves();
    let needed = needed(case);
    staves.length.falls_short_of(needed + LEAST_TRIM).then(|| {
        let grade = if staves.length < needed { Grade::Stop } else { Grade::Care };
        Finding::new(grade, "stave-too-short", Piece::Uprights)
            .measured(staves.length, needed + LEAST_TRIM)
            .arg("needed", needed)
            .remedy(keys::staves::LENGTH.path, write::at_least(needed + USUAL_TRIM, case.units()))
    })
}

fn wasteful(case: &Case<'_>) -> Option<Finding> {
    let staves = case.basket.body.staves();
    let enough = needed(case) + USUAL_TRIM;
    staves.length.exceeds(enough + WASTE).then(|| {
        let all = f64::from(staves.uprights.count.saturating_add(staves.spares));
        Finding::new(Grade::Note, "stave-wasteful", Piece::Uprights)
            .measured(staves.length, enough + WASTE)
            .arg("waste", (staves.length - enough) * all)
            .remedy(keys::staves::LENGTH.path, write::at_least(enough, case.units()))
    })
}

fn count_surprising(case: &Case<'_>) -> Option<Finding> {
    let count = case.basket.body.uprights().count;
    let (fewest, most) = USUAL_COUNTS;
    let limit = if count < fewest { fewest } else { most };
    (count < fewest || count > most)
        .then(|| Finding::new(Grade::Note, "stave-count-surprising", Piece::Uprights).measured(count, limit))
}
