//! A packet on the disk: written whole or not at all.
//!
//! The files go into a new folder beside the one wanted, are flushed to the disk, and the folder
//! then takes its name in one step. An earlier packet is removed only when the new one stands in its
//! place, and kept beside it if somebody changed it by hand. A folder that holds anything but a packet
//! is left alone.

mod before;
mod list;
mod names;
mod swap;
mod sweep;

use std::fmt::Write as _;
use std::fs::{self, File, Metadata};
use std::io::{self, Write as _};
use std::path::{Path, PathBuf};

use sheets::PacketFile;

pub(crate) use self::before::{Changed, changed};
use self::names::{CRUMBS, KNOWN_BY, LIST, NAMES, PATTERN};
pub(crate) use self::swap::Kept;
use crate::disk::{beside, fault, flush_folder, folder_of, rights};
use crate::failure::Failure;

/// A packet that was written.
#[derive(Debug)]
pub(crate) struct Written {
    /// Its folder.
    pub(crate) folder: PathBuf,
    /// Names of its files.
    pub(crate) files: Vec<&'static str>,
    /// Packets that were found or replaced and not thrown away.
    pub(crate) kept: Vec<Kept>,
}

/// By what a version of a pattern's text is told from others: the beginning of its checksum.
pub(crate) fn version(source: &str) -> String {
    list::sum(source.as_bytes()).chars().take(12).collect()
}

/// The pattern as a file of the packet that is made from it.
pub(crate) fn pattern(source: &str) -> PacketFile {
    PacketFile { name: PATTERN, bytes: source.as_bytes().to_vec() }
}

/// The folder in which a packet may be written: it is not there yet, or holds a packet or nothing.
pub(crate) fn place(out: &Path) -> Result<PathBuf, Failure> {
    let out = settle(out)?;
    let about = match out.metadata() {
        Err(error) if error.kind() == io::ErrorKind::NotFound => return Ok(out),
        Err(error) => return Err(cannot(&out, "cannot be looked at", &error)),
        Ok(about) => about,
    };
    if !about.is_dir() {
        return Err(Failure::plain(
            format!("{}: this is not a folder, so no packet can be written there", out.display()),
            "Name another folder with --out.",
        ));
    }
    let strangers = strangers(&out).map_err(|error| cannot(&out, "cannot be looked into", &error))?;
    if !strangers.is_empty() {
        return Err(refuse(&out, &strangers));
    }
    match protected(&out, &about) {
        Some(protected) => Err(Failure::plain(
            format!("{}: this is write-protected, and the packet is left as it is", protected.display()),
            "Allow writing to it, or name another folder with --out.",
        )),
        None => Ok(out),
    }
}

/// What of a packet may not be changed, if anything.
fn protected(packet: &Path, about: &Metadata) -> Option<PathBuf> {
    if rights::is_protected(packet, about) {
        return Some(packet.to_owned());
    }
    let files = fs::read_dir(packet).ok()?.flatten();
    let is_protected = |file: &fs::DirEntry| file.metadata().is_ok_and(|file| file.permissions().readonly());
    files.into_iter().find(is_protected).map(|file| file.path())
}

/// Writes a packet.
pub(crate) fn write(out: &Path, files: &[PacketFile]) -> Result<Written, Failure> {
    let out = place(out)?;
    let parent = folder_of(&out);
    let made = make_folders(parent).map_err(|error| cannot(parent, "this folder cannot be made", &error))?;
    let mut kept = sweep::sweep(parent);
    match put(&out, files) {
        Ok(earlier) => {
            kept.extend(earlier);
            let files = files.iter().map(|file| file.name).chain([LIST]).collect();
            Ok(Written { folder: out, files, kept })
        }
        Err(failure) => {
            for folder in made.iter().rev() {
                let _ = fs::remove_dir(folder);
            }
            Err(failure)
        }
    }
}

fn put(out: &Path, files: &[PacketFile]) -> Result<Option<Kept>, Failure> {
    let cannot_write = |error: io::Error| cannot(out, "the packet cannot be written", &error);
    let cannot_swap = |error: io::Error| {
        let stands = if out.exists() { "; the earlier one still stands" } else { "" };
        cannot(out, &format!("the packet cannot be put in place{stands}"), &error)
    };
    let (fresh, _lock) = beside::folder(out).map_err(cannot_write)?;
    fill(fresh.path(), files).map_err(cannot_write)?;
    let earlier = swap::swap(fresh.path(), out).map_err(cannot_swap)?;
    // The folder has its name now; there is nothing left to remove under the old one.
    let _ = fresh.keep();
    flush_folder(folder_of(out)).map_err(|error| fault::unsure(out, &error))?;
    Ok(earlier)
}

/// The folder itself where the path ends in a link, `.` or `..`.
fn settle(out: &Path) -> Result<PathBuf, Failure> {
    let is_link = out.symlink_metadata().is_ok_and(|about| about.is_symlink());
    if out.file_name().is_some() && !out.ends_with(".") && !is_link {
        return Ok(out.to_owned());
    }
    let real = out.canonicalize().map_err(|error| cannot(out, "cannot be found", &error))?;
    let here = std::env::current_dir().and_then(|here| here.canonicalize()).unwrap_or_default();
    if here.starts_with(&real) {
        return Err(Failure::plain(
            format!("{}: you are working in this folder, so it cannot be replaced", out.display()),
            "Name a folder inside it with --out, such as --out out.",
        ));
    }
    Ok(real)
}

/// What in a folder keeps it from being a packet.
fn strangers(folder: &Path) -> io::Result<Vec<String>> {
    let mut strangers = Vec::new();
    let mut known = Vec::new();
    for entry in fs::read_dir(folder)? {
        let entry = entry?;
        let name = entry.file_name().to_string_lossy().into_owned();
        if NAMES.contains(&name.as_str()) && entry.file_type()?.is_file() {
            known.push(name);
        } else if !CRUMBS.contains(&name.as_str()) {
            strangers.push(name);
        }
    }
    if strangers.is_empty() && !known.iter().any(|name| name == KNOWN_BY) {
        strangers = known;
    }
    strangers.sort();
    Ok(strangers)
}

fn refuse(out: &Path, strangers: &[String]) -> Failure {
    const SHOWN: usize = 5;
    let mut list = strangers.iter().take(SHOWN).map(String::as_str).collect::<Vec<_>>().join(", ");
    if let Some(more) = strangers.len().checked_sub(SHOWN).filter(|more| *more > 0) {
        let _ = write!(list, " and {more} more");
    }
    Failure::plain(
        format!("{}: this folder holds more than a packet: {list}", out.display()),
        "Stavewright replaces only packets that it wrote. Name another folder with --out, or move these files.",
    )
}

/// Makes a folder and those above it; returns the ones that were not there.
fn make_folders(folder: &Path) -> io::Result<Vec<PathBuf>> {
    let mut missing: Vec<PathBuf> = folder
        .ancestors()
        .take_while(|above| !above.as_os_str().is_empty() && !above.exists())
        .map(Path::to_owned)
        .collect();
    missing.reverse();
    fs::create_dir_all(folder)?;
    Ok(missing)
}

fn fill(folder: &Path, files: &[PacketFile]) -> io::Result<()> {
    for file in files.iter().chain([&list::of(files)]) {
        let mut written = File::create_new(folder.join(file.name))?;
        written.write_all(&file.bytes)?;
        written.sync_all()?;
    }
    flush_folder(folder)
}

fn cannot(place: &Path, what: &str, error: &io::Error) -> Failure {
    let help = match error.kind() {
        io::ErrorKind::NotADirectory | io::ErrorKind::AlreadyExists => {
            "A file stands where a folder is needed. Name another folder with --out."
        }
        _ => "Name another folder with --out.",
    };
    fault::cannot_write(place, what, error, help)
}

#[cfg(test)]
mod tests;
