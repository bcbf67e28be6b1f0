//! Do the levels of a mould stay smooth and convex all the way up?

use super::case::Case;
use super::finding::{Finding, Grade, Place};
use super::write;
use crate::measure::Length;
use crate::pattern::{self, WidthAt, keys};
use crate::piece::Piece;

/// Heights that are looked at.
const LOOKS: u32 = 49;

pub(super) fn check(case: &Case<'_>) -> Vec<Finding> {
    pointed(case).into_iter().collect()
}

/// Where the sides run out so much less than the ends, or the ends than the sides, that a level comes to a point.
fn pointed(case: &Case<'_>) -> Option<Finding> {
    let form = &case.basket.body.form;
    let pattern::Levels::Widths(widths) = &case.pattern.mould.levels else { return None };
    let mut spots = form.profile.spots(LOOKS);
    let pointed = spots.find(|spot| form.tightest(spot.along, Length::ZERO) <= Length::ZERO)?;
    let across = form.across(pointed.along, Length::ZERO);
    let place = Place::from(Piece::Mould).at(pointed.height);
    Some(
        Finding::new(Grade::Stop, "mould-level-pointed", place)
            .arg("length", across.length)
            .arg("width", across.width)
            .arg("height", pointed.height)
            .remedy(keys::mould::WIDTHS.path, even(widths, case)),
    )
}

/// Widths at the same heights with which the sides run as the ends do.
fn even(widths: &[WidthAt], case: &Case<'_>) -> String {
    let (form, units) = (&case.basket.body.form, case.units());
    let foot = form.across(Length::ZERO, Length::ZERO);
    let pair = |at: &WidthAt| {
        let length = form.across(form.profile.along_at_height(at.height), Length::ZERO).length;
        let width = foot.width + (length - foot.length);
        format!("[{}, {}]", write::near(at.height, units), write::near(width, units))
    };
    let pairs: Vec<String> = widths.iter().map(pair).collect();
    format!("[{}]", pairs.join(", "))
}
