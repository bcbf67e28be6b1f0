//! Why something cannot be written, in words that say how to mend it.

use std::io;
use std::path::Path;

use super::folder_of;
use crate::failure::Failure;

/// What the system said, where its own words help nobody.
pub(crate) fn reason(error: &io::Error) -> String {
    match error.kind() {
        io::ErrorKind::StorageFull => "the disk is full".to_owned(),
        io::ErrorKind::QuotaExceeded => "your share of the disk is used up".to_owned(),
        io::ErrorKind::ReadOnlyFilesystem => "the disk may only be read".to_owned(),
        _ => error.to_string(),
    }
}

/// The failure to write at a place; `otherwise` mends what is not the disk's fault.
pub(crate) fn cannot_write(place: &Path, what: &str, error: &io::Error, otherwise: &str) -> Failure {
    let folder = match folder_of(place) {
        here if here == Path::new(".") => "this folder".to_owned(),
        folder => folder.display().to_string(),
    };
    let help = match error.kind() {
        io::ErrorKind::StorageFull | io::ErrorKind::QuotaExceeded => format!(
            "Make room on the disk that holds {folder}, or name a place on another one. What stood \
             there before still stands."
        ),
        io::ErrorKind::PermissionDenied | io::ErrorKind::ReadOnlyFilesystem => {
            format!("You may not write in {folder}. Name a place of your own.")
        }
        _ => otherwise.to_owned(),
    };
    Failure::plain(format!("{}: {what}: {}", place.display(), reason(error)), help)
}

/// The failure to make sure that what was written lasts.
pub(crate) fn unsure(place: &Path, error: &io::Error) -> Failure {
    Failure::plain(
        format!("{}: it is written, but may not outlast a loss of power: {}", place.display(), reason(error)),
        "Look after the disk, then write it again.",
    )
}
