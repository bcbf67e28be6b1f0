//! How a command answers, and how it ends.

use std::process::ExitCode;

use basket::Draft;
use clap::ValueEnum;

/// How an answer is printed.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, ValueEnum)]
pub(super) enum Format {
    /// To read.
    #[default]
    Text,
    /// For other programs.
    Json,
}

/// How a command that did its work ends.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Outcome {
    /// Nothing stands against making the basket.
    Fine,
    /// A finding says stop.
    Stopped,
}

impl Outcome {
    pub(super) fn of(draft: &Draft) -> Self {
        if draft.stops() { Self::Stopped } else { Self::Fine }
    }
}

impl From<Outcome> for ExitCode {
    fn from(outcome: Outcome) -> Self {
        match outcome {
            Outcome::Fine => Self::SUCCESS,
            Outcome::Stopped => Self::from(1),
        }
    }
}
