//! What is found about a course on its count, on both sides of each limit; every remedy is written into
//! the pattern and has to mend it.

#[path = "findings/draft.rs"]
mod draft;
#[path = "findings/sides.rs"]
mod sides;

use basket::findings::Grade::{Care, Note, Stop};
use basket::weave::{Mend, Running};
use draft::pattern;
use sides::{basket, beyond_limit, both_sides, found};

const WEAVE: &str = "weave.courses[2].weave";

/// Over two, under two on a multiple of four stacks.
#[test]
fn a_twill_that_stacks() {
    let finding = both_sides(
        "weave-does-not-lock",
        Stop,
        &[("weave.courses[1].weave", "\"pairing\""), (WEAVE, "\"twill 2/2\""), ("staves.count", "76")],
        &[("weave.courses[1].weave", "\"pairing\""), (WEAVE, "\"twill 2/2\""), ("staves.count", "77")],
    );
    let counts = finding.remedies.iter().filter(|remedy| remedy.key == "staves.count").count();
    assert_eq!(counts, 2);
}

/// Every course that fails is named, and no count is proposed on which the other course would fail.
#[test]
fn counts_that_suit_all_courses() {
    let table = pattern(&[(WEAVE, "\"twill 2/2\""), ("staves.count", "76")]);
    let findings = found(&basket(&table), "weave-does-not-lock");
    assert_eq!(findings.len(), 2);
    let remedies = findings.iter().flat_map(|finding| &finding.remedies);
    for remedy in remedies.filter(|remedy| remedy.key == "staves.count") {
        assert!(["75", "77"].contains(&remedy.value.as_str()), "{remedy:?}");
    }
}

/// On a count courses run as wanted, or hold and do not, or do not hold: plain weave wants an odd count, a twill
/// of three and three one that leaves neither nothing nor three.
#[test]
fn how_many_courses_run() {
    let text = pattern(&[(WEAVE, "\"twill 3/3\"")]).to_string();
    let courses = basket::pattern::read(&text, basket::Catalogue::built_in()).expect("the pattern reads");
    let running = |count| {
        let running = Running::of(&courses.weave.courses, count);
        (running.courses, running.run, running.hold, running.all(), running.stops())
    };
    assert_eq!(running(73), (2, 2, 2, true, false));
    assert_eq!(running(75), (2, 1, 2, false, false));
    assert_eq!(running(74), (2, 1, 1, false, true));
    assert_eq!(running(72), (2, 0, 0, false, true));
}

/// Two weavers in a twill of two and two: on a multiple of four the second lies opposite to the first, on any other
/// even count one stave further, and the diagonal stays (drawn by hand, row by row).
#[test]
fn a_second_weaver_makes_blocks_or_a_diagonal() {
    let text = pattern(&[(WEAVE, "\"twill 2/2\"")]).to_string();
    let read = basket::pattern::read(&text, basket::Catalogue::built_in()).expect("the pattern reads");
    let look = |count| read.weave.courses[1].mended_look(Mend::SecondWeaver, count);
    assert_eq!(look(76), "weave-mend-look-second-weaver-blocks");
    assert_eq!(look(78), "weave-mend-look-second-weaver");
}

/// An even count can be woven with a second weaver, by skipping one, row by row, with a step up, or
/// with one stave made two (Anna A. Gill, *Practical Basketry*, 1916, and others; common practice).
#[test]
fn mends_on_an_even_count() {
    let table = pattern(&[("staves.count", "78")]);
    let findings = found(&basket(&table), "weave-mend");
    let changes: Vec<String> = findings
        .iter()
        .flat_map(|finding| &finding.remedies)
        .map(|remedy| format!("{} = {}", remedy.key, remedy.value))
        .collect();
    assert_eq!(
        changes,
        [
            "weave.courses[1].weave = \"chase\"",
            "weave.courses[1].step-up = true",
            "weave.courses[1].way = \"row by row\"",
            "weave.courses[1].weave = \"skip one\"",
            "staves.count = 79",
            "staves.count = 79",
        ]
    );
    for finding in &findings {
        let mut mended = table.clone();
        let remedy = &finding.remedies[0];
        draft::set(&mut mended, &remedy.key, &remedy.value);
        let left = found(&basket(&mended), "weave-does-not-lock");
        assert!(left.iter().all(|left| left.place.piece != basket::Piece::Course(1)), "{remedy:?}");
    }
    assert_eq!(found(&basket(&pattern(&[])), "weave-mend"), []);
}

/// Rows that begin anew alternate evenly only where the repeat divides the count.
#[test]
fn a_seam() {
    let level = ("weave.courses[2].way", "\"row by row\"");
    let first = ("weave.courses[1].weave", "\"pairing\"");
    both_sides(
        "weave-seam",
        Care,
        &[first, level, ("staves.count", "77")],
        &[first, level, ("staves.count", "78")],
    );
}

#[test]
fn a_drawing_that_does_not_go_into_the_count() {
    let chart = ("weave.courses[2].chart", "[\"X..\", \".X.\", \"..X\"]");
    let drawn = [(WEAVE, "\"drawn\""), chart];
    let on = |count| [drawn[0], drawn[1], ("staves.count", count)];
    both_sides("weave-seam", Care, &on("77"), &on("75"));
}

/// Two weavers in over two, under two follow alike only on even counts.
#[test]
fn an_uneven_chase() {
    let first = ("weave.courses[1].weave", "\"pairing\"");
    let chase = (WEAVE, "\"chase twill 2/2\"");
    let on = |count| [first, chase, ("staves.count", count)];
    both_sides("weave-chase-uneven", Care, &on("77"), &on("78"));
}

/// Over two, under two leans one way on one more than a multiple of four, the other way on one fewer.
#[test]
fn the_count_decides_the_lean() {
    let twill = [(WEAVE, "\"twill 2/2\""), ("weave.courses[2].lean", "\"left\"")];
    let on = |count| [twill[0], twill[1], ("staves.count", count)];
    both_sides("weave-leans-other-way", Care, &on("77"), &on("75"));
}

/// Single cells that step on by two in five lie nearer to those two rows up and one stave back.
#[test]
fn the_step_decides_the_lean() {
    let first = ("weave.courses[1].weave", "\"pairing\"");
    let level = ("weave.courses[2].way", "\"row by row\"");
    let lean = ("weave.courses[2].lean", "\"left\"");
    let on = |step| {
        [
            first,
            (WEAVE, "\"twill 1/4\""),
            level,
            lean,
            ("weave.courses[2].step", step),
            ("staves.count", "75"),
        ]
    };
    let finding = both_sides("weave-leans-other-way", Care, &on("2"), &on("1"));
    assert_eq!(finding.remedies.len(), 1, "{finding:?}");
}

#[test]
fn a_twill_without_a_diagonal() {
    let first = ("weave.courses[1].weave", "\"pairing\"");
    let on = |count| [first, (WEAVE, "\"twill 2/2\""), ("staves.count", count)];
    both_sides("weave-no-diagonal", Note, &on("78"), &on("77"));
}

#[test]
fn skipping_none() {
    let first = ("weave.courses[1].weave", "\"pairing\"");
    let on = |count| [first, (WEAVE, "\"skip one\""), ("staves.count", count)];
    both_sides("weave-skips-none", Note, &on("77"), &on("78"));
}

#[test]
fn a_chart_that_was_not_read() {
    beyond_limit(
        "weave-chart-missing",
        Stop,
        &[(WEAVE, "\"drawn\""), ("weave.courses[2].chart-file", "\"waves.csv\""), ("staves.count", "78")],
    );
}

#[test]
fn a_start_where_no_stave_is() {
    let on = |start| [("staves.count", "77"), ("weave.courses[2].start", start)];
    both_sides("weave-start-past-count", Care, &on("78"), &on("77"));
}

#[test]
fn long_floats() {
    let on = |weave| [(WEAVE, weave), ("staves.count", "77")];
    both_sides("weave-float-staves", Care, &on("\"twill 5/1\""), &on("\"twill 4/1\""));
    both_sides("weave-float-rows", Care, &on("\"twill 5/1\""), &on("\"twill 4/1\""));
    let allowed = pattern(&[(WEAVE, "\"twill 5/1\""), ("staves.count", "77"), ("weave.float-staves", "5")]);
    assert_eq!(found(&basket(&allowed), "weave-float-staves"), []);
}

/// What mends a weave that holds but does not run as wanted runs as wanted.
#[test]
fn mends_of_weaves_that_hold() {
    let first = ("weave.courses[1].weave", "\"pairing\"");
    let level = ("weave.courses[2].way", "\"row by row\"");
    let step_up = ("weave.courses[2].step-up", "true");
    for (case, count, code, wanted) in [
        (
            vec![(WEAVE, "\"twill 2/2\"")],
            "78",
            "weave-no-diagonal",
            vec!["weave.courses[2].weave = \"chase twill 2/2\"", "staves.count = 79", "staves.count = 79"],
        ),
        (
            vec![(WEAVE, "\"chase\"")],
            "77",
            "weave-chase-uneven",
            vec!["weave.courses[2].weave = \"plain\"", "staves.count = 78", "staves.count = 78"],
        ),
        (
            vec![level],
            "77",
            "weave-seam",
            vec!["weave.courses[2].way = \"continuous\"", "staves.count = 78", "staves.count = 78"],
        ),
        (
            vec![step_up],
            "77",
            "weave-seam",
            vec!["weave.courses[2].step-up = false", "staves.count = 78", "staves.count = 78"],
        ),
    ] {
        let mut table = pattern(&[first, ("staves.count", count)]);
        for (key, value) in &case {
            draft::set(&mut table, key, value);
        }
        let faulty = basket(&table);
        assert_eq!(found(&faulty, code).len(), 1, "{code} on {count}");
        let mends = found(&faulty, "weave-mend");
        let changes: Vec<String> = mends
            .iter()
            .flat_map(|finding| &finding.remedies)
            .map(|remedy| format!("{} = {}", remedy.key, remedy.value))
            .collect();
        assert_eq!(changes, wanted, "{code}");
        for remedy in mends.iter().flat_map(|finding| &finding.remedies) {
            let mut mended = table.clone();
            draft::set(&mut mended, &remedy.key, &remedy.value);
            assert_eq!(found(&basket(&mended), code), [], "{remedy:?}");
        }
    }
}

#[test]
fn a_drawing_with_loose_staves() {
    let first = ("weave.courses[1].weave", "\"pairing\"");
    let drawn =
        |chart| [first, (WEAVE, "\"drawn\""), ("weave.courses[2].chart", chart), ("staves.count", "76")];
    let finding = both_sides(
        "weave-chart-does-not-lock",
        Stop,
        &drawn("[\"XX..\", \"X.X.\"]"),
        &drawn("[\"XX..\", \"..XX\"]"),
    );
    assert_eq!(finding.measured, 2_u32.into());
}
