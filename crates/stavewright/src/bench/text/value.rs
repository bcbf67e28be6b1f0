//! Values of the page and of the file.

use toml_edit::{Array, InlineTable, Item, Value};

use crate::bench::api::EditValue;

/// A value as the file holds it.
pub(super) fn to_toml(value: &EditValue) -> Value {
    match value {
        EditValue::Flag(flag) => (*flag).into(),
        EditValue::Whole(number) => i64::from(*number).into(),
        EditValue::Number(number) => (*number).into(),
        EditValue::Text(text) => text.as_str().into(),
        EditValue::List(list) => list.iter().map(to_toml).collect::<Array>().into(),
        EditValue::Table(table) => {
            let pairs = table.iter().map(|(key, value)| (key.as_str(), to_toml(value)));
            pairs.collect::<InlineTable>().into()
        }
    }
}

/// A value as the page wants it; none for dates, which no pattern holds.
pub(super) fn from_toml(value: &Value) -> Option<EditValue> {
    Some(match value {
        Value::Boolean(flag) => EditValue::Flag(*flag.value()),
        Value::Integer(number) => match i32::try_from(*number.value()) {
            Ok(number) => EditValue::Whole(number),
            Err(_) => EditValue::Number(*number.value() as f64),
        },
        Value::Float(number) => EditValue::Number(*number.value()),
        Value::String(text) => EditValue::Text(text.value().clone()),
        Value::Array(list) => EditValue::List(list.iter().filter_map(from_toml).collect()),
        Value::InlineTable(table) => {
            let pairs = table.iter().filter_map(|(key, value)| Some((key.to_owned(), from_toml(value)?)));
            EditValue::Table(pairs.collect())
        }
        Value::Datetime(_) => return None,
    })
}

/// The same for whatever stands at a place of the file.
pub(super) fn of_item(item: &Item) -> Option<EditValue> {
    match item {
        Item::None => None,
        Item::Value(value) => from_toml(value),
        Item::Table(table) => from_toml(&Value::InlineTable(table.clone().into_inline_table())),
        Item::ArrayOfTables(tables) => from_toml(&Value::Array(tables.clone().into_array())),
    }
}

/// The value that a piece of TOML such as `73` or `"3/32 in"` says.
pub(crate) fn value_of(text: &str) -> Option<EditValue> {
    text.parse::<Value>().ok().and_then(|value| from_toml(&value))
}
