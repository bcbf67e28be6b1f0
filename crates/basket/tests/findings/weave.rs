//! Weave: lock, rows, strands.

use basket::findings::Grade::{Care, Note, Stop};

use crate::draft::{basket, both_sides, pattern};

/// Plain weave with one weaver wants an odd count (Anna A. Gill, *Practical Basketry*, 1916; a
/// learner's weblog tells of 42 staves put in where 43 were wanted).
#[test]
fn weave_does_not_lock() {
    let finding =
        both_sides("weave-does-not-lock", Stop, &[("staves.count", "78")], &[("staves.count", "79")]);
    let values: Vec<&str> = finding.remedies.iter().map(|remedy| remedy.value.as_str()).collect();
    assert_eq!(values.len(), 2);
    assert!(values.contains(&"77") && values.contains(&"79"), "{values:?}");
}

/// Four rows of cane 2.25 mm wide reach about 9 mm up: a course that is to end at 1/4 in is empty.
#[test]
fn course_empty() {
    both_sides(
        "course-empty",
        Stop,
        &[("weave.courses[2].until", "\"height 1/8 in\"")],
        &[("weave.courses[2].until", "\"height 1 in\"")],
    );
}

/// A quarter of the wall of about 5 in is 1 1/4 in.
#[test]
fn rows_do_not_fill() {
    let finding = both_sides(
        "rows-do-not-fill",
        Care,
        &[("weave.courses[2].rows", "20")],
        &[("weave.courses[2].rows", "38")],
    );
    assert_eq!(finding.remedies[0].key, "weave.courses[2].rows");
}

/// A height that the maker wrote is meant.
#[test]
fn a_written_height_is_left_in_peace() {
    let low = basket(&pattern(&[("weave.courses[2].until", "\"height 2 in\"")]));
    assert!(low.findings.iter().all(|finding| finding.code != "rows-do-not-fill"));
}

/// The rim is 3/8 in wide; half of it may stand above the mould.
#[test]
fn rows_past_the_top() {
    both_sides(
        "rows-past-the-top",
        Care,
        &[("weave.courses[2].until", "\"1/16 below mould top\"")],
        &[("weave.courses[2].until", "\"1/4 below mould top\"")],
    );
    both_sides(
        "rows-past-the-top",
        Stop,
        &[("weave.courses[2].rows", "90")],
        &[("weave.courses[2].until", "\"1/4 below mould top\"")],
    );
}

/// A row is about 23 in long: strands of 3 ft do not last two rows, strands of 6 ft do.
#[test]
fn strand_count_surprising() {
    let strand = |strand: &str| format!("{{ like = \"cane fine\", strand = \"{strand}\" }}");
    let (beyond, within) = (strand("3 ft"), strand("8 ft"));
    let weaver = ("weave.courses[2].weaver", "\"mine\"");
    both_sides(
        "strand-count-surprising",
        Note,
        &[("materials.mine", &beyond), weaver],
        &[("materials.mine", &within), weaver],
    );
}

/// A row is up to 28 in long: strands of 11 in do not reach half round, strands of 15 in do.
#[test]
fn strand_too_short() {
    let strand = |strand: &str| format!("{{ like = \"cane fine\", strand = \"{strand}\" }}");
    let (beyond, within) = (strand("11 in"), strand("15 in"));
    let weaver = ("weave.courses[2].weaver", "\"mine\"");
    both_sides(
        "strand-too-short",
        Stop,
        &[("materials.mine", &beyond), weaver],
        &[("materials.mine", &within), weaver],
    );
}
