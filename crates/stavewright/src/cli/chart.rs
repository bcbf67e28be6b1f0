//! `stavewright chart`.

use std::path::{Path, PathBuf};

use basket::weave::Face;
use clap::ValueEnum;
use drawings::{ChartKind, Drawing};

use super::outcome::Outcome;
use super::reading::{Reading, words};
use crate::failure::Failure;
use crate::source::Origin;
use crate::{raster, report, screen, single};

/// Draw the weaving row by row, or tell it.
///
/// The chart is the wall unrolled: every row and stave in its colours, with joins, courses and ears.
/// It stands as the basket does, row 1 at the bottom.
#[derive(Debug, clap::Args)]
#[command(after_help = "Examples:
  stavewright chart harbour.toml
  stavewright chart harbour.toml --side inside --kind grid --out inside.png
  stavewright chart harbour.toml --rows

Exit status: 0 when the basket can be woven, 1 when a finding says stop (the
chart is drawn all the same), 2 when the pattern cannot be read or the chart
cannot be written.")]
pub(super) struct Args {
    #[command(flatten)]
    reading: Reading,

    /// From which side it is seen.
    #[arg(long, value_enum, default_value_t)]
    side: SideArg,

    /// At true proportion, or every crossing the same square.
    #[arg(long, value_enum, default_value_t)]
    kind: KindArg,

    /// The file to write, .svg or .png [default: the pattern's name and -chart.svg].
    #[arg(long, value_name = "FILE")]
    out: Option<PathBuf>,

    /// Tell the weaving row by row and print a card to tally it; draws only with --out.
    #[arg(long)]
    rows: bool,
}

#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, ValueEnum)]
enum SideArg {
    #[default]
    Outside,
    Inside,
}

#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, ValueEnum)]
enum KindArg {
    #[default]
    True,
    Grid,
}

pub(super) fn run(args: &Args) -> Result<Outcome, Failure> {
    let read = args.reading.read()?;
    let basket = read.basket();
    let words = words(&basket);
    if args.rows {
        screen::print(&report::rows::render(&basket.body.weave, &words))?;
    }
    if !args.rows || args.out.is_some() {
        let (face, kind) = (
            match args.side {
                SideArg::Outside => Face::Outside,
                SideArg::Inside => Face::Inside,
            },
            match args.kind {
                KindArg::True => ChartKind::True,
                KindArg::Grid => ChartKind::Grid,
            },
        );
        let out = file(args);
        let drawing = drawings::chart(&basket, &words, face, kind);
        single::write(&out, &bytes(&drawing, &out)?)?;
        screen::print(&format!("Wrote {}: {}\n", out.display(), drawing.title))?;
    }
    Ok(Outcome::of(&read.draft()))
}

fn file(args: &Args) -> PathBuf {
    args.out.clone().unwrap_or_else(|| single::named(&args.reading.pattern, "chart.svg"))
}

/// The drawing as the ending of the file asks.
fn bytes(drawing: &Drawing, out: &Path) -> Result<Vec<u8>, Failure> {
    match single::ending(out).as_str() {
        "svg" => Ok(drawing.to_svg().into_bytes()),
        "png" => raster::png(drawing, 1.0).ok_or_else(|| {
            Failure::of_file(
                &Origin::File(out.to_owned()),
                "the picture cannot be drawn",
                "Write an .svg file instead.",
            )
        }),
        _ => Err(Failure::of_file(
            &Origin::File(out.to_owned()),
            "a chart is written as .svg or .png",
            "Give the file one of these endings.",
        )),
    }
}
