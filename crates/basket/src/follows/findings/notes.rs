//! Does every note of the maker find its step?

use super::case::Case;
use super::{Finding, Grade, Part};
use crate::message::Value;

pub(super) fn check(case: &Case<'_>) -> Vec<Finding> {
    let steps = &case.basket.steps;
    let homeless =
        case.pattern.notes.iter().filter(|note| steps.iter().all(|step| step.title.id != note.step));
    let finding = |note: &crate::pattern::Note| {
        let (step, count) = (Value::Term(note.step), Value::Count(steps.len() as i64));
        Finding::new(Grade::Note, "note-without-step", Part::Whole, step, count)
    };
    homeless.map(finding).collect()
}
