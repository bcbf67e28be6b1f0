//! The weaving told row by row, and a card to tally it.

use std::fmt::Write;

use anstyle::Style;
use basket::message::Value;
use basket::weave::{Face, Instruction, Weave, instructions};
use words::Words;

/// Room for the numbers of rows.
const LABEL: usize = 19;
/// Rows on a line of the tally card.
const LINE: u32 = 20;

/// What to do in each row, then the card.
pub(crate) fn render(weave: &Weave, words: &Words) -> String {
    let mut text = String::new();
    let all = instructions(weave);
    for (course, number) in weave.courses.iter().zip(1_u32..).filter(|(course, _)| course.rows > 0) {
        let args = [("number", number.into()), ("weave", course.weave.name().into())];
        text += super::heading(&words.with("rows-course", &args)).trim_start_matches('\n');
        let look = |face| Value::Said(weave.look(course, face).said());
        let seen = [("outside", look(Face::Outside)), ("inside", look(Face::Inside))];
        text += &super::entry("", Style::new(), 0, &words.with("rows-seen", &seen));
        let last = course.first_row + course.rows;
        for one in all.iter().filter(|one| (course.first_row..last).contains(&one.first)) {
            text += &told(one, words);
        }
        for (row, join) in course.joining() {
            let label = words.with("rows-join", &[("row", row.into())]);
            text += &super::entry(&label, Style::new(), LABEL, &words.say(&join));
        }
        text.push('\n');
    }
    text + &tally(weave, words)
}

fn told(one: &Instruction, words: &Words) -> String {
    let rows =
        [("first", one.first.into()), ("second", (one.first + one.every).into()), ("last", one.last.into())];
    let id = match ((one.last - one.first) / one.every.max(1), one.every) {
        (0, _) => "rows-row",
        (_, 1) => "rows-rows",
        (1, _) => "rows-two",
        _ => "rows-every",
    };
    let text: Vec<String> = one.text.iter().map(|message| words.say(message)).collect();
    super::entry(&words.with(id, &rows), Style::new(), LABEL, &text.join(" "))
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
