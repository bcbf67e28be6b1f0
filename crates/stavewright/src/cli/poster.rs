//! `stavewright poster`.

use std::path::PathBuf;

use basket::Length;
use basket::pattern::Units;
use clap::ValueEnum;
use sheets::{Poster, PosterSize};

use super::outcome::Outcome;
use super::printing::Printing;
use super::reading::{Reading, words};
use crate::failure::Failure;
use crate::source::Origin;
use crate::{screen, single};

/// Print a poster for the wall of the classroom: start, join, ear, scarf and lashing.
///
/// Its lettering is as high as the distance asks for from which it is read: capitals a 300th of it,
/// an inch for every 25 feet. It comes whole, for a print shop, or in parts on the paper of your
/// own printer.
#[derive(Debug, clap::Args)]
#[command(after_help = "Examples:
  stavewright poster harbour.toml
  stavewright poster harbour.toml --size a2 --tiled --paper a4
  stavewright poster harbour.toml --read-from \"12 ft\" --out wall.pdf

Exit status: 0 when the basket can be woven, 1 when a finding says stop (the
poster is printed all the same, and says so), 2 when the pattern cannot be read
or the poster cannot be written.")]
pub(super) struct Args {
    #[command(flatten)]
    reading: Reading,

    /// Its size [default: 16x20 for inches, a2 for millimetres].
    #[arg(long, value_enum)]
    size: Option<SizeArg>,

    /// In parts, to be joined from pages of the paper in your printer.
    #[arg(long)]
    tiled: bool,

    /// From how far it is to be read, 5 to 15 ft (1.5 to 4.5 m).
    #[arg(long, value_name = "LENGTH", default_value = "10 ft")]
    read_from: String,

    /// The file to write, .pdf [default: the pattern's name and -poster.pdf].
    #[arg(long, value_name = "FILE")]
    out: Option<PathBuf>,

    #[command(flatten)]
    printing: Printing,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
enum SizeArg {
    /// 420 × 594 mm.
    A2,
    /// 16 × 20 in.
    #[value(name = "16x20")]
    Inches16x20,
}

pub(super) fn run(args: &Args) -> Result<Outcome, Failure> {
    let out = args.out.clone().unwrap_or_else(|| single::named(&args.reading.pattern, "poster.pdf"));
    if single::ending(&out) != "pdf" {
        let help = "Give the file that ending.";
        return Err(Failure::of_file(&Origin::File(out), "a poster is written as .pdf", help));
    }
    let read_from = distance(&args.read_from)?;
    let templates = args.printing.templates()?;
    let draft = args.reading.read()?.draft();
    let size = match (args.size, draft.basket.units) {
        (Some(SizeArg::A2), _) | (None, Units::Millimetres) => PosterSize::A2,
        (Some(SizeArg::Inches16x20), _) | (None, Units::Inches) => PosterSize::Inches16x20,
    };
    let parts_on = args.tiled.then(|| args.printing.paper(&draft.basket));
    let wanted = Poster { size, read_from, parts_on };
    let pdf = args.printing.set(&draft, &words(&draft.basket), move |draft, words, say| {
        say("poster");
        sheets::poster(draft, words, &wanted, &templates)
    })?;
    single::write(&out, &pdf)?;
    screen::print(&format!("Wrote {}\n", out.display()))?;
    Ok(Outcome::of(&draft))
}

fn distance(written: &str) -> Result<Length, Failure> {
    let distance = Length::parse(written, None)
        .map_err(|error| Failure::plain(format!("--read-from {written}: {error}"), error.help()))?;
    if (Length::feet(5.0)..=Length::feet(15.0)).contains(&distance) {
        return Ok(distance);
    }
    Err(Failure::plain(
        format!("--read-from {written}: lettering for this distance does not suit a poster"),
        "Write a distance from 5 to 15 ft (1.5 to 4.5 m), such as \"10 ft\".",
    ))
}
