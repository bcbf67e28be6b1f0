//! `stavewright mould`.

use std::path::PathBuf;

use basket::measure::Unit;
use basket::mould::{MOST_PIECES, NoPieces, Pieces, Room};
use basket::{Basket, Draft, Length, Of};
use drawings::solid::{Detail, Solid, mould_pieces, mould_solid, stl, three_mf};
use drawings::{outlines_dxf, outlines_svg};
use sheets::{MouldSheet, PiecesTold};

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
/// .3mf are the mould in the round with its screw hole, in millimetres; .dxf and .svg are the
/// outlines of boards and base, of an ear, and of the forms round which hoops and handle are bent,
/// for a saw or router.
///
/// A mould whose pattern says `pieces = "several"` is written as a core and segments that come out of the
/// basket. One that is larger than the printer's room is cut into parts with holes for pegs, lengths of
/// dowel. The parts lie side by side, each on the larger of its level faces: as objects of their own in a
/// .3mf, all in one in an .stl.
#[derive(Debug, clap::Args)]
#[command(after_help = "Examples:
  stavewright mould harbour.toml
  stavewright mould harbour.toml --board \"1 in\" --out mould.pdf
  stavewright mould harbour.toml --out mould.stl
  stavewright mould harbour.toml --printer \"8 x 8 x 10 in\" --out mould.3mf
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

    /// The file to write, .pdf, .stl, .3mf, .dxf or .svg [default: the pattern's name
    /// and -mould.pdf].
    #[arg(long, value_name = "FILE")]
    out: Option<PathBuf>,

    /// The printer's room: both sides of its bed and its height, such as
    /// "200 x 200 x 250 mm".
    #[arg(long, value_name = "SIZE")]
    printer: Option<String>,

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
    if !["pdf", "stl", "3mf", "dxf", "svg"].contains(&ending.as_str()) {
        return Err(Failure::of_file(
            &Origin::File(out),
            "a mould is written as .pdf, .stl, .3mf, .dxf or .svg",
            "Give the file one of these endings.",
        ));
    }
    let room = args.printer.as_deref().map(printer).transpose()?;
    let templates = args.printing.templates()?;
    let mut draft = args.reading.read()?.draft();
    if args.lid {
        draft.basket = of_lid(&draft.basket)?;
    }
    let pieces = match ending.as_str() {
        "dxf" | "svg" => None,
        "pdf" => Pieces::of(&draft.basket, room).or_else(|none| whole_on_paper(none, &draft.basket))?,
        _ => Pieces::of(&draft.basket, room).map_err(|none| refused(none, &draft.basket))?,
    };
    let bytes = match ending.as_str() {
        "stl" => stl(&solid(&draft, pieces.as_ref())?),
        "3mf" => three_mf(&solid(&draft, pieces.as_ref())?).map_err(|error| {
            Failure::of_file(&Origin::File(out.clone()), error, "Write an .stl file instead.")
        })?,
        "dxf" => outlines_dxf(&draft.basket, &draft.basket.body.form.layers(board)).into_bytes(),
        "svg" => outlines_svg(&draft.basket, &draft.basket.body.form.layers(board)).into_bytes(),
        _ => {
            let paper = args.printing.paper(&draft.basket);
            let wanted = MouldSheet { board, pieces: pieces.clone(), paper };
            args.printing.set(&draft, &words(&draft.basket), move |draft, words, say| {
                say("mould");
                sheets::mould_sheet(draft, words, &wanted, &templates)
            })?
        }
    };
    single::write(&out, &bytes)?;
    let told = pieces.map(|pieces| PiecesTold::of(&pieces, &words(&draft.basket)).notes).unwrap_or_default();
    let told: String =
        told.iter().map(|note| screen::wrap(note, "", "").trim_end().to_owned() + "\n").collect();
    screen::print(&format!("Wrote {}\n{told}", out.display()))?;
    Ok(Outcome::of(&draft))
}

/// The mould in the round, or its parts.
fn solid(draft: &Draft, pieces: Option<&Pieces>) -> Result<Solid, Failure> {
    let Some(pieces) = pieces else { return Ok(mould_solid(&draft.basket, Detail::Full)) };
    mould_pieces(&draft.basket, &pieces.split, Detail::Full).ok_or_else(|| {
        let help = "Write a printer of another size, such as 10 mm less on each side.";
        Failure::plain("--printer: the cuts meet the mould where its parts would not close", help)
    })
}

/// A sheet says itself that a mould does not come apart.
fn whole_on_paper(none: NoPieces, basket: &Basket) -> Result<Option<Pieces>, Failure> {
    match none {
        NoPieces::Stuck(_) => Ok(None),
        NoPieces::TooSmall(_) => Err(refused(none, basket)),
    }
}

fn refused(none: NoPieces, basket: &Basket) -> Failure {
    match none {
        NoPieces::TooSmall(too_small) => Failure::plain(
            format!("--printer: the mould would be {} parts, which nobody glues up", too_small.pieces),
            format!("Name a printer with more room: at most {MOST_PIECES} parts are cut."),
        ),
        NoPieces::Stuck(stuck) => {
            let lack = stuck.room.map_or_else(String::new, |room| {
                let lacks = basket::mould::CLEAR - room;
                format!(": at best a segment lacks {} on its way out", words(basket).both(lacks))
            });
            Failure::plain(
                format!("{}: the mould does not come apart round a core{lack}", basket.title),
                "Make its neck wider or its belly narrower, or leave mould.pieces out where a basket lifts off.",
            )
        }
    }
}

/// Three lengths with an x between; a unit behind the last one is that of those without.
fn printer(written: &str) -> Result<Room, Failure> {
    let wrong = |what: String| {
        Failure::plain(format!("--printer {written}: {what}"), "Write it as in \"200 x 200 x 250 mm\".")
    };
    let sides: Vec<&str> = written.split(['x', 'X', '×']).map(str::trim).collect();
    let [.., last] = sides.as_slice() else { return Err(wrong("no size".to_owned())) };
    let unit =
        [Unit::Inch, Unit::Foot, Unit::Millimetre, Unit::Centimetre, Unit::Metre].into_iter().find(|unit| {
            Length::parse(last, None)
                .is_ok_and(|length| Length::parse(&bare(last), Some(*unit)) == Ok(length))
        });
    let read = |side: &&str| Length::parse(side, unit).map_err(|error| wrong(error.to_string()));
    let lengths = sides.iter().map(read).collect::<Result<Vec<Length>, Failure>>()?;
    let [x, y, height] = lengths[..] else {
        return Err(wrong(format!("{} lengths instead of three", sides.len())));
    };
    if [x, y, height].iter().any(|side| !(50.0..=3000.0).contains(&side.to_mm())) {
        return Err(wrong("no printer has such a side".to_owned()));
    }
    Ok(Room([x, y, height]))
}

/// A length without its unit.
fn bare(written: &str) -> String {
    let end = written.rfind(|letter: char| letter.is_ascii_digit()).map_or(0, |last| last + 1);
    written.get(..end).unwrap_or_default().to_owned()
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
