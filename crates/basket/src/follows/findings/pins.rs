//! Do the pins go through, hold, and leave the staves whole?

use super::case::{Case, Measured};
use super::finding::{Finding, Grade};
use super::rim::{hoops, stock_key};
use super::write;
use crate::fittings::PinSet;
use crate::measure::Length;
use crate::pattern::{Every, Word, keys};
use crate::piece::Piece;
use crate::stock::Material;

/// A hole wider than this share of a stave splits it (common practice: a third).
const HOLE_SHARE: f64 = 1.0 / 3.0;
/// Thinnest sheet for an ear (common practice: 1/32 in).
const THINNEST_EAR: Length = Length::inches(1.0 / 32.0);

/// Farther apart than this, pins without a lashing let the hoops gape between them (common practice: 3/4 in).
const FARTHEST_ALONE: Length = Length::inches(0.75);

pub(super) fn check(case: &Case<'_>) -> Vec<Finding> {
    [too_short(case), ear_pins_too_short(case), splits_stave(case), far_apart(case)]
        .into_iter()
        .flatten()
        .collect()
}

fn too_short(case: &Case<'_>) -> Option<Finding> {
    let pins = &case.basket.body.pins().others;
    pins.length.falls_short_of(pins.length_needed).then(|| {
        let grade = if pins.length <= pins.stack { Grade::Stop } else { Grade::Care };
        Finding::new(grade, "pin-too-short", Piece::Pins)
            .measured(pins.length, pins.length_needed)
            .arg("pin", &pins.stock)
            .arg("stack", pins.stack)
            .maybe(keys::pins::STOCK.path, longer(case))
    })
}

/// The shortest pin that is long enough.
fn longer(case: &Case<'_>) -> Option<String> {
    let pins = &case.basket.body.pins().others;
    let length = |pin: &Material| pin.length.unwrap_or(Length::ZERO).to_mm();
    case.catalogue
        .materials
        .iter()
        .filter(|pin| {
            pin.kind == pins.stock.kind && pin.length.is_some_and(|length| length >= pins.length_needed)
        })
        .min_by(|a, b| length(a).total_cmp(&length(b)))
        .map(|pin| write::name(&pin.name))
}

/// The pins of the ears go through one thickness more. Where no other pin reaches either, that is said
/// already.
fn ear_pins_too_short(case: &Case<'_>) -> Option<Finding> {
    let pins = case.basket.body.pins();
    let ears = pins.ears.as_ref()?;
    let short = |pins: &PinSet| pins.length.falls_short_of(pins.length_needed);
    (short(ears) && !short(&pins.others)).then(|| {
        let grade = if ears.length <= ears.stack { Grade::Stop } else { Grade::Care };
        let by = ears.length_needed - ears.length;
        let finding = Finding::new(grade, "ear-pin-too-short", Piece::Ears)
            .measured(ears.length, ears.length_needed)
            .arg("pin", &ears.stock)
            .arg("stack", ears.stack)
            .maybe(keys::ears::THICKNESS.path, thinner_ear(case, by));
        hoops(case).into_iter().fold(finding, |finding, (hoop, piece)| {
            let both = case.pattern.rim.inner.is_none();
            let by = if both { by / 2.0 } else { by };
            let thinner = |other: &Material| other.thickness <= hoop.stock.thickness - by;
            let outer = piece == Piece::OuterHoop;
            let thinner = (outer || !both).then(|| case.stock_like(&hoop.stock, thinner)).flatten();
            finding.maybe(stock_key(case, piece), thinner)
        })
    })
}

/// An ear that is thinner by so much between the hoops, as long as sheet brass is still stiff.
fn thinner_ear(case: &Case<'_>, by: Length) -> Option<String> {
    let ears = case.basket.ears.as_ref()?;
    let left = ears.blade(case.basket.body.uprights().thickness) - by;
    (left >= THINNEST_EAR).then(|| write::at_most(left, case.units()))
}

/// Where no lashing binds the hoops, nothing holds them together between two pins.
fn far_apart(case: &Case<'_>) -> Option<Finding> {
    let body = &case.basket.body;
    if body.lashing().is_some() {
        return None;
    }
    let (pins, count) = (body.pins(), body.uprights().count);
    let (from, to, step) = pins.steps(count).into_iter().max_by_key(|(_, _, step)| *step)?;
    let apart = body.rim().girth * (f64::from(step) / f64::from(count.max(1)));
    apart.exceeds(FARTHEST_ALONE).then(|| {
        let more = (pins.every == Every::OtherStave).then(|| write::name(Every::Stave.word()));
        Finding::new(Grade::Care, "pins-far-apart", Piece::Pins)
            .measured(apart, FARTHEST_ALONE)
            .arg("from", from)
            .arg("to", to)
            .maybe(keys::pins::EVERY.path, more)
            .remedy(keys::LASHING.path, "{ every = \"stave\" }")
    })
}

/// The widest hole is asked: the ears' pins may be thicker than the others.
fn splits_stave(case: &Case<'_>) -> Option<Finding> {
    let pins = case.basket.body.pins();
    let limit = case.stave_width_at_rim() * HOLE_SHARE;
    let widest = pins.sets().reduce(|widest, set| if set.drill > widest.drill { set } else { widest })?;
    widest.drill.exceeds(limit).then(|| {
        let others = &pins.others;
        let finer = case.stock_like(&others.stock, |other| {
            other.width <= limit && other.length.is_some_and(|length| length >= others.length_needed)
        });
        Finding::new(Grade::Care, "pin-splits-stave", Piece::Pins)
            .measured(widest.drill, limit)
            .arg("pin", &widest.stock)
            .arg("width", case.stave_width_at_rim())
            .maybe(keys::pins::STOCK.path, finer)
    })
}
