//! What keeps a command from doing its work, and how that is said.

use std::fmt::Write;
use std::io::{self, IsTerminal};

use anstyle::Style;
use basket::pattern::Problem;
use sheets::SheetError;

use crate::report::problems;
use crate::screen;
use crate::signs;
use crate::source::{Origin, Text};

/// Why a command could not do its work.
#[derive(Debug)]
pub(crate) enum Failure {
    /// A file says things that cannot be understood.
    Misread {
        /// The file.
        text: Text,
        /// All that is wrong with it.
        problems: Vec<Problem>,
    },
    /// A file cannot be read or written, or an argument makes no sense.
    Plain {
        /// What happened.
        message: String,
        /// How to mend it.
        help: String,
    },
    /// Whoever read our output went away; there is nobody left to tell.
    NobodyListens,
}

impl Failure {
    /// A failure with a way to mend it.
    pub(crate) fn plain(message: impl Into<String>, help: impl Into<String>) -> Self {
        Self::Plain { message: message.into(), help: help.into() }
    }

    /// A failure in reading this file.
    pub(crate) fn of_file(origin: &Origin, message: impl std::fmt::Display, help: impl Into<String>) -> Self {
        Self::plain(format!("{origin}: {message}"), help)
    }

    /// What happened, and how to mend it, without colour.
    pub(crate) fn parts(&self) -> (String, String) {
        match self {
            Self::Misread { text, problems } => {
                let first = problems.first();
                let message = first.map_or_else(String::new, ToString::to_string);
                (format!("{}: {message}", text.origin), String::new())
            }
            Self::Plain { message, help } => (message.clone(), help.clone()),
            Self::NobodyListens => (String::new(), String::new()),
        }
    }

    /// Says on standard error what happened.
    pub(crate) fn report(&self) {
        let said = match self {
            Self::Misread { text, problems } => problems::render(text, problems, io::stderr().is_terminal()),
            Self::Plain { message, help } => plainly(&signs::shown(message), &signs::shown(help)),
            Self::NobodyListens => return,
        };
        screen::tell(&said);
    }
}

impl From<io::Error> for Failure {
    /// A failure to print.
    fn from(error: io::Error) -> Self {
        if error.kind() == io::ErrorKind::BrokenPipe {
            Self::NobodyListens
        } else {
            let reason = match error.kind() {
                io::ErrorKind::StorageFull => "the disk is full".to_owned(),
                _ => error.to_string(),
            };
            Self::plain(
                format!("cannot print the answer: {reason}"),
                "Send it to a file or screen with room.",
            )
        }
    }
}

impl From<SheetError> for Failure {
    /// A sheet that cannot be set.
    fn from(error: SheetError) -> Self {
        let help = match error {
            SheetError::Template { .. } => "Mend it in your folder of templates, or take the file out of it.",
            _ => "",
        };
        Self::plain(error.to_string(), help)
    }
}

fn plainly(message: &str, help: &str) -> String {
    let (error, bold) = (screen::STOP, Style::new().bold());
    let mut said = format!("{error}error:{error:#} {message}\n");
    if !help.is_empty() {
        let wrapped = screen::wrap(help, "help: ", "      ");
        let rest = wrapped.strip_prefix("help:").unwrap_or(&wrapped);
        let _ = writeln!(said, "{bold}help:{bold:#}{rest}");
    }
    said
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn help_is_wrapped_under_itself() {
        let said = anstream::adapter::strip_str(&plainly("no such file", &"word ".repeat(30))).to_string();
        assert_eq!(said.lines().next(), Some("error: no such file"));
        assert!(said.lines().skip(2).all(|line| line.starts_with("      word")), "{said}");
        assert!(said.lines().all(|line| line.len() <= 80), "{said}");
    }

    #[test]
    fn a_closed_pipe_is_no_failure_to_report() {
        let closed = io::Error::from(io::ErrorKind::BrokenPipe);
        assert!(matches!(Failure::from(closed), Failure::NobodyListens));
    }
}
