//! Both sides of a check's limit.

use basket::Draft;
use basket::findings::{Finding, Grade};
use toml::Table;

use crate::draft::{Changes, pattern, read, set};

/// A pattern worked out.
pub(crate) fn basket(table: &Table) -> Draft {
    read(table).unwrap_or_else(|| panic!("cannot be read:\n{table}"))
}

/// The findings of one code.
pub(crate) fn found(draft: &Draft, code: &str) -> Vec<Finding> {
    draft.findings.iter().filter(|finding| finding.code == code).cloned().collect()
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
