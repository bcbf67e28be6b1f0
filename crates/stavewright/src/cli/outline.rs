//! `stavewright outline`.

use std::fmt::Write as _;
use std::path::PathBuf;

use basket::Length;

use super::outcome::Outcome;
use super::trace::{UnitsArg, beside, length};
use crate::drawn_outline::{self, DrawnOutline};
use crate::failure::Failure;
use crate::source::Origin;
use crate::{input, screen, single};

/// A rim a little longer than the foot, and a height, to begin with.
const WIDER: f64 = 1.1;
const HIGH: f64 = 0.4;

/// Take the outline of a mould's foot from a drawing of it.
///
/// Read are an SVG file with one closed line, the data of an SVG path (beginning with M), or a list
/// of points, one on each line, in millimetres. An SVG file keeps its size; --length gives another.
/// Written is a pattern with the outline as rays: height and length at the rim stand there to be changed.
#[derive(Debug, clap::Args)]
#[command(after_help = "Examples:
  stavewright outline foot.svg
  stavewright outline foot.svg --length \"10 1/2 in\" --out pilot.toml
  stavewright outline points.txt --units mm

Exit status: 0 when the pattern is written, 2 when the drawing is no outline
or a file cannot be written.")]
pub(super) struct Args {
    /// The drawing: SVG, the data of a path, or points.
    drawing: PathBuf,

    /// The length of the foot over all, such as "10 1/2 in" [default: as drawn].
    #[arg(long, value_name = "LENGTH")]
    length: Option<String>,

    /// Units of the pattern.
    #[arg(long, value_enum, default_value_t)]
    units: UnitsArg,

    /// The pattern to write [default: the drawing's name and .toml].
    #[arg(long, value_name = "FILE")]
    out: Option<PathBuf>,
}

pub(super) fn run(args: &Args) -> Result<Outcome, Failure> {
    let given = args.length.as_deref().map(|written| length("--length", written)).transpose()?;
    let origin = Origin::File(args.drawing.clone());
    let text = input::read(origin.clone())?;
    let outline = drawn_outline::read(&text.content, given.map(Length::mm))
        .map_err(|(message, help)| Failure::of_file(&origin, message, help))?;
    let out = args.out.clone().unwrap_or_else(|| beside(&args.drawing, ".toml"));
    if out == args.drawing {
        return Err(Failure::plain(
            format!("{}: this would be written over the drawing", out.display()),
            "Name another pattern with --out.",
        ));
    }
    single::write(&out, pattern(args.units, &outline).as_bytes())?;
    let [length, width] = outline.size;
    screen::print(&format!(
        "The foot is {length:.1} mm long and {width:.1} mm wide.\n\nWrote {}\n",
        out.display()
    ))?;
    Ok(Outcome::Fine)
}

/// A pattern with the outline, and a side to be changed.
fn pattern(units: UnitsArg, outline: &DrawnOutline) -> String {
    let (unit, per, decimals) = units.measure();
    let written = |mm: f64| format!("\"{:.decimals$}\"", mm / per);
    let mut text = format!(
        "# The outline of a foot, from a drawing. Height and length at the rim are to be measured.\n\n\
         title = \"A drawn foot\"\nunits = \"{unit}\"\n\n[mould]\nshape = \"traced\"\nrays = [\n"
    );
    for rays in outline.rays.chunks(8) {
        let rays: Vec<String> = rays.iter().map(|ray| written(*ray)).collect();
        let _ = writeln!(text, "  {},", rays.join(", "));
    }
    let [length, _] = outline.size;
    let _ = write!(
        text,
        "]\nrim = {}\nheight = {}\nside = \"bowl\"\n",
        written(length * WIDER),
        written(length * HIGH)
    );
    text
}
