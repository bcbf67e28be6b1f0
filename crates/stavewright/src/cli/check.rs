//! `stavewright check`.

use super::outcome::{Format, Outcome};
use super::reading::{Reading, words};
use crate::failure::Failure;
use crate::{report, screen};

/// Say what will not work, or will give trouble, and what would mend it. Writes nothing.
#[derive(Debug, clap::Args)]
#[command(after_help = "Examples:
  stavewright check harbour.toml
  stavewright check harbour.toml --format json

A finding has a grade: stop (cannot be woven as written), care (will show or
give trouble), note (good to know).

Exit status: 0 without a stop, 1 with one, 2 when the pattern cannot be read.")]
pub(super) struct Args {
    #[command(flatten)]
    reading: Reading,

    /// How to print the findings.
    #[arg(long, value_enum, default_value_t)]
    format: Format,
}

pub(super) fn run(args: &Args) -> Result<Outcome, Failure> {
    let draft = args.reading.read()?.draft();
    let words = words(&draft.basket);
    match args.format {
        Format::Text => screen::print(report::findings::render(&draft.findings, &words).trim_start())?,
        Format::Json => screen::print_json(&sheets::basket_json(&draft, &words).findings)?,
    }
    Ok(Outcome::of(&draft))
}
