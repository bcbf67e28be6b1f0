//! `stavewright hand`.

use std::path::PathBuf;

use basket::Hand;

use super::outcome::Outcome;
use super::own_hand::{learned, whose};
use super::reading::{Reading, words};
use crate::failure::Failure;
use crate::{report, screen};

/// Learn your own hand from records of makings: pace, take-up, row height, drying, spoilt staves.
///
/// Each figure is shown beside the usual one with the bounds within which yours lies, and what the
/// basket would be with it. Few records move a figure little. Nothing is changed: who wants to work
/// with it says --hand to `draft`, `sheet` or `class`, and leaves it away to go back.
#[derive(Debug, clap::Args)]
#[command(after_help = "A record, typed in from the maker's sheet; what was not measured is left out:
  [[record]]
  number = 12
  pattern = \"Harbour bread basket\"   # its title
  who = \"student 3\"
  learner = true
  minutes = { cut = 220, first-rows = 45, half = 100 }
  weaver = \"161 ft\"                  # taken, less what was left over
  rows = 36
  wet = \"4 1/8 in\"                   # height of the weaving along the wall
  dry = \"3 7/8 in\"
  staves = 71
  spoilt = 4
  went-wrong = \"two staves split at the foot\"

Examples:
  stavewright hand records.toml harbour.toml
  stavewright hand records.toml harbour.toml --who \"student 3\"
  stavewright hand workshop.db harbour.toml     the log of the store
  stavewright draft harbour.toml --hand workshop.db

Exit status: 0 when there are figures, 2 when a file cannot be read or a record
is of another pattern.")]
pub(super) struct Args {
    /// The file of the records, or a store with its log.
    records: PathBuf,

    #[command(flatten)]
    reading: Reading,

    /// Only records of this maker.
    #[arg(long, value_name = "NAME")]
    who: Option<String>,
}

pub(super) fn run(args: &Args) -> Result<Outcome, Failure> {
    let read = args.reading.read()?;
    let usual = read.draft_by(&Hand::USUAL);
    let words = words(&usual.basket);
    let who = args.who.as_deref();
    let learned = learned((&args.records, who), &usual)?;
    let own = read.draft_by(&learned.hand(&whose(who, &words)));
    screen::print(&report::hand::render(&learned, (&usual, &own), &words))?;
    Ok(Outcome::Fine)
}
