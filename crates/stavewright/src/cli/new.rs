//! `stavewright new`.

use std::io::{self, Write};
use std::path::{Path, PathBuf};

use super::outcome::Outcome;
use crate::failure::Failure;
use crate::{packet, screen};

/// Write a pattern to begin with: every key, with a word on each.
#[derive(Debug, clap::Args)]
#[command(after_help = "Examples:
  stavewright new                        writes basket.toml
  stavewright new harbour.toml
  stavewright new -                      prints it")]
pub(super) struct Args {
    /// The file to write; - prints it instead. A file that exists is left alone.
    #[arg(default_value = "basket.toml")]
    file: PathBuf,
}

pub(super) fn run(args: &Args) -> Result<Outcome, Failure> {
    if args.file.as_os_str() == "-" {
        screen::print(basket::pattern::STARTER)?;
        return Ok(Outcome::Fine);
    }
    write(&args.file)?;
    let name = args.file.display();
    screen::print(&format!("Wrote {name}. Fill it in, then: stavewright check {name}\n"))?;
    Ok(Outcome::Fine)
}

fn write(path: &Path) -> Result<(), Failure> {
    let folder = path.parent().filter(|parent| !parent.as_os_str().is_empty()).unwrap_or(Path::new("."));
    if path.symlink_metadata().is_ok() {
        return Err(exists(path));
    }
    let cannot = |error: io::Error| cannot_write(path, folder, &error);
    let mut file = packet::builder(0o666).tempfile_in(folder).map_err(cannot)?;
    file.write_all(basket::pattern::STARTER.as_bytes())
        .and_then(|()| file.as_file().sync_all())
        .map_err(cannot)?;
    match file.persist_noclobber(path) {
        Ok(_) => Ok(()),
        Err(failed) if failed.error.kind() == io::ErrorKind::AlreadyExists => Err(exists(path)),
        Err(failed) => Err(cannot(failed.error)),
    }
}

fn exists(path: &Path) -> Failure {
    Failure::plain(
        format!("{}: there is a file of this name already", path.display()),
        "Choose another name; stavewright never writes over a pattern.",
    )
}

fn cannot_write(path: &Path, folder: &Path, error: &io::Error) -> Failure {
    let message = format!("{}: cannot be written: {error}", path.display());
    Failure::plain(message, format!("Is there a folder {} in which you may write?", folder.display()))
}
