//! Who may do what with a file: kept when it is written anew, and never got round.

use std::fs::{File, Metadata};
use std::io;
use std::path::Path;

/// Gives a new file or folder the rights and the owner of the one whose place it takes.
///
/// # Errors
/// When the owner cannot be kept: the new one would then be somebody else's.
#[cfg(unix)]
pub(crate) fn keep(of: &Metadata, fresh: &File) -> io::Result<()> {
    use std::os::unix::fs::{MetadataExt, fchown};
    let now = fresh.metadata()?;
    if (now.uid(), now.gid()) != (of.uid(), of.gid()) {
        fchown(fresh, Some(of.uid()), Some(of.gid()))?;
    }
    // After the owner, for a change of owner takes rights away.
    if now.permissions() == of.permissions() { Ok(()) } else { fresh.set_permissions(of.permissions()) }
}

/// Gives a new file or folder the rights of the one whose place it takes.
#[cfg(not(unix))]
pub(crate) fn keep(of: &Metadata, fresh: &File) -> io::Result<()> {
    fresh.set_permissions(of.permissions())
}

/// Whether a file or folder may not be changed: it says so of itself, or the system says so of us.
pub(crate) fn is_protected(path: &Path, about: &Metadata) -> bool {
    about.permissions().readonly() || may_not_write(path)
}

#[cfg(unix)]
fn may_not_write(path: &Path) -> bool {
    rustix::fs::access(path, rustix::fs::Access::WRITE_OK).is_err()
}

#[cfg(not(unix))]
fn may_not_write(_path: &Path) -> bool {
    false
}
