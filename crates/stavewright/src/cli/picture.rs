//! `stavewright picture`.

use std::path::{Path, PathBuf};

use basket::steps::Stage;
use basket::{Basket, Length};
use clap::ValueEnum;
use drawings::lines::{PictureError, Style, View, draw, shaded};
use drawings::solid::{Detail, LidPose, Solid, with_lid};
use drawings::stages::{Plate, plates, stage_drawing};
use drawings::{Drawing, kept};

use super::names::{has_lid, lid_poses};
use super::outcome::Outcome;
use super::reading::{Reading, words};
use crate::failure::Failure;
use crate::progress::Progress;
use crate::source::Origin;
use crate::{raster, screen, single};

/// Width of a picture that is not asked for, in mm.
const WIDTH: f64 = 150.0;

/// Draw the basket from any side, finished or at a stage of its making.
///
/// Without --view a stage is drawn as in the handout, close-ups and the parts drawn apart included.
/// With it the basket is seen as it stands then, from where you say.
#[derive(Debug, clap::Args)]
#[command(after_help = help())]
pub(super) struct Args {
    #[command(flatten)]
    reading: Reading,

    /// From where: front, side, back, top, bottom, three-quarter, three-quarter-below, or two angles
    /// in degrees, round the basket and from above, such as 30,20.
    #[arg(long, value_name = "VIEW", allow_hyphen_values = true)]
    view: Option<String>,

    /// How far the making has come, or the name of a stage drawing [default: finished].
    #[arg(long, value_name = "STAGE")]
    stage: Option<String>,

    /// How the lid of a finished basket is shown; a hinged one that is taken off is open [default:
    /// closed].
    #[arg(long, value_parser = lid_poses())]
    lid: Option<LidPose>,

    /// In lines, or in colour with light and shade.
    #[arg(long, value_enum, default_value_t)]
    style: StyleArg,

    /// Width on paper, such as "6 in" or "150 mm"; a .png has 8 dots a mm [default: 150 mm, a stage
    /// drawing as in the handout].
    #[arg(long, value_name = "LENGTH", allow_hyphen_values = true)]
    width: Option<String>,

    /// Turn the basket over, as it stands on its mould.
    #[arg(long)]
    base_up: bool,

    /// The file to write, .svg or .png; shaded always .png [default: the pattern's name and the
    /// stage].
    #[arg(long, value_name = "FILE")]
    out: Option<PathBuf>,
}

fn help() -> String {
    format!(
        "Examples:
  stavewright picture harbour.toml
  stavewright picture harbour.toml --view top --style shaded --out top.png
  stavewright picture harbour.toml --view 30,-20 --stage half-woven --base-up
  stavewright picture letters.toml --lid open --out open.svg
  stavewright picture harbour.toml --stage lashing-start --out lashing.svg

Stages: {}.
Without --view also: {}.

Exit status: 0 when the basket can be woven, 1 when a finding says stop (the
picture is drawn all the same), 2 when the pattern cannot be read or the
picture cannot be drawn.",
        Stage::ALL.map(Stage::name).join(", "),
        close_ups().join(", "),
    )
}

/// Names of the stage drawings that have a view of their own.
fn close_ups() -> Vec<&'static str> {
    Plate::ALL.map(Plate::name).into_iter().filter(|name| Stage::named(name).is_none()).collect()
}

#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, ValueEnum)]
enum StyleArg {
    #[default]
    Lines,
    Shaded,
}

pub(super) fn run(args: &Args) -> Result<Outcome, Failure> {
    let out = file(args);
    let form = Form::of(&out, args.style)?;
    let width = args.width.as_deref().map(width).transpose()?;
    let subject = Subject::of(args)?;
    let read = args.reading.read()?;
    let basket = read.basket();
    let pose = has_lid(&basket, args.lid)?;
    let progress = Progress::begin();
    progress.say("drawing the basket");
    let bytes = match subject {
        Subject::Plate(plate) => ready_made(&basket, plate)
            .and_then(|drawing| form.bytes(&drawing, width.map_or(1.0, |width| width / drawing.width())))?,
        Subject::Seen(stage, view) => {
            let solid = with_lid(&basket, stage, Detail::Full, pose);
            seen(&basket, (stage, &solid), &view, (form, width.unwrap_or(WIDTH)))?
        }
    };
    single::write(&out, &bytes)?;
    drop(progress);
    screen::print(&format!("Wrote {}\n", out.display()))?;
    Ok(Outcome::of(&read.draft()))
}

fn file(args: &Args) -> PathBuf {
    let stage = args.stage.as_deref().unwrap_or("picture");
    let safe = stage.chars().all(|sign| sign.is_ascii_alphanumeric() || sign == '-');
    let ending = if args.style == StyleArg::Shaded { "png" } else { "svg" };
    let name = format!("{}.{ending}", if safe { stage } else { "picture" });
    args.out.clone().unwrap_or_else(|| single::named(&args.reading.pattern, &name))
}

/// What is drawn.
enum Subject {
    /// A stage drawing as in the handout.
    Plate(Plate),
    /// The basket at a stage, from a view.
    Seen(Stage, View),
}

impl Subject {
    fn of(args: &Args) -> Result<Self, Failure> {
        let name = args.stage.as_deref().unwrap_or("finished");
        let as_in_handout =
            args.view.is_none() && args.style == StyleArg::Lines && !args.base_up && args.lid.is_none();
        match (Plate::named(name).ok(), Stage::named(name)) {
            (Some(plate), _) if args.stage.is_some() && as_in_handout => Ok(Self::Plate(plate)),
            (_, Some(stage)) => {
                let view = view(args.view.as_deref().unwrap_or("three-quarter"))?;
                Ok(Self::Seen(stage, if args.base_up { view.base_up() } else { view }))
            }
            (Some(_), None) => Err(Failure::plain(
                format!("the stage drawing \u{201c}{name}\u{201d} has its own view and is drawn in lines"),
                format!(
                    "Leave out --view, --style, --lid and --base-up, or choose one of: {}.",
                    Stage::ALL.map(Stage::name).join(", "),
                ),
            )),
            (None, None) => Err(refused(PictureError::Unknown {
                what: "stage drawing",
                name: name.to_owned(),
                known: [&Stage::ALL.map(Stage::name), &close_ups()[..]].concat().join(", "),
            })),
        }
    }
}

/// A view by name, or by two angles in degrees.
fn view(written: &str) -> Result<View, Failure> {
    let angles = written.split_once(',').and_then(|(azimuth, elevation)| {
        Some((azimuth.trim().parse::<f64>().ok()?, elevation.trim().parse::<f64>().ok()?))
    });
    match angles {
        Some((azimuth, elevation)) if azimuth.abs() <= 360.0 && elevation.abs() <= 90.0 => {
            Ok(View::from(azimuth, elevation))
        }
        Some(_) => Err(Failure::plain(
            format!("there is no view {written}"),
            "Write the angle round the basket from -360 to 360 and the one from above from -90 to 90.",
        )),
        None => View::named(written).map_err(refused),
    }
}

/// A width in mm.
fn width(written: &str) -> Result<f64, Failure> {
    let width = Length::parse(written, None)
        .map_err(|error| Failure::plain(format!("--width {written}: {error}"), error.help()))?
        .to_mm();
    if (5.0..=1000.0).contains(&width) {
        return Ok(width);
    }
    Err(Failure::plain(
        format!("--width {written}: a picture of this size cannot be drawn"),
        "Write a width from 5 mm to 1000 mm (1/4 in to 39 in), such as \"6 in\".",
    ))
}

/// A picture that cannot be drawn: what is wrong, then what there is.
fn refused(error: PictureError) -> Failure {
    match error {
        PictureError::Unknown { what, name, known } => Failure::plain(
            format!("there is no {what} called \u{201c}{name}\u{201d}"),
            format!("Choose one of: {known}."),
        ),
        PictureError::Pixels { most, .. } => Failure::plain(
            "a shaded picture of this width cannot be drawn",
            format!("Write a --width of at most {} mm.", most as f64 / raster::DENSITY),
        ),
        other => Failure::plain(other.to_string(), ""),
    }
}

fn ready_made(basket: &Basket, plate: Plate) -> Result<Drawing, Failure> {
    stage_drawing(basket, &words(basket), plate).ok_or_else(|| {
        let there: Vec<_> = plates(basket).into_iter().map(Plate::name).collect();
        Failure::plain(
            format!("this basket has nothing to show in a drawing called \u{201c}{}\u{201d}", plate.name()),
            format!("Choose one of: {}.", there.join(", ")),
        )
    })
}

fn seen(
    basket: &Basket,
    (stage, solid): (Stage, &Solid),
    view: &View,
    (form, width): (Form<'_>, f64),
) -> Result<Vec<u8>, Failure> {
    if form == Form::Shaded {
        let side = (width * raster::DENSITY).round() as usize;
        return shaded(solid, view, side, side).and_then(|image| image.to_png()).map_err(refused);
    }
    let mut drawing = draw(solid, view, &Style::print(width, width)).map_err(refused)?;
    drawing.title.clone_from(&basket.title);
    drawing.description = words(basket).name(stage);
    if let Some(simplified) = solid.simplified {
        drawing.description = format!("{} {}", drawing.description, words(basket).term(simplified.term()));
    }
    form.bytes(&kept(drawing, &words(basket)), 1.0)
}

/// The form of the file.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Form<'a> {
    Svg,
    Png(&'a Path),
    Shaded,
}

impl<'a> Form<'a> {
    fn of(out: &'a Path, style: StyleArg) -> Result<Self, Failure> {
        let wrong = |what: &str| {
            Err(Failure::of_file(&Origin::File(out.to_owned()), what, "Give the file that ending."))
        };
        match (style, single::ending(out).as_str()) {
            (StyleArg::Lines, "svg") => Ok(Self::Svg),
            (StyleArg::Lines, "png") => Ok(Self::Png(out)),
            (StyleArg::Lines, _) => wrong("a picture in lines is written as .svg or .png"),
            (StyleArg::Shaded, "png") => Ok(Self::Shaded),
            (StyleArg::Shaded, _) => wrong("a shaded picture is written as .png"),
        }
    }

    /// A drawing in lines, so many times its size.
    fn bytes(self, drawing: &Drawing, times: f64) -> Result<Vec<u8>, Failure> {
        let Self::Png(out) = self else { return Ok(drawing.to_svg_at(times).into_bytes()) };
        raster::png(drawing, times).ok_or_else(|| {
            let help = "Ask for less --width, or write an .svg file instead.";
            Failure::of_file(&Origin::File(out.to_owned()), "the picture cannot be drawn", help)
        })
    }
}
