//! Finding values in the text of a pattern.

use std::ops::Range;

use toml_edit::{Document, Item, Table, TableLike, Value};

use super::path::{Path, PathStep};
use super::value;
use crate::bench::api::EditValue;

/// What stands in a pattern's text.
pub(crate) struct Written(Option<Document<String>>);

impl Written {
    /// The text; nothing stands in one that is not TOML.
    pub(crate) fn of(source: &str) -> Self {
        Self(Document::parse(source.to_owned()).ok())
    }

    /// The value at this path.
    pub(crate) fn get(&self, path: &str) -> Option<EditValue> {
        self.item(path).and_then(value::of_item)
    }

    /// Whether anything stands at this path.
    pub(crate) fn has(&self, path: &str) -> bool {
        self.item(path).is_some_and(|item| !item.is_none())
    }

    fn item(&self, path: &str) -> Option<&Item> {
        let document = self.0.as_ref()?;
        let path = Path::read(path).ok()?;
        path.steps().iter().try_fold(document.as_item(), |item, step| match step {
            PathStep::Key(key) => item.get(key.as_str()),
            PathStep::Entry(_) => None,
        })
    }

    /// The keys of the section of this name, with their values where these are texts.
    pub(crate) fn table(&self, name: &str) -> Vec<(String, String)> {
        let table = self.0.as_ref().and_then(|document| document.get(name)?.as_table_like());
        let pairs = table.into_iter().flat_map(|table| table.iter());
        pairs.filter_map(|(key, item)| Some((key.to_owned(), item.as_str()?.to_owned()))).collect()
    }

    /// The value at this path, which may lead through entries of lists.
    pub(crate) fn at(&self, path: &str) -> Option<EditValue> {
        let path = Path::read(path).ok()?;
        let document = self.0.as_ref()?;
        let first = path.steps().iter().position(|step| matches!(step, PathStep::Entry(_)));
        let (keys, within) = path.steps().split_at(first.unwrap_or(path.steps().len()));
        let item = keys.iter().try_fold(document.as_item(), |item, step| match step {
            PathStep::Key(key) => item.get(key.as_str()),
            PathStep::Entry(_) => None,
        });
        within.iter().try_fold(value::of_item(item?)?, |value, step| match (step, value) {
            (PathStep::Entry(entry), EditValue::List(list)) => list.into_iter().nth(*entry),
            (PathStep::Key(key), EditValue::Table(mut table)) => table.remove(key.as_str()),
            _ => None,
        })
    }

    /// The entries of the list at this path.
    pub(crate) fn entries(&self, path: &str) -> Vec<EditValue> {
        match self.get(path) {
            Some(EditValue::List(list)) => list,
            _ => Vec::new(),
        }
    }

    /// The innermost value in which a place (in bytes) of the text lies.
    pub(crate) fn path_at(&self, place: usize) -> Option<String> {
        in_table(self.0.as_ref()?.as_table(), place).map(|path| path.to_string())
    }
}

fn holds(span: Option<Range<usize>>, place: usize) -> bool {
    span.is_some_and(|span| span.start <= place && place <= span.end)
}

fn in_table(table: &dyn TableLike, place: usize) -> Option<Path> {
    table.iter().find_map(|(name, item)| {
        let here = Path::from(PathStep::Key(name.to_owned()));
        if let Some(inner) = in_item(item, place) {
            return Some(inner.into_iter().fold(here, |path, part| path.then(part)));
        }
        let on_key = holds(table.key(name).and_then(toml_edit::Key::span), place);
        (on_key || holds(item.span(), place)).then_some(here)
    })
}

/// The way from an item to the innermost value in it; none if the place lies not in one of its own.
fn in_item(item: &Item, place: usize) -> Option<Vec<PathStep>> {
    match item {
        Item::None => None,
        Item::Value(value) => in_value(value, place),
        Item::Table(table) => in_section(table, place),
        Item::ArrayOfTables(tables) => tables.iter().enumerate().find_map(|(index, table)| {
            let inner = in_section(table, place);
            let here = || holds(table.span(), place).then(Vec::new);
            inner.or_else(here).map(|inner| entry(index, inner))
        }),
    }
}

fn in_section(table: &Table, place: usize) -> Option<Vec<PathStep>> {
    in_table(table, place).map(|path| path.steps().to_vec())
}

fn in_value(value: &Value, place: usize) -> Option<Vec<PathStep>> {
    match value {
        Value::InlineTable(table) => in_table(table, place).map(|path| path.steps().to_vec()),
        Value::Array(list) => list.iter().enumerate().find_map(|(index, value)| {
            let here = || holds(value.span(), place).then(Vec::new);
            in_value(value, place).or_else(here).map(|inner| entry(index, inner))
        }),
        _ => None,
    }
}

fn entry(index: usize, inner: Vec<PathStep>) -> Vec<PathStep> {
    std::iter::once(PathStep::Entry(index)).chain(inner).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    const TEXT: &str = "title = \"B\"\n[base]\ngroove = { depth = \"1/4\" }\n\
                        [weave]\ncourses = [ { rows = 4 }, { rows = 5 } ]\n";

    #[test]
    fn values_are_found() {
        let written = Written::of(TEXT);
        assert_eq!(written.get("base.groove.depth"), Some(EditValue::Text("1/4".to_owned())));
        assert_eq!(written.get("base.diameter"), None);
        assert_eq!(written.entries("weave.courses").len(), 2);
        assert!(written.has("base") && !written.has("ears"));
    }

    #[test]
    fn places_are_named() {
        let at = |needle: &str| Written::of(TEXT).path_at(TEXT.find(needle).unwrap());
        assert_eq!(at("\"B\"").as_deref(), Some("title"));
        assert_eq!(at("\"1/4\"").as_deref(), Some("base.groove.depth"));
        assert_eq!(at("rows = 5").as_deref(), Some("weave.courses[2].rows"));
        assert_eq!(at("{ rows = 4").as_deref(), Some("weave.courses[1]"));
    }
}
