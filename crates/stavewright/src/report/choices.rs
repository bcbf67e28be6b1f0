//! What the pattern left open and Stavewright chose.

use std::fmt::Write;

use basket::choice::Choice;
use words::Words;

use crate::screen;

/// The choices with their reasons; empty when the pattern left nothing open.
pub(crate) fn render(choices: &[Choice], words: &Words) -> String {
    if choices.is_empty() {
        return String::new();
    }
    let mut said = super::heading(&words.term("screen-chosen"));
    for choice in choices {
        let line = format!("{} = {}: {}", choice.key, words.value(&choice.value), words.say(&choice.reason));
        let _ = writeln!(said, "{}", screen::wrap(&line, "", "    "));
    }
    said
}
