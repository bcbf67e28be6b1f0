//! Walking through a document to a place that can be changed.

use toml_edit::{Array, ArrayOfTables, Item, Table, Value};

use super::path::PathStep;

/// Something in a document that can be walked through.
pub(super) enum Found<'a> {
    Item(&'a mut Item),
    Value(&'a mut Value),
    Table(&'a mut Table),
}

impl<'a> Found<'a> {
    fn step(self, step: &PathStep) -> Option<Self> {
        match (self, step) {
            (Self::Item(item), PathStep::Key(key)) => item.as_table_like_mut()?.get_mut(key).map(Self::Item),
            (Self::Item(Item::ArrayOfTables(tables)), PathStep::Entry(entry)) => {
                tables.get_mut(*entry).map(Self::Table)
            }
            (Self::Item(item), PathStep::Entry(entry)) => {
                item.as_array_mut()?.get_mut(*entry).map(Self::Value)
            }
            (Self::Value(value), PathStep::Key(key)) => {
                value.as_inline_table_mut()?.get_mut(key).map(Self::Value)
            }
            (Self::Value(value), PathStep::Entry(entry)) => {
                value.as_array_mut()?.get_mut(*entry).map(Self::Value)
            }
            (Self::Table(table), PathStep::Key(key)) => table.get_mut(key).map(Self::Item),
            (Self::Table(_), PathStep::Entry(_)) => None,
        }
    }

    pub(super) fn list(self) -> Option<&'a mut Array> {
        match self {
            Self::Item(item) => item.as_array_mut(),
            Self::Value(value) => value.as_array_mut(),
            Self::Table(_) => None,
        }
    }

    pub(super) fn tables(self) -> Option<&'a mut ArrayOfTables> {
        match self {
            Self::Item(item) => item.as_array_of_tables_mut(),
            Self::Value(_) | Self::Table(_) => None,
        }
    }
}

pub(super) fn walk<'a>(item: &'a mut Item, way: &[PathStep]) -> Option<Found<'a>> {
    way.iter().try_fold(Found::Item(item), Found::step)
}
