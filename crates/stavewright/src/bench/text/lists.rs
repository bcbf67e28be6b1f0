//! Entries put into lists and moved in them.

use toml_edit::{Array, ArrayOfTables, DocumentMut, Item, Table, Value};

use super::path::Path;
use super::rows::Rows;
use super::set::{nowhere, set};
use super::value::to_toml;
use super::walk::{Found, walk};
use crate::bench::api::EditValue;
use crate::bench::refusal::Refusal;

/// Puts an entry into a list.
pub(super) fn insert(
    document: &mut DocumentMut,
    path: &Path,
    at: u32,
    value: &EditValue,
) -> Result<(), Refusal> {
    let at = at as usize;
    let beyond = |length: usize| {
        Refusal::senseless(
            format!("`{path}` has {length} entries, so there is no place {at}"),
            path.to_string(),
            format!("Count from 1 to {}.", length + 1),
        )
    };
    match walk_to_list(document, path)? {
        List::Plain(list) => {
            let mut rows = Rows::of(list);
            if at == 0 || at > rows.len() + 1 {
                return Err(beyond(rows.len()));
            }
            rows.insert(at - 1, to_toml(value));
            rows.into(list);
        }
        List::Tables(tables) => {
            if at == 0 || at > tables.len() + 1 {
                return Err(beyond(tables.len()));
            }
            let Value::InlineTable(table) = to_toml(value) else { return Err(nowhere(path)) };
            let mut table = table.into_table();
            // Tables are printed by their position in the file; equal ones keep the order of the list.
            let neighbour = tables.get(at.saturating_sub(2)).or(tables.get(0));
            table.set_position(neighbour.and_then(Table::position));
            tables.insert(at - 1, table);
        }
    }
    Ok(())
}

/// Moves an entry of a list.
pub(super) fn shift(document: &mut DocumentMut, path: &Path, from: u32, to: u32) -> Result<(), Refusal> {
    let (from, to) = (from as usize, to as usize);
    let fits = |length: usize| (1..=length).contains(&from) && (1..=length).contains(&to);
    match walk_to_list(document, path)? {
        List::Plain(list) => {
            let mut rows = Rows::of(list);
            if !fits(rows.len()) {
                return Err(nowhere(path));
            }
            rows.shift(from - 1, to - 1);
            rows.into(list);
        }
        List::Tables(tables) => {
            if !fits(tables.len()) {
                return Err(nowhere(path));
            }
            let positions: Vec<_> = tables.iter().map(Table::position).collect();
            let table = tables.remove(from - 1);
            tables.insert(to - 1, table);
            for (table, position) in tables.iter_mut().zip(positions) {
                table.set_position(position);
            }
        }
    }
    Ok(())
}

enum List<'a> {
    Plain(&'a mut Array),
    Tables(&'a mut ArrayOfTables),
}

/// The list at a path; one that is missing is made under its key.
fn walk_to_list<'a>(document: &'a mut DocumentMut, path: &Path) -> Result<List<'a>, Refusal> {
    if walk(document.as_item_mut(), path.steps()).is_none() {
        set(document, path, Array::new().into())?;
    }
    match walk(document.as_item_mut(), path.steps()) {
        Some(Found::Item(Item::ArrayOfTables(tables))) => Ok(List::Tables(tables)),
        Some(place) => place.list().map(List::Plain).ok_or_else(|| nowhere(path)),
        None => Err(nowhere(path)),
    }
}
