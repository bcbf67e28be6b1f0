//! Do the ears face each other, sit on a stave, and leave their neighbours alone?

use super::case::{Case, Measured};
use super::finding::{Finding, Grade, Place};
use super::write;
use crate::fittings::{EarOption, Ears};
use crate::measure::{Angle, Length};
use crate::message::Value;
use crate::pattern::{EarWay, keys};
use crate::piece::Piece;
use crate::term::Term;

/// How far an ear may be off facing the other: most makers accept so much where a count is odd, and everyone
/// sees twice as much (common practice).
const OFF_OPPOSITE: Angle = Angle::degrees(3.0);
/// The least tail that rows or a stave hold: woven in, and pushed down (common practice).
const TAILS: [Length; 2] = [Length::inches(0.5), Length::inches(1.0)];
/// A tail may be this thick on any stave (common practice for sheet brass).
const THIN: Length = Length::inches(1.0 / 16.0);
/// The least that is left beside the rivet's hole (common practice).
const BESIDE_HOLE: Length = Length::mm(1.0);
/// The pin of an ear wants this many diameters of stave and ear behind one another
/// (common practice: three).
const BEHIND_PIN: f64 = 3.0;

pub(super) fn check(case: &Case<'_>) -> Vec<Finding> {
    let Some(ears) = &case.basket.ears else { return Vec::new() };
    let mut found = Vec::new();
    found.extend(pin_misses_stave(case, ears));
    found.extend(off_opposite(ears));
    found.extend(too_wide(case, ears));
    found.extend(tail_short(case, ears));
    found.extend(tail_too_long(case, ears));
    found.extend(tail_too_thick(case, ears));
    found.extend(hole_near_edge(case, ears));
    found
}

/// The first way of placing, least error first, that serves.
fn placing(ears: &Ears, serves: impl Fn(&EarOption) -> bool) -> Option<String> {
    ears.options
        .iter()
        .find(|option| option.placing != ears.placing && serves(option))
        .map(|option| write::name(word(option)))
}

/// A placing as the pattern writes it.
fn word(option: &EarOption) -> &'static str {
    option.placing.term().trim_start_matches("ear-placing-")
}

/// How much of an ear this far off its stave has that stave behind it.
fn behind(case: &Case<'_>, ears: &Ears, off: Length) -> Length {
    let stave = case.stave_width_at_rim();
    ((ears.width + stave) / 2.0 - off.abs()).min(stave).min(ears.width).max(Length::ZERO)
}

fn pin_misses_stave(case: &Case<'_>, ears: &Ears) -> Option<Finding> {
    let limit = case.basket.body.pins().ears.as_ref()?.drill * BEHIND_PIN;
    let (ear, number) = ears
        .each
        .iter()
        .zip(1_u32..)
        .max_by(|a, b| a.0.off_stave.abs().to_mm().total_cmp(&b.0.off_stave.abs().to_mm()))?;
    let measured = behind(case, ears, ear.off_stave);
    measured.falls_short_of(limit).then(|| {
        let place = Place::from(Piece::Ear(number)).at(case.basket.body.weave.top_height);
        Finding::new(Grade::Care, "pin-misses-stave", place)
            .measured(measured, limit)
            .arg("stave", ear.stave)
            .arg("off", ear.off_stave.abs())
            .maybe(
                keys::ears::PLACING.path,
                placing(ears, |option| behind(case, ears, option.off_stave) >= limit),
            )
    })
}

fn off_opposite(ears: &Ears) -> Option<Finding> {
    let degrees = |option: Angle| option.to_degrees().abs();
    let (measured, limit) = (degrees(ears.off_opposite), OFF_OPPOSITE.to_degrees());
    (measured > limit + 1e-9).then(|| {
        let grade = if measured > 2.0 * limit { Grade::Care } else { Grade::Note };
        Finding::new(grade, "ears-off-opposite", Piece::Ears)
            .measured(ears.off_opposite, OFF_OPPOSITE)
            .arg("off", ears.off_opposite_rim.abs())
            .arg("middle", ears.off_middle)
            .arg("placing", Value::Term(ears.placing.term()))
            .maybe(keys::ears::PLACING.path, placing(ears, |option| degrees(option.off_opposite) <= limit))
    })
}

/// A tail holds by the rows over it, or by the stave behind it.
fn tail_short(case: &Case<'_>, ears: &Ears) -> Option<Finding> {
    let [woven_in, pushed_down] = TAILS;
    let limit = match ears.way {
        EarWay::WovenIn => woven_in,
        EarWay::PushedDown => pushed_down,
        EarWay::AsStave => return None,
    };
    ears.tail.falls_short_of(limit).then(|| {
        Finding::new(Grade::Care, "ear-tail-short", Piece::Ears)
            .measured(ears.tail, limit)
            .arg("rows", ears.woven_in.map_or(0, |woven_in| woven_in.rows))
            .remedy(keys::ears::TAIL.path, write::at_least(limit, case.units()))
    })
}

/// A tail longer than the wall is high would come out at the base.
fn tail_too_long(case: &Case<'_>, ears: &Ears) -> Option<Finding> {
    let limit = case.basket.body.rim().along;
    (ears.way != EarWay::AsStave && ears.tail.exceeds(limit)).then(|| {
        Finding::new(Grade::Care, "ear-tail-too-long", Piece::Ears)
            .measured(ears.tail, limit)
            .remedy(keys::ears::TAIL.path, write::at_most(limit / 2.0, case.units()))
    })
}

/// Rows go over stave and tail as over one; where the tail is thicker than the stave they stand off.
fn tail_too_thick(case: &Case<'_>, ears: &Ears) -> Option<Finding> {
    let stave = case.basket.body.uprights().thickness;
    let (measured, limit) = (ears.blade(stave), stave.max(THIN));
    measured.exceeds(limit).then(|| {
        Finding::new(Grade::Care, "ear-tail-too-thick", Piece::Ears)
            .measured(measured, limit)
            .arg("stave", stave)
            .remedy(keys::ears::THICKNESS.path, write::at_most(limit, case.units()))
    })
}

fn hole_near_edge(case: &Case<'_>, ears: &Ears) -> Option<Finding> {
    let drill = case.basket.rivets()?.drill;
    let measured = (ears.width - drill) / 2.0;
    measured.falls_short_of(BESIDE_HOLE).then(|| {
        let grade = if measured > Length::ZERO { Grade::Care } else { Grade::Stop };
        Finding::new(grade, "ear-hole-near-edge", Piece::Ears)
            .measured(measured.max(Length::ZERO), BESIDE_HOLE)
            .arg("width", ears.width)
            .arg("drill", drill)
            .remedy(keys::ears::WIDTH.path, write::at_least(drill + BESIDE_HOLE * 2.0, case.units()))
    })
}

/// An ear wider than its stave and the gaps beside it wants a tail that is narrowed to go down
/// behind one stave; wider than its neighbours too, it covers pins and pushes the wall out of round.
fn too_wide(case: &Case<'_>, ears: &Ears) -> Option<Finding> {
    let (stave, gap) = (case.stave_width_at_rim(), case.basket.body.staves().gap_rim_wall.max(Length::ZERO));
    let (tail, most) = (stave + gap * 2.0, stave * 3.0 + gap * 2.0);
    let (grade, limit) = if ears.width > most { (Grade::Care, most) } else { (Grade::Note, tail) };
    ears.width.exceeds(limit).then(|| {
        Finding::new(grade, "ear-too-wide", Piece::Ears)
            .measured(ears.width, limit)
            .arg("stave", stave)
            .arg("tail", tail)
            .remedy(keys::ears::WIDTH.path, write::workable(tail, case.units()))
    })
}
