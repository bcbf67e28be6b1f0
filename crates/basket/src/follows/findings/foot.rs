//! Does a stave have room for its bend between the groove and the mould?

use super::case::{Case, Measured};
use super::finding::{Finding, Grade, Place, Remedy};
use super::write;
use crate::base::Base;
use crate::measure::Length;
use crate::pattern::keys;
use crate::piece::Piece;
use crate::staves::{Bend, UNSEEN};
use crate::stock::Material;

/// Steps in which a base is tried smaller, and thicker.
const STEPS: (Length, Length) = (Length::inches(1.0 / 16.0), Length::inches(1.0 / 16.0));
/// How many steps of each are tried: an inch off the diameter, half an inch on the thickness.
const TRIED: (u32, u32) = (16, 8);

/// Such feet are made every day, so this never stops the work.
pub(super) fn stave_too_stiff(case: &Case<'_>) -> Option<Finding> {
    let staves = case.basket.body.staves();
    let bend = &staves.bend;
    if lies_close(bend) {
        return None;
    }
    let place = Place::from(Piece::Uprights).at(Length::ZERO);
    let mut finding = Finding::new(Grade::Care, "stave-too-stiff", place)
        .measured(bend.stand_off, UNSEEN)
        .arg("stock", &staves.stock)
        .arg("thickness", staves.uprights.thickness)
        .arg("radius", bend.least_radius)
        .arg("touch", bend.touch)
        .maybe(keys::staves::STOCK.path, thinner_stock(case));
    finding.remedies.extend(roomier_base(case));
    Some(finding)
}

/// Whether nobody sees that a stave swings out, and its stock stands the bend.
fn lies_close(bend: &Bend) -> bool {
    !bend.stand_off.exceeds(UNSEEN) && !bend.radius.falls_short_of(bend.least_radius)
}

fn bend(case: &Case<'_>, base: &Base, stock: &Material) -> Bend {
    Bend::of(case.basket.body.profile(), base, stock)
}

fn thinner_stock(case: &Case<'_>) -> Option<String> {
    let base = case.basket.body.base();
    case.stock_like(&case.basket.body.staves().stock, |other| {
        other.thickness <= base.groove_width && lies_close(&bend(case, base, other))
    })
}

/// A smaller base or a thicker one; where neither is enough, both.
fn roomier_base(case: &Case<'_>) -> Vec<Remedy> {
    let (smaller, thicker) = TRIED;
    let steps = |smaller: u32, thicker: u32| changed(case, smaller, thicker);
    let alone =
        [(1..=smaller).find_map(|step| steps(step, 0)), (1..=thicker).find_map(|step| steps(0, step))];
    let alone: Vec<Remedy> = alone.into_iter().flatten().flatten().collect();
    if !alone.is_empty() {
        return alone;
    }
    (1..=smaller).find_map(|step| steps(step, step.div_ceil(2))).unwrap_or_default()
}

/// A base so many steps smaller and thicker, if with it the staves lie close.
fn changed(case: &Case<'_>, smaller: u32, thicker: u32) -> Option<Vec<Remedy>> {
    let now = case.basket.body.base();
    let base = Base {
        diameter: now.diameter - STEPS.0 * f64::from(smaller),
        thickness: now.thickness + STEPS.1 * f64::from(thicker),
        ..now.clone()
    };
    let stock = &case.basket.body.staves().stock;
    if base.diameter < now.diameter / 2.0 || !lies_close(&bend(case, &base, stock)) {
        return None;
    }
    let remedy = |key: &str, value| Remedy { key: key.to_owned(), value, brings: Vec::new() };
    let diameter = (smaller > 0)
        .then(|| remedy(keys::base::DIAMETER.path, write::at_most(base.across().length, case.units())));
    let thickness = (thicker > 0)
        .then(|| remedy(keys::base::THICKNESS.path, write::at_least(base.thickness, case.units())));
    Some(thickness.into_iter().chain(diameter).collect())
}
