//! Woven baskets: what lies where, in which colour, and how it is told.

mod woven_bench;

use basket::pattern::read;
use basket::weave::Face;
use basket::weave::look::Look;
use basket::{Catalogue, Draft, Hand};
use woven_bench::{cells, colours, course, seen, woven, woven_with};

/// Weaves by the counts on which they were worked out by hand, bottom row first.
#[test]
fn weaves_worked_out_by_hand() {
    let drawn = |count, weave: &str, rows| {
        cells(&woven(count, &format!("{{ weave = \"{weave}\", weaver = \"cane fine\", rows = 8 }}")), rows)
    };
    assert_eq!(drawn(9, "plain", 3), "X.X.X.X.X / .X.X.X.X. / X.X.X.X.X");
    assert_eq!(drawn(8, "plain", 2), "X.X.X.X. / X.X.X.X.");
    assert_eq!(drawn(8, "chase", 3), "X.X.X.X. / .X.X.X.X / X.X.X.X.");
    assert_eq!(drawn(13, "twill 2/2", 4), "XX..XX..XX..X / X..XX..XX..XX / ..XX..XX..XX. / .XX..XX..XX..");
    assert_eq!(
        drawn(15, "twill 2/2", 4),
        "XX..XX..XX..XX. / .XX..XX..XX..XX / ..XX..XX..XX..X / X..XX..XX..XX.."
    );
    assert_eq!(drawn(14, "twill 2/2", 3), "XX..XX..XX..XX / ..XX..XX..XX.. / XX..XX..XX..XX");
    assert_eq!(drawn(10, "twill 2/1", 3), "XX.XX.XX.X / X.XX.XX.XX / .XX.XX.XX.");
    assert_eq!(drawn(10, "chase twill 2/2", 4), "XX..XX..XX / X..XX..XX. / ..XX..XX.. / .XX..XX..X");
}

#[test]
fn three_rod_wales_worked_out_by_hand() {
    let wale = |count| {
        let basket = woven(
            count,
            "{ weave = \"wale 3\", weaver = \"cane fine\", colours = [\"black\", \"blue\", \"white\"], rows = 6 }",
        );
        colours(&basket.body.weave, 3, count, Face::Outside).replace('b', "?")
    };
    // Black and blue begin alike; told apart by their place: black is the first of each three.
    assert_eq!(wale(12), "??w??w??w??w / ??w??w??w??w / ??w??w??w??w");
    assert_eq!(wale(13), "??w??w??w??w? / ?w??w??w??w?? / w??w??w??w??w");
    assert_eq!(wale(14), "??w??w??w??w?? / w??w??w??w??w? / ?w??w??w??w??w");
}

/// One colour in three runs straight up on a multiple of three, and climbs to opposite sides on one more
/// and one fewer (common practice for a three-rod wale; 32 staves are reported to spiral).
#[test]
fn wales_climb_by_the_remainder() {
    let look = |count| {
        let basket = woven(
            count,
            "{ weave = \"wale 3\", weaver = \"cane fine\", colours = [\"blue\", \"natural\", \"natural\"], rows = 20 }",
        );
        basket.body.weave.look(course(&basket), Face::Outside)
    };
    assert_eq!(look(33).sighting.look, Look::Columns);
    let (more, fewer) = (look(34), look(32));
    assert_eq!((more.sighting.look, fewer.sighting.look), (Look::Spiral, Look::Spiral));
    assert_ne!(more.lean, fewer.lean);
    assert!((more.turns - 19.0 / 34.0).abs() < 1e-12, "{more:?}");
}

#[test]
fn looks() {
    let look = |count, course_text: &str| {
        let basket = woven(count, course_text);
        basket.body.weave.look(course(&basket), Face::Outside)
    };
    let even = look(77, "{ weaver = \"cane fine\", rows = 30 }");
    assert_eq!(even.sighting.look, Look::Plain);
    let twill = look(75, "{ weave = \"twill 2/2\", weaver = \"cane fine\", colours = \"blue\", rows = 30 }");
    assert_eq!(twill.sighting.look, Look::Spiral);
    assert!((twill.turns - 29.0 / 75.0).abs() < 1e-12);
    let checks = look(77, "{ weaver = \"cane fine\", colours = \"blue\", rows = 30 }");
    assert_eq!(checks.sighting.look, Look::Checks);
    let chase = look(
        76,
        "{ weave = \"chase\", weaver = \"cane fine\", colours = [\"blue\", \"natural\"], rows = 30 }",
    );
    assert_eq!(chase.sighting.look, Look::Columns);
    let arrows =
        look(76, "{ weave = \"reversed twill 2/2\", weaver = \"cane fine\", colours = \"blue\", rows = 30 }");
    assert_eq!(arrows.sighting.look, Look::Arrows);
    let chain = look(
        76,
        "{ weave = \"pairing\", weaver = \"cane fine\", colours = [\"blue\", \"white\"], rows = 1 }",
    );
    assert!(chain.chain, "{chain:?}");
    let bands = look(
        76,
        "{ way = \"row by row\", weaver = \"cane fine\", colours = [[\"blue\", \"blue\", \"natural\", \"natural\"]], rows = 30 }",
    );
    assert_eq!(bands.sighting.look, Look::Bands, "{bands:?}");
}

#[test]
fn a_drawing_is_woven_as_it_is_seen() {
    let basket =
        woven(8, "{ weave = \"drawn\", weaver = \"cane fine\", chart = [\"X...\", \"XX..\"], rows = 4 }");
    // Numbers rise to the left on a basket that stands on its base, so the drawing's right comes first;
    // its lowest line is the first row.
    assert_eq!(cells(&basket, 3), "..XX..XX / ...X...X / ..XX..XX");
}

#[test]
fn dyed_staves_show_where_no_weaver_is() {
    let basket = woven_with(
        9,
        "{ weaver = \"cane fine\", colours = \"red\", rows = 4 }",
        "colours = [\"blue\", \"green\", \"black\"]",
    );
    assert_eq!(colours(&basket.body.weave, 2, 9, Face::Outside), seen());
}

/// Two weavers that chase take the rows in turn; the one that weaves a single row alone has nobody to take turns with.
#[test]
fn weavers_take_turns_where_there_are_several() {
    let chase = woven(8, "{ weave = \"chase\", weaver = \"cane fine\", rows = 4 }");
    let told = |from: u32, to: u32| format!("{:?}", chase.body.weave.bands_within(from, to));
    assert!(told(1, 4).contains("weave-how-in-turn"), "{}", told(1, 4));
    assert!(!told(1, 1).contains("weave-how-in-turn"), "{}", told(1, 1));
    assert!(told(1, 1).contains("weave-how-on"), "{}", told(1, 1));
}

/// Each row is told once, whatever of the weaving is asked for; what is begun already goes on.
#[test]
fn bands_tell_each_row_once() {
    let basket = woven(
        13,
        "{ weave = \"twill 2/2\", weaver = \"cane fine\", start = 3, rows = 5 }, { weave = \"chase\", weaver = \"cane fine\", rows = 2 }, { weave = \"wale 3\", weaver = \"cane fine\", rows = 9 }",
    );
    let weave = &basket.body.weave;
    for cut in 1..16 {
        let bands = [weave.bands_within(1, cut), weave.bands_within(cut + 1, 16)];
        assert!(bands[0].iter().all(|band| band.last <= cut) && bands[1].iter().all(|band| band.first > cut));
        let mut told: Vec<u32> = bands
            .iter()
            .flatten()
            .flat_map(|band| (band.first..=band.last).step_by(band.every as usize))
            .collect();
        told.sort_unstable();
        assert_eq!(told, (1..=16).collect::<Vec<_>>(), "cut above row {cut}");
    }
    let begins = |from: u32, to: u32| -> Vec<String> {
        let said = format!("{:?}", weave.bands_within(from, to)[0].text);
        ["weave-begin-over", "weave-begin-behind", "weave-on-over", "weave-on-under", "weave-on-behind"]
            .into_iter()
            .filter(|id| said.contains(id))
            .map(str::to_owned)
            .collect()
    };
    assert_eq!(begins(1, 2), ["weave-begin-over"]);
    // 13 staves leave one of four over: the second row begins one over, the third under two.
    assert_eq!(begins(2, 2), ["weave-on-over"]);
    assert_eq!(begins(3, 5), ["weave-on-under"]);
    assert_eq!(begins(8, 10), ["weave-begin-behind"]);
    assert_eq!(begins(9, 16), ["weave-on-behind"]);
}

/// Five plain rows, a blue twill that climbs, plain rows to the rim.
#[test]
fn the_channel_marker_is_a_two_colour_spiral() {
    let text = include_str!("../../../patterns/channel-marker.toml");
    let pattern = read(text, Catalogue::built_in()).expect("the pattern reads");
    let draft = Draft::of(pattern, Catalogue::built_in(), &Hand::USUAL);
    let basket = &draft.basket;
    let twill = &basket.body.weave.courses[1];
    let look = basket.body.weave.look(twill, Face::Outside);
    assert_eq!(look.sighting.look, Look::Spiral);
    assert!(look.lean.is_some() && look.turns > 0.4);
    let colour =
        |row: u32, stave: u32| basket.body.weave.colour(row, stave, Face::Outside).colour.name.as_str();
    let (first, count) = (twill.first_row, basket.body.uprights().count);
    for row in first..first + twill.rows - 1 {
        let blue = (1..=count).filter(|stave| colour(row, *stave) == "blue").count();
        assert!((32..=34).contains(&blue), "{blue} of {count}");
        for stave in 1..count {
            assert_eq!(colour(row, stave), colour(row + 1, stave + 1), "row {row}, stave {stave}");
        }
    }
    assert!(
        draft.findings.iter().all(|finding| finding.grade == basket::Grade::Note),
        "{:?}",
        draft.findings
    );
}

/// Drawn rows that take turns are told together, and as far as they are asked for.
#[test]
fn rows_that_take_turns_are_told_together() {
    let basket =
        woven(12, "{ weave = \"drawn\", weaver = \"cane fine\", chart = [\"X.X.\", \".X.X\"], rows = 9 }");
    let rows = |from, to| -> Vec<(u32, u32, u32)> {
        let bands = basket.body.weave.bands_within(from, to);
        bands.iter().map(|band| (band.first, band.last, band.every)).collect()
    };
    assert_eq!(rows(1, 9), [(1, 9, 2), (2, 8, 2)]);
    assert_eq!(rows(2, 4), [(3, 3, 2), (2, 4, 2)]);
    assert_eq!(rows(5, 5), [(5, 5, 2)]);
}

/// A row that skips a stave passes it as the one before.
#[test]
fn the_skipped_stave_is_named() {
    let basket = woven(12, "{ weave = \"skip one\", weaver = \"cane fine\", rows = 6 }");
    let weave = &basket.body.weave;
    let bands = weave.bands();
    let skip = bands[0].text.iter().find(|message| message.id == "weave-band-skip").expect("it is told");
    assert_eq!(skip.args, [("row", 2_u32.into()), ("last", 6_u32.into()), ("stave", 2_u32.into())]);
    // Taken up in row 3, the weaver goes on past one stave; the one it skips is named.
    let later = weave.bands_within(3, 6);
    let said = format!("{:?}", later[0].text[0]);
    assert!(said.contains("weave-on-") && said.contains("(\"count\", Count(1))"), "{said}");
    let skip = later[0].text.iter().find(|message| message.id == "weave-band-skip").expect("it is told");
    assert_eq!(skip.args, [("row", 3_u32.into()), ("last", 6_u32.into()), ("stave", 3_u32.into())]);
    for row in 2..=6_u32 {
        let outside = |stave| weave.cell(row, stave).outside.is_some();
        assert_eq!(outside(row - 1), outside(row), "row {row}");
    }
}

/// Where rows do not meet, the fault stays on one line.
#[test]
fn a_seam_stays_where_it_is() {
    let begins = |count| -> Vec<u32> {
        let course =
            "{ weave = \"plain\", way = \"row by row\", start = 5, weaver = \"cane fine\", rows = 3 }";
        woven(count, course).body.weave.each_row.iter().map(|row| row.begin).collect()
    };
    assert_eq!(begins(79), [5, 5, 5]);
    assert_eq!(begins(80), [5, 10, 15]);
}

/// A step of two in over three, under three: each row lies two staves beside the one below.
#[test]
fn twills_step_by_more_than_one() {
    let basket = woven(
        12,
        "{ weave = \"twill 3/3\", way = \"row by row\", lean = \"left\", step = 2, weaver = \"cane fine\", rows = 3 }",
    );
    assert_eq!(cells(&basket, 3), "XXX...XXX... / ..XXX...XXX. / X...XXX...XX");
    assert_eq!(basket.body.weave.courses[0].verdict.diagonal.lean(), Some(basket::pattern::Lean::Left));
}

/// What is told of a course: the prediction reads rows from where they begin, counts slewed colours, and
/// takes a row in which a strand ends for the colour of its longer part.
#[test]
fn looks_are_told() {
    let told = |count, course: &str, face| {
        let basket = woven(count, &format!("{{ weaver = \"cane fine\", {course} }}"));
        basket.body.weave.look(&basket.body.weave.courses[0], face).said().id
    };
    let twill = "weave = \"twill 2/2\", colours = \"blue\", start = 31, rows = 20";
    assert_eq!(told(81, twill, Face::Outside), "look-turns-right");
    assert_eq!(told(81, twill, Face::Inside), "look-turns-left");
    assert_eq!(
        told(81, "weave = \"slew\", colours = [\"natural\", \"blue\"], rows = 20", Face::Outside),
        "look-checks"
    );
    assert_eq!(told(81, "weave = \"slew\", rows = 20", Face::Outside), "look-plain");
    assert_eq!(told(81, "colours = [[\"natural\", \"blue\"]], rows = 30", Face::Outside), "look-bands");
    assert_eq!(
        told(80, "weave = \"skip one\", colours = \"blue\", rows = 20", Face::Outside),
        "weaves-skips"
    );
    assert_eq!(
        told(80, "weave = \"pairing\", colours = [\"red\", \"natural\"], rows = 1", Face::Outside),
        "look-chain"
    );
}
