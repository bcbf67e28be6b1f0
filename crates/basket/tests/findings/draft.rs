//! Drafting a good pattern with changes.

use basket::{Catalogue, Draft, Hand};
use toml::{Table, Value};

/// A round basket 8 in across that gives no stop and no care.
const GOOD: &str = r#"
title = "Harbour bread basket"
units = "in"
[mould]
girths = [["0", "15 1/2"], ["1", "19 3/4"], ["2", "22 1/4"], ["3", "24"], ["4 1/4", "25 1/8"]]
[base]
diameter = "4 5/8"
thickness = "3/8"
groove = { depth = "1/4", width = "3/32" }
[staves]
stock = "flat oval reed 1/4 in"
[weave]
courses = [
  { weave = "plain", weaver = "cane fine-fine", rows = 4 },
  { weave = "plain", weaver = "cane fine", until = "1 below mould top" },
]
[rim]
stock = "half round reed 3/8 in"
lap = "4"
[lashing]
weaver = "cane fine-fine"
[ears]
material = "brass"
[handle]
kind = "swing"
"#;

/// Changes to the good pattern: keys and TOML values.
pub(crate) type Changes<'a> = &'a [(&'a str, &'a str)];

/// The good pattern with changes, as a table.
pub(crate) fn pattern(changes: Changes) -> Table {
    let mut table: Table = toml::from_str(GOOD).expect("the good pattern is TOML");
    for (key, value) in changes {
        set(&mut table, key, value);
    }
    // A fixed handle is refused beside ears.
    if table["handle"].get("kind").and_then(Value::as_str) == Some("fixed") {
        table.remove("ears");
    }
    table
}

/// A pattern worked out; none where it cannot be read.
pub(crate) fn read(table: &Table) -> Option<Draft> {
    let text = toml::to_string(table).expect("a table can be written");
    let pattern = basket::pattern::read(&text, Catalogue::built_in()).ok()?;
    Some(Draft::of(pattern, Catalogue::built_in(), &Hand::USUAL))
}

/// Writes a value under a key such as `weave.courses[2].rows`, courses counted from 1.
pub(crate) fn set(table: &mut Table, key: &str, value: &str) {
    let value = format!("it = {value}").parse::<Table>().expect("the value is TOML")["it"].clone();
    let (first, rest) = match key.split_once('.') {
        Some((first, rest)) => (first, Some(rest)),
        None => (key, None),
    };
    let Some(rest) = rest else {
        table.insert(first.to_owned(), value);
        return;
    };
    let inner = value.to_string();
    if let Some((list, number)) = first.split_once('[') {
        let number: usize = number.trim_end_matches(']').parse().expect("a number in brackets");
        let course = table[list][number - 1].as_table_mut().expect("a course is a table");
        // A course ends in one way only.
        course.retain(|key, _| !(["rows", "until"].contains(&key) && ["rows", "until"].contains(&rest)));
        set(course, rest, &inner);
    } else {
        let section = table.entry(first).or_insert_with(|| Value::Table(Table::new()));
        set(section.as_table_mut().expect("a section"), rest, &inner);
    }
}
