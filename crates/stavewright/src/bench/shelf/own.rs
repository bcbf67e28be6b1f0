//! What the maker measured, read once, and again when the file of the shelf changed.

use std::fs;
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex, PoisonError};
use std::time::SystemTime;

use basket::Catalogue;

use crate::own::Own;
use crate::store::STORE;

/// When a file was last written, and how long it is; none where there is nothing in it.
type Stamp = Option<(SystemTime, u64)>;

/// The shelf of a folder, as it was last read.
pub(crate) struct OwnMeasures {
    folder: PathBuf,
    last: Mutex<Option<([Stamp; 2], Arc<Own>)>>,
}

impl OwnMeasures {
    /// Of this folder; nothing is read yet.
    pub(crate) fn of(folder: &Path) -> Self {
        Self { folder: folder.to_owned(), last: Mutex::default() }
    }

    /// What was read last, if the file is still as it was then.
    pub(crate) fn known(&self) -> Option<Arc<Own>> {
        let now = self.stamps();
        let last = self.last.lock().unwrap_or_else(PoisonError::into_inner);
        last.as_ref().filter(|(then, _)| *then == now).map(|(_, own)| Arc::clone(own))
    }

    /// The same, read anew where it changed.
    pub(crate) fn read(&self, catalogue: &Catalogue) -> Arc<Own> {
        if let Some(own) = self.known() {
            return own;
        }
        // Taken before the reading: what is written meanwhile is read the next time.
        let stamps = self.stamps();
        let (own, _) = Own::of_folder(&self.folder, catalogue);
        let own = Arc::new(own);
        *self.last.lock().unwrap_or_else(PoisonError::into_inner) = Some((stamps, Arc::clone(&own)));
        own
    }

    /// Of the store itself, and of the log that it writes first.
    fn stamps(&self) -> [Stamp; 2] {
        [STORE.to_owned(), format!("{STORE}-wal")].map(|name| {
            let about = fs::metadata(self.folder.join(name)).ok().filter(|about| about.len() > 0)?;
            Some((about.modified().ok()?, about.len()))
        })
    }
}
