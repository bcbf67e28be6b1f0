//! `stavewright weaves`.

use basket::weave::runs;
use basket::{Catalogue, pattern::Units};

use super::handed::HandArg;
use super::outcome::{Format, Outcome};
use super::reading::Speaking;
use crate::failure::Failure;
use crate::{report, screen};

/// Say which weaves can run on a count of staves, and what each does there.
///
/// Of a weave that does not run, the nearest counts are named on which it does, and what would mend
/// it on this one.
#[derive(Debug, clap::Args)]
#[command(after_help = "Examples:
  stavewright weaves --staves 73
  stavewright weaves --staves 73 --hand left
  stavewright weaves --staves 72 --format json

Right and left are as seen from outside on a basket that stands on its base.")]
pub(super) struct Args {
    /// How many staves.
    #[arg(long, value_name = "COUNT", value_parser = clap::value_parser!(u32).range(3..=999))]
    staves: u32,

    /// Which hand leads the weaver.
    #[arg(long, value_enum, default_value_t)]
    hand: HandArg,

    #[command(flatten)]
    speaking: Speaking,

    /// How to print the answer.
    #[arg(long, value_enum, default_value_t)]
    format: Format,
}

pub(super) fn run(args: &Args) -> Result<Outcome, Failure> {
    let Some(weaver) = Catalogue::built_in().materials.first() else {
        return Err(Failure::plain("the catalogue is empty", ""));
    };
    let runs = runs::runs_on(args.staves, weaver, args.hand.direction());
    match args.format {
        Format::Text => {
            let words = args.speaking.words(Units::Inches);
            screen::print(&report::weaves::render(args.staves, &runs, &words))?;
        }
        Format::Json => screen::print_json(&runs)?,
    }
    Ok(Outcome::Fine)
}
