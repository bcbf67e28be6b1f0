//! What is read of every file: its tree, its units, and its problems in order.

use toml::Spanned;
use toml::de::{DeTable, Error};

use super::problem::Problem;
use super::section::Section;
use crate::limits::PATTERN_BYTES;
use crate::measure::Unit;
use crate::message::Message;
use crate::pattern::{Units, keys};

/// The tree of a file whose text is in order.
pub(super) fn open_file(text: &str) -> Result<Spanned<DeTable<'_>>, Vec<Problem>> {
    let whole_file = |id, message: &str, help: &str| {
        let fault = Some(Message::new(id));
        vec![Problem { message: message.to_owned(), span: None, help: Some(help.to_owned()), fault }]
    };
    if text.len() > PATTERN_BYTES {
        return Err(whole_file(
            "problem-file-large",
            "the file is larger than 1 MB",
            "a pattern is a few kilobytes: is this the right file?",
        ));
    }
    if text.trim().is_empty() {
        return Err(whole_file(
            "problem-file-empty",
            "the file is empty",
            "`stavewright new` writes a pattern to start from",
        ));
    }
    let (table, errors) = DeTable::parse_recoverable(text);
    if errors.is_empty() {
        Ok(table)
    } else {
        Err(in_file_order(errors.iter().map(|error| syntax(text, error)).collect()))
    }
}

fn syntax(text: &str, error: &Error) -> Problem {
    let message = error.message().replace('\n', "; ");
    let span = error.span().map(|span| span.start.min(text.len())..span.end.min(text.len()));
    let help = "a line reads key = \"text\" or [section]; every quote and bracket is closed".to_owned();
    let fault = Some(Message::new("problem-toml"));
    Problem { message: format!("this line cannot be read: {message}"), span, help: Some(help), fault }
}

/// The file's units, and the unit of a bare number: none when the file does not say.
pub(super) fn units(file: &Section) -> (Units, Option<Unit>) {
    let units = file.get_or_usual(&keys::UNITS);
    // A wrong `units` is one problem; it should not become one more at every bare number.
    let unit = file.has(&keys::UNITS).then(|| units.unit());
    (units, unit)
}

/// The problems in the order of the file; of very many, the first ones and how many more there are.
pub(super) fn in_file_order(mut problems: Vec<Problem>) -> Vec<Problem> {
    const MOST: usize = 50;
    problems.sort_by_key(|problem| problem.span.as_ref().map_or(0, |span| span.start));
    let more = problems.len().saturating_sub(MOST);
    if more > 0 {
        problems.truncate(MOST);
        let message = format!("{more} more problems are not shown");
        let count = u32::try_from(more).unwrap_or(u32::MAX);
        let fault = Some(Message::new("problem-more").with("count", count));
        problems.push(Problem { message, span: None, help: Some("mend these first".to_owned()), fault });
    }
    problems
}
