//! `stavewright trace`.

use std::fmt::Write as _;
use std::io::Cursor;
use std::path::{Path, PathBuf};

use basket::Length;
use clap::ValueEnum;
use image::{ImageFormat, RgbImage};
use silhouette::{Camera, Known, Picture, Traced};

use super::outcome::Outcome;
use crate::failure::Failure;
use crate::progress::Progress;
use crate::source::Origin;
use crate::{mould_photo, screen, single};

/// Take the girths of a round mould from a photograph of it.
///
/// Stand the mould before a plain sheet of another colour, so that sheet is seen on all four sides
/// of it. Hold the camera level, at half the mould's height, far away (1.5 m or more) and zoomed in.
/// Tape the girth at the widest place: with it the side is good to about 0.3 % of the diameter,
/// with the height alone to about 1 %. Written are a pattern with the girths and the photograph with
/// what was traced drawn over it: look at that before you trust the pattern.
#[derive(Debug, clap::Args)]
#[command(after_help = "Examples:
  stavewright trace mould.jpg --girth \"25 1/8 in\"
  stavewright trace mould.jpg --girth \"640 mm\" --distance \"2 m\" --units mm
  stavewright trace mould.jpg --height \"4 1/4 in\" --foot-up

Exit status: 0 when the pattern is written, 2 when the photograph cannot be
traced or a file cannot be written.")]
pub(super) struct Args {
    /// The photograph, PNG or JPEG.
    photo: PathBuf,

    /// The girth at the widest place, such as "25 1/8 in".
    #[arg(long, value_name = "LENGTH", required_unless_present = "height", conflicts_with = "height")]
    girth: Option<String>,

    /// The height, where no girth was taped.
    #[arg(long, value_name = "LENGTH")]
    height: Option<String>,

    /// Distance from the lens to the middle of the mould [default: 1.5 m, and less trust].
    #[arg(long, value_name = "LENGTH")]
    distance: Option<String>,

    /// The mould stands on its rim, foot up.
    #[arg(long)]
    foot_up: bool,

    /// Units of the pattern.
    #[arg(long, value_enum, default_value_t)]
    units: UnitsArg,

    /// The pattern to write [default: the photograph's name and .toml].
    #[arg(long, value_name = "FILE")]
    out: Option<PathBuf>,
}

#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, ValueEnum)]
pub(super) enum UnitsArg {
    /// Inches.
    #[default]
    In,
    /// Millimetres.
    Mm,
}

impl UnitsArg {
    /// The unit as a pattern names it, millimetres in one, and the decimals that are written.
    pub(super) const fn measure(self) -> (&'static str, f64, usize) {
        match self {
            Self::In => ("in", 25.4, 2),
            Self::Mm => ("mm", 1.0, 1),
        }
    }
}

pub(super) fn run(args: &Args) -> Result<Outcome, Failure> {
    let known = match (&args.girth, &args.height) {
        (Some(girth), _) => Known::Girth(length("--girth", girth)?),
        (None, height) => Known::Height(length("--height", height.as_deref().unwrap_or_default())?),
    };
    let distance = args.distance.as_deref().map(|distance| length("--distance", distance)).transpose()?;
    let camera = mould_photo::camera(distance, args.foot_up);
    let out = args.out.clone().unwrap_or_else(|| beside(&args.photo, ".toml"));
    let picture = beside(&out, "-traced.png");
    if out == args.photo || picture == args.photo {
        return Err(Failure::plain(
            format!("{}: this would be written over the photograph", args.photo.display()),
            "Name another pattern with --out.",
        ));
    }
    let progress = Progress::begin();
    progress.say("looking at the photograph");
    let photo = mould_photo::read(&args.photo)?;
    progress.say("tracing the mould");
    let traced = trace(&args.photo, &photo, camera, known)?;
    single::write(&picture, &png(&picture, &mould_photo::marked(photo, &traced))?)?;
    single::write(&out, pattern(args, &traced).as_bytes())?;
    drop(progress);
    screen::print(&told(args, &traced, [&out, &picture]))?;
    Ok(Outcome::Fine)
}

pub(super) fn length(option: &str, written: &str) -> Result<f64, Failure> {
    let length = Length::parse(written, None)
        .map_err(|error| Failure::plain(format!("{option} {written}: {error}"), error.help()))?;
    Ok(length.to_mm())
}

/// A file in the present folder, called after another one.
pub(super) fn beside(named: &Path, ending: &str) -> PathBuf {
    let mut name = Origin::of(named).stem().unwrap_or("mould".as_ref()).to_owned();
    name.push(ending);
    PathBuf::from(name)
}

fn trace(path: &Path, photo: &RgbImage, camera: Camera, known: Known) -> Result<Traced, Failure> {
    let traced = Picture::new(photo.width(), photo.height(), photo.as_raw())
        .map(|picture| silhouette::trace(&picture, camera, known));
    let refused = |why: &dyn std::fmt::Display| {
        let help = "The mould stands alone before a plain sheet, seen whole, from its own height.";
        Failure::of_file(&Origin::File(path.to_owned()), why, help)
    };
    match traced {
        Some(Ok(traced)) => Ok(traced),
        Some(Err(failed)) => Err(refused(&failed)),
        None => Err(refused(&"the picture has no pixels")),
    }
}

fn png(path: &Path, picture: &RgbImage) -> Result<Vec<u8>, Failure> {
    let mut bytes = Vec::new();
    picture.write_to(&mut Cursor::new(&mut bytes), ImageFormat::Png).map_err(|error| {
        Failure::of_file(&Origin::File(path.to_owned()), error, "Save the photograph anew and try again.")
    })?;
    Ok(bytes)
}

/// A pattern with the girths.
fn pattern(args: &Args, traced: &Traced) -> String {
    let (unit, per, decimals) = args.units.measure();
    let mut text = format!(
        "# Girths traced from a photograph, good to about {:.1} % of the diameter.\n\n\
         title = \"A traced mould\"\nunits = \"{unit}\"\n\n[mould]\ngirths = [\n",
        100.0 * traced.trust
    );
    for [height, girth] in &traced.girths {
        let [height, girth] = [height, girth].map(|length| length / per);
        let _ = writeln!(text, "  [\"{height:.decimals$}\", \"{girth:.decimals$}\"],");
    }
    text.push_str("]\n");
    text
}

fn told(args: &Args, traced: &Traced, [out, picture]: [&Path; 2]) -> String {
    let percent = |share: f64| format!("{:.1} %", share * 100.0);
    let mut said = vec![format!(
        "Traced {} girths over a height of {:.0} mm, good to about {} of the diameter.",
        traced.girths.len(),
        traced.side.height,
        percent(traced.trust)
    )];
    if args.distance.is_none() {
        said.push(
            "The distance of the camera was taken as 1.5 m; with --distance the girths are surer.".to_owned(),
        );
    }
    if args.girth.is_none() {
        said.push("With a girth taped at the widest place (--girth) they are surer still.".to_owned());
    }
    if traced.lopsided > mould_photo::LOPSIDED {
        said.push(format!(
            "Both sides differ by {}: look at the picture whether a shadow was taken for wood.",
            percent(traced.lopsided)
        ));
    }
    if traced.smoothed {
        said.push(
            "A narrowing too small to be told from the picture's own faults was smoothed away.".to_owned(),
        );
    }
    let said: String = said.iter().map(|line| screen::wrap(line, "", "") + "\n").collect();
    format!("{said}\nWrote {} and {}\n", out.display(), picture.display())
}
