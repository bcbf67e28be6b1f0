//! The findings, with their sentences.

use basket::findings;
use serde::Serialize;
use words::Words;

use super::measure::Mm;
use super::value::Value;
use super::vocabulary::{Grade, Of};

/// A finding with its sentences.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub struct Finding {
    /// How much it weighs.
    grade: Grade,
    /// The same in the reader's language.
    grade_text: String,
    /// Which check, such as `weave-does-not-lock`.
    code: &'static str,
    /// Where on the basket.
    #[serde(rename = "where")]
    place: Place,
    /// The same in words.
    place_text: String,
    /// What was found.
    what: String,
    /// What was measured, with its kind.
    measured: Value,
    /// What it was measured against, with its kind.
    limit: Value,
    /// Changes to the pattern that would mend it, such as `staves.count = 73`; several stand with `or`
    /// between them, best first.
    remedy: String,
    /// The same one by one.
    remedies: Vec<Remedy>,
    /// What mends it, in words.
    remedy_text: String,
    /// Why it matters.
    why: String,
}

/// A change to the pattern.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
struct Remedy {
    /// The pattern key.
    key: String,
    /// The value to write, as TOML.
    value: String,
    /// Codes of the cares that come with it.
    brings: Vec<&'static str>,
}

/// A place on the basket.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
struct Place {
    /// What sort of piece, such as `outer-hoop`; `whole` for all of it.
    kind: &'static str,
    /// Of which vessel.
    of: Of,
    /// What tells it from its like, counted from 1: the number of the stave, course, pin or ear. Empty where
    /// there is but one or all are meant.
    numbers: Vec<u32>,
    /// Height above the mould's base, or `null`.
    height_mm: Option<Mm>,
}

impl Finding {
    pub(super) fn of(finding: &findings::Finding, words: &Words) -> Self {
        // What the sentences mention stands in them.
        let findings::Finding { grade, code, place, measured, limit, remedies, args: _ } = finding;
        let text = words.finding(finding);
        let changes = remedies.iter().map(|remedy| format!("{} = {}", remedy.key, remedy.value));
        Self {
            grade: grade.into(),
            grade_text: text.grade,
            code,
            place: place.into(),
            place_text: text.place,
            what: text.what,
            measured: measured.into(),
            limit: limit.into(),
            remedy: changes.collect::<Vec<_>>().join(" or "),
            remedies: remedies.iter().map(Remedy::from).collect(),
            remedy_text: text.remedy,
            why: text.why,
        }
    }
}

impl From<&findings::Remedy> for Remedy {
    fn from(remedy: &findings::Remedy) -> Self {
        let findings::Remedy { key, value, brings } = remedy;
        Self { key: key.clone(), value: value.clone(), brings: brings.iter().map(|care| care.code).collect() }
    }
}

impl From<&findings::Place> for Place {
    fn from(place: &findings::Place) -> Self {
        let findings::Place { piece, of, height } = place;
        Self { kind: piece.kind(), of: of.into(), numbers: piece.numbers(), height_mm: height.map(Mm::from) }
    }
}
