//! One file on the disk: written whole or not at all.

use std::io::{self, Write};
use std::path::{Path, PathBuf};

use crate::failure::Failure;
use crate::packet;
use crate::source::Origin;

/// Writes the file; what stood there before stays until the new one is whole.
pub(crate) fn write(out: &Path, bytes: &[u8]) -> Result<(), Failure> {
    let folder = out.parent().filter(|folder| !folder.as_os_str().is_empty()).unwrap_or(Path::new("."));
    let written = || -> io::Result<()> {
        let mut file = packet::builder(0o666).tempfile_in(folder)?;
        file.write_all(bytes)?;
        file.as_file().sync_all()?;
        file.persist(out).map_err(|error| error.error)?;
        Ok(())
    };
    written().map_err(|error| {
        Failure::of_file(
            &Origin::File(out.to_owned()),
            format!("cannot be written: {error}"),
            "Check that the folder exists and may be written to.",
        )
    })
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
