//! `stavewright solid`.

use std::path::{Path, PathBuf};

use basket::steps::Stage;
use clap::ValueEnum;
use drawings::solid::{Detail, LidPose, Solid, glb, stl, three_mf, with_lid};

use super::names::{has_lid, lid_poses, stages};
use super::outcome::Outcome;
use super::reading::{Reading, words};
use crate::failure::Failure;
use crate::progress::Progress;
use crate::source::Origin;
use crate::{screen, single};

/// Write the basket in the round, for a viewer or a printer in three dimensions.
///
/// The ending of the file says its form: .glb carries names and colours in metres, .3mf names and
/// colours in millimetres, .stl the bare surface in millimetres.
#[derive(Debug, clap::Args)]
#[command(after_help = "Examples:
  stavewright solid harbour.toml
  stavewright solid harbour.toml --stage half-woven --out half.glb
  stavewright solid letters.toml --lid open
  stavewright solid harbour.toml --detail page --out harbour.3mf

Exit status: 0 when the basket can be woven, 1 when a finding says stop (the
file is written all the same), 2 when the pattern cannot be read or the file
cannot be written.")]
pub(super) struct Args {
    #[command(flatten)]
    reading: Reading,

    /// How far the making has come.
    #[arg(long, value_parser = stages(), default_value = Stage::Finished.name())]
    stage: Stage,

    /// How the lid of a finished basket is shown; a hinged one that is taken off is open [default:
    /// closed].
    #[arg(long, value_parser = lid_poses())]
    lid: Option<LidPose>,

    /// How finely it is cut into triangles.
    #[arg(long, value_enum, default_value_t)]
    detail: DetailArg,

    /// The file to write, .glb, .stl or .3mf [default: the pattern's name and
    /// -solid.glb].
    #[arg(long, value_name = "FILE")]
    out: Option<PathBuf>,
}

#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, ValueEnum)]
enum DetailArg {
    /// For looking closely and for printing.
    #[default]
    Full,
    /// For a picture as wide as a page.
    Page,
    /// For a picture as large as a thumb.
    Thumbnail,
}

impl From<DetailArg> for Detail {
    fn from(detail: DetailArg) -> Self {
        match detail {
            DetailArg::Full => Self::Full,
            DetailArg::Page => Self::Page,
            DetailArg::Thumbnail => Self::Thumbnail,
        }
    }
}

pub(super) fn run(args: &Args) -> Result<Outcome, Failure> {
    let out = args.out.clone().unwrap_or_else(|| single::named(&args.reading.pattern, "solid.glb"));
    let write = form(&out)?;
    let read = args.reading.read()?;
    let basket = read.basket();
    let pose = has_lid(&basket, args.lid)?;
    let progress = Progress::begin();
    progress.say("cutting the basket into triangles");
    let solid = with_lid(&basket, args.stage, args.detail.into(), pose);
    progress.say("writing them");
    let bytes = write(&solid).map_err(|error| {
        Failure::of_file(&Origin::File(out.clone()), error, "Ask for less --detail, or write a .glb file.")
    })?;
    single::write(&out, &bytes)?;
    drop(progress);
    screen::print(&format!(
        "Wrote {}: {} parts, {} triangles\n",
        out.display(),
        solid.parts.len(),
        solid.triangles()
    ))?;
    if let Some(simplified) = solid.simplified {
        screen::print(&format!("{}\n", words(&basket).term(simplified.term())))?;
    }
    Ok(Outcome::of(&read.draft()))
}

type Form = fn(&Solid) -> std::io::Result<Vec<u8>>;

/// What writes the form that the ending of the file asks for.
fn form(out: &Path) -> Result<Form, Failure> {
    match single::ending(out).as_str() {
        "glb" => Ok(|solid| Ok(glb(solid))),
        "stl" => Ok(|solid| Ok(stl(solid))),
        "3mf" => Ok(three_mf),
        _ => Err(Failure::of_file(
            &Origin::File(out.to_owned()),
            "a basket in the round is written as .glb, .stl or .3mf",
            "Give the file one of these endings.",
        )),
    }
}
