//! Where strands lie together, in baskets of every weave and size: no two overlaps within an inch up the wall
//! touch or share a stave.

mod woven_bench;

use basket::pattern::{Way, read};
use basket::{Basket, Catalogue, Hand, assemble};
use proptest::prelude::*;
use proptest::sample::select;

const INCH: f64 = 25.4;

/// The staves of a row, or of the end of one and the beginning of another, in which strands lie together.
#[derive(Debug)]
struct Overlap {
    /// Heights along the mould of the rows in which it begins and ends, in mm.
    low: f64,
    high: f64,
    staves: Vec<u32>,
}

/// All overlaps: from where a new strand starts to where the old one is cut, and from where a row that is a
/// piece of its own begins to where its end lies over its beginning.
fn overlaps(basket: &Basket) -> Vec<Overlap> {
    let weave = &basket.body.weave;
    let count = basket.body.uprights().count;
    let along = |row: u32| weave.each_row[row as usize - 1].along.to_mm();
    let mut all = Vec::new();
    for course in &weave.courses {
        for join in &course.joins {
            let reach = (join.cut_over + count - join.start_behind) % count;
            let place = course.fabric.place_in(join.row - course.first_row, join.cut_over - 1);
            let from = if place < reach { join.row - course.fabric.every() } else { join.row };
            let staves = (0..=reach).map(|on| (join.start_behind - 1 + on) % count + 1);
            all.push(Overlap { low: along(from), high: along(join.row), staves: staves.collect() });
        }
        let rows = weave.each_row.iter().filter(|row| row.number >= course.first_row);
        // Rows that do not meet themselves begin on one line, where the fault is.
        let spread = course.way == Way::RowByRow && course.verdict.closes;
        for row in rows.take(course.rows as usize).filter(|_| spread) {
            let at = row.along.to_mm();
            let staves = (0..4).map(|on| (row.begin - 1 + on) % count + 1).collect();
            all.push(Overlap { low: at, high: at, staves });
        }
    }
    all
}

/// Free staves between two, the shorter way round; none where they touch or share one.
fn free(a: &Overlap, b: &Overlap, count: u32) -> u32 {
    let apart = |a: u32, b: u32| a.abs_diff(b).min(count - a.abs_diff(b));
    let nearest = a.staves.iter().flat_map(|a| b.staves.iter().map(move |b| apart(*a, *b))).min();
    nearest.expect("both hold staves").saturating_sub(1)
}

/// A course but for its length.
fn course() -> impl Strategy<Value = String> {
    let one = select(vec![
        "weave = \"plain\"",
        "weave = \"plain\", doubled = 3",
        "weave = \"twill 2/2\", start = 9",
        "weave = \"twill 3/1\"",
        "weave = \"skip one\"",
        "weave = \"drawn\", chart = [\"XX..\", \"X..X\"]",
        "weave = \"chase\"",
        "weave = \"chase twill 2/2\"",
        "weave = \"pairing\"",
        "weave = \"wale 3\"",
        "weave = \"wale 4\"",
        "weave = \"slew\"",
        "weave = \"plain\", way = \"row by row\"",
        "weave = \"reversed twill 2/2\"",
    ]);
    let weaver = select(vec!["cane fine-fine", "cane fine", "cane common"]);
    let strands = select(vec!["", ", strands = [\"9 ft\", \"14 ft\", \"8 ft\"]"]);
    (one, weaver, strands)
        .prop_map(|(weave, weaver, strands)| format!("{weave}, weaver = \"{weaver}\"{strands}"))
}

/// A pattern of two courses.
fn pattern() -> impl Strategy<Value = String> {
    let mould = (5.0..12.0_f64, 0.8..1.6_f64, 3.0..7.0_f64);
    (35_u32..=110, mould, course(), course(), 6_u32..30).prop_map(
        |(count, (base, flare, height), lower, upper, rows)| {
            let rim = base * flare;
            format!(
                "title = \"A basket\"\nunits = \"in\"\n[mould]\nbase = \"{base:.2}\"\nrim = \"{rim:.2}\"\n\
                 height = \"{height:.2}\"\n[staves]\ncount = {count}\nstock = \"flat oval reed 1/4 in\"\n\
                 [weave]\ncourses = [{{ {lower}, rows = {rows} }}, {{ {upper}, until = \"1/2 below mould top\" }}]\n"
            )
        },
    )
}

fn woven(text: &str) -> Basket {
    let pattern =
        read(text, Catalogue::built_in()).unwrap_or_else(|problems| panic!("{problems:#?}\n{text}"));
    assemble(&pattern, Catalogue::built_in(), &Hand::USUAL)
}

/// How far apart two are up the wall, in mm.
fn up(a: &Overlap, b: &Overlap) -> f64 {
    (a.low - b.high).max(b.low - a.high).max(0.0)
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 128, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn overlaps_keep_apart(text in pattern()) {
        let basket = woven(&text);
        let count = basket.body.uprights().count;
        let all = overlaps(&basket);
        // Each other one within an inch takes its own staves and those on which this one would reach it; where all
        // of them together leave none, overlaps have to touch.
        let crowded = |one: &Overlap| {
            let near = all.iter().filter(|other| up(one, other) < INCH);
            near.map(|other| other.staves.len() + one.staves.len() + 1).sum::<usize>() >= count as usize
        };
        let roomy: Vec<&Overlap> = all.iter().filter(|one| !crowded(one)).collect();
        for (index, high) in roomy.iter().enumerate() {
            for low in roomy.iter().take(index).filter(|low| up(high, low) < INCH) {
                prop_assert!(free(low, high, count) > 0, "{low:?} {high:?} on {count}");
            }
        }
    }
}

/// A step says how many joins to expect, where dyed strands are joined, and how, in so far as it has any: natural
/// strands 15 ft long last several rounds of 2 ft, and two rows take none.
#[test]
fn steps_tell_the_joins_that_they_have() {
    let told = |course: &str| -> Vec<Vec<&'static str>> {
        let draft = woven_bench::drafted(73, course, "");
        let said = |step: &basket::steps::Step| -> Vec<&'static str> {
            step.text.iter().map(|text| text.id).filter(|id| id.starts_with("step-joins")).collect()
        };
        let woven =
            draft.steps.iter().filter(|step| step.text.iter().any(|text| text.id.starts_with("weave-band")));
        woven.map(said).collect()
    };
    let natural = told("{ weaver = \"cane fine\", rows = 40 }");
    assert!(
        natural.iter().any(|ids| ids == &["step-joins-text-expect", "step-joins-text-how"]),
        "{natural:?}"
    );
    assert!(natural.iter().all(|ids| !ids.contains(&"step-joins-text-dyed")), "{natural:?}");
    let dyed = told("{ weaver = \"cane fine\", colours = [[\"natural\", \"blue\"]], rows = 40 }");
    assert!(dyed.iter().any(|ids| ids == &["step-joins-text-dyed", "step-joins-text-how"]), "{dyed:?}");
    assert!(dyed.iter().all(|ids| !ids.contains(&"step-joins-text-expect")), "{dyed:?}");
    let short = told("{ weaver = \"cane fine\", rows = 2 }");
    assert!(!short.is_empty() && short.iter().all(Vec::is_empty), "{short:?}");
}
