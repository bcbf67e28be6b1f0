//! One file on the disk: written whole or not at all.

use std::fs::{self, Metadata};
use std::io::{self, Write};
use std::path::{Path, PathBuf};

use tempfile::NamedTempFile;

use crate::disk::{beside, exchange, fault, flush_folder, folder_of, rights};
use crate::failure::Failure;
use crate::source::Origin;

/// Why a file was not written over another one.
#[derive(Debug)]
pub(crate) enum Unwritten {
    /// There is another text than the one that was to be replaced.
    Changed,
    /// It may not be changed.
    Protected,
    /// Who owns it could not be kept.
    Owner,
    /// The system refused.
    Refused(io::Error),
    /// It is written, but the system does not say that it will last.
    Unsure(io::Error),
}

impl From<io::Error> for Unwritten {
    fn from(error: io::Error) -> Self {
        Self::Refused(error)
    }
}

/// Writes the file; what stood there before stays until the new one is whole. A link stays a link.
pub(crate) fn write(out: &Path, bytes: &[u8]) -> Result<(), Failure> {
    let real = if out.is_symlink() { out.canonicalize().ok() } else { None };
    let real = real.as_deref().unwrap_or(out);
    put(real, bytes).map_err(|unwritten| match unwritten {
        Unwritten::Protected => Failure::plain(
            format!("{}: this file is write-protected, and is left as it is", out.display()),
            "Allow writing to it, or name another file with --out.",
        ),
        Unwritten::Owner => Failure::plain(
            format!("{}: this file belongs to somebody else, and is left as it is", out.display()),
            "Name a file of your own with --out.",
        ),
        Unwritten::Changed => Failure::plain(
            format!("{}: this is not a file, so nothing can be written in its place", out.display()),
            "Name another file with --out.",
        ),
        Unwritten::Unsure(error) => fault::unsure(out, &error),
        Unwritten::Refused(error) => {
            let help = "Check that the folder exists and may be written to.";
            fault::cannot_write(out, "cannot be written", &error, help)
        }
    })
}

fn put(out: &Path, bytes: &[u8]) -> Result<(), Unwritten> {
    beside::sweep_files(folder_of(out));
    let before = match out.symlink_metadata() {
        Ok(about) if about.is_file() => Some(about),
        Ok(_) => return Err(Unwritten::Changed),
        Err(error) if error.kind() == io::ErrorKind::NotFound => None,
        Err(error) => return Err(error.into()),
    };
    let fresh = fresh(out, bytes, before.as_ref())?;
    fresh.persist(out).map_err(|error| error.error)?;
    flush_folder(folder_of(out)).map_err(Unwritten::Unsure)
}

/// Writes a file that must not be there yet; [`io::ErrorKind::AlreadyExists`] if it is.
pub(crate) fn create(out: &Path, bytes: &[u8]) -> io::Result<()> {
    beside::sweep_files(folder_of(out));
    let mut fresh = beside::file(out)?;
    fresh.write_all(bytes)?;
    fresh.as_file().sync_all()?;
    fresh.persist_noclobber(out).map_err(|error| error.error)?;
    flush_folder(folder_of(out))
}

/// Replaces a text by another one, if the file still says it. Other runs wait meanwhile; whoever else
/// writes into it between the look and the exchange finds his text in its place again.
pub(crate) fn replace(out: &Path, known: &[u8], bytes: &[u8]) -> Result<(), Unwritten> {
    let folder = folder_of(out);
    beside::sweep_files(folder);
    let before = out.symlink_metadata()?;
    if !says(out, known)? {
        return Err(Unwritten::Changed);
    }
    let fresh = fresh(out, bytes, Some(&before))?;
    let _held = beside::hold(folder);
    if !says(out, known)? {
        return Err(Unwritten::Changed);
    }
    match exchange(fresh.path(), out) {
        Ok(()) if says(fresh.path(), known)? => {}
        Ok(()) => {
            exchange(fresh.path(), out)?;
            return Err(Unwritten::Changed);
        }
        Err(error) if error.kind() == io::ErrorKind::Unsupported => {
            fresh.persist(out).map_err(|error| error.error)?;
        }
        Err(error) => return Err(error.into()),
    }
    flush_folder(folder).map_err(Unwritten::Unsure)
}

fn says(file: &Path, known: &[u8]) -> io::Result<bool> {
    // A text of another length is another text; a huge one is not read.
    Ok(file.metadata()?.len() == known.len() as u64 && fs::read(file)? == known)
}

/// The text in a file beside the wanted one, flushed to the disk, with the rights of what it replaces.
fn fresh(out: &Path, bytes: &[u8], before: Option<&Metadata>) -> Result<NamedTempFile, Unwritten> {
    if before.is_some_and(|before| rights::is_protected(out, before)) {
        return Err(Unwritten::Protected);
    }
    let mut fresh = beside::file(out)?;
    if let Some(before) = before {
        rights::keep(before, fresh.as_file()).map_err(|error| match error.kind() {
            io::ErrorKind::PermissionDenied => Unwritten::Owner,
            _ => Unwritten::Refused(error),
        })?;
    }
    fresh.write_all(bytes)?;
    fresh.as_file().sync_all()?;
    Ok(fresh)
}

/// The ending of a file's name in small letters; empty where there is none.
pub(crate) fn ending(out: &Path) -> String {
    out.extension().and_then(|ending| ending.to_str()).unwrap_or_default().to_lowercase()
}

/// A file in the present folder, called after the pattern: its name, a dash and what it is.
pub(crate) fn named(pattern: &Path, what: &str) -> PathBuf {
    let mut name = Origin::of(pattern).stem().unwrap_or("basket".as_ref()).to_owned();
    name.push(format!("-{what}"));
    PathBuf::from(name)
}
