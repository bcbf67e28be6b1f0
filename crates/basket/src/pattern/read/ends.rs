//! Reading where a course ends.

use super::section::{PLACE, Section};
use crate::measure::Length;
use crate::pattern::Until;

/// The end of a course: a count of rows or a place on the mould, whose height is `top`.
pub(super) fn ends(section: &Section, top: Option<Length>) -> Option<Until> {
    match (section.has("rows"), section.has("until")) {
        (true, true) => {
            let message = "`weave.courses` has both rows and until".to_owned();
            section.problem("until", message, "keep one of them: it says where the course ends");
            None
        }
        (true, false) => section.count("rows", 1..=2000).map(Until::Rows),
        (false, true) => until(section, top),
        (false, false) => {
            section.missing("until", r#"rows = 4, until = "height 3 in" or until = "1 in below mould top""#);
            None
        }
    }
}

fn until(section: &Section, top: Option<Length>) -> Option<Until> {
    let text = section.text("until")?;
    let written = text.text.trim_end();
    if written.trim() == "mould top" {
        return Some(Until::BelowTop(Length::ZERO));
    }
    let name = section.name("until");
    let until = if let Some(length) = written.strip_suffix("below mould top") {
        Until::BelowTop(section.context.length(&name, &text, 0..length.len(), PLACE)?)
    } else if let Some(length) = written.trim_start().strip_prefix("height ") {
        Until::Height(section.context.length(
            &name,
            &text,
            written.len() - length.len()..written.len(),
            PLACE,
        )?)
    } else {
        let message = format!("`{name}` does not say where the course ends");
        section.problem(
            "until",
            message,
            r#"write "1 in below mould top", "mould top" or "height 3 1/2 in""#,
        );
        return None;
    };
    let (Until::Height(length) | Until::BelowTop(length)) = until else { return Some(until) };
    if top.is_some_and(|top| length > top) {
        section.problem(
            "until",
            format!("`{name}` is not on the mould"),
            "write a place between its base and its top",
        );
        return None;
    }
    Some(until)
}
