//! Where the store of a folder is, for the commands, the shelf, the log and the histories alike.

use std::io;
use std::path::Path;

use workshop::{Fault, Store};

/// The file of the store, in the folder of the patterns.
pub(crate) const STORE: &str = "workshop.db";

/// The store of a folder, if there is one. A link that leads out of the folder is not followed.
pub(crate) fn in_folder(folder: &Path) -> Result<Option<Store>, Fault> {
    let path = folder.join(STORE);
    let real = match path.canonicalize() {
        Ok(real) => real,
        Err(error) if error.kind() == io::ErrorKind::NotFound && path.symlink_metadata().is_err() => {
            return Ok(None);
        }
        Err(_) => return Err(Fault::NotAStore),
    };
    if real.parent() != Some(folder) || !real.is_file() {
        return Err(Fault::NotAStore);
    }
    Store::open(&real).map(Some)
}
