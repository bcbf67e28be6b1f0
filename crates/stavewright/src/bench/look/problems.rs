//! What is wrong in a pattern, with line, column and the value that it concerns.

use basket::Catalogue;
use basket::pattern::keys;

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
            line: 1,
            column: 1,
            path: None,
        }],
    }
}

/// A problem of the drawing of a course, counted from 1.
pub(crate) fn at(course: u32, message: String, help: String) -> Problem {
    let path = Some(keys::weave::in_course(course, &keys::course::CHART_FILE));
    Problem { message, help: Some(help).filter(|help| !help.is_empty()), line: 1, column: 1, path }
}
