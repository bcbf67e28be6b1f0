//! Does every note of the maker find its step?

use super::case::Case;
use super::finding::{Finding, Grade};
use crate::message::Value;
use crate::piece::Piece;
use crate::term::Term;

pub(super) fn check(case: &Case<'_>) -> Vec<Finding> {
    let steps = case.steps;
    let homeless = case.pattern.notes.iter().filter(|note| steps.iter().all(|step| step.kind != note.step));
    let finding = |note: &crate::pattern::Note| {
        let (step, count) = (Value::Term(note.step.term()), Value::Count(steps.len() as i64));
        Finding::new(Grade::Note, "note-without-step", Piece::Whole).measured(step, count)
    };
    homeless.map(finding).collect()
}
