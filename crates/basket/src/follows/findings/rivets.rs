//! Are the rivets of the handle long enough?

use super::case::{Case, Measured};
use super::finding::{Finding, Grade, Place};
use super::write;
use crate::fittings::{Handle, Rivets};
use crate::measure::Length;
use crate::pattern::keys;
use crate::piece::Piece;
use crate::stock::Material;

pub(super) fn check(case: &Case<'_>) -> Vec<Finding> {
    case.basket.rivets().and_then(|rivets| too_short(case, rivets)).into_iter().collect()
}

/// A head wants 1.5 diameters (a how-to article on rivets); with one diameter it is small but holds.
fn too_short(case: &Case<'_>, rivets: &Rivets) -> Option<Finding> {
    let length = rivets.stock.length?;
    length.falls_short_of(rivets.length).then(|| {
        let grade = if length <= rivets.grip {
            Grade::Stop
        } else if length < rivets.grip + rivets.stock.width {
            Grade::Care
        } else {
            Grade::Note
        };
        let place = Place::from(Piece::Handle);
        let missing = rivets.length - length;
        Finding::new(grade, "rivet-too-short", place)
            .measured(length, rivets.length)
            .arg("rivet", &rivets.stock)
            .arg("grip", rivets.grip)
            .maybe(keys::handle::RIVET.path, longer_rivet(case, rivets))
            .maybe(keys::ears::THICKNESS.path, thinner_ear(case, missing))
            .maybe(keys::handle::THICKNESS.path, thinner_handle(case, missing))
    })
}

fn thinner_ear(case: &Case<'_>, by: Length) -> Option<String> {
    let ears = case.basket.ears.as_ref()?;
    thinner(ears.thickness, by, case)
}

fn thinner_handle(case: &Case<'_>, by: Length) -> Option<String> {
    let thickness = match case.basket.handle.as_ref()? {
        Handle::Knobs(knobs) => knobs.length,
        other => other.bow()?.thickness,
    };
    thinner(thickness, by, case)
}

/// A thickness less this, as long as two thirds of it are left.
fn thinner(thickness: Length, by: Length, case: &Case<'_>) -> Option<String> {
    let left = thickness - by;
    (left > thickness * (2.0 / 3.0)).then(|| write::workable(left, case.units()))
}

/// The rivet nearest in diameter that is long enough for its own head.
fn longer_rivet(case: &Case<'_>, rivets: &Rivets) -> Option<String> {
    let reaches =
        |rivet: &Material| rivet.length.is_some_and(|length| length >= rivets.grip + rivet.width * 1.5);
    case.stock_like(&rivets.stock, reaches)
}
