//! The new packet takes the place of an earlier one; what was changed by hand is kept.

use std::fs::{self, File};
use std::io;
use std::path::{Path, PathBuf};

use super::list::{State, judge};
use crate::disk::beside::{self, Kind};
use crate::disk::{exchange, folder_of, rights};

/// Packets of one name that are kept; one more stays where it is until some are taken away.
const MOST_KEPT: u32 = 9999;

/// A packet that was not thrown away, and why.
#[derive(Debug)]
pub(crate) struct Kept {
    /// Where it is now.
    pub(crate) place: PathBuf,
    /// Why it was kept.
    pub(crate) why: String,
}

/// Gives a whole new packet the name that it is meant for, in one step where the system can. Returns
/// what is told of the earlier one.
pub(super) fn swap(fresh: &Path, out: &Path) -> io::Result<Option<Kept>> {
    let _held = beside::hold(folder_of(out));
    let Ok(before) = out.symlink_metadata() else {
        fs::rename(fresh, out)?;
        return Ok(None);
    };
    if !before.is_dir() {
        return Err(io::Error::from(io::ErrorKind::NotADirectory));
    }
    // A packet is private where the earlier one was; that its owner cannot be kept is no reason to stop.
    let _ = File::open(fresh).and_then(|fresh| rights::keep(&before, &fresh));
    let other = beside::move_aside(fresh, out, Kind::Old)?;
    let earlier = match exchange(&other, out) {
        Ok(()) => Ok(other.clone()),
        Err(error) if error.kind() == io::ErrorKind::Unsupported => in_two_steps(&other, out),
        Err(error) => Err(error),
    };
    match earlier {
        Ok(earlier) => Ok(retired(&earlier, out)),
        Err(error) => {
            let _ = fs::rename(&other, fresh);
            Err(error)
        }
    }
}

/// Moves the earlier packet aside and the new one in its place; returns where the earlier one is. A run
/// killed between the two leaves both whole; the next one puts the earlier one back.
fn in_two_steps(fresh: &Path, out: &Path) -> io::Result<PathBuf> {
    let aside = beside::move_aside(out, out, Kind::Old)?;
    match fs::rename(fresh, out) {
        Ok(()) => Ok(aside),
        Err(error) => {
            fs::rename(&aside, out)?;
            Err(error)
        }
    }
}

/// The new packet stands: that the earlier one cannot be cleared away is told, and no failure.
fn retired(old: &Path, out: &Path) -> Option<Kept> {
    retire(old, out).unwrap_or_else(|error| {
        Some(Kept { place: old.to_owned(), why: format!("it cannot be cleared away: {error}") })
    })
}

/// Throws a packet away that lost its place, or keeps it if it is not as it was written.
pub(super) fn retire(old: &Path, out: &Path) -> io::Result<Option<Kept>> {
    let why = match judge(old)? {
        State::AsWritten => {
            // Half of it, should this be cut short, is not to be taken for a packet.
            remove(&beside::move_aside(old, out, Kind::New)?)?;
            return Ok(None);
        }
        State::Changed(files) => format!("changed by hand: {}", files.join(", ")),
        State::Unlisted => "it has no list of what was written, so nobody knows what was changed".to_owned(),
    };
    let place = (1..=MOST_KEPT)
        .map(|number| aside(out, number))
        .find(|place| place.symlink_metadata().is_err())
        .unwrap_or_else(|| old.to_owned());
    fs::rename(old, &place)?;
    Ok(Some(Kept { place, why }))
}

/// `harbour-edited`, `harbour-edited-2` and so on.
fn aside(out: &Path, number: u32) -> PathBuf {
    let mut name = out.file_name().unwrap_or_default().to_owned();
    name.push("-edited");
    if number > 1 {
        name.push(format!("-{number}"));
    }
    out.with_file_name(name)
}

/// Removes a folder of files; one that holds another folder stays.
pub(super) fn remove(folder: &Path) -> io::Result<()> {
    for entry in fs::read_dir(folder)? {
        fs::remove_file(entry?.path())?;
    }
    fs::remove_dir(folder)
}
