//! What packets and single files have in common on the way to the disk.

pub(crate) mod beside;
mod exchange;
pub(crate) mod fault;
pub(crate) mod rights;

pub(crate) use exchange::exchange;

use std::fs::File;
use std::io;
use std::path::Path;

/// The folder in which something lies or will lie.
pub(crate) fn folder_of(path: &Path) -> &Path {
    path.parent().filter(|folder| !folder.as_os_str().is_empty()).unwrap_or(Path::new("."))
}

/// Makes the names in a folder survive a loss of power, where the system can and we may.
pub(crate) fn flush_folder(folder: &Path) -> io::Result<()> {
    if !cfg!(unix) {
        return Ok(());
    }
    match File::open(folder) {
        Ok(open) => open.sync_all(),
        Err(error) if error.kind() == io::ErrorKind::PermissionDenied => Ok(()),
        Err(error) => Err(error),
    }
}
