//! `stavewright templates`.

use std::fs::{self, File};
use std::io::{self, Write};
use std::path::{Path, PathBuf};

use super::outcome::Outcome;
use crate::disk::{beside, fault, flush_folder, folder_of};
use crate::failure::Failure;
use crate::screen;

/// Write the built-in templates of the sheets, to change them.
///
/// They are Typst sources (and one of HTML). Change what you like, delete what you leave as it is,
/// and name the folder with `stavewright draft --templates DIR`.
#[derive(Debug, clap::Args)]
#[command(after_help = "Example:
  stavewright templates --out our-sheets
  stavewright draft harbour.toml --templates our-sheets

Exit status: 0, or 2 when the folder cannot be written.")]
pub(super) struct Args {
    /// The folder to write; one that holds anything is left alone.
    #[arg(long, value_name = "DIR", default_value = "templates")]
    out: PathBuf,
}

pub(super) fn run(args: &Args) -> Result<Outcome, Failure> {
    let out = &args.out;
    let taken =
        out.symlink_metadata().is_ok() && !fs::read_dir(out).is_ok_and(|mut all| all.next().is_none());
    if taken {
        return Err(Failure::plain(
            format!("{}: there is something of this name already", out.display()),
            "Name another folder with --out; stavewright never writes over templates.",
        ));
    }
    let templates = sheets::Templates::default();
    write(out, &templates).map_err(|error| {
        let help = "Name a folder with --out in a place where you may write.";
        fault::cannot_write(out, "the templates cannot be written", &error, help)
    })?;
    let names: Vec<_> = templates.names().collect();
    let names = screen::wrap(&names.join(", "), "  ", "  ");
    screen::print(&format!("Wrote {}\n{names}\n", out.display()))?;
    Ok(Outcome::Fine)
}

/// Writes all of them into a new folder, which then takes its name.
fn write(out: &Path, templates: &sheets::Templates) -> io::Result<()> {
    let (fresh, _lock) = beside::folder(out)?;
    for name in templates.names() {
        let mut file = File::create_new(fresh.path().join(name))?;
        file.write_all(templates.text(name).unwrap_or_default().as_bytes())?;
        file.sync_all()?;
    }
    flush_folder(fresh.path())?;
    if out.exists() {
        fs::remove_dir(out)?;
    }
    fs::rename(fresh.path(), out)?;
    // The folder has its name now; there is nothing left to remove under the old one.
    let _ = fresh.keep();
    flush_folder(folder_of(out))
}
