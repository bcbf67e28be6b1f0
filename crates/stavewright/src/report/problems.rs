//! Problems of a pattern, each shown at its place in the file.

use std::fmt;
use std::ops::Range;

use basket::pattern::Problem;
use miette::{Diagnostic, GraphicalReportHandler, GraphicalTheme, LabeledSpan, NamedSource, SourceCode};

use crate::screen;
use crate::signs;
use crate::source::Text;

/// One problem as `miette` wants it, with nothing in it that a terminal obeys.
#[derive(Debug)]
struct Shown {
    headline: String,
    help: Option<String>,
    span: Option<Range<usize>>,
    source: NamedSource<String>,
}

impl fmt::Display for Shown {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.headline)
    }
}

impl std::error::Error for Shown {}

impl Diagnostic for Shown {
    fn help<'a>(&'a self) -> Option<Box<dyn fmt::Display + 'a>> {
        self.help.as_ref().map(|help| Box::new(help) as Box<dyn fmt::Display>)
    }
    fn source_code(&self) -> Option<&dyn SourceCode> {
        self.span.as_ref().map(|_| &self.source as &dyn SourceCode)
    }
    fn labels(&self) -> Option<Box<dyn Iterator<Item = LabeledSpan> + '_>> {
        Some(Box::new(std::iter::once(LabeledSpan::underline(self.span.clone()?))))
    }
}

/// All problems of a file. On a terminal each is drawn into its line of the file; elsewhere the
/// first line of each is `file:line:column: message`, for editors and `grep`.
pub(crate) fn render(text: &Text, problems: &[Problem], terminal: bool) -> String {
    let mut said = String::new();
    for problem in problems {
        let (place, message) = (place(text, problem), signs::shown(&problem.message));
        let headline = if terminal { message.to_string() } else { format!("{place}: {message}") };
        let span = problem.span.clone().map(|span| within(span, text.content.len()));
        let (content, at) = signs::with_place(&text.content, span.clone().unwrap_or_default());
        let mut one = String::new();
        let shown = Shown {
            headline,
            help: problem.help.as_deref().map(|help| signs::shown(help).into_owned()),
            span: span.map(|_| at),
            source: NamedSource::new(name(text), content),
        };
        if handler(terminal).render_report(&mut one, &shown).is_err() {
            one = format!("{place}: {message}\n");
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
            format!("{}:{line}:{column}", name(text))
        }
        None => name(text),
    }
}

fn name(text: &Text) -> String {
    signs::shown(&text.origin.to_string()).into_owned()
}

fn count(problems: usize, text: &Text) -> String {
    let things = if problems == 1 { "1 problem".to_owned() } else { format!("{problems} problems") };
    format!("{things} in {}; nothing was written.\n", name(text))
}

/// The span without what lies outside the text.
fn within(span: Range<usize>, length: usize) -> Range<usize> {
    let start = span.start.min(length);
    start..span.end.clamp(start, length)
}
