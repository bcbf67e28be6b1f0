//! What the maker measured, as the shelf of the folder has it: read once, and again when its file changed.

use std::fs;
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex, PoisonError};
use std::time::SystemTime;

use basket::{Catalogue, Material};
use serde::{Deserialize, Serialize};
use workshop::Measure;

use crate::bench::store::{STORE, in_folder};

/// What the shelf says of materials.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub(crate) struct Own {
    /// What was measured.
    pub(crate) measures: Vec<Measure>,
    /// Whether there is a shelf that cannot be read; the catalogue's figures hold then.
    pub(crate) unread: bool,
}

impl Own {
    /// The catalogue with these measures in the place of its own.
    pub(crate) fn catalogue(&self, catalogue: &Catalogue) -> Catalogue {
        workshop::measured(catalogue, &self.measures)
    }

    /// Whether what is said of a material is the shelf's.
    pub(crate) fn has(&self, material: &Material) -> bool {
        self.measures.iter().any(|measure| material.is_called(&measure.material))
    }
}

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

    /// The same, read anew where it changed; of materials that the catalogue does not know nothing is kept.
    pub(crate) fn read(&self, catalogue: &Catalogue) -> Arc<Own> {
        if let Some(own) = self.known() {
            return own;
        }
        // Taken before the reading: what is written meanwhile is read the next time.
        let stamps = self.stamps();
        let measures = in_folder(&self.folder).and_then(|store| store.map(|own| own.measures()).transpose());
        let unread = measures.is_err();
        let mut measures = measures.ok().flatten().unwrap_or_default();
        measures.retain(|measure| catalogue.material(&measure.material).is_some());
        let own = Arc::new(Own { measures, unread });
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
