//! Do the ears face each other, sit on a stave, and leave their neighbours alone?

use super::case::{Case, Measured};
use super::finding::{Finding, Grade, Place};
use super::write;
use crate::fittings::{EarOption, Ears};
use crate::measure::Length;
use crate::message::Value;
use crate::pattern::keys;
use crate::piece::Piece;
use crate::term::Term;

/// How far an ear may be off facing the other before the eye sees it, along the rim
/// (common practice: 1/8 in).
const OFF_OPPOSITE: Length = Length::inches(1.0 / 8.0);
/// The pin of an ear wants this many diameters of stave and ear behind one another
/// (common practice: three).
const BEHIND_PIN: f64 = 3.0;

pub(super) fn check(case: &Case<'_>) -> Vec<Finding> {
    let Some(ears) = &case.basket.ears else { return Vec::new() };
    let mut found = Vec::new();
    found.extend(pin_misses_stave(case, ears));
    found.extend(off_opposite(ears));
    found.extend(too_wide(case, ears));
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
    let measured = ears.off_opposite_rim.abs();
    measured.exceeds(OFF_OPPOSITE).then(|| {
        Finding::new(Grade::Care, "ears-off-opposite", Piece::Ears)
            .measured(measured, OFF_OPPOSITE)
            .arg("angle", ears.off_opposite)
            .arg("middle", ears.off_middle)
            .arg("placing", Value::Term(ears.placing.term()))
            .maybe(
                keys::ears::PLACING.path,
                placing(ears, |option| option.off_opposite_rim.abs() <= OFF_OPPOSITE),
            )
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
