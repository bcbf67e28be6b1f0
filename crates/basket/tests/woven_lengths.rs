//! Woven baskets: how long the weavers are, and where they are joined.

mod woven_bench;

use basket::Length;
use basket::Piece;
use basket::pattern::Way;
use basket::weave::Course;
use std::f64::consts::TAU;
use woven_bench::{course, drafted, sum, woven};

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

/// Each of two weavers that chase over one, under one changes sides in every gap, the one before its own next row
/// included: it is as long as one that goes round row by row.
#[test]
fn a_chasing_weaver_goes_on_in_its_own_row() {
    let length = |weave: &str| {
        course(&woven(72, &format!("{{ {weave}, weaver = \"cane fine\", rows = 20 }}"))).length.to_mm()
    };
    let (chased, level) = (length("weave = \"chase\""), length("way = \"row by row\""));
    assert!((chased - level).abs() < 1e-6, "{chased} {level}");
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
    let cuts: Vec<_> = draft.cuts.iter().filter(|cut| cut.piece == Piece::Course(1)).collect();
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
