//! `stavewright sheet`.

use std::path::PathBuf;

use clap::builder::PossibleValuesParser;
use planning::samples::Show;
use sheets::{ON_REQUEST, Options, SHEETS};

use super::outcome::Outcome;
use super::own_hand::OwnHand;
use super::printing::Printing;
use super::reading::{Reading, words};
use crate::failure::Failure;
use crate::source::Origin;
use crate::{screen, single};

/// Write one sheet of a basket as a PDF.
///
/// The sheets of a packet, one by one, and one that lies in no packet: sale, the handout with a title
/// page for a pattern that you sell. What stands on that page beside the basket is written under
/// `[sale]` in the pattern.
#[derive(Debug, clap::Args)]
#[command(after_help = "Examples:
  stavewright sheet teacher harbour.toml
  stavewright sheet sale harbour.toml --paper a4 --out harbour-a4.pdf

Exit status: 0 when the basket can be woven, 1 when a finding says stop (the
sheet is written all the same, every page marked), 2 when the pattern cannot
be read or the sheet cannot be written.")]
pub(super) struct Args {
    /// Which sheet.
    #[arg(value_parser = PossibleValuesParser::new(SHEETS.iter().chain(&ON_REQUEST).map(|(name, _)| *name)))]
    sheet: String,

    #[command(flatten)]
    reading: Reading,

    #[command(flatten)]
    hand: OwnHand,

    /// The file to write, .pdf [default: the pattern's name and the sheet's].
    #[arg(long, value_name = "FILE")]
    out: Option<PathBuf>,

    #[command(flatten)]
    printing: Printing,
}

pub(super) fn run(args: &Args) -> Result<Outcome, Failure> {
    let read = args.reading.read()?;
    let photos = read.photos()?;
    let draft = args.hand.draft(read)?;
    let words = words(&draft.basket);
    let out = file(args)?;
    let printing = &args.printing;
    let options = Options {
        paper: printing.paper(&draft.basket),
        templates: printing.templates()?,
        photos,
        show: Show::default(),
    };
    let name = args.sheet.clone();
    let pdf = printing.set(&draft, &words, move |draft, words, say| {
        say(&name);
        sheets::sheet(&name, draft, words, &options)
    })?;
    single::write(&out, &pdf)?;
    screen::print(&format!("Wrote {}\n", out.display()))?;
    Ok(Outcome::of(&draft))
}

fn file(args: &Args) -> Result<PathBuf, Failure> {
    let named = || single::named(&args.reading.pattern, &format!("{}.pdf", args.sheet));
    let out = args.out.clone().unwrap_or_else(named);
    if single::ending(&out) == "pdf" {
        return Ok(out);
    }
    let (message, help) = ("a sheet is written as .pdf", "Give the file this ending.");
    Err(Failure::of_file(&Origin::File(out), message, help))
}
