//! Changing values in the text of a pattern.

use toml_edit::{Array, DocumentMut, InlineTable, Item, Table, TableLike, Value};

use super::lists::{insert, shift};
use super::measure::measure;
use super::path::{Part, Path};
use super::rows::Rows;
use super::value::to_toml;
use super::walk::{Place, walk};
use crate::bench::api::Edit;
use crate::bench::look::problems;
use crate::bench::refusal::Refusal;

/// More changes at once are a mistake.
const MOST: usize = 200;

/// The text after the changes, made in order; comments and layout stay.
///
/// What is written need not make sense: only a path that leads nowhere or a text that is not TOML is
/// refused.
pub(crate) fn edit(source: &str, edits: &[Edit]) -> Result<String, Refusal> {
    if edits.len() > MOST {
        return Err(Refusal::senseless(
            format!("{} changes at once are too many", edits.len()),
            "edits",
            format!("Send at most {MOST} at a time."),
        ));
    }
    let mut document: DocumentMut =
        source.parse().map_err(|_| Refusal::misread(problems::of_text(source)))?;
    edits.iter().try_for_each(|edit| apply(&mut document, edit))?;
    Ok(document.to_string())
}

fn apply(document: &mut DocumentMut, edit: &Edit) -> Result<(), Refusal> {
    match edit {
        Edit::Set { path, value } => set(document, &Path::read(path)?, to_toml(value)),
        Edit::Measure { path, mm } => {
            let path = Path::read(path)?;
            let text = measure(document, &path, *mm)?;
            set(document, &path, text.into())
        }
        Edit::Remove { path } => remove(document, &Path::read(path)?),
        Edit::Insert { path, at, value } => insert(document, &Path::read(path)?, *at, value),
        Edit::Move { path, from, to } => shift(document, &Path::read(path)?, *from, *to),
    }
}

pub(super) fn nowhere(path: &Path) -> Refusal {
    Refusal::senseless(
        format!("there is no `{path}` in the pattern"),
        path.to_string(),
        "Take the list over first, or name an entry that is there.",
    )
}

/// Writes a value, and the sections on the way to it.
pub(super) fn set(document: &mut DocumentMut, path: &Path, value: Value) -> Result<(), Refusal> {
    let (last, way) = path.parts().split_last().ok_or_else(|| nowhere(path))?;
    let mut item = document.as_item_mut();
    for (depth, part) in way.iter().enumerate() {
        item = match part {
            Part::Key(key) => section(item, key, depth == 0).ok_or_else(|| nowhere(path))?,
            Part::Entry(entry) => return set_entry(item, *entry, &path.parts()[depth + 1..], value, path),
        };
    }
    match last {
        Part::Key(key) => put(item.as_table_like_mut().ok_or_else(|| nowhere(path))?, key, value),
        Part::Entry(entry) => return set_entry(item, *entry, &[], value, path),
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
fn set_entry(item: &mut Item, entry: usize, rest: &[Part], value: Value, path: &Path) -> Result<(), Refusal> {
    if let Some(tables) = item.as_array_of_tables_mut() {
        let table = tables.get_mut(entry).ok_or_else(|| nowhere(path))?;
        let [Part::Key(key)] = rest else { return Err(nowhere(path)) };
        put(table, key, value);
        return Ok(());
    }
    let list = item.as_array_mut().ok_or_else(|| nowhere(path))?;
    set_in_list(list, entry, rest, value).ok_or_else(|| nowhere(path))
}

fn set_in_list(list: &mut Array, entry: usize, rest: &[Part], value: Value) -> Option<()> {
    let place = list.get_mut(entry)?;
    match rest {
        [] => replace(place, value),
        [Part::Entry(inner), rest @ ..] => set_in_list(place.as_array_mut()?, *inner, rest, value)?,
        [Part::Key(key)] => put(place.as_inline_table_mut()?, key, value),
        [Part::Key(_), ..] => return None,
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

/// Takes a value out; what is not there stays away.
fn remove(document: &mut DocumentMut, path: &Path) -> Result<(), Refusal> {
    let (last, way) = path.parts().split_last().ok_or_else(|| nowhere(path))?;
    let Some(parent) = walk(document.as_item_mut(), way) else { return Ok(()) };
    match (last, parent) {
        (Part::Key(key), Place::Item(item)) => {
            if let Some(table) = item.as_table_like_mut() {
                take_out(table, key);
            }
            let empty = item.as_inline_table().is_some_and(InlineTable::is_empty);
            if let (true, [before @ .., Part::Key(key)]) = (empty, way)
                && let Some(Place::Item(outer)) = walk(document.as_item_mut(), before)
                && let Some(outer) = outer.as_table_like_mut()
            {
                take_out(outer, key);
            }
        }
        (Part::Key(key), Place::Value(value)) => {
            if let Some(table) = value.as_inline_table_mut() {
                table.remove(key);
            }
        }
        (Part::Key(key), Place::Table(table)) => take_out(table, key),
        (Part::Entry(entry), place) => {
            if let Some(tables) = place.tables() {
                if *entry < tables.len() {
                    tables.remove(*entry);
                }
            } else if let Some(list) = walk(document.as_item_mut(), way).and_then(Place::list) {
                let mut rows = Rows::of(list);
                if *entry < rows.len() {
                    rows.remove(*entry);
                    rows.into(list);
                }
            }
        }
    }
    Ok(())
}

/// Takes a key out and leaves the comments above it to the key that follows or the one before.
fn take_out(table: &mut dyn TableLike, key: &str) {
    let keys: Vec<String> = table.iter().map(|(key, _)| key.to_owned()).collect();
    let Some(at) = keys.iter().position(|other| other == key) else { return };
    let is_value = table.get(key).is_some_and(Item::is_value);
    let above =
        table.key(key).and_then(|key| key.leaf_decor().prefix()?.as_str()).unwrap_or_default().to_owned();
    table.remove(key);
    if !is_value || !above.contains('#') {
        return;
    }
    let next = keys.get(at + 1).filter(|next| table.get(next).is_some_and(Item::is_value));
    if let Some(mut next) = next.and_then(|next| table.key_mut(next)) {
        let own = next.leaf_decor().prefix().and_then(|own| own.as_str()).unwrap_or_default().to_owned();
        next.leaf_decor_mut().set_prefix(above + &own);
    } else if let Some(Item::Value(before)) =
        at.checked_sub(1).and_then(|before| keys.get(before)).and_then(|before| table.get_mut(before))
    {
        let own = before.decor().suffix().and_then(|own| own.as_str()).unwrap_or_default().to_owned();
        before.decor_mut().set_suffix(own + "\n" + above.trim_end_matches('\n'));
    }
}
