//! What the maker measured, as the shelf beside the patterns has it: the one place where the bench and every command
//! take the measures of materials from.

use std::path::Path;

use basket::message::Message;
use basket::{Catalogue, Material};
use serde::{Deserialize, Serialize};
use workshop::{Fault, Measure, Store};

use crate::store::in_folder;

/// What the shelf says of materials.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub(crate) struct Own {
    /// What was measured.
    pub(crate) measures: Vec<Measure>,
    /// Whether there is a shelf that cannot be read; the catalogue's figures hold then.
    pub(crate) unread: bool,
}

impl Own {
    /// What the shelf of this folder says of the materials of a catalogue; nothing where there is no shelf, and
    /// none is made. A shelf that cannot be read keeps no pattern from being drafted: why it cannot stands beside.
    pub(crate) fn of_folder(folder: &Path, catalogue: &Catalogue) -> (Self, Option<Message>) {
        let here = if folder.as_os_str().is_empty() { Path::new(".") } else { folder };
        let Ok(folder) = here.canonicalize() else { return (Self::default(), None) };
        let store = in_folder(&folder).transpose();
        Self::known(store.map(|store| store.and_then(|store| store.measures())), catalogue)
    }

    /// The same of a store that somebody named.
    pub(crate) fn of_store(store: &Path, catalogue: &Catalogue) -> (Self, Option<Message>) {
        let read = || Store::open(store).and_then(|store| store.measures());
        Self::known(store.exists().then(read), catalogue)
    }

    fn known(read: Option<Result<Vec<Measure>, Fault>>, catalogue: &Catalogue) -> (Self, Option<Message>) {
        match read.transpose() {
            Ok(measures) => {
                let mut measures = measures.unwrap_or_default();
                // Of what the catalogue does not know, no pattern can ask for it.
                measures.retain(|measure| catalogue.material(&measure.material).is_some());
                (Self { measures, unread: false }, None)
            }
            Err(fault) => (Self { measures: Vec::new(), unread: true }, Some(fault.message())),
        }
    }

    /// The catalogue with these measures in the place of its own.
    pub(crate) fn catalogue(&self, catalogue: &Catalogue) -> Catalogue {
        workshop::measured(catalogue, &self.measures)
    }

    /// Whether what is said of a material is the shelf's.
    pub(crate) fn has(&self, material: &Material) -> bool {
        self.measures.iter().any(|measure| material.is_called(&measure.material))
    }
}
