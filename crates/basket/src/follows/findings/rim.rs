//! Do the hoops bend, and do their scarfs keep clear?

use super::case::{Case, Measured};
use super::finding::{Finding, Grade};
use super::write;
use crate::form::Outline as _;
use crate::measure::Length;
use crate::message::Value;
use crate::pattern::{HoopWay, Outline, keys};
use crate::piece::Piece;
use crate::rim::Hoop;

/// Strain beyond this many times the stock's limit breaks it (common practice).
const BREAKS: f64 = 1.5;
/// A thinner hoop is a little nearer to its bend's middle; room for that.
const SAFE: f64 = 1.1;
/// A scarf wants a lap of at least this many thicknesses (*Wood Handbook*, Forest Products
/// Laboratory, FPL-GTR-190, 2010, scarf joints: 8 to 12 for glued wood).
const LAP_THICKNESSES: f64 = 8.0;
/// Room between the end of a scarf and an ear (common practice: 1/2 in).
const CLEAR_OF_EAR: Length = Length::inches(0.5);
/// Room between the scarfs of the two hoops (common practice: 1 in; a maker's lashing tutorial
/// puts them on opposite sides).
const CLEAR_OF_EACH_OTHER: Length = Length::inches(1.0);

/// Rings that are bought are bent and closed already, their joint where the maker turns it.
pub(super) fn check(case: &Case<'_>) -> Vec<Finding> {
    if case.basket.body.rim().hoops == HoopWay::Bought {
        return Vec::new();
    }
    let mut found = Vec::new();
    for (hoop, part) in hoops(case) {
        found.extend(bent_too_hard(case, hoop, part));
        found.extend(lap_too_short(case, hoop, part));
        found.extend(scarf_under_ear(case, hoop, part));
    }
    found.extend(scarfs_together(case));
    found
}

/// Both hoops with their parts.
pub(super) fn hoops<'a>(case: &Case<'a>) -> [(&'a Hoop, Piece); 2] {
    let rim = case.basket.body.rim();
    [(&rim.outer, Piece::OuterHoop), (&rim.inner, Piece::InnerHoop)]
}

/// The pattern key of a hoop's stock.
pub(super) fn stock_key(case: &Case<'_>, part: Piece) -> &'static str {
    if part == Piece::InnerHoop && case.pattern.rim.inner.is_some() {
        keys::rim::INNER.path
    } else {
        keys::rim::STOCK.path
    }
}

fn bent_too_hard(case: &Case<'_>, hoop: &Hoop, part: Piece) -> Option<Finding> {
    let limit = hoop.stock.bend_limit?;
    // Where a level comes to a point, that is the fault.
    let pointed = case.basket.body.form.tightest(case.basket.body.rim().along, Length::ZERO) <= Length::ZERO;
    (hoop.bend_strain > limit && !pointed).then(|| {
        let grade = if hoop.bend_strain > limit * BREAKS { Grade::Stop } else { Grade::Care };
        let strain_per_mm = hoop.bend_strain / hoop.stock.thickness.to_mm();
        let thinner = case.stock_like(&hoop.stock, |other| {
            other.bend_limit.is_some_and(|limit| strain_per_mm * other.thickness.to_mm() * SAFE <= limit)
        });
        let needed = case.basket.body.rim().tightest * (hoop.bend_strain * SAFE / limit);
        let rounder = rounder(case, needed);
        let finding = Finding::new(grade, "hoop-bent-too-hard", part)
            .measured(Value::Percent(hoop.bend_strain), Value::Percent(limit))
            .arg("stock", &hoop.stock)
            .arg("thickness", hoop.stock.thickness)
            .arg("radius", case.basket.body.rim().tightest)
            .maybe(stock_key(case, part), thinner);
        rounder.into_iter().fold(finding, |finding, (key, value)| finding.remedy(key, value))
    })
}

/// Another foot whose ends are so much rounder that the rim bends no tighter than this: a wider oval, or a rectangle
/// with rounder corners. The smallest radius of an ellipse lies at the ends of its length: half the width squared over
/// half the length.
fn rounder(case: &Case<'_>, needed: Length) -> Option<(&'static str, String)> {
    let foot = Length::mm(case.basket.body.form.outline.tightest());
    let at_foot = foot + (needed - case.basket.body.rim().tightest);
    match &case.pattern.mould.outline {
        Outline::Oval { size, .. } => {
            let wider = size.width * libm::sqrt(at_foot / foot.max(Length::mm(1e-6)));
            (wider <= size.length).then(|| (keys::mould::WIDTH.path, write::at_least(wider, case.units())))
        }
        Outline::Stadium(size) => {
            let wider = at_foot * 2.0;
            (wider <= size.length).then(|| (keys::mould::WIDTH.path, write::at_least(wider, case.units())))
        }
        Outline::Rectangle { .. } => Some((keys::mould::CORNER.path, write::at_least(at_foot, case.units()))),
        Outline::Round | Outline::Traced(_) => None,
    }
}

fn lap_too_short(case: &Case<'_>, hoop: &Hoop, part: Piece) -> Option<Finding> {
    let limit = hoop.stock.thickness * LAP_THICKNESSES;
    hoop.scarf.lap.falls_short_of(limit).then(|| {
        Finding::new(Grade::Care, "lap-too-short", part)
            .measured(hoop.scarf.lap, limit)
            .arg("thickness", hoop.stock.thickness)
            .remedy(keys::rim::LAP.path, write::at_least(limit, case.units()))
    })
}

fn scarf_under_ear(case: &Case<'_>, hoop: &Hoop, part: Piece) -> Option<Finding> {
    let clear = hoop.scarf.clear_of_ear?;
    let of_handle = case.basket.in_rim().is_some_and(|ends| ends.of_handle);
    clear.falls_short_of(CLEAR_OF_EAR).then(|| {
        let lap = shorter(hoop, (CLEAR_OF_EAR - clear) * 2.0);
        Finding::new(Grade::Care, "scarf-under-ear", part)
            .measured(clear, CLEAR_OF_EAR)
            .arg("lap", hoop.scarf.lap)
            .arg("from", hoop.scarf.from_stave)
            .arg("to", hoop.scarf.to_stave)
            .arg("end", Value::Term(if of_handle { "in-rim-end" } else { "in-rim-ear" }))
            .remedy(keys::rim::LAP.path, write::at_most(lap, case.units()))
    })
}

fn scarfs_together(case: &Case<'_>) -> Option<Finding> {
    let rim = case.basket.body.rim();
    let clear = rim.outer.scarf.clear_of_other.min(rim.inner.scarf.clear_of_other);
    clear.falls_short_of(CLEAR_OF_EACH_OTHER).then(|| {
        let lap = shorter(&rim.outer, CLEAR_OF_EACH_OTHER - clear);
        Finding::new(Grade::Care, "scarfs-together", Piece::Rim)
            .measured(clear, CLEAR_OF_EACH_OTHER)
            .arg("lap", rim.outer.scarf.lap)
            .remedy(keys::rim::LAP.path, write::at_most(lap, case.units()))
    })
}

/// The lap, less this, but no shorter than a scarf can be.
fn shorter(hoop: &Hoop, by: Length) -> Length {
    (hoop.scarf.lap - by).max(hoop.stock.thickness * LAP_THICKNESSES)
}
