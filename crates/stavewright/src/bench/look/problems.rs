//! What is wrong in a pattern, with line, column and the value that it concerns.

use basket::Catalogue;
use basket::message::{Message, Value};
use basket::pattern::Units;
use basket::pattern::keys::{self, Takes};
use words::{Language, Words};

use super::form::label_of;
use crate::bench::api::Problem;
use crate::bench::text::Written;

/// Problems as the page wants them.
pub(crate) fn of(source: &str, found: &[basket::pattern::Problem]) -> Vec<Problem> {
    let written = Written::of(source);
    let one = |problem: &basket::pattern::Problem| {
        let (line, column) = problem.line_column(source);
        Problem {
            message: problem.message.clone(),
            help: problem.help.clone(),
            line: u32::try_from(line).unwrap_or(u32::MAX),
            column: u32::try_from(column).unwrap_or(u32::MAX),
            path: problem.span.as_ref().and_then(|span| written.path_at(span.start)),
            told: String::new(),
            fault: problem.fault.clone(),
        }
    };
    found.iter().map(one).collect()
}

/// The problems of a text; at least one, for it is asked only of texts that cannot be read.
pub(crate) fn of_text(source: &str) -> Vec<Problem> {
    match basket::pattern::read(source, Catalogue::built_in()) {
        Err(found) => of(source, &found),
        Ok(_) => vec![Problem {
            message: "this text cannot be changed".to_owned(),
            help: None,
            told: String::new(),
            line: 1,
            column: 1,
            path: None,
            fault: None,
        }],
    }
}

/// A problem of the drawing of a course, counted from 1.
pub(crate) fn at(course: u32, message: String, help: String) -> Problem {
    let path = Some(keys::weave::in_course(course, &keys::course::CHART_FILE));
    let help = Some(help).filter(|help| !help.is_empty());
    Problem { message, help, told: String::new(), line: 1, column: 1, path, fault: None }
}

/// The same problems, each told for the form as well, in the language of this tag.
pub(crate) fn told(found: Vec<Problem>, tag: Option<&str>) -> Vec<Problem> {
    let words = Words::new(tag.and_then(Language::of).unwrap_or_default(), Units::default());
    let one = |problem: Problem| Problem { told: tell(&problem, &words), ..problem };
    found.into_iter().map(one).collect()
}

/// What is wrong under the name of the value in the form, and what would be right; of what is not in the form,
/// where it stands.
fn tell(problem: &Problem, words: &Words) -> String {
    let path = problem.path.as_deref().unwrap_or_default();
    let field = keys::find(path).filter(|key| !matches!(key.takes(), Takes::Section(_) | Takes::Sections(_)));
    let mut args = vec![("line", problem.line.into())];
    let mut near = false;
    if let Some(fault) = &problem.fault {
        let fault = labelled(fault, words);
        let meant = fault.args.iter().find(|(name, _)| *name == "near").map(|(_, near)| words.value(near));
        let meant = meant.filter(|meant| !meant.is_empty());
        near = meant.is_some();
        args.extend(meant.map(|meant| ("near", Value::Name(meant))));
        args.push(("fault", fault.into()));
    }
    if let Some(key) = field {
        args.push(("field", Value::Name(label_of(path, words))));
        args.push(("takes", Value::Name(words.key(key).takes)));
    }
    let id = match (field, &problem.fault, near) {
        (Some(_), Some(_), true) => "form-problem-near",
        (Some(_), Some(_), false) => "form-problem-exact",
        (Some(_), None, _) => "form-problem",
        (None, Some(_), true) => "form-problem-at-near",
        (None, Some(_), false) => "form-problem-at",
        (None, None, _) => "form-problem-line",
    };
    words.with(id, &args)
}

/// A fault with the names of the keys that it mentions in the place of their paths.
fn labelled(fault: &Message, words: &Words) -> Message {
    let label = |(name, value): &(&'static str, Value)| match (*name, value) {
        ("key" | "other", Value::Name(path)) => (*name, Value::Name(label_of(path, words))),
        _ => (*name, value.clone()),
    };
    Message { id: fault.id, args: fault.args.iter().map(label).collect() }
}
