//! The courses of a pattern that names none.

use crate::choice::Choice;
use crate::measure::Length;
use crate::message::Message;
use crate::mould::Mould;
use crate::pattern::{CoursePattern, Until, WeaveKind};
use crate::stock::{Catalogue, Kind, Material};

/// Rows in the finer weaver at the base, where staves stand close (common practice).
const FINE_ROWS: u32 = 4;

/// Plain weave: a few rows in fine cane, the rest in a grade wider, until there is room for the rim.
pub fn courses(catalogue: &Catalogue, mould: &Mould, choices: &mut Vec<Choice>) -> Vec<CoursePattern> {
    let named = |name: &str| -> Option<Material> {
        catalogue
            .material(name)
            .or_else(|| catalogue.materials.iter().find(|material| material.kind == Kind::ChairCane))
            .cloned()
    };
    let (Some(finer), Some(weaver)) = (named("cane fine-fine"), named("cane fine")) else {
        return Vec::new();
    };
    let room = Length::inches(1.0).min(mould.height / 4.0);
    choices.push(Choice {
        key: "weave.courses",
        value: weaver.name.as_str().into(),
        reason: Message::new("choice-weave-courses")
            .with("rows", FINE_ROWS)
            .with("finer", &finer)
            .with("weaver", &weaver)
            .with("room", room),
    });
    let course = |weaver, until| CoursePattern::new(WeaveKind::Plain, weaver, until);
    vec![course(finer, Until::Rows(FINE_ROWS)), course(weaver, Until::BelowTop(room))]
}
