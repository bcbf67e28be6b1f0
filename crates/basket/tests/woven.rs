//! Woven baskets: what lies where, in which colour, how long it is and where it is joined.

use std::f64::consts::TAU;

use basket::cuts::CutPiece;
use basket::pattern::{Way, read};
use basket::weave::look::Look;
use basket::weave::{Course, Face, Weave, instructions};
use basket::{Basket, Catalogue, Draft, Hand, Length};

/// A straight-sided basket 8 in across on this many staves, with these courses.
fn woven(count: u32, courses: &str) -> Basket {
    woven_with(count, courses, "")
}

fn woven_with(count: u32, courses: &str, staves: &str) -> Basket {
    drafted(count, courses, staves).basket
}

fn drafted(count: u32, courses: &str, staves: &str) -> Draft {
    let text = format!(
        "title = \"A basket\"\nunits = \"in\"\n[mould]\nbase = \"8\"\nheight = \"6\"\nside = \"straight\"\nrim = \"8\"\n\
         [staves]\ncount = {count}\nstock = \"flat oval reed 1/4 in\"\n{staves}\n[weave]\ncourses = [{courses}]\n"
    );
    let pattern =
        read(&text, Catalogue::built_in()).unwrap_or_else(|problems| panic!("{problems:#?}\n{text}"));
    Draft::of(pattern, Catalogue::built_in(), &Hand::USUAL)
}

fn course(basket: &Basket) -> &Course {
    &basket.body.weave.courses[0]
}

/// Rows from the bottom upward, the first stave first: `X` where a weaver is seen from outside.
fn cells(basket: &Basket, rows: u32) -> String {
    let sign = |row, stave| if basket.body.weave.cell(row, stave).outside.is_some() { 'X' } else { '.' };
    let row = |row| -> String { (1..=basket.body.uprights().count).map(|stave| sign(row, stave)).collect() };
    (1..=rows).map(row).collect::<Vec<_>>().join(" / ")
}

/// The first letter of each colour seen.
fn colours(weave: &Weave, rows: u32, count: u32, face: Face) -> String {
    let letter = |row, stave| weave.colour(row, stave, face).colour.name.chars().next().unwrap_or('?');
    let row = |row| -> String { (1..=count).map(|stave| letter(row, stave)).collect() };
    (1..=rows).map(row).collect::<Vec<_>>().join(" / ")
}

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

/// Staves blue, green, black; the weaver red over every other stave.
fn seen() -> String {
    let staves = ['b', 'g', 'b'];
    let row = |over_first: bool| -> String {
        (0..9).map(|stave| if (stave % 2 == 0) == over_first { 'r' } else { staves[stave % 3] }).collect()
    };
    format!("{} / {}", row(true), row(false))
}

fn sum(course: &Course) -> f64 {
    course.weavers.iter().map(|weaver| weaver.length.to_mm()).sum()
}

/// Where the weaver changes sides at every stave it goes the longest way; floats shorten it.
#[test]
fn floats_shorten_the_weaver() {
    let length = |weave: &str| {
        course(&woven(77, &format!("{{ weave = \"{weave}\", weaver = \"cane fine\", rows = 20 }}")))
            .length
            .to_mm()
    };
    let straight = |course: &Course| course.length.to_mm() / (1.0 + course.take_up.most);
    let plain = woven(77, "{ weaver = \"cane fine\", rows = 20 }");
    let flat = straight(course(&plain));
    let (plain, two, three) = (length("plain"), length("twill 2/2"), length("twill 3/3"));
    assert!(plain > two && two > three && three > flat);
    // Half the crossings, half the take-up; a third, a third.
    assert!(((two - flat) / (plain - flat) - 0.5).abs() < 0.01);
    assert!(((three - flat) / (plain - flat) - 1.0 / 3.0).abs() < 0.01);
}

/// A weaver more outside than inside runs round a wider circle: its rounds are longer by 2π times half
/// the thickness of stave and weaver, times the share.
#[test]
fn a_weaver_that_lies_outside_goes_a_wider_way() {
    let length = |weave: &str| {
        let basket = woven(77, &format!("{{ weave = \"{weave}\", weaver = \"cane fine\", rows = 20 }}"));
        let course = course(&basket);
        (course.length.to_mm(), basket.body.uprights().thickness.to_mm() + course.weaver.thickness.to_mm())
    };
    let ((outside, thickness), (inside, _)) = (length("twill 3/1"), length("twill 1/3"));
    let wanted = 20.0 * TAU * thickness * 0.5 * (0.5 + 0.5);
    assert!((outside - inside - wanted).abs() < 1e-6, "{} {wanted}", outside - inside);
}

#[test]
fn slewed_twined_and_doubled_weavers_are_counted() {
    let of = |text: &str| {
        let basket = woven(77, text);
        let course = course(&basket);
        assert!((sum(course) - course.length.to_mm()).abs() < 1e-6);
        let rows: f64 = basket.body.weave.each_row.iter().map(|row| row.length.to_mm()).sum();
        assert!((sum(course) - rows).abs() < 1e-6);
        (course.weavers.len(), course.length.to_mm(), course.to.to_mm())
    };
    let (one, plain, height) = of("{ weaver = \"cane fine\", rows = 10 }");
    let (two, slewed, slewed_height) = of("{ weave = \"slew\", weaver = \"cane fine\", rows = 10 }");
    assert_eq!((one, two), (1, 2));
    assert!((slewed - 2.0 * plain).abs() < 1e-6 && (slewed_height - 2.0 * height).abs() < 1e-9);
    let (rods, waled, waled_height) = of("{ weave = \"wale 4\", weaver = \"cane fine\", rows = 10 }");
    assert_eq!(rods, 4);
    // Half the crossings of plain weave: between the straight way and plain weave's.
    assert!(waled > 4.0 * 0.9 * plain && waled < 4.0 * plain);
    // Three rods lie over each other outside; the one behind wedges them up by a share of its thickness, 1 mm.
    assert!((waled_height - 3.0 * height - 10.0 * 0.45).abs() < 1e-9);
    let (both, doubled, doubled_height) = of("{ weaver = \"cane fine\", doubled = 3, rows = 10 }");
    assert_eq!(both, 2);
    assert!((doubled - 1.3 * plain).abs() < 1e-6 && (doubled_height - 1.3 * height).abs() < 1e-9);
}

#[test]
fn rows_are_packed_or_spaced() {
    let height = |how: &str| course(&woven(77, &format!("{{ weaver = \"cane fine\", rows = 10{how} }}"))).to;
    let edge_to_edge = height("");
    assert!((height(", packing = \"90 %\"").to_mm() - 0.9 * edge_to_edge.to_mm()).abs() < 1e-9);
    let spaced = height(", spaced = \"1/8\"");
    assert!(((spaced - edge_to_edge).to_mm() - 10.0 * 3.175).abs() < 1e-9);
}

/// Chasing weavers of two widths take turns in height as well.
#[test]
fn an_accent_lies_between_narrow_rows() {
    let basket = woven(76, "{ weave = \"chase\", weavers = [\"cane fine\", \"cane common\"], rows = 6 }");
    let rows = &basket.body.weave.each_row;
    let widths: Vec<f64> =
        course(&basket).weavers.iter().map(|weaver| weaver.material.width.to_mm()).collect();
    for (row, index) in rows.iter().zip(0..) {
        assert!((row.pitch.to_mm() - widths[index % 2]).abs() < 1e-9);
    }
    assert!((course(&basket).to.to_mm() - 3.0 * (widths[0] + widths[1])).abs() < 1e-9);
}

/// Both ends of every join are hidden, and joins keep an inch from each other.
#[test]
fn joins_are_hidden_and_apart() {
    for (count, weave) in
        [(77, "plain"), (77, "twill 2/2"), (76, "chase"), (77, "wale 3"), (76, "skip one"), (77, "slew")]
    {
        let basket = woven(
            count,
            &format!("{{ weave = \"{weave}\", weaver = \"cane fine\", until = \"1 below mould top\" }}"),
        );
        let course = course(&basket);
        assert!(course.joins.len() > 5, "{weave}: {}", course.joins.len());
        let middle =
            basket.body.form.profile.at(Length::inches(3.0)).radius + basket.body.uprights().thickness / 2.0;
        let girth = middle.to_mm() * TAU;
        for (join, index) in course.joins.iter().zip(1..) {
            let weaver = Some(join.weaver - 1);
            let own_row_below = join.row - if weave == "chase" { 2 } else { 1 };
            let start_row = if join.start_behind > join.cut_over { own_row_below } else { join.row };
            let cut = basket.body.weave.cell(join.row, join.cut_over);
            let start = basket.body.weave.cell(start_row, join.start_behind);
            if weave.starts_with("wale") {
                assert_ne!(cut.inside, weaver, "{weave} {join:?}");
                assert_eq!(start.inside, weaver, "{weave} {join:?}");
            } else {
                assert!(cut.outside.is_some(), "{weave} {join:?}");
                let back = (join.cut_over + count - join.start_behind) % count;
                assert!((4..=8).contains(&back), "{weave} {join:?}");
                assert!(start.inside.is_some(), "{weave} {join:?}");
            }
            for other in course.joins.iter().skip(index) {
                let rows = &basket.body.weave.each_row;
                let up = rows[join.row as usize - 1].along - rows[other.row as usize - 1].along;
                let round = (join.cut_over + count - other.cut_over) % count;
                let round = f64::from(round.min(count - round)) * girth / f64::from(count);
                assert!(up.abs().to_mm() >= 25.4 || round >= 25.4 - 1e-9, "{weave}: {join:?} {other:?}");
            }
        }
    }
}

/// Strands are used in order, none longer than it is, and together they are the weaver and its overlaps.
#[test]
fn strands_make_up_the_weaver() {
    let basket =
        woven(77, "{ weaver = \"cane fine\", strands = [\"20 ft\", \"9 ft\", \"12 ft\"], rows = 50 }");
    let weaver = &course(&basket).weavers[0];
    let own = weaver.strand.to_mm();
    let listed = [20.0, 9.0, 12.0].map(|feet| feet * 304.8);
    for (strand, index) in weaver.strands.iter().zip(0..) {
        let whole = listed.get(index).copied().unwrap_or(own);
        assert!(strand.cut.to_mm() <= whole + 1e-6, "{index}: {strand:?}");
        let last = index + 1 == weaver.strands.len();
        assert!(last || strand.cut.to_mm() > whole - 800.0, "{index} is cut short: {strand:?}");
    }
    let step = weaver.length.to_mm() / (50.0 * 77.0);
    let overlaps = (weaver.cut - weaver.length).to_mm() / step;
    let most = 7.0 * weaver.strands.len() as f64;
    assert!(overlaps >= 4.0 * weaver.strands.len() as f64 - 0.1 && overlaps <= most, "{overlaps}");
    assert!(weaver.strands.is_sorted_by_key(|strand| (strand.row, strand.place)));
}

#[test]
fn strands_change_colour_at_joins() {
    let draft = drafted(77, "{ weaver = \"cane fine\", colours = [[\"natural\", \"blue\"]], rows = 40 }", "");
    let course = course(&draft.basket);
    assert!(course.joins.iter().all(|join| join.recolour));
    let weaver = &course.weavers[0];
    for pair in weaver.strands.windows(2) {
        assert_ne!(pair[0].colour, pair[1].colour);
        let before = if pair[1].place > 0 { (pair[1].row, pair[1].place - 1) } else { (pair[1].row - 1, 76) };
        let (old, new) = (weaver.colour_at(before.0, before.1), weaver.colour_at(pair[1].row, pair[1].place));
        assert_ne!(old, new);
    }
    let cuts: Vec<_> = draft.cuts.iter().filter(|cut| cut.piece == CutPiece::Weaver).collect();
    assert_eq!(cuts.len(), 2);
    assert_eq!(cuts.iter().map(|cut| cut.count).sum::<u32>(), course.strands);
}

/// Each row by itself: a strand each, that laps over its own beginning.
#[test]
fn rows_by_themselves_are_strands() {
    let basket = woven(76, "{ way = \"row by row\", weaver = \"cane fine\", rows = 12 }");
    let course = course(&basket);
    assert_eq!((course.way, course.strands), (Way::RowByRow, 12));
    assert_eq!(course.joins, []);
    for (strand, row) in course.weavers[0].strands.iter().zip(&basket.body.weave.each_row) {
        let lap = (strand.cut - row.length).to_mm() / (row.length.to_mm() / 76.0);
        assert!((lap - 4.0).abs() < 1e-9, "{lap}");
    }
}

#[test]
fn instructions_say_each_row() {
    let basket = woven(
        13,
        "{ weave = \"twill 2/2\", weaver = \"cane fine\", start = 3, rows = 5 }, { weave = \"chase\", weaver = \"cane fine\", rows = 2 }, { weave = \"wale 3\", weaver = \"cane fine\", rows = 9 }",
    );
    let all = instructions(&basket.body.weave);
    let rows: Vec<(u32, u32)> = all.iter().map(|instruction| (instruction.first, instruction.last)).collect();
    let mut told: Vec<u32> =
        all.iter().flat_map(|one| (one.first..=one.last).step_by(one.every as usize)).collect();
    told.sort_unstable();
    assert_eq!(told, (1..=16).collect::<Vec<_>>(), "each row is told once");
    // The wale's rows after its first are woven alike.
    assert_eq!(rows.last(), Some(&(9, 16)));
    // On 13 staves, the second row goes over one more, as the first ended after over one.
    let first = |instruction: usize| {
        let message = &all[instruction].text[0];
        (message.id, format!("{:?}", message.args))
    };
    assert_eq!(first(0).0, "weave-row-over");
    assert!(first(0).1.contains("(\"stave\", Count(3))") && first(0).1.contains("(\"first\", Count(2))"));
    assert!(first(1).1.contains("(\"first\", Count(1))"));
    assert_eq!(first(2).0, "weave-row-under");
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

#[test]
fn rows_that_take_turns_are_told_together() {
    let basket = woven(13, "{ weave = \"plain\", weaver = \"cane fine\", rows = 9 }");
    let rows: Vec<(u32, u32, u32)> =
        instructions(&basket.body.weave).iter().map(|one| (one.first, one.last, one.every)).collect();
    assert_eq!(rows, [(1, 9, 2), (2, 8, 2)]);
}

/// A row that skips a stave passes it as the one before.
#[test]
fn the_skipped_stave_is_named() {
    let basket = woven(12, "{ weave = \"skip one\", weaver = \"cane fine\", rows = 6 }");
    let all = instructions(&basket.body.weave);
    assert_eq!(all[0].text[0].id, "weave-row-skip-none");
    for row in 2..=6_u32 {
        let told = all.iter().find(|one| one.first == row).expect("told by itself");
        assert_eq!(told.text[0].args, [("stave", row.into())]);
        let outside = |stave| basket.body.weave.cell(row, stave).outside.is_some();
        assert_eq!(outside(row - 1), outside(row), "row {row}");
    }
}

/// Rows begun one by one overlap their beginnings: those, and all joins, keep an inch apart, along or up.
#[test]
fn beginnings_do_not_lie_above_each_other() {
    let inch = Length::inches(1.0);
    for (count, course) in [
        (80, "weave = \"plain\", weaver = \"cane fine\""),
        (80, "weave = \"reversed twill 2/2\", weaver = \"cane common\""),
        (81, "weave = \"wale 3\", weaver = \"round reed 1\""),
    ] {
        let way = if course.contains("reversed") { "" } else { "way = \"row by row\", " };
        let basket = woven(count, &format!("{{ {course}, {way}until = \"1 below mould top\" }}"));
        let round = TAU * basket.body.form.profile.at(Length::ZERO).radius;
        let rows = &basket.body.weave.each_row;
        assert!(rows.len() > 20);
        for (low, high) in rows.iter().enumerate().flat_map(|(at, low)| {
            rows.iter()
                .skip(at + 1)
                .map(move |high| (low, high))
                .filter(|(low, high)| high.along - low.along < inch)
        }) {
            let staves = low.begin.abs_diff(high.begin);
            let apart = round * (f64::from(staves.min(count - staves)) / f64::from(count));
            assert!(apart > inch * 0.98, "{count}: rows {} and {}: {apart:?}", low.number, high.number);
        }
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

/// A strand shorter than half a round is refused, and the joins stay few.
#[test]
fn strands_of_no_use() {
    let joins = |strand: &str| {
        let draft = drafted(
            999,
            &format!("{{ weave = \"wale 5\", weaver = \"cane fine\", strands = [{strand}], rows = 40 }}"),
            "",
        );
        let basket = &draft.basket;
        let refused = draft.findings.iter().filter(|finding| finding.code == "strand-too-short").count();
        (basket.body.weave.courses[0].joins.len(), refused)
    };
    let short = vec!["\"1/2\""; 400].join(", ");
    let (many, refused) = joins(&short);
    assert!(many <= 5 * 40 * 3 && refused == 1, "{many}, {refused}");
    assert_eq!(joins("\"12 ft\"").1, 0);
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
