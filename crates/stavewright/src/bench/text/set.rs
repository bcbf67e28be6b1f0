//! Values written into the text of a pattern.

use toml_edit::{Array, DocumentMut, InlineTable, Item, Table, TableLike, Value};

use super::path::{Path, PathStep};
use crate::bench::refusal::Refusal;

/// What is said of a path that leads nowhere.
pub(super) fn nowhere(path: &Path) -> Refusal {
    Refusal::senseless(
        format!("there is no `{path}` in the pattern"),
        path.to_string(),
        "Take the list over first, or name an entry that is there.",
    )
}

/// Writes a value, and the sections on the way to it.
pub(super) fn set(document: &mut DocumentMut, path: &Path, value: Value) -> Result<(), Refusal> {
    let (last, way) = path.steps().split_last().ok_or_else(|| nowhere(path))?;
    let mut item = document.as_item_mut();
    for (depth, step) in way.iter().enumerate() {
        item = match step {
            PathStep::Key(key) => section(item, key, depth == 0).ok_or_else(|| nowhere(path))?,
            PathStep::Entry(entry) => {
                return set_entry(item, *entry, &path.steps()[depth + 1..], value, path);
            }
        };
    }
    match last {
        PathStep::Key(key) => put(item.as_table_like_mut().ok_or_else(|| nowhere(path))?, key, value),
        PathStep::Entry(entry) => return set_entry(item, *entry, &[], value, path),
    }
    Ok(())
}

/// The section of this name, made if it is missing or something else stands there.
fn section<'a>(item: &'a mut Item, key: &str, at_top: bool) -> Option<&'a mut Item> {
    let table = item.as_table_like_mut()?;
    match table.get_mut(key) {
        Some(inner) if inner.is_table_like() || inner.is_array() || inner.is_array_of_tables() => {}
        // Such as filler = "none", which becomes a section in braces where it stands.
        Some(inner) => *inner = Item::Value(InlineTable::new().into()),
        None => {
            let fresh =
                if at_top { Item::Table(Table::new()) } else { Item::Value(InlineTable::new().into()) };
            table.insert(key, fresh);
        }
    }
    table.get_mut(key)
}

/// Writes a value in an entry of a list.
fn set_entry(
    item: &mut Item,
    entry: usize,
    rest: &[PathStep],
    value: Value,
    path: &Path,
) -> Result<(), Refusal> {
    if let Some(tables) = item.as_array_of_tables_mut() {
        let table = tables.get_mut(entry).ok_or_else(|| nowhere(path))?;
        let [PathStep::Key(key)] = rest else { return Err(nowhere(path)) };
        put(table, key, value);
        return Ok(());
    }
    let list = item.as_array_mut().ok_or_else(|| nowhere(path))?;
    set_in_list(list, entry, rest, value).ok_or_else(|| nowhere(path))
}

fn set_in_list(list: &mut Array, entry: usize, rest: &[PathStep], value: Value) -> Option<()> {
    let place = list.get_mut(entry)?;
    match rest {
        [] => replace(place, value),
        [PathStep::Entry(inner), rest @ ..] => set_in_list(place.as_array_mut()?, *inner, rest, value)?,
        [PathStep::Key(key)] => put(place.as_inline_table_mut()?, key, value),
        [PathStep::Key(_), ..] => return None,
    }
    Some(())
}

/// Writes a value under a key; what stood around the earlier one stays.
fn put(table: &mut dyn TableLike, key: &str, value: Value) {
    match table.get_mut(key) {
        Some(Item::Value(before)) => replace(before, value),
        Some(other) => *other = Item::Value(value),
        None => {
            table.insert(key, Item::Value(value));
        }
    }
}

fn replace(before: &mut Value, mut value: Value) {
    *value.decor_mut() = before.decor().clone();
    *before = value;
}
