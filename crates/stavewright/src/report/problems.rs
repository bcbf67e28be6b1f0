//! Problems of a pattern, each shown at its place in the file.

use std::fmt;
use std::ops::Range;

use basket::pattern::Problem;
use miette::{Diagnostic, GraphicalReportHandler, GraphicalTheme, LabeledSpan, NamedSource, SourceCode};

use crate::screen;
use crate::source::Text;

/// One problem as `miette` wants it.
#[derive(Debug)]
struct Shown<'a> {
    headline: String,
    problem: &'a Problem,
    source: NamedSource<String>,
}

impl fmt::Display for Shown<'_> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.headline)
    }
}

impl std::error::Error for Shown<'_> {}

impl Diagnostic for Shown<'_> {
    fn help<'a>(&'a self) -> Option<Box<dyn fmt::Display + 'a>> {
        self.problem.help.as_ref().map(|help| Box::new(help) as Box<dyn fmt::Display>)
    }
    fn source_code(&self) -> Option<&dyn SourceCode> {
        self.problem.span.as_ref().map(|_| &self.source as &dyn SourceCode)
    }
    fn labels(&self) -> Option<Box<dyn Iterator<Item = LabeledSpan> + '_>> {
        let span = within(self.problem.span.clone()?, self.source.inner().len());
        Some(Box::new(std::iter::once(LabeledSpan::underline(span))))
    }
}

/// All problems of a file. On a terminal each is drawn into its line of the file; elsewhere the
/// first line of each is `file:line:column: message`, for editors and `grep`.
pub(crate) fn render(text: &Text, problems: &[Problem], terminal: bool) -> String {
    let mut said = String::new();
    for problem in problems {
        let place = place(text, problem);
        let headline =
            if terminal { problem.message.clone() } else { format!("{place}: {}", problem.message) };
        let source = NamedSource::new(text.origin.to_string(), text.content.clone());
        let mut one = String::new();
        let shown = Shown { headline, problem, source };
        if handler(terminal).render_report(&mut one, &shown).is_err() {
            one = format!("{place}: {}\n", problem.message);
        }
        said.push_str(if terminal { &one } else { one.trim_start() });
        said.push('\n');
    }
    said.push_str(&count(problems.len(), text));
    said
}

fn handler(terminal: bool) -> GraphicalReportHandler {
    if terminal {
        return GraphicalReportHandler::new_themed(GraphicalTheme::unicode()).with_width(screen::WIDTH);
    }
    let mut theme = GraphicalTheme::none();
    theme.characters.error = String::new();
    GraphicalReportHandler::new_themed(theme).with_width(10_000).without_cause_chain()
}

fn place(text: &Text, problem: &Problem) -> String {
    match problem.span {
        Some(_) => {
            let (line, column) = problem.line_column(&text.content);
            format!("{}:{line}:{column}", text.origin)
        }
        None => text.origin.to_string(),
    }
}

fn count(problems: usize, text: &Text) -> String {
    let things = if problems == 1 { "1 problem".to_owned() } else { format!("{problems} problems") };
    format!("{things} in {}; nothing was written.\n", text.origin)
}

/// The span without what lies outside the text.
fn within(span: Range<usize>, length: usize) -> Range<usize> {
    let start = span.start.min(length);
    start..span.end.clamp(start, length)
}
