//! `stavewright hand`.

use std::path::PathBuf;

use basket::{Draft, Hand};
use planning::records::{self, Compared, Learned, Record};

use super::outcome::Outcome;
use super::reading::{Reading, words};
use crate::failure::Failure;
use crate::source::Origin;
use crate::{input, report, screen};

/// Learn your own hand from records of makings: pace, take-up, row height, drying, spoilt staves.
///
/// Each figure is shown beside the usual one with the bounds within which yours lies, and what the
/// basket would be with it. Few records move a figure little. Nothing is changed.
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

Exit status: 0 when there are figures, 2 when a file cannot be read or a record
is of another pattern.")]
pub(super) struct Args {
    /// The file of the records.
    records: PathBuf,

    #[command(flatten)]
    reading: Reading,

    /// Only records of this maker.
    #[arg(long, value_name = "NAME")]
    who: Option<String>,
}

pub(super) fn run(args: &Args) -> Result<Outcome, Failure> {
    let text = input::read(Origin::of(&args.records))?;
    let all = match records::read(&text.content) {
        Ok(records) => records,
        Err(problems) => return Err(Failure::Misread { text, problems }),
    };
    let wanted = |record: &&Record| args.who.is_none() || record.who == args.who;
    let read = args.reading.read()?;
    let usual = read.draft_by(&Hand::USUAL);
    let compared: Result<Vec<Compared>, _> =
        all.iter().filter(wanted).map(|record| Compared::of(record, &usual)).collect();
    let compared = compared.map_err(|mismatch| {
        let help = "Take that record out, or name the pattern it is of.";
        Failure::of_file(&Origin::of(&args.records), mismatch, help)
    })?;
    if compared.is_empty() {
        let help = "Write one down with [[record]]; --help shows how.";
        return Err(Failure::of_file(&Origin::of(&args.records), "there is no such record", help));
    }
    let learned = Learned::of(&compared);
    let own: Draft = read.draft_by(&learned.hand(args.who.as_deref().unwrap_or("own")));
    let words = words(&usual.basket);
    screen::print(&report::hand::render(&learned, (&usual, &own), &words))?;
    Ok(Outcome::Fine)
}
