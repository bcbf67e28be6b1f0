//! The shelf on the page: what the store of the folder holds, and what is done with it.

mod act;
mod own;
mod shown;
mod told;

use axum::http::StatusCode;
use basket::message::Message;
use words::Words;
use workshop::{Fault, Item, Order, Store};

use super::api::{Shelf, ShelfAct};
use super::folder::Folder;
use super::refusal::Refusal;
pub(crate) use own::OwnMeasures;
pub(crate) use shown::text_of;
use told::refused;

use crate::store::{STORE, in_folder};

/// Movements that the page shows.
const SHOWN_MOVEMENTS: u32 = 200;
/// Items that the page shows: more at once are not read.
const SHOWN_ITEMS: u32 = 200;

/// The shelf as it stands, with the items that hold the words that are looked for; an empty one where there is
/// none yet.
pub(crate) fn shelf(folder: &Folder, looking: (&str, &Words)) -> Result<Shelf, Refusal> {
    match existing(folder)? {
        Some(store) => show(&store, looking),
        None => Ok(Shelf::default()),
    }
}

/// Does something with the shelf, whole or not at all, and shows it as it stands afterwards.
pub(crate) fn act(folder: &Folder, what: ShelfAct, looking: (&str, &Words)) -> Result<Shelf, Refusal> {
    let store = existing(folder)?;
    let mut store = match (store, &what) {
        (Some(store), _) => store,
        (None, ShelfAct::Begin) => {
            Store::open(&folder.path().join(STORE)).map_err(|fault| refused(&fault))?
        }
        (None, _) => return Err(none_yet()),
    };
    act::act(&mut store, what)?;
    show(&store, looking)
}

/// The shelf as a table for a spreadsheet.
pub(crate) fn table(folder: &Folder) -> Result<Vec<u8>, Refusal> {
    let store = existing(folder)?.ok_or_else(none_yet)?;
    let table = store.items().and_then(|items| workshop::write_shelf(&items));
    table.map_err(|fault| refused(&fault))
}

/// What lies there, for plans; nothing where there is no shelf.
pub(crate) fn items(folder: &Folder) -> Result<Vec<Item>, Refusal> {
    let Some(store) = existing(folder)? else { return Ok(Vec::new()) };
    store.items().map_err(|fault| refused(&fault))
}

/// The orders of these names.
pub(crate) fn orders(folder: &Folder, names: &[String]) -> Result<Vec<Order>, Refusal> {
    if names.is_empty() {
        return Ok(Vec::new());
    }
    let store = existing(folder)?.ok_or_else(none_yet)?;
    names.iter().map(|name| store.order(name).map_err(|fault| refused(&fault))).collect()
}

fn show(store: &Store, (find, words): (&str, &Words)) -> Result<Shelf, Refusal> {
    let all = || -> Result<Shelf, Fault> {
        let (items, found, all) = items_with(find, (store, words))?;
        Ok(Shelf {
            there: true,
            items: shown::items(items, words),
            found,
            all,
            colours: store.colours()?,
            moulds: store.moulds()?.into_iter().map(shown::mould).collect(),
            orders: shown::open_orders(store.orders()?),
            movements: store.history(SHOWN_MOVEMENTS)?.into_iter().map(shown::movement).collect(),
        })
    };
    all().map_err(|fault| refused(&fault))
}

/// The first items that hold these words, how many do, and how many lie there.
fn items_with(find: &str, (store, words): (&Store, &Words)) -> Result<(Vec<Item>, u32, u32), Fault> {
    if find.trim().is_empty() {
        let (items, all) = store.first_items(SHOWN_ITEMS)?;
        return Ok((items, all, all));
    }
    let items = store.items()?;
    let count = |items: &[Item]| u32::try_from(items.len()).unwrap_or(u32::MAX);
    let all = count(&items);
    let mut found = shown::with(find, items, words);
    let many = count(&found);
    found.truncate(SHOWN_ITEMS as usize);
    Ok((found, many, all))
}

/// The store, if there is one.
fn existing(folder: &Folder) -> Result<Option<Store>, Refusal> {
    in_folder(folder.path()).map_err(|fault| refused(&fault))
}

fn none_yet() -> Refusal {
    Refusal::said(StatusCode::NOT_FOUND, Message::new("workshop-no-shelf"), STORE)
}
