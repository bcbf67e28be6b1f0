//! The search for a look: every answer is woven again by a weaver who counts staves, and what was
//! promised is looked for in that weaving.

use std::sync::LazyLock;

use basket::pattern::{Lean, Rule, read};
use basket::weave::fabric::Fabric;
use basket::weave::find::{Proposal, Wanted, find};
use basket::weave::look::Look;
use basket::weave::{Chase, Face, Level, Passing, Reversed, SkipOne, Spiral, Twined};
use basket::{Basket, Catalogue, assemble};

/// Rows that are woven again.
const ROWS: u32 = 40;

/// Which weaver, if any, is outside at each crossing: rows of staves, woven by counting.
fn woven(proposal: &Proposal) -> Vec<Vec<Option<u32>>> {
    let count = proposal.count;
    match &proposal.fabric.passing {
        Passing::Spiral(Spiral { rule }) => {
            let mut hand = Hand::new(*rule, 0);
            (0..ROWS).map(|_| hand.round(count, 0)).collect()
        }
        Passing::Chase(Chase { rule, weavers }) => {
            // Each weaver begins where the search lets it begin, then goes its own way.
            let begins = |weaver: u32| {
                (0..rule.repeat())
                    .find(|&phase| {
                        Hand::new(*rule, phase).round(count, weaver) == first_row(proposal, weaver)
                    })
                    .expect("a weaver begins somewhere in its repeat")
            };
            let mut hands: Vec<Hand> = (0..*weavers).map(|weaver| Hand::new(*rule, begins(weaver))).collect();
            (0..ROWS).map(|row| hands[(row % weavers) as usize].round(count, row % weavers)).collect()
        }
        Passing::Level(Level { rule, step }) => level(*rule, count, |_| *step),
        Passing::Reversed(Reversed { rule, band }) => {
            level(*rule, count, |row| if row / band % 2 == 0 { 1 } else { -1 })
        }
        Passing::SkipOne(SkipOne) => {
            let mut over = false;
            let mut rows = Vec::new();
            for row in 0..ROWS {
                let mut cells = Vec::new();
                for stave in 0..count {
                    // Changes sides at each stave but the skipped one, a stave further each round.
                    if row == 0 || stave != (row - 1) % count {
                        over = !over;
                    }
                    cells.push(over.then_some(0));
                }
                rows.push(cells);
            }
            rows
        }
        Passing::Twined(Twined { weavers, step_up }) => {
            let mut turn = 0;
            let mut rows = Vec::new();
            for _ in 0..ROWS {
                if *step_up {
                    turn = 0;
                }
                rows.push(
                    (0..count)
                        .map(|_| {
                            let now = turn;
                            turn = (turn + 1) % weavers;
                            Some(now)
                        })
                        .collect(),
                );
            }
            rows
        }
        Passing::Drawn(_) => unreachable!("the search draws nothing"),
    }
}

/// Rows that each begin anew, so many staves on from the row below.
fn level(rule: Rule, count: u32, on: impl Fn(u32) -> i32) -> Vec<Vec<Option<u32>>> {
    let mut phase = 0;
    (0..ROWS)
        .map(|row| {
            let cells = Hand::new(rule, phase).round(count, 0);
            phase = (i64::from(phase) - i64::from(on(row))).rem_euclid(i64::from(rule.repeat())) as u32;
            cells
        })
        .collect()
}

fn first_row(proposal: &Proposal, row: u32) -> Vec<Option<u32>> {
    (0..proposal.count).map(|stave| proposal.fabric.cell(row, stave).outside).collect()
}

/// A hand that goes over some, under some, and remembers where it is.
struct Hand {
    rule: Rule,
    done: u32,
}

impl Hand {
    fn new(rule: Rule, done: u32) -> Self {
        Self { rule, done }
    }
    fn round(&mut self, count: u32, weaver: u32) -> Vec<Option<u32>> {
        let mut row = Vec::new();
        for _ in 0..count {
            row.push((self.done < self.rule.over()).then_some(weaver));
            self.done = if self.done + 1 == self.rule.repeat() { 0 } else { self.done + 1 };
        }
        row
    }
}

/// The colours seen in the weaving done again.
fn colours(proposal: &Proposal) -> Vec<Vec<u8>> {
    let colouring = &proposal.colouring;
    let row = |(row, cells): (usize, Vec<Option<u32>>)| {
        let colour = |(stave, cell): (usize, Option<u32>)| match (cell, colouring.every) {
            (None, _) => colouring.staves[stave % colouring.staves.len()],
            (Some(_), Some(every)) => colouring.weavers[row / every as usize % colouring.weavers.len()],
            (Some(weaver), None) => colouring.weavers[weaver as usize % colouring.weavers.len()],
        };
        cells.into_iter().enumerate().map(colour).collect()
    };
    woven(proposal).into_iter().enumerate().map(row).collect()
}

/// The share of crossings that look like the one so many rows up and staves on; the seam apart.
fn alike(seen: &[Vec<u8>], staves: i64, rows: usize) -> f64 {
    let (mut same, mut all) = (0_u32, 0_u32);
    for row in 0..seen.len() - rows {
        for stave in 0..i64::try_from(seen[row].len()).expect("few staves") {
            if let Some(other) = usize::try_from(stave + staves).ok().and_then(|at| seen[row + rows].get(at))
            {
                all += 1;
                same += u32::from(*other == seen[row][stave as usize]);
            }
        }
    }
    f64::from(same) / f64::from(all)
}

/// What is asked, and the answers.
static ANSWERS: LazyLock<Vec<(Wanted, Vec<Proposal>)>> = LazyLock::new(|| {
    let looks = [Look::Spiral, Look::Columns, Look::Bands, Look::Checks, Look::Arrows, Look::Plain];
    let asked = looks
        .into_iter()
        .flat_map(|look| [(1, 73), (2, 73), (3, 60)].map(|(colours, near)| (look, colours, near)));
    let wanted = asked.map(|(look, colours, near)| {
        // A narrow range keeps the test quick.
        Wanted { counts: near - 5..=near + 5, ..Wanted::new(look, colours, near) }
    });
    wanted.map(|wanted| (wanted.clone(), find(&wanted, 8))).collect()
});

#[test]
fn answers_are_woven_as_the_search_says() {
    let mut answers = 0;
    for (wanted, found) in &*ANSWERS {
        for proposal in found {
            let again = colours(proposal);
            for (row, cells) in (0..).zip(&again) {
                for (stave, colour) in (0..).zip(cells) {
                    let said = proposal.colour(row, stave);
                    assert_eq!(said, *colour, "{wanted:?} {proposal:?} row {row} stave {stave}");
                }
            }
            answers += 1;
        }
    }
    assert!(answers > 40, "{answers}");
}

#[test]
fn lines_run_where_they_are_promised() {
    for (wanted, found) in &*ANSWERS {
        for proposal in found {
            let seen = colours(proposal);
            let slope = proposal.sighting.slope;
            match wanted.look {
                Look::Spiral => {
                    let rows = (1..=12_u32).find(|rows| (slope * f64::from(*rows)).fract().abs() < 1e-9);
                    let rows = rows.expect("a slope of whole staves in some rows");
                    let staves = (slope * f64::from(rows)).round() as i64;
                    assert!(alike(&seen, staves, rows as usize) > 0.999, "{proposal:?}");
                    assert!(alike(&seen, -staves, rows as usize) < 0.95, "leans both ways: {proposal:?}");
                    assert!(alike(&seen, 0, 1) < 0.95, "stands: {proposal:?}");
                }
                Look::Columns => {
                    let rows = (1..=12).find(|&rows| alike(&seen, 0, rows) > 0.999);
                    assert!(rows.is_some() && alike(&seen, 1, 0) < 0.999, "{proposal:?}");
                }
                Look::Plain => assert!(alike(&seen, 1, 1) > 0.999, "{proposal:?}"),
                Look::Bands | Look::Checks | Look::Arrows | Look::Mixed => {
                    assert!(alike(&seen, 1, 0) < 0.999 || alike(&seen, 0, 1) < 0.999, "{proposal:?}");
                }
            }
        }
    }
}

#[test]
fn every_answer_holds() {
    for (_, found) in &*ANSWERS {
        for proposal in found {
            if matches!(proposal.fabric.passing, Passing::Twined(_)) {
                continue;
            }
            let rows = woven(proposal);
            for stave in 0..proposal.count as usize {
                let over = rows.iter().filter(|row| row[stave].is_some()).count();
                assert!(0 < over && over < rows.len(), "stave {stave} of {proposal:?}");
            }
        }
    }
}

/// The question of the scenario's spiral basket.
#[test]
fn a_spiral_to_the_right_of_two_turns_in_two_colours_near_73() {
    let wanted = Wanted { lean: Some(Lean::Right), turns: Some(2.0), ..Wanted::new(Look::Spiral, 2, 73) };
    let found = find(&wanted, 5);
    let best = &found[0];
    // Over three, under three on 74 = 12 · 6 + 2: each row lies two staves back, 2 · 80 / 74 turns.
    assert_eq!((best.count, best.weave().to_string().as_str()), (74, "twill 3/3"));
    assert!((best.turns - 160.0 / 74.0).abs() < 1e-12);
    for proposal in &found {
        assert_eq!(proposal.sighting.lean(), Some(Lean::Right), "{proposal:?}");
        assert!((proposal.turns - 2.0).abs() <= 1.0, "{proposal:?}");
        assert_eq!(colours(proposal).concat().iter().max(), Some(&1), "two colours: {proposal:?}");
    }
    assert!(found.windows(2).all(|pair| pair[0].penalty <= pair[1].penalty));
}

#[test]
fn what_nothing_gives_is_not_proposed() {
    assert!(find(&Wanted::new(Look::Plain, 2, 73), 5).is_empty());
    let wanted = Wanted { turns: Some(200.0), counts: 70..=76, ..Wanted::new(Look::Spiral, 2, 73) };
    assert!(find(&wanted, 5).is_empty());
    let nowhere = Wanted { counts: RANGE_WITHOUT_COUNTS, ..Wanted::new(Look::Checks, 1, 73) };
    assert!(find(&nowhere, 5).is_empty());
}

#[expect(clippy::reversed_empty_ranges, reason = "a range that holds nothing")]
const RANGE_WITHOUT_COUNTS: std::ops::RangeInclusive<u32> = 80..=70;

/// The basket of a pattern in which an answer was written down, in these colours.
fn written_down(proposal: &Proposal, names: &[&str]) -> Basket {
    let keys = proposal.keys(names).into_iter().map(|(key, value)| format!("{key} = {value}, "));
    let text = format!(
        r#"
title = "What was proposed"
units = "in"
[mould]
base = "5"
rim = "8"
height = "5"
[staves]
stock = "flat reed 1/4 in"
count = {}
[weave]
courses = [{{ {}weaver = "cane fine", until = "mould top" }}]
"#,
        proposal.count,
        keys.collect::<String>()
    );
    let pattern =
        read(&text, Catalogue::built_in()).unwrap_or_else(|problems| panic!("{problems:?} in {text}"));
    assemble(&pattern, Catalogue::built_in(), &basket::Hand::USUAL)
}

#[test]
fn an_answer_written_into_a_pattern_weaves_the_same() {
    let names = ["natural", "blue", "red"];
    for (wanted, found) in &*ANSWERS {
        for proposal in found.iter().filter(|proposal| proposal.colouring.every.is_none()) {
            let colours = proposal.colouring.weavers.iter().map(|&colour| usize::from(colour) + 1).max();
            let names = &names[..colours.unwrap_or(1)];
            let basket = written_down(proposal, names);
            let course = &basket.body.weave.courses[0];
            assert_eq!(course.fabric.passing, proposal.fabric.passing, "{wanted:?}");
            for (row, stave) in (0..12).flat_map(|row| (0..proposal.count).map(move |stave| (row, stave))) {
                let seen = course.seen(row, stave, Face::Outside).map(|seen| seen.colour.name.as_str());
                let colour = || names[usize::from(proposal.colour(row, stave))];
                let said = proposal.fabric.cell(row, stave).outside.map(|_| colour());
                assert_eq!(seen, said, "{wanted:?} row {row} stave {stave}");
            }
        }
    }
}

/// How many chase one another is told by their colours, also where these are alike.
#[test]
fn three_weavers_of_one_colour_stay_three() {
    let passing = Passing::Chase(Chase { rule: Rule::PLAIN, weavers: 3 });
    let two = ANSWERS.iter().flat_map(|(_, found)| found).next().expect("an answer").clone();
    let three = Proposal { count: 60, fabric: Fabric::new(passing.clone(), 60), ..two };
    let basket = written_down(&three, &["natural"]);
    assert_eq!(basket.body.weave.courses[0].fabric.passing, passing);
}
