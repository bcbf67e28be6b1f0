//! Drafting a good pattern with changes.

use basket::findings::{Finding, Grade};
use basket::{Catalogue, Draft, Hand};
use toml::{Table, Value};

/// A round basket 8 in across that gives no stop and no care.
const GOOD: &str = r#"
title = "Harbour bread basket"
units = "in"
[mould]
girths = [["0", "15 1/2"], ["1", "19 3/4"], ["2", "22 1/4"], ["3", "24"], ["4 1/4", "25 1/8"]]
[base]
diameter = "4 7/8"
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
    table
}

/// A pattern worked out.
pub(crate) fn basket(table: &Table) -> Draft {
    let text = toml::to_string(table).expect("a table can be written");
    let catalogue = Catalogue::built_in();
    let pattern =
        basket::pattern::read(&text, catalogue).unwrap_or_else(|problems| panic!("{problems:#?} in\n{text}"));
    Draft::of(pattern, catalogue, &Hand::USUAL)
}

/// The findings of one code.
pub(crate) fn found(draft: &Draft, code: &str) -> Vec<Finding> {
    draft.findings.iter().filter(|finding| finding.code == code).cloned().collect()
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

/// Asserts that the check finds something after the first changes, with this grade, and nothing
/// after the second; and that each remedy it proposes, alone, mends it.
#[track_caller]
pub(crate) fn both_sides(code: &str, grade: Grade, beyond: Changes, within: Changes) -> Finding {
    let finding = beyond_limit(code, grade, beyond);
    let clear = basket(&pattern(within));
    assert_eq!(found(&clear, code), [], "{code} within its limit");
    finding
}

/// Asserts that the check finds something, with this grade, and that its remedies mend it.
#[track_caller]
pub(crate) fn beyond_limit(code: &str, grade: Grade, beyond: Changes) -> Finding {
    assert!(basket::findings::CODES.contains(&code), "{code} is not listed");
    let table = pattern(beyond);
    let findings = found(&basket(&table), code);
    let finding = findings.first().unwrap_or_else(|| panic!("{code} is not found"));
    assert_eq!(finding.grade, grade, "{finding:#?}");
    assert!(grade == Grade::Note || !finding.remedies.is_empty(), "{code} has no remedy");
    for remedy in &finding.remedies {
        let mut mended = table.clone();
        set(&mut mended, &remedy.key, &remedy.value);
        let left = found(&basket(&mended), code);
        assert!(
            !left.iter().any(|left| same_place(left, finding) && still_matters(left, finding)),
            "{code} is not mended by {} = {}: {left:#?}",
            remedy.key,
            remedy.value
        );
    }
    finding.clone()
}

fn same_place(left: &Finding, finding: &Finding) -> bool {
    left.place.piece == finding.place.piece
}

/// A stop or a care that is now only good to know is mended.
fn still_matters(left: &Finding, finding: &Finding) -> bool {
    left.grade != Grade::Note || finding.grade == Grade::Note
}
