//! What runs that were killed left behind is brought back or cleared away by the next one.

use std::fs;
use std::path::Path;

use super::names::{CRUMBS, NAMES};
use super::swap::{Kept, remove, retire};
use crate::disk::beside::{self, Kind, Orphan};

/// Clears a folder in which packets are written. Returns what is told of packets found there.
pub(super) fn sweep(folder: &Path) -> Vec<Kept> {
    let Some(_held) = beside::hold(folder) else { return Vec::new() };
    beside::orphans(folder).iter().filter_map(settle).collect()
}

fn settle(orphan: &Orphan) -> Option<Kept> {
    match (orphan.is_folder, orphan.kind) {
        (false, Kind::New) => {
            let _ = fs::remove_file(&orphan.path);
            None
        }
        (false, Kind::Old) => None,
        (true, Kind::New) => {
            if is_unfinished(&orphan.path) {
                let _ = remove(&orphan.path);
            }
            None
        }
        (true, Kind::Old) if orphan.wanted.symlink_metadata().is_err() => {
            fs::rename(&orphan.path, &orphan.wanted).ok()?;
            let why = "the run that was to replace it was cut short".to_owned();
            Some(Kept { place: orphan.wanted.clone(), why })
        }
        (true, Kind::Old) => retire(&orphan.path, &orphan.wanted).ok().flatten(),
    }
}

/// Whether a folder holds nothing but what is written into packets and folders of templates.
fn is_unfinished(folder: &Path) -> bool {
    let ours = |name: &str| {
        NAMES.contains(&name)
            || CRUMBS.contains(&name)
            || Path::new(name).extension().is_some_and(|ending| ending == "typ")
    };
    fs::read_dir(folder).is_ok_and(|entries| {
        entries.flatten().all(|entry| {
            entry.file_type().is_ok_and(|kind| kind.is_file()) && entry.file_name().to_str().is_some_and(ours)
        })
    })
}
