//! A good pattern is left in peace.

use basket::findings::{CODES, Grade};

use crate::draft::pattern;
use crate::sides::basket;

#[test]
fn a_good_pattern_gives_only_notes() {
    let basket = basket(&pattern(&[]));
    let heavy: Vec<_> = basket.findings.iter().filter(|finding| finding.grade != Grade::Note).collect();
    assert!(heavy.is_empty(), "{heavy:#?}");
}

#[test]
fn findings_come_heaviest_first() {
    let bad = basket(&pattern(&[
        ("staves.count", "78"),
        ("base.groove.width", "\"1/4 in\""),
        ("rim.lap", "\"1 in\""),
        ("staves.length", "\"12 in\""),
    ]));
    let grades: Vec<Grade> = bad.findings.iter().map(|finding| finding.grade).collect();
    assert!(grades.is_sorted(), "{grades:?}");
    for grade in [Grade::Stop, Grade::Care, Grade::Note] {
        assert!(grades.contains(&grade), "{grade:?} missing in {grades:?}");
    }
}

#[test]
fn codes_are_unique() {
    let mut codes = CODES.to_vec();
    codes.sort_unstable();
    codes.dedup();
    assert_eq!(codes.len(), CODES.len());
}

/// Each test of a check names its code; a check without a test shows here.
#[test]
fn every_code_is_tested() {
    let tests = [
        include_str!("fittings.rs"),
        include_str!("form.rs"),
        include_str!("lid.rs"),
        include_str!("nest.rs"),
        include_str!("outline.rs"),
        include_str!("rim.rs"),
        include_str!("staves.rs"),
        include_str!("weave.rs"),
        include_str!("../lid.rs"),
        include_str!("../weave_findings.rs"),
    ]
    .concat();
    let untested: Vec<_> = CODES.iter().filter(|code| !tests.contains(&format!("\"{code}\""))).collect();
    assert!(untested.is_empty(), "{untested:?}");
}

/// Of what is good to know, weaves come first, then what mends them, then all else: staves are checked before weaves,
/// and still their note stands below.
#[test]
fn notes_on_weaves_come_before_others() {
    let noted = basket(&pattern(&[
        ("staves.count", "78"),
        ("staves.length", "\"20 in\""),
        ("weave.courses[1].weave", "\"twill 2/2\""),
        ("weave.courses[2].weave", "\"twill 2/2\""),
    ]));
    let notes = noted.findings.iter().filter(|finding| finding.grade == Grade::Note);
    let codes: Vec<&str> = notes.map(|finding| finding.code).collect();
    let place = |wanted: &str| {
        codes
            .iter()
            .position(|code| *code == wanted)
            .unwrap_or_else(|| panic!("{wanted} is not in {codes:?}"))
    };
    assert!(place("weave-no-diagonal") < place("weave-mend"), "{codes:?}");
    let last = codes.iter().rposition(|code| code.starts_with("weave-")).expect("it is there");
    assert!(last < place("stave-wasteful"), "{codes:?}");
}
