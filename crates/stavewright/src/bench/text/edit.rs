//! Changing values in the text of a pattern.

use toml_edit::{DocumentMut, InlineTable, Item, TableLike};

use super::lists::{insert, shift};
use super::measure::measure;
use super::path::{Path, PathStep};
use super::rows::Rows;
use super::set::{nowhere, set};
use super::value::to_toml;
use super::walk::{Found, walk};
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

/// Takes a value out; what is not there stays away.
fn remove(document: &mut DocumentMut, path: &Path) -> Result<(), Refusal> {
    let (last, way) = path.steps().split_last().ok_or_else(|| nowhere(path))?;
    let Some(parent) = walk(document.as_item_mut(), way) else { return Ok(()) };
    match (last, parent) {
        (PathStep::Key(key), Found::Item(item)) => {
            if let Some(table) = item.as_table_like_mut() {
                take_out(table, key);
            }
            let empty = item.as_inline_table().is_some_and(InlineTable::is_empty);
            if let (true, [before @ .., PathStep::Key(key)]) = (empty, way)
                && let Some(Found::Item(outer)) = walk(document.as_item_mut(), before)
                && let Some(outer) = outer.as_table_like_mut()
            {
                take_out(outer, key);
            }
        }
        (PathStep::Key(key), Found::Value(value)) => {
            if let Some(table) = value.as_inline_table_mut() {
                table.remove(key);
            }
        }
        (PathStep::Key(key), Found::Table(table)) => take_out(table, key),
        (PathStep::Entry(entry), place) => {
            if let Some(tables) = place.tables() {
                if *entry < tables.len() {
                    tables.remove(*entry);
                }
            } else if let Some(list) = walk(document.as_item_mut(), way).and_then(Found::list) {
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
