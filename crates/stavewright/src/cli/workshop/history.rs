//! `stavewright history`.

use std::path::{Path, PathBuf};

use basket::Catalogue;
use basket::pattern::Units;
use workshop::Version;

use super::{failure, open};
use crate::bench::{Folder, Past, PastVersion, differences};
use crate::cli::outcome::Outcome;
use crate::cli::reading::Speaking;
use crate::failure::Failure;
use crate::own::Own;
use crate::source::Origin;
use crate::store::STORE;
use crate::{input, screen, single};

/// See what a pattern was before, in what its versions differ, and go back.
///
/// Each time the bench saves a pattern, its text is kept in the store beside it, up to a hundred of
/// each. This command keeps the text as it stands now, too, and lists what changed from one version
/// to the next.
#[derive(Debug, clap::Args)]
#[command(after_help = "Examples:
  stavewright history harbour.toml
  stavewright history harbour.toml --show 3 > earlier.toml
  stavewright history harbour.toml --back 3    what it is now stays in the history")]
pub(crate) struct Args {
    /// The pattern file.
    pattern: PathBuf,

    /// Print the text of this version.
    #[arg(long, value_name = "NUMBER", conflicts_with = "back")]
    show: Option<i64>,

    /// Make the pattern what it was in this version.
    #[arg(long, value_name = "NUMBER")]
    back: Option<i64>,

    #[command(flatten)]
    speaking: Speaking,
}

pub(crate) fn run(args: &Args) -> Result<Outcome, Failure> {
    let origin = Origin::of(&args.pattern);
    let now = input::read(origin.clone())?.content;
    let (Some(name), Origin::File(_)) = (args.pattern.file_stem().and_then(|name| name.to_str()), &origin)
    else {
        return Err(Failure::of_file(&origin, "this has no history", "Name the file of a pattern."));
    };
    let folder = match args.pattern.parent() {
        Some(folder) if folder != Path::new("") => folder,
        _ => Path::new("."),
    };
    let place = folder.join(STORE);
    let mut store = open(&place)?;
    let said = |fault| failure(&place, &fault);
    store.keep_version(name, &now).map_err(said)?;
    let versions = store.versions(name).map_err(said)?;
    let one = |number: i64| {
        let found = versions.iter().find(|version| version.id == number);
        let help = "Without --show and --back the versions are listed.";
        found.ok_or_else(|| Failure::of_file(&origin, format!("there is no version {number} of it"), help))
    };
    if let Some(number) = args.show {
        screen::print(&one(number)?.source)?;
        return Ok(Outcome::Fine);
    }
    if let Some(number) = args.back {
        let source = &one(number)?.source;
        single::write(&args.pattern, source.as_bytes())?;
        store.keep_version(name, source).map_err(said)?;
        screen::print(&format!("{} is what it was in version {number}\n", args.pattern.display()))?;
        return Ok(Outcome::Fine);
    }
    list(versions, folder, args.speaking.words(Units::default()).language().tag())
}

fn list(versions: Vec<Version>, folder: &Path, tag: &str) -> Result<Outcome, Failure> {
    let folder =
        Folder::at(folder).map_err(|error| Failure::plain(error.to_string(), "Name another file."))?;
    let version = |Version { id, at, source }| PastVersion { id, at, source, says: Vec::new() };
    let past = Past { versions: versions.into_iter().map(version).collect(), language: Some(tag.to_owned()) };
    let (own, _) = Own::of_folder(folder.path(), Catalogue::built_in());
    let told = differences(past, &folder, &own.catalogue(Catalogue::built_in()));
    for PastVersion { id, at, says, .. } in
        told.map_err(|refusal| Failure::plain(refusal.fault().what.clone(), ""))?
    {
        let line = format!("{id}  {at}  {}", says.join(", "));
        screen::print(&format!("{}\n", screen::wrap(line.trim_end(), "", "    ")))?;
    }
    Ok(Outcome::Fine)
}
