//! The courses of a pattern that names none.

use crate::form::Form;
use crate::making::Making;
use crate::measure::Length;
use crate::message::Message;
use crate::pattern::keys;
use crate::pattern::{CoursePattern, Until, WeaveKind};
use crate::stock::{Kind, Material};

/// Rows in the finer weaver at the base, where staves stand close (common practice).
const FINE_ROWS: u32 = 4;

/// Plain weave: a few rows in fine cane, the rest in a grade wider, until there is room for the rim.
pub fn courses(form: &Form, making: &mut Making<'_>) -> Vec<CoursePattern> {
    let catalogue = making.catalogue;
    let named = |name: &str| -> Option<Material> {
        catalogue
            .material(name)
            .or_else(|| catalogue.materials.iter().find(|material| material.kind == Kind::ChairCane))
            .cloned()
    };
    let (Some(finer), Some(weaver)) = (named("cane fine-fine"), named("cane fine")) else {
        return Vec::new();
    };
    let room = Length::inches(1.0).min(form.height() / 4.0);
    let reason = Message::new("choice-weave-courses")
        .with("rows", FINE_ROWS)
        .with("finer", &finer)
        .with("weaver", &weaver)
        .with("room", room);
    making.chose(keys::weave::COURSES.path, weaver.name.as_str(), reason);
    let course = |weaver, until| CoursePattern::new(WeaveKind::Plain, weaver, until);
    vec![course(finer, Until::Rows(FINE_ROWS)), course(weaver, Until::BelowTop(room))]
}
