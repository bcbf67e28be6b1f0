//! `stavewright backup`.

use std::fs;
use std::io::{Cursor, Write};
use std::path::{Path, PathBuf};

use zip::write::SimpleFileOptions;

use super::{StoreArgs, failure};
use crate::cli::outcome::Outcome;
use crate::failure::Failure;
use crate::{screen, single};

/// Copy the store with shelf, moulds, orders and log; as .zip with patterns and photographs.
///
/// The copy is whole even while another program writes. As .db it is a store itself: name it with
/// --store to look into it, or put it in the place of the other to go back to it. In a .zip lie the
/// store, and the patterns and photographs of its folder; unpacked in an empty folder it is all there
/// again.
#[derive(Debug, clap::Args)]
#[command(after_help = "Examples:
  stavewright backup workshop-2026-10-18.db
  stavewright backup workshop-2026-10-18.zip")]
pub(crate) struct Args {
    /// The file to write; it must not be there yet.
    out: PathBuf,

    #[command(flatten)]
    store: StoreArgs,
}

/// What is taken along from the store's folder, by the ending of its name.
const TAKEN: [&str; 4] = ["toml", "jpg", "jpeg", "png"];
/// Files of one backup, and bytes of them together; what has more is no folder of patterns.
const MOST_FILES: usize = 20_000;
const MOST_BYTES: u64 = 1_000_000_000;

pub(crate) fn run(args: &Args) -> Result<Outcome, Failure> {
    let Some(store) = args.store.existing()?.filter(|_| args.store.store.exists()) else {
        let what =
            format!("{}: there is no store here, so there is nothing to copy", args.store.store.display());
        return Err(Failure::plain(what, "Name the store with --store."));
    };
    if args.out.exists() {
        let what = format!("{}: this file is there already, and is left as it is", args.out.display());
        return Err(Failure::plain(what, "Name a file that is not there yet."));
    }
    let faulty = |fault| failure(&args.out, &fault);
    if single::ending(&args.out) != "zip" {
        store.copy_to(&args.out).map_err(faulty)?;
        screen::print(&format!("Wrote {}\n", args.out.display()))?;
        return Ok(Outcome::Fine);
    }
    let room = tempfile::tempdir()?;
    let copy = room.path().join("copy.db");
    store.copy_to(&copy).map_err(faulty)?;
    let beside = args.store.store.parent().filter(|folder| !folder.as_os_str().is_empty());
    let files = beside_store(beside.unwrap_or(Path::new(".")))?;
    let named = args.store.store.file_name().unwrap_or_default().to_string_lossy().into_owned();
    single::write(&args.out, &pack(&[&[(named, copy)], files.as_slice()].concat())?)?;
    let count = files.len();
    screen::print(&format!(
        "Wrote {}: the store, with {count} patterns and photographs\n",
        args.out.display()
    ))?;
    Ok(Outcome::Fine)
}

/// Patterns and photographs in a folder, by name; folders in it and links are not followed.
fn beside_store(folder: &Path) -> Result<Vec<(String, PathBuf)>, Failure> {
    let mut files = Vec::new();
    let mut bytes = 0;
    for entry in fs::read_dir(folder)? {
        let entry = entry?;
        let path = entry.path();
        if !entry.file_type()?.is_file() || !TAKEN.contains(&single::ending(&path).as_str()) {
            continue;
        }
        bytes += entry.metadata()?.len();
        files.push((entry.file_name().to_string_lossy().into_owned(), path));
        if files.len() > MOST_FILES || bytes > MOST_BYTES {
            let what = format!("{}: more than {MOST_FILES} files or 1 GB lie here", folder.display());
            return Err(Failure::plain(what, "Keep the store in a folder of patterns alone."));
        }
    }
    files.sort();
    Ok(files)
}

fn pack(files: &[(String, PathBuf)]) -> Result<Vec<u8>, Failure> {
    let faulty = |error: zip::result::ZipError| Failure::plain(error.to_string(), "Try again.");
    let mut zip = zip::ZipWriter::new(Cursor::new(Vec::new()));
    for (name, path) in files {
        let unread = |error: std::io::Error| {
            Failure::plain(format!("{}: {error}", path.display()), "Allow reading it, or move it away.")
        };
        let bytes = fs::read(path).map_err(unread)?;
        zip.start_file(name.as_str(), SimpleFileOptions::default()).map_err(faulty)?;
        zip.write_all(&bytes)?;
    }
    Ok(zip.finish().map_err(faulty)?.into_inner())
}
