//! The weaving told band by band, and a card to tally it.

use std::fmt::Write;

use anstyle::Style;
use basket::message::Value;
use basket::weave::{Face, Weave};
use words::Words;

/// Room for the numbers of rows.
const LABEL: usize = 19;
/// Rows on a line of the tally card.
const LINE: u32 = 20;

/// What to do in each band of rows, then the card.
pub(crate) fn render(weave: &Weave, words: &Words) -> String {
    let mut text = String::new();
    for (course, number) in weave.courses.iter().zip(1_u32..).filter(|(course, _)| course.rows > 0) {
        let args = [("number", number.into()), ("weave", course.weave.name().into())];
        text += super::heading(&words.with("rows-course", &args)).trim_start_matches('\n');
        let look = |face| Value::Said(weave.look(course, face).said());
        let seen = [("outside", look(Face::Outside)), ("inside", look(Face::Inside))];
        text += &super::entry("", Style::new(), 0, &words.with("rows-seen", &seen));
        for band in weave.bands_within(course.first_row, course.first_row + course.rows - 1) {
            let told: Vec<String> = band.text.iter().map(|message| words.say(message)).collect();
            text += &super::entry("", Style::new(), 0, &told.join(" "));
        }
        for (row, join) in course.joining() {
            let label = words.with("rows-join", &[("row", row.into())]);
            text += &super::entry(&label, Style::new(), LABEL, &words.say(&join));
        }
        text.push('\n');
    }
    text + &tally(weave, words)
}

/// A box a row, five and five, a line of its own for each course.
fn tally(weave: &Weave, words: &Words) -> String {
    let mut text = super::heading(&words.term("rows-tally")).trim_start_matches('\n').to_owned();
    for course in weave.courses.iter().filter(|course| course.rows > 0) {
        let end = course.first_row + course.rows - 1;
        for first in (course.first_row..=end).step_by(LINE as usize) {
            let last = (first + LINE - 1).min(end);
            let boxes: Vec<String> =
                (first..=last).collect::<Vec<_>>().chunks(5).map(|five| "□ ".repeat(five.len())).collect();
            let _ = writeln!(text, "{:<14}{}", format!("{first}–{last}"), boxes.join(" ").trim_end());
        }
    }
    text
}
