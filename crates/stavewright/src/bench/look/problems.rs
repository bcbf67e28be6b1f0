//! What is wrong in a pattern, with line, column and the value that it concerns.

use basket::Catalogue;
use basket::message::Value;
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
        }],
    }
}

/// A problem of the drawing of a course, counted from 1.
pub(crate) fn at(course: u32, message: String, help: String) -> Problem {
    let path = Some(keys::weave::in_course(course, &keys::course::CHART_FILE));
    let help = Some(help).filter(|help| !help.is_empty());
    Problem { message, help, told: String::new(), line: 1, column: 1, path }
}

/// The same problems, each told for the form as well, in the language of this tag.
pub(crate) fn told(found: Vec<Problem>, tag: Option<&str>) -> Vec<Problem> {
    let words = Words::new(tag.and_then(Language::of).unwrap_or_default(), Units::default());
    let one = |problem: Problem| Problem { told: tell(&problem, &words), ..problem };
    found.into_iter().map(one).collect()
}

/// What a value takes, under its name in the form; of what is not in the form, where it stands.
fn tell(problem: &Problem, words: &Words) -> String {
    let path = problem.path.as_deref().unwrap_or_default();
    let key = keys::find(path);
    let line = ("line", problem.line.into());
    match key {
        Some(key) if !matches!(key.takes(), Takes::Section(_) | Takes::Sections(_)) => {
            let takes = words.key(key).takes;
            let args = [("field", Value::Name(label_of(path, words))), ("takes", Value::Name(takes)), line];
            words.with("form-problem", &args)
        }
        _ => words.with("form-problem-line", &[line]),
    }
}
