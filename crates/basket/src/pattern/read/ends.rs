//! Reading where a course ends.

use super::problem::Fault;
use super::section::Section;
use super::text::shorten;
use crate::measure::Length;
use crate::pattern::Until;
use crate::pattern::keys::PLACE;
use crate::pattern::keys::course::{ROWS, ROWS_OR_PLACE, UNTIL};

/// The end of a course: a count of rows or a place on the mould, whose height is `top`.
pub(super) fn ends(section: &Section, top: Option<Length>) -> Option<Until> {
    match section.one_way(&ROWS_OR_PLACE) {
        [true, true] => None,
        [true, false] => section.get(&ROWS).map(Until::Rows),
        [false, true] => until(section, top),
        [false, false] => {
            let example = r#"rows = 4, until = "height 3 in" or until = "1 in below mould top""#;
            section.missing(&UNTIL, example);
            None
        }
    }
}

fn until(section: &Section, top: Option<Length>) -> Option<Until> {
    let text = section.text(&UNTIL)?;
    let written = text.text.trim_end();
    if written.trim() == "mould top" {
        return Some(Until::BelowTop(Length::ZERO));
    }
    let length = |part| section.context.length(UNTIL.path, &text, part, PLACE);
    let until = if let Some(below) = written.strip_suffix("below mould top") {
        Until::BelowTop(length(0..below.len())?)
    } else if let Some(height) = written.trim_start().strip_prefix("height ") {
        Until::Height(length(written.len() - height.len()..written.len())?)
    } else {
        let message = format!("`{}` does not say where the course ends", UNTIL.path);
        let help = r#"write "1 in below mould top", "mould top" or "height 3 1/2 in""#;
        let fault = Fault::new("problem-until", message).with("written", shorten(text.text));
        section.problem(&UNTIL, fault, help);
        return None;
    };
    let (Until::Height(place) | Until::BelowTop(place)) = until else { return Some(until) };
    if top.is_some_and(|top| place > top) {
        let message = format!("`{}` is not on the mould", UNTIL.path);
        section.problem(
            &UNTIL,
            Fault::new("problem-until-off", message),
            "write a place between its base and its top",
        );
        return None;
    }
    Some(until)
}
