//! What stands beside a file or packet while it is written, and what a run that was killed left there.
//!
//! `.NAME.stavewright-XXXXXX.new` is being written or cleared away: without its writer it is worth nothing.
//! `.NAME.stavewright-XXXXXX.old` is a whole packet that has given up its name, or is about to take it.
//! Each is locked as long as its writer lives, so that no other run takes it for an orphan; the lock
//! ends with the process, however that ends.

use std::ffi::{OsStr, OsString};
use std::fs::{self, File, TryLockError};
use std::io;
use std::path::{Path, PathBuf};
use std::thread;
use std::time::{Duration, Instant};

use tempfile::{Builder, NamedTempFile, TempDir};

use super::folder_of;

/// What stands between the name and the signs drawn by lot, and how many those are.
const MARK: &str = ".stavewright-";
const DRAWN: usize = 6;
/// How long another run is waited for; it holds a folder for a moment only.
const PATIENCE: Duration = Duration::from_secs(5);

/// What something beside is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Kind {
    /// It is being written or cleared away.
    New,
    /// It was whole.
    Old,
}

impl Kind {
    const fn ending(self) -> &'static str {
        match self {
            Self::New => ".new",
            Self::Old => ".old",
        }
    }
}

/// Holds a folder against other runs until it is dropped; none where the system has no such locks, or
/// another program does not let go.
pub(crate) fn hold(folder: &Path) -> Option<File> {
    let folder = File::open(folder).ok()?;
    let begun = Instant::now();
    loop {
        match folder.try_lock() {
            Ok(()) => return Some(folder),
            Err(TryLockError::WouldBlock) if begun.elapsed() < PATIENCE => {
                thread::sleep(Duration::from_millis(2));
            }
            Err(_) => return None,
        }
    }
}

/// A new file beside the wanted one, locked.
pub(crate) fn file(wanted: &Path) -> io::Result<NamedTempFile> {
    let folder = folder_of(wanted);
    let _held = hold(folder);
    let start = start(wanted);
    let file = builder(&start, Kind::New, 0o666).tempfile_in(folder)?;
    // Without a lock nobody can tell that it is at work, and nobody sweeps it away.
    let _ = file.as_file().try_lock();
    Ok(file)
}

/// A new folder beside the wanted one, with its lock.
pub(crate) fn folder(wanted: &Path) -> io::Result<(TempDir, Option<File>)> {
    let parent = folder_of(wanted);
    let _held = hold(parent);
    let start = start(wanted);
    let folder = builder(&start, Kind::New, 0o777).tempdir_in(parent)?;
    let lock = File::open(folder.path()).ok().filter(|folder| folder.try_lock().is_ok());
    Ok((folder, lock))
}

/// Moves a packet to a name of its own beside the one that it had or will have.
pub(crate) fn move_aside(packet: &Path, wanted: &Path, kind: Kind) -> io::Result<PathBuf> {
    let start = start(wanted);
    let moved = builder(&start, kind, 0o777)
        .make_in(folder_of(wanted), |free| fs::rename(packet, free))?
        .into_temp_path();
    moved.keep().map_err(|error| error.error)
}

fn start(wanted: &Path) -> OsString {
    let mut start = OsString::from(".");
    start.push(wanted.file_name().unwrap_or_default());
    start.push(MARK);
    start
}

fn builder(start: &OsStr, kind: Kind, mode: u32) -> Builder<'_, 'static> {
    let mut builder = Builder::new();
    builder.prefix(start).suffix(kind.ending()).rand_bytes(DRAWN);
    #[cfg(unix)]
    builder.permissions(std::os::unix::fs::PermissionsExt::from_mode(mode));
    #[cfg(not(unix))]
    let _ = mode;
    builder
}

/// What a run that is gone left beside its work.
#[derive(Debug)]
pub(crate) struct Orphan {
    pub(crate) path: PathBuf,
    /// The name that it had or would have had, beside it.
    pub(crate) wanted: PathBuf,
    pub(crate) kind: Kind,
    pub(crate) is_folder: bool,
    /// Keeps other runs from it.
    _lock: File,
}

/// The orphans of a folder that is held. What is still at work, what cannot be locked and what is called
/// otherwise is none of them.
pub(crate) fn orphans(folder: &Path) -> Vec<Orphan> {
    let Ok(entries) = fs::read_dir(folder) else { return Vec::new() };
    entries.flatten().filter_map(|entry| orphan(folder, &entry.path())).collect()
}

fn orphan(folder: &Path, path: &Path) -> Option<Orphan> {
    let (wanted, kind) = meaning(path.file_name()?.to_str()?)?;
    let about = path.symlink_metadata().ok()?;
    if !about.is_dir() && !about.is_file() {
        return None;
    }
    let lock = File::open(path).ok()?;
    lock.try_lock().ok()?;
    let wanted = folder.join(wanted);
    Some(Orphan { path: path.to_owned(), wanted, kind, is_folder: about.is_dir(), _lock: lock })
}

/// What a name says if it is one of those given here.
fn meaning(name: &str) -> Option<(&str, Kind)> {
    let (start, kind) = [Kind::New, Kind::Old]
        .into_iter()
        .find_map(|kind| Some((name.strip_prefix('.')?.strip_suffix(kind.ending())?, kind)))?;
    let (wanted, drawn) = start.rsplit_once(MARK)?;
    let by_lot = drawn.len() == DRAWN && drawn.bytes().all(|sign| sign.is_ascii_alphanumeric());
    (by_lot && !wanted.is_empty()).then_some((wanted, kind))
}

/// Removes files that were being written when their writer was killed.
pub(crate) fn sweep_files(folder: &Path) {
    let Some(_held) = hold(folder) else { return };
    for orphan in orphans(folder) {
        if orphan.kind == Kind::New && !orphan.is_folder {
            let _ = fs::remove_file(&orphan.path);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_names_given_here_mean_anything() {
        assert_eq!(meaning(".plan.stavewright-a1B2c3.new"), Some(("plan", Kind::New)));
        assert_eq!(meaning(".a.stavewright-b.stavewright-a1B2c3.old"), Some(("a.stavewright-b", Kind::Old)));
        for other in [
            "plan.stavewright-a1B2c3.new",
            ".plan.stavewright-a1B2c.new",
            ".plan.stavewright-a1B2c3.tmp",
            ".plan.stavewright-a1/2c3.new",
            ".stavewright-a1B2c3.new",
            ".plan.new",
        ] {
            assert_eq!(meaning(other), None, "{other}");
        }
    }

    #[cfg(unix)]
    #[test]
    fn what_is_at_work_is_no_orphan() {
        let room = tempfile::tempdir().unwrap();
        let (one, other) = (room.path().join("plan.svg"), room.path().join("packet"));
        let (file, folder) = (file(&one).unwrap(), folder(&other).unwrap());
        assert_eq!(fs::read_dir(room.path()).unwrap().count(), 2);
        assert!(orphans(room.path()).is_empty());
        // What a killed run leaves: the names stay, the locks do not.
        let left = [file.into_temp_path().keep().unwrap(), folder.0.keep()];
        drop(folder.1);
        let found = orphans(room.path());
        assert_eq!(found.len(), 2);
        for orphan in found {
            assert!(left.contains(&orphan.path) && [&one, &other].contains(&&orphan.wanted), "{orphan:?}");
        }
        sweep_files(room.path());
        assert!(!left[0].exists() && left[1].exists());
    }
}
