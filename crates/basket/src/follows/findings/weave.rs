//! Does the weave run on this count, and does it fill the mould?

use super::case::{Case, Measured};
use super::finding::{Finding, Grade, Place};
use super::write;
use crate::measure::Length;
use crate::message::Value;
use crate::pattern::{HoopWay, Until};
use crate::piece::Piece;
use crate::weave::Course;

/// Share of the wall that may stay bare above the rim: beyond it the rim is not the mould's
/// (common practice).
const BARE_SHARE: f64 = 0.25;
/// A strand that does not last this many rows means a join in nearly every row (common practice).
const ROWS_PER_STRAND: f64 = 2.0;

pub(super) fn check(case: &Case<'_>) -> Vec<Finding> {
    let mut found: Vec<Finding> =
        [rows_do_not_fill(case), rows_past_the_top(case)].into_iter().flatten().collect();
    for (course, number) in case.basket.body.weave.courses.iter().zip(1..) {
        found.extend(course_empty(case, course, number));
        found.extend(strand_too_short(case, course, number));
        found.extend(strand_count_surprising(case, course, number));
    }
    found
}

/// Key of a course's own value; courses are counted from 1 at the base.
pub(super) fn key(number: u32, what: &str) -> String {
    format!("weave.courses[{number}].{what}")
}

fn course_empty(case: &Case<'_>, course: &Course, number: u32) -> Option<Finding> {
    (course.rows == 0).then(|| {
        let top = case.basket.body.form.profile.at(course.from + course.pitch * 4.0).height;
        let place =
            Place::from(Piece::Course(number)).at(case.basket.body.form.profile.at(course.from).height);
        let finding = Finding::new(Grade::Stop, "course-empty", place)
            .measured(course.rows, 1_u32)
            .arg("from", case.basket.body.form.profile.at(course.from).height);
        match ends_by(case, number) {
            Some(Until::Rows(_)) => finding.remedy(key(number, "rows"), "4"),
            _ => finding.remedy(key(number, "until"), at_height(top, case)),
        }
    })
}

/// How the pattern ends a course.
fn ends_by(case: &Case<'_>, number: u32) -> Option<Until> {
    let index = usize::try_from(number.checked_sub(1)?).ok()?;
    case.pattern.weave.courses.get(index).map(|course| course.until)
}

/// The last course and its number.
pub(super) fn last<'a>(case: &Case<'a>) -> Option<(&'a Course, u32)> {
    case.basket.body.weave.courses.iter().zip(1..).last()
}

/// Only where the pattern counts rows: a height that the maker wrote is meant.
fn rows_do_not_fill(case: &Case<'_>) -> Option<Finding> {
    let (course, number) = last(case)?;
    let Some(Until::Rows(_)) = ends_by(case, number) else { return None };
    let arc = case.basket.body.form.arc();
    let bare = arc - case.basket.body.rim().along - case.rim_width();
    let limit = arc * BARE_SHARE;
    bare.exceeds(limit).then(|| {
        let place = Place::from(Piece::Course(number)).at(case.basket.body.weave.top_height);
        Finding::new(Grade::Care, "rows-do-not-fill", place)
            .measured(bare, limit)
            .arg("rows", case.basket.body.weave.rows)
            .remedy(key(number, "rows"), rows_to(case, course).to_string())
    })
}

fn rows_past_the_top(case: &Case<'_>) -> Option<Finding> {
    let (course, number) = last(case)?;
    let (arc, width) = (case.basket.body.form.arc(), case.rim_width());
    let over = may_stand_over(case);
    let limit = arc + over;
    let rim_top = case.basket.body.rim().along + width;
    rim_top.exceeds(limit).then(|| {
        let grade = if case.basket.body.weave.top_along > arc { Grade::Stop } else { Grade::Care };
        let place = Place::from(Piece::Course(number)).at(case.basket.body.weave.top_height);
        let finding = Finding::new(grade, "rows-past-the-top", place)
            .measured(rim_top, limit)
            .arg("top", arc)
            .arg("past", rim_top - arc)
            .arg("rim", width)
            .arg("over", over);
        let (key, value) = ends_lower(case, course, number);
        finding.remedy(key, value)
    })
}

/// How much of the rim may stand above the mould: rings go on without it, so all of it; hoops that are bent
/// in their place still clamp with their upper half above it (common practice).
fn may_stand_over(case: &Case<'_>) -> Length {
    if case.basket.body.rim().hoops == HoopWay::Bent { case.rim_width() / 2.0 } else { case.rim_width() }
}

/// How much of the mould is kept for the rim where the weaving is to end lower: none for rings, all of the
/// hoops' height where they are bent on it.
fn kept_for_rim(case: &Case<'_>) -> Length {
    if case.basket.body.rim().hoops == HoopWay::Bent { case.rim_width() } else { Length::ZERO }
}

/// What of a course to change so that it ends within the mould.
pub(super) fn ends_lower(case: &Case<'_>, course: &Course, number: u32) -> (String, String) {
    match ends_by(case, number) {
        Some(Until::Rows(_)) => (key(number, "rows"), rows_to(case, course).to_string()),
        _ => (key(number, "until"), below_top(kept_for_rim(case) + course.pitch, case)),
    }
}

/// Rows of a course that bring it up to where it should end.
fn rows_to(case: &Case<'_>, course: &Course) -> u32 {
    let room = case.basket.body.form.arc() - kept_for_rim(case) - course.from;
    (room / course.pitch).floor().clamp(1.0, 1e6) as u32
}

fn at_height(height: Length, case: &Case<'_>) -> String {
    let height = write::at_least(height, case.units());
    format!("\"height {}\"", height.trim_matches('"'))
}

fn below_top(length: Length, case: &Case<'_>) -> String {
    let length = write::at_least(length, case.units());
    format!("\"{} below mould top\"", length.trim_matches('"'))
}

/// Half a round, or twice the overlap and a stave; see [`crate::weave::joins`].
fn strand_too_short(case: &Case<'_>, course: &Course, number: u32) -> Option<Finding> {
    let (weaver, short) = course.weavers.iter().find_map(|weaver| Some((weaver, weaver.too_short?)))?;
    let place = Place::from(Piece::Course(number));
    let finding = Finding::new(Grade::Stop, "strand-too-short", place)
        .measured(short.strand, short.least)
        .arg("weaver", &weaver.material);
    if short.strand != weaver.strand {
        // It stands in the list of strands; without the list each is as its material.
        return Some(finding.remedy(key(number, "strands"), "[]"));
    }
    Some(finding.maybe(
        &key(number, "weaver"),
        case.stock_like(&weaver.material, |other| {
            other.put_up.strand.is_some_and(|strand| strand > short.least * ROWS_PER_STRAND * 2.0)
        }),
    ))
}

/// Rows that are begun one by one need no joins.
fn strand_count_surprising(case: &Case<'_>, course: &Course, number: u32) -> Option<Finding> {
    if course.joins.is_empty() {
        return None;
    }
    let measured = f64::from(course.rows) / course.joins.len() as f64;
    (measured < ROWS_PER_STRAND).then(|| {
        let place = Place::from(Piece::Course(number));
        let rows = |number| Value::Number(number, 1);
        Finding::new(Grade::Note, "strand-count-surprising", place)
            .measured(rows(measured), rows(ROWS_PER_STRAND))
            .arg("strands", course.strands)
            .arg("joins", course.joins.len() as u32)
            .arg("strand", course.strand)
            .arg("weaver", &course.weaver)
            .maybe(
                &key(number, "weaver"),
                case.stock_like(&course.weaver, |other| {
                    other
                        .put_up
                        .strand
                        .is_some_and(|strand| strand > course.strand * (1.1 * ROWS_PER_STRAND / measured))
                }),
            )
    })
}
