//! The shelf on the page: what the store of the folder holds, and what is done with it.

mod act;
mod shown;
mod told;

use std::io;
use std::path::PathBuf;

use axum::http::StatusCode;
use words::Words;
use workshop::{Fault, Item, Store};

use super::api::{Shelf, ShelfAct};
use super::folder::Folder;
use super::refusal::Refusal;
pub(crate) use shown::text_of;
use told::{STORE, refused};

/// Movements that the page shows.
const SHOWN_MOVEMENTS: u32 = 200;

/// The shelf as it stands; an empty one where there is none yet.
pub(crate) fn shelf(folder: &Folder, words: &Words) -> Result<Shelf, Refusal> {
    match existing(folder, words)? {
        Some(store) => show(&store, words),
        None => Ok(Shelf::default()),
    }
}

/// Does something with the shelf, whole or not at all, and shows it as it stands afterwards.
pub(crate) fn act(folder: &Folder, what: ShelfAct, words: &Words) -> Result<Shelf, Refusal> {
    let store = existing(folder, words)?;
    let mut store = match (store, &what) {
        (Some(store), _) => store,
        (None, ShelfAct::Begin) => {
            Store::open(&folder.path().join(STORE)).map_err(|fault| refused(&fault, words))?
        }
        (None, _) => return Err(none_yet(words)),
    };
    act::act(&mut store, what, words)?;
    show(&store, words)
}

/// The shelf as a table for a spreadsheet.
pub(crate) fn table(folder: &Folder, words: &Words) -> Result<Vec<u8>, Refusal> {
    let store = existing(folder, words)?.ok_or_else(|| none_yet(words))?;
    let table = store.items().and_then(|items| workshop::write_shelf(&items));
    table.map_err(|fault| refused(&fault, words))
}

/// What lies there, for plans; nothing where there is no shelf.
pub(crate) fn items(folder: &Folder, words: &Words) -> Result<Vec<Item>, Refusal> {
    let Some(store) = existing(folder, words)? else { return Ok(Vec::new()) };
    store.items().map_err(|fault| refused(&fault, words))
}

fn show(store: &Store, words: &Words) -> Result<Shelf, Refusal> {
    let all = || -> Result<Shelf, Fault> {
        Ok(Shelf {
            there: true,
            items: store.items()?.into_iter().map(|item| shown::item(item, words)).collect(),
            moulds: store.moulds()?.into_iter().map(shown::mould).collect(),
            movements: store.history(SHOWN_MOVEMENTS)?.into_iter().map(shown::movement).collect(),
        })
    };
    all().map_err(|fault| refused(&fault, words))
}

/// The store, if there is one. A link that leads out of the folder is not followed.
fn existing(folder: &Folder, words: &Words) -> Result<Option<Store>, Refusal> {
    let path: PathBuf = folder.path().join(STORE);
    let real = match path.canonicalize() {
        Ok(real) => real,
        Err(error) if error.kind() == io::ErrorKind::NotFound && path.symlink_metadata().is_err() => {
            return Ok(None);
        }
        Err(_) => return Err(refused(&Fault::NotAStore, words)),
    };
    if real.parent() != Some(folder.path()) || !real.is_file() {
        return Err(refused(&Fault::NotAStore, words));
    }
    Store::open(&real).map(Some).map_err(|fault| refused(&fault, words))
}

fn none_yet(words: &Words) -> Refusal {
    let [what, help] = ["workshop-no-shelf", "workshop-no-shelf-help"].map(|id| words.term(id));
    Refusal::new(StatusCode::NOT_FOUND, what, STORE, help)
}
