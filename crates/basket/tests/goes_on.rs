//! A course of the same weave as the one below goes on from it, as if the two were one.

use basket::pattern::read;
use basket::weave::Weave;
use basket::{Basket, Catalogue, Hand, assemble};

/// A straight-sided basket 8 in across on this many staves, with these courses.
fn woven(count: u32, courses: &str) -> Basket {
    let text = format!(
        "title = \"A basket\"\nunits = \"in\"\n[mould]\nbase = \"8\"\nheight = \"6\"\nside = \"straight\"\nrim = \"8\"\n\
         [staves]\ncount = {count}\nstock = \"flat oval reed 1/4 in\"\n[weave]\ncourses = [{courses}]\n"
    );
    let pattern =
        read(&text, Catalogue::built_in()).unwrap_or_else(|problems| panic!("{problems:#?}\n{text}"));
    assemble(&pattern, Catalogue::built_in(), &Hand::USUAL)
}

/// Courses of one weave, each of so many rows and with keys of its own.
fn bands(count: u32, weave: &str, bands: &[(u32, &str)]) -> Weave {
    let course = |(rows, own): &(u32, &str)| format!("{{ {weave}, rows = {rows}{own} }}");
    woven(count, &bands.iter().map(course).collect::<Vec<_>>().join(", ")).body.weave
}

/// Every crossing of rows from the bottom upward: which weaver is outside, which inside.
fn cells(weave: &Weave, count: u32) -> Vec<Vec<String>> {
    let cell = |row, stave| format!("{:?}", weave.cell(row, stave));
    (1..=weave.rows).map(|row| (1..=count).map(|stave| cell(row, stave)).collect()).collect()
}

const WEAVES: [(u32, &str); 14] = [
    (9, "weave = \"plain\", weaver = \"cane fine\""),
    (13, "weave = \"twill 2/2\", weaver = \"cane fine\""),
    (72, "weave = \"twill 3/2\", weaver = \"cane fine\""),
    (72, "weave = \"chase\", weaver = \"cane fine\""),
    (73, "weave = \"chase twill 2/1\", weavers = [\"cane fine\", \"cane common\", \"cane fine-fine\"]"),
    (13, "weave = \"wale 3\", weaver = \"cane fine\""),
    (14, "weave = \"wale 5\", step-up = true, weaver = \"cane fine\""),
    (73, "weave = \"pairing\", weaver = \"cane fine\""),
    (73, "weave = \"slew\", weaver = \"cane fine\""),
    (12, "weave = \"skip one\", weaver = \"cane fine\""),
    (12, "weave = \"twill 3/3\", way = \"row by row\", step = 2, weaver = \"cane fine\""),
    (12, "weave = \"twill 2/2\", step-up = true, lean = \"left\", weaver = \"cane fine\""),
    (72, "weave = \"reversed twill 2/2\", band = 4, weaver = \"cane fine\""),
    (
        72,
        "weave = \"drawn\", chart = [\"X..X..\", \".XX.X.\", \"X.X..X\", \"..XX..\"], weaver = \"cane fine\"",
    ),
];

/// Whether it is woven in one course or three, each crossing is the same, and so are height and length of
/// each row.
#[test]
fn three_courses_are_woven_as_one() {
    for (count, weave) in WEAVES {
        let whole = bands(count, weave, &[(16, "")]);
        let parts = bands(count, weave, &[(5, ""), (1, ""), (10, "")]);
        assert_eq!(cells(&parts, count), cells(&whole, count), "{weave} on {count}");
        for (part, row) in parts.each_row.iter().zip(&whole.each_row) {
            assert!((part.along - row.along).abs().to_mm() < 1e-9, "{weave}: row {}", row.number);
            assert!((part.length - row.length).abs().to_mm() < 1e-9, "{weave}: row {}", row.number);
        }
        let verdict = |weave: &Weave| {
            let verdict = &weave.courses[0].verdict;
            (verdict.holds, verdict.closes, verdict.diagonal.lean())
        };
        assert_eq!(verdict(&parts), verdict(&whole), "{weave} on {count}");
    }
}

/// Over one, under one alternates from the last row of one course to the first of the next.
#[test]
fn plain_courses_alternate() {
    for lower in [4, 5, 6, 7] {
        let weave = woven(
            73,
            &format!(
                "{{ weaver = \"cane fine-fine\", rows = {lower} }}, {{ weaver = \"cane fine\", rows = 6 }}, \
                 {{ weave = \"slew\", weaver = \"cane fine\", rows = 5 }}"
            ),
        )
        .body
        .weave;
        for row in 1..weave.rows {
            for stave in 1..=73 {
                let outside = |row| weave.cell(row, stave).outside.is_some();
                assert_ne!(outside(row), outside(row + 1), "{lower}: row {row}, stave {stave}");
            }
        }
    }
}

/// A course that says where it starts begins there, and so does one above another weave.
#[test]
fn a_start_begins_anew() {
    let twill = "weave = \"twill 2/2\", weaver = \"cane fine\"";
    let first_row = |weave: &Weave, course: usize| {
        let row = weave.courses[course].first_row;
        (1..=13)
            .map(|stave| if weave.cell(row, stave).outside.is_some() { 'X' } else { '.' })
            .collect::<String>()
    };
    let weave = bands(13, twill, &[(3, ""), (2, ", start = 1"), (2, ", start = 3"), (2, "")]);
    assert_eq!(first_row(&weave, 1), "XX..XX..XX..X");
    // Over staves 3 and 4 first; the thirteenth stave passed is stave 2.
    assert_eq!(first_row(&weave, 2), ".XXX..XX..XX.");
    // Two rounds of 13 staves from stave 3 are two more than a multiple of four: under two first.
    assert_eq!(first_row(&weave, 3), "X...XX..XX..X");
    let between = woven(
        13,
        &format!(
            "{{ {twill}, rows = 3 }}, {{ weave = \"pairing\", weaver = \"cane fine\", rows = 1 }}, {{ {twill}, rows = 3 }}"
        ),
    );
    assert_eq!(first_row(&between.body.weave, 2), "XX..XX..XX..X");
}

/// After five rows of two weavers that chase, the second is next.
#[test]
fn the_next_weaver_goes_on() {
    let weave =
        bands(72, "weave = \"chase\", weavers = [\"cane fine\", \"cane common\"]", &[(5, ""), (4, "")]);
    let (fine, common) = (&weave.courses[1].weavers[0], &weave.courses[1].weavers[1]);
    assert_eq!(
        (common.rows.each().collect::<Vec<_>>(), fine.rows.each().collect::<Vec<_>>()),
        (vec![0, 2], vec![1, 3])
    );
    let pitches: Vec<f64> = weave.each_row.iter().map(|row| row.pitch.to_mm()).collect();
    let widths = [fine.material.width.to_mm(), common.material.width.to_mm()];
    for (row, pitch) in pitches.iter().enumerate() {
        assert!((pitch - widths[row % 2]).abs() < 1e-9, "row {}", row + 1);
    }
}

/// Twined weavers take up the turn where the row below left it: 13 staves after two rows are 26 = 8 · 3 + 2, so
/// that the third weaver comes first.
#[test]
fn twined_weavers_keep_their_turn() {
    let weave = bands(13, "weave = \"wale 3\", weaver = \"cane fine\"", &[(2, ""), (3, "")]);
    let told = weave.bands();
    let upper = told.iter().find(|band| band.first == 3).expect("row 3 is told");
    assert_eq!(upper.threads.iter().map(|thread| thread.number).collect::<Vec<_>>(), [3, 1, 2]);
    assert_eq!(weave.cell(3, 1).outside, Some(2));
}

/// A course that finds no room between two of one weave parts nothing.
#[test]
fn a_course_without_rows_parts_nothing() {
    let weave = woven(
        9,
        "{ weaver = \"cane fine\", rows = 5 }, { weave = \"pairing\", weaver = \"cane fine\", until = \"height 1/16\" }, \
         { weaver = \"cane fine\", rows = 5 }",
    )
    .body
    .weave;
    assert_eq!((weave.courses[1].rows, weave.rows), (0, 10));
    assert_eq!(cells(&weave, 9), cells(&bands(9, "weaver = \"cane fine\"", &[(10, "")]), 9));
}

/// Each of two weavers that chase over one, under one changes sides in every gap, the one before its own next row
/// included: it is as long as one that goes round row by row.
#[test]
fn a_chasing_weaver_goes_on_in_its_own_row() {
    let length =
        |weave: &str| bands(72, &format!("{weave}, weaver = \"cane fine\""), &[(20, "")]).length.to_mm();
    let (chased, level) = (length("weave = \"chase\""), length("way = \"row by row\""));
    assert!((chased - level).abs() < 1e-6, "{chased} {level}");
}
