//! What stands in a file before it is known what it should be.

use std::ops::Range;

use toml::Spanned;
use toml::de::{DeTable, DeValue};

use crate::message::Value;

/// What a value is, as the identifier of its name in the message files.
pub(super) fn type_term(value: &DeValue<'_>) -> Value {
    Value::Term(match value {
        DeValue::String(_) => "problem-type-text",
        DeValue::Integer(_) | DeValue::Float(_) => "problem-type-number",
        DeValue::Boolean(_) => "problem-type-flag",
        DeValue::Datetime(_) => "problem-type-date",
        DeValue::Array(_) => "problem-type-list",
        DeValue::Table(_) => "problem-type-section",
    })
}

/// What a value is, in words.
pub(super) fn type_name(value: &DeValue<'_>) -> &'static str {
    match value {
        DeValue::String(_) => "a text",
        DeValue::Integer(_) | DeValue::Float(_) => "a bare number",
        DeValue::Boolean(_) => "true or false",
        DeValue::Datetime(_) => "a date",
        DeValue::Array(_) => "a list",
        DeValue::Table(_) => "a section",
    }
}

pub(super) fn whole_number(value: &DeValue<'_>) -> Option<i64> {
    let number = value.as_integer()?;
    i64::from_str_radix(number.as_str(), number.radix()).ok()
}

/// The entries of a table in the order in which they stand in the file.
pub(super) fn in_order<'s, 'd>(
    table: &'s DeTable<'d>,
) -> Vec<(&'s str, Range<usize>, &'s Spanned<DeValue<'d>>)> {
    let mut entries: Vec<_> =
        table.iter().map(|(key, value)| (&**key.get_ref(), key.span(), value)).collect();
    entries.sort_by_key(|(_, span, _)| span.start);
    entries
}
