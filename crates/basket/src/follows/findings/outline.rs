//! Does a foot that is not round agree with its girth, and do the staves at its ends stand well?

use super::case::{Case, Measured};
use super::finding::{Finding, Grade, Place};
use super::write;
use crate::form::{Outline as _, Shape};
use crate::measure::Length;
use crate::message::Value;
use crate::pattern::{Girth, MouldForm, Rings, keys};
use crate::piece::Piece;

/// How far the tape and the girth that follows from length and width may lie apart: what 1/8 in on each of both
/// makes of a foot 6 in long (common practice).
const APART: f64 = 0.02;
/// How many times as wide as along the sides the gaps at the ends may be before they are seen (common practice).
const SEEN: f64 = 2.0;

pub(super) fn check(case: &Case<'_>) -> Vec<Finding> {
    if case.basket.body.form.outline.is_round() {
        return Vec::new();
    }
    let found = [not_computed(case), contradicts(case), gapes(case)];
    found.into_iter().flatten().collect()
}

/// Parts that are computed on a round basket alone.
fn not_computed(case: &Case<'_>) -> Option<Finding> {
    let pattern = case.pattern;
    let parts = [
        (pattern.base.rings.is_some_and(|rings| rings != Rings::None), "outline-part-rings"),
        (pattern.base.woods.as_ref().is_some_and(|woods| woods.len() > 1), "outline-part-strips"),
    ];
    let asked: Vec<Value> =
        parts.into_iter().filter(|(asked, _)| *asked).map(|(_, part)| Value::Term(part)).collect();
    (!asked.is_empty()).then(|| {
        Finding::new(Grade::Stop, "oval-part-not-computed", Piece::Mould).arg("parts", Value::List(asked))
    })
}

/// The tape and the foot's length and width tell of one foot.
fn contradicts(case: &Case<'_>) -> Option<Finding> {
    let MouldForm::Girths(girths) = &case.pattern.mould.form else { return None };
    let taped = girths.first()?.girth;
    let drawn = Length::mm(Shape::of(&case.pattern.mould.outline)?.girth());
    let off = (taped / drawn - 1.0).abs();
    (off > APART).then(|| {
        Finding::new(Grade::Stop, "oval-girth-contradicts", Piece::Mould)
            .measured(Value::Percent(off), Value::Percent(APART))
            .arg("taped", taped)
            .arg("drawn", drawn)
            .remedy(keys::mould::GIRTHS.path, with_first(girths, drawn, case))
    })
}

/// These girths with another at the foot.
fn with_first(girths: &[Girth], first: Length, case: &Case<'_>) -> String {
    let rest = girths.iter().skip(1).map(|girth| (girth.height, girth.girth));
    let pair = |(height, girth)| {
        format!("[{}, {}]", write::near(height, case.units()), write::near(girth, case.units()))
    };
    let pairs: Vec<String> = std::iter::once((Length::ZERO, first)).chain(rest).map(pair).collect();
    format!("[{}]", pairs.join(", "))
}

/// A wall that leans out takes the staves at the tight ends farther apart than those along the sides.
fn gapes(case: &Case<'_>) -> Option<Finding> {
    let (form, uprights) = (&case.basket.body.form, case.basket.body.uprights());
    let along = case.basket.body.rim().along;
    let [sides, ends] = uprights.gaps_between(form, along);
    let limit = sides * SEEN;
    (ends.exceeds(limit) && sides > Length::ZERO).then(|| {
        let place = Place::from(Piece::Uprights).at(form.profile.at(along).height);
        Finding::new(Grade::Care, "oval-ends-gape", place)
            .measured(ends, limit)
            .arg("sides", sides)
            .remedy(keys::staves::SPACING.path, "\"rim\"".to_owned())
            .remedy(keys::staves::ENDS.path, write::near(uprights.width + (ends - sides) / 2.0, case.units()))
            .remedy(
                keys::mould::RIM.path,
                write::at_most(form.across(Length::ZERO, Length::ZERO).length, case.units()),
            )
    })
}
