//! `stavewright chart`.

use std::io::{self, Write};
use std::path::{Path, PathBuf};
use std::sync::Arc;

use basket::weave::Face;
use clap::ValueEnum;
use drawings::{ChartKind, Drawing};
use resvg::{tiny_skia, usvg};

use super::Outcome;
use super::reading::{Reading, words};
use crate::failure::Failure;
use crate::input::Origin;
use crate::{packet, report, screen};

/// Dots in a millimetre of a PNG picture.
const DENSITY: f64 = 8.0;

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
    let basket = args.reading.basket()?;
    let words = words(&basket);
    if args.rows {
        screen::print(&report::rows::render(&basket.weave, &words))?;
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
        write(&out, &bytes(&drawing, &out)?)?;
        screen::print(&format!("Wrote {}: {}\n", out.display(), drawing.title))?;
    }
    Ok(Outcome::of(&basket))
}

fn file(args: &Args) -> PathBuf {
    args.out.clone().unwrap_or_else(|| {
        let mut name = Origin::of(&args.reading.pattern).stem().unwrap_or("basket".as_ref()).to_owned();
        name.push("-chart.svg");
        PathBuf::from(name)
    })
}

/// Writes the file whole or not at all.
fn write(out: &Path, bytes: &[u8]) -> Result<(), Failure> {
    let folder = out.parent().filter(|folder| !folder.as_os_str().is_empty()).unwrap_or(Path::new("."));
    let written = || -> io::Result<()> {
        let mut file = packet::builder(0o666).tempfile_in(folder)?;
        file.write_all(bytes)?;
        file.as_file().sync_all()?;
        file.persist(out).map_err(|error| error.error)?;
        Ok(())
    };
    written().map_err(|error| {
        let origin = Origin::File(out.to_owned());
        Failure::of_file(
            &origin,
            format!("cannot be written: {error}"),
            "Check that the folder exists and may be written to.",
        )
    })
}

/// The drawing as the ending of the file asks.
fn bytes(drawing: &Drawing, out: &Path) -> Result<Vec<u8>, Failure> {
    let ending = out.extension().and_then(|ending| ending.to_str()).unwrap_or_default();
    match ending.to_lowercase().as_str() {
        "svg" => Ok(drawing.to_svg().into_bytes()),
        "png" => png(drawing).ok_or_else(|| {
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

/// The drawing in dots, [`DENSITY`] a millimetre.
fn png(drawing: &Drawing) -> Option<Vec<u8>> {
    let mut options = usvg::Options::default();
    let fonts = Arc::make_mut(&mut options.fontdb);
    typst_assets::fonts().for_each(|font| fonts.load_font_data(font.to_vec()));
    let tree = usvg::Tree::from_str(&drawing.to_svg(), &options).ok()?;
    let scale = (drawing.width() * DENSITY) as f32 / tree.size().width();
    let dots = |length: f32| (length * scale).ceil() as u32;
    let mut picture = tiny_skia::Pixmap::new(dots(tree.size().width()), dots(tree.size().height()))?;
    picture.fill(tiny_skia::Color::WHITE);
    resvg::render(&tree, tiny_skia::Transform::from_scale(scale, scale), &mut picture.as_mut());
    picture.encode_png().ok()
}
