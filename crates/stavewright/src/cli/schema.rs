//! `stavewright schema`.

use basket::pattern::Units;

use super::outcome::Outcome;
use super::reading::Speaking;
use crate::failure::Failure;
use crate::screen;

/// Print the JSON Schema of a pattern, for an editor.
///
/// An editor that knows it completes keys and words while you write, says of each
/// what it is, and marks what is not spelt right.
#[derive(Debug, clap::Args)]
#[command(after_help = "Example:
  stavewright schema > pattern.schema.json
and as the first line of the pattern:
  #:schema ./pattern.schema.json")]
pub(super) struct Args {
    #[command(flatten)]
    speaking: Speaking,
}

pub(super) fn run(args: &Args) -> Result<Outcome, Failure> {
    screen::print(&args.speaking.words(Units::default()).schema())?;
    Ok(Outcome::Fine)
}
