//! `stavewright materials`.

use std::path::{Path, PathBuf};

use basket::stock::Kind;
use words::{Language, Words};

use super::names::kinds;
use super::outcome::{Format, Outcome};
use super::reading::{UnitsArg, catalogue};
use crate::failure::Failure;
use crate::own::Own;
use crate::{report, screen};

/// Show the materials that a pattern may name: what they measure and how they are sold.
///
/// A pattern asks for a material by the name in the first column.
#[derive(Debug, clap::Args)]
#[command(after_help = "Examples:
  stavewright materials                     all
  stavewright materials cane fine           whatever has both words in its name
  stavewright materials --kind flat-oval-reed --units mm
  stavewright materials half round 3/8 --sources

Reed and cane differ from maker to maker: measure yours, and put what you
measured into the pattern or on a shelf (--shelf).")]
pub(super) struct Args {
    /// Words that the name must hold, all of them.
    words: Vec<String>,

    /// Only this kind.
    #[arg(long, value_parser = kinds())]
    kind: Option<Kind>,

    /// Say of each figure where it comes from.
    #[arg(long)]
    sources: bool,

    /// Units to print.
    #[arg(long, value_name = "UNITS", default_value = "in")]
    units: UnitsArg,

    /// A file with your own materials.
    #[arg(long, value_name = "FILE")]
    shelf: Option<PathBuf>,

    /// How to print the answer.
    #[arg(long, value_enum, default_value_t)]
    format: Format,
}

pub(super) fn run(args: &Args) -> Result<Outcome, Failure> {
    let shelved = catalogue(args.shelf.as_deref())?;
    let (own, _) = Own::of_folder(Path::new(""), &shelved);
    let mut shown = own.catalogue(&shelved);
    shown.materials.retain(|material| wanted(args, &material.name) && is_kind(args, material.kind));
    shown.woods.retain(|wood| wanted(args, &wood.name) && args.kind.is_none());
    if shown.materials.is_empty() && shown.woods.is_empty() {
        return Err(Failure::plain(
            "no material fits",
            "Ask with fewer words; `stavewright materials` alone shows all.",
        ));
    }
    match args.format {
        Format::Text => {
            let words = Words::new(Language::English, args.units.into());
            screen::print(&report::materials::render(&shown, &words, args.sources))?;
        }
        Format::Json => screen::print_json(&shown)?,
    }
    Ok(Outcome::Fine)
}

fn wanted(args: &Args, name: &str) -> bool {
    let name = name.to_lowercase();
    args.words.iter().all(|word| name.contains(&word.to_lowercase()))
}

fn is_kind(args: &Args, kind: Kind) -> bool {
    args.kind.is_none_or(|wanted| wanted == kind)
}
