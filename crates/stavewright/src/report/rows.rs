//! The weaving told row by row, and a card to tally it.

use std::fmt::Write;

use anstyle::Style;
use basket::message::Value;
use basket::weave::{Instruction, Weave, instructions};
use words::Words;

/// Rows on a line of the tally card.
const LINE: u32 = 20;

/// What to do in each row, then the card.
pub(crate) fn render(weave: &Weave, words: &Words) -> String {
    let mut text = String::new();
    let all = instructions(weave);
    for (course, number) in weave.courses.iter().zip(1_u32..) {
        let args = [("number", number.into()), ("weave", Value::Name(course.weave.to_string()))];
        text += super::heading(&words.with("rows-course", &args)).trim_start_matches('\n');
        let last = course.first_row + course.rows;
        for one in all.iter().filter(|one| (course.first_row..last).contains(&one.first)) {
            text += &told(one, words);
        }
        text.push('\n');
    }
    text + &tally(weave, words)
}

fn told(one: &Instruction, words: &Words) -> String {
    let rows = [("first", one.first.into()), ("last", one.last.into())];
    let label = words.with(if one.first == one.last { "rows-row" } else { "rows-rows" }, &rows);
    let text: Vec<String> = one.text.iter().map(|message| words.say(message)).collect();
    super::entry(&label, Style::new(), 14, &text.join(" "))
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
