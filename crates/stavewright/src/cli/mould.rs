//! `stavewright mould`.

use std::path::PathBuf;

use basket::{Basket, Length, Of};
use drawings::outlines_dxf;
use drawings::solid::{Detail, mould_solid, stl, three_mf};
use sheets::MouldSheet;

use super::outcome::Outcome;
use super::printing::Printing;
use super::reading::{Reading, words};
use crate::failure::Failure;
use crate::source::Origin;
use crate::{screen, single};

/// Write what is needed to make the mould itself.
///
/// The ending of the file says what: .pdf is a sheet with a card for the lathe at true size (and the
/// outlines of a mould that is not round), the boards it is glued up from, and cautions; .stl and
/// .3mf are the mould in the round with its screw hole, in millimetres; .dxf are the outlines of
/// boards and base for a saw or router.
#[derive(Debug, clap::Args)]
#[command(after_help = "Examples:
  stavewright mould harbour.toml
  stavewright mould harbour.toml --board \"1 in\" --out mould.pdf
  stavewright mould harbour.toml --out mould.stl
  stavewright mould letters.toml --out boards.dxf
  stavewright mould letters.toml --lid --out lid.stl

Exit status: 0 when the basket can be woven, 1 when a finding says stop (the
file is written all the same), 2 when the pattern cannot be read or the file
cannot be written.")]
pub(super) struct Args {
    #[command(flatten)]
    reading: Reading,

    /// Thickness of the boards it is glued up from.
    #[arg(long, value_name = "LENGTH", default_value = "3/4 in")]
    board: String,

    /// The file to write, .pdf, .stl, .3mf or .dxf [default: the pattern's name
    /// and -mould.pdf].
    #[arg(long, value_name = "FILE")]
    out: Option<PathBuf>,

    /// The mould of the lid instead of the basket's.
    #[arg(long)]
    lid: bool,

    #[command(flatten)]
    printing: Printing,
}

pub(super) fn run(args: &Args) -> Result<Outcome, Failure> {
    let out = args.out.clone().unwrap_or_else(|| single::named(&args.reading.pattern, "mould.pdf"));
    let board = board(&args.board)?;
    let ending = single::ending(&out);
    if !["pdf", "stl", "3mf", "dxf"].contains(&ending.as_str()) {
        return Err(Failure::of_file(
            &Origin::File(out),
            "a mould is written as .pdf, .stl, .3mf or .dxf",
            "Give the file one of these endings.",
        ));
    }
    let templates = args.printing.templates()?;
    let mut draft = args.reading.read()?.draft();
    if args.lid {
        draft.basket = of_lid(&draft.basket)?;
    }
    let solid = || mould_solid(&draft.basket, Detail::Full);
    let bytes = match ending.as_str() {
        "stl" => stl(&solid()),
        "3mf" => three_mf(&solid()).map_err(|error| {
            Failure::of_file(&Origin::File(out.clone()), error, "Write an .stl file instead.")
        })?,
        "dxf" => outlines_dxf(&draft.basket, &draft.basket.body.form.layers(board)).into_bytes(),
        _ => {
            let wanted = MouldSheet { board, paper: args.printing.paper(&draft.basket) };
            args.printing.set(&draft, &words(&draft.basket), move |draft, words, say| {
                say("mould");
                sheets::mould_sheet(draft, words, &wanted, &templates)
            })?
        }
    };
    single::write(&out, &bytes)?;
    screen::print(&format!("Wrote {}\n", out.display()))?;
    Ok(Outcome::of(&draft))
}

/// The lid as a basket of its own, by its own name.
fn of_lid(basket: &Basket) -> Result<Basket, Failure> {
    let alone = basket.lid_alone().ok_or_else(|| {
        Failure::plain("--lid: the basket has no lid", "Leave --lid out, or write [lid] in the pattern.")
    })?;
    Ok(Basket { title: words(basket).of(Of::Lid, basket.title.clone()), ..alone })
}

fn board(written: &str) -> Result<Length, Failure> {
    let board = Length::parse(written, None)
        .map_err(|error| Failure::plain(format!("--board {written}: {error}"), error.help()))?;
    if (3.0..=200.0).contains(&board.to_mm()) {
        return Ok(board);
    }
    Err(Failure::plain(
        format!("--board {written}: no mould is glued up from such boards"),
        "Write a thickness from 1/8 in to 8 in (3 to 200 mm).",
    ))
}
