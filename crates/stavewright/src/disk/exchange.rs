//! Two names that change places in one step.

use std::io;
use std::path::Path;

/// Exchanges two files or folders in one step: whoever looks finds the one or the other under each
/// name, and never nothing.
///
/// # Errors
/// Of the kind [`io::ErrorKind::Unsupported`] where system or disk cannot do it.
#[cfg(any(target_os = "linux", target_os = "android", target_vendor = "apple"))]
pub(crate) fn exchange(one: &Path, other: &Path) -> io::Result<()> {
    use rustix::fs::{CWD, RenameFlags, renameat_with};
    renameat_with(CWD, one, CWD, other, RenameFlags::EXCHANGE).map_err(|error| {
        let error = io::Error::from(error);
        // A disk that does not know the flag calls it invalid.
        match error.kind() {
            io::ErrorKind::InvalidInput => io::Error::new(io::ErrorKind::Unsupported, error),
            _ => error,
        }
    })
}

/// This system cannot do it.
#[cfg(not(any(target_os = "linux", target_os = "android", target_vendor = "apple")))]
pub(crate) fn exchange(_one: &Path, _other: &Path) -> io::Result<()> {
    Err(io::Error::from(io::ErrorKind::Unsupported))
}
