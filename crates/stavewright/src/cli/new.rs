//! `stavewright new`.

use std::io;
use std::path::{Path, PathBuf};

use super::outcome::Outcome;
use crate::disk::{self, fault};
use crate::failure::Failure;
use crate::{screen, single};

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
    if path.symlink_metadata().is_ok() {
        return Err(exists(path));
    }
    single::create(path, basket::pattern::STARTER.as_bytes()).map_err(|error| {
        if error.kind() == io::ErrorKind::AlreadyExists {
            return exists(path);
        }
        let folder = disk::folder_of(path).display();
        let help = format!("Is there a folder {folder} in which you may write?");
        fault::cannot_write(path, "cannot be written", &error, &help)
    })
}

fn exists(path: &Path) -> Failure {
    Failure::plain(
        format!("{}: there is a file of this name already", path.display()),
        "Choose another name; stavewright never writes over a pattern.",
    )
}
