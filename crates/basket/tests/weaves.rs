//! Every weave against a weaver that walks: an independent simulation that goes round stave by stave
//! and only ever knows on which side it is and how many staves of its float are left.

use basket::pattern::Rule;
use basket::weave::look::Eye;
use basket::weave::{Cell, Chase, Diagonal, Fabric, Level, Passing, Reversed, SkipOne, Spiral, Twined};

/// How one row follows the other.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Follow {
    Spiral,
    Chase(u32),
    RowByRow(i32),
    Reversed(u32),
}

/// One weaver on its way.
#[derive(Clone, Copy, PartialEq)]
struct Walker {
    rule: (u32, u32),
    outside: bool,
    left: u32,
}

impl Walker {
    fn new(over: u32, under: u32) -> Self {
        Self { rule: (over, under), outside: true, left: over }
    }

    /// Passes one stave and says on which side.
    fn pass(&mut self) -> bool {
        let side = self.outside;
        self.left -= 1;
        if self.left == 0 {
            self.outside = !side;
            self.left = if self.outside { self.rule.0 } else { self.rule.1 };
        }
        side
    }

    fn go(mut self, staves: u32) -> Self {
        for _ in 0..staves {
            self.pass();
        }
        self
    }

    fn row(&mut self, count: u32) -> Vec<bool> {
        (0..count).map(|_| self.pass()).collect()
    }
}

/// Which weaver lies in a row, and where it is outside.
type Row = (u32, Vec<bool>);

/// Rows of one rule, walked.
fn walked(over: u32, under: u32, follow: Follow, count: u32, rows: u32) -> Vec<Row> {
    let fresh = Walker::new(over, under);
    let repeat = over + under;
    match follow {
        Follow::Spiral => {
            let mut walker = fresh;
            (0..rows).map(|_| (0, walker.row(count))).collect()
        }
        Follow::Chase(weavers) => {
            // Each weaver sets off further on than the one before, by the least way that brings the first
            // round again as far beyond the last as they are from each other; by one where there is none.
            let even = |step: &u32| fresh.go(count) == fresh.go(step * weavers);
            let step = (1..=repeat).find(even).unwrap_or(1);
            let mut chasing: Vec<Walker> = (0..weavers).map(|weaver| fresh.go(step * weaver)).collect();
            (0..rows).map(|row| (row % weavers, chasing[(row % weavers) as usize].row(count))).collect()
        }
        Follow::RowByRow(step) => {
            let back = step.rem_euclid(repeat.cast_signed()).cast_unsigned();
            let mut begin = fresh;
            let mut all = Vec::new();
            for _ in 0..rows {
                all.push((0, begin.clone().row(count)));
                begin = begin.go(repeat - back);
            }
            all
        }
        Follow::Reversed(band) => {
            let (mut begin, mut since, mut up) = (fresh, 0, true);
            let mut all = Vec::new();
            for _ in 0..rows {
                all.push((0, begin.clone().row(count)));
                begin = begin.go(if up { repeat - 1 } else { 1 });
                since += 1;
                if since == band {
                    (since, up) = (0, !up);
                }
            }
            all
        }
    }
}

fn repeat(over: u32, under: u32, follow: Follow, count: u32) -> Fabric {
    let rule = Rule::new(over, under);
    let passing = match follow {
        Follow::Spiral => Passing::Spiral(Spiral { rule }),
        Follow::Chase(weavers) => Passing::Chase(Chase { rule, weavers }),
        Follow::RowByRow(step) => Passing::Level(Level { rule, step }),
        Follow::Reversed(band) => Passing::Reversed(Reversed { rule, band }),
    };
    Fabric::new(passing, count)
}

fn cell((weaver, sides): &Row, stave: u32) -> Cell {
    let seen = Some(*weaver);
    if sides[stave as usize] {
        Cell { outside: seen, inside: None }
    } else {
        Cell { outside: None, inside: seen }
    }
}

/// Whether each stave is crossed on both sides, as walked.
fn locks(rows: &[Row], count: u32) -> bool {
    (0..count as usize)
        .all(|stave| rows.iter().any(|row| row.1[stave]) && rows.iter().any(|row| !row.1[stave]))
}

fn longest(sides: impl Iterator<Item = bool>) -> u32 {
    let sides: Vec<bool> = sides.collect();
    sides.chunk_by(|a, b| a == b).map(|run| run.len() as u32).max().unwrap_or(0)
}

#[track_caller]
fn agrees(over: u32, under: u32, follow: Follow, count: u32) {
    let fabric = repeat(over, under, follow, count);
    let rows = match follow {
        Follow::Chase(weavers) => (over + under) * weavers,
        Follow::Reversed(band) => 2 * band,
        _ => over + under,
    };
    let walk = walked(over, under, follow, count, 2 * rows);
    for (row, walked) in (0..rows + 2).zip(&walk) {
        for stave in 0..count {
            assert_eq!(
                fabric.cell(row, stave),
                cell(walked, stave),
                "{over}/{under} {follow:?} on {count}: {row} {stave}"
            );
        }
    }
    assert_eq!(fabric.holds(), locks(&walk[..rows as usize], count), "{over}/{under} {follow:?} on {count}");
    let floats =
        (0..count as usize).map(|stave| longest(walk.iter().map(|row| row.1[stave]))).max().unwrap_or(0);
    assert_eq!(fabric.float_rows(2 * rows), floats, "{over}/{under} {follow:?} on {count}: rows");
    if follow == Follow::Spiral {
        let float = longest(walk[..rows as usize].iter().flat_map(|row| row.1.iter().copied()));
        assert_eq!(fabric.float_staves(rows), float);
    }
}

fn every_rule(follow: &[Follow]) {
    for (over, under) in (1..=6).flat_map(|over| (1..=6).map(move |under| (over, under))) {
        for count in 3..=120 {
            for follow in follow {
                agrees(over, under, *follow, count);
            }
        }
    }
}

#[test]
fn spirals_agree_with_walking() {
    every_rule(&[Follow::Spiral]);
}

#[test]
fn two_chasing_weavers_agree_with_walking() {
    every_rule(&[Follow::Chase(2)]);
}

#[test]
fn three_chasing_weavers_agree_with_walking() {
    every_rule(&[Follow::Chase(3)]);
}

#[test]
fn rows_begun_anew_agree_with_walking() {
    every_rule(&[Follow::RowByRow(1), Follow::RowByRow(-1)]);
}

#[test]
fn reversed_bands_agree_with_walking() {
    every_rule(&[Follow::Reversed(4)]);
    agrees(2, 2, Follow::Reversed(1), 24);
}

/// Over one, under one, and once a round over two.
#[test]
fn skipping_one_agrees_with_walking() {
    for count in 3..=120_u32 {
        let fabric = Fabric::new(Passing::SkipOne(SkipOne), count);
        let (mut side, mut since) = (true, 0);
        let column = |stave| longest((0..count + 2).map(|row| fabric.is_over(row, stave)));
        assert_eq!(fabric.float_rows(count + 2), (0..count).map(column).max().unwrap_or(0), "{count}");
        for row in 0..count + 2 {
            for stave in 0..count {
                assert_eq!(fabric.is_over(row, stave), side, "{count}: {row} {stave}");
                since += 1;
                let skips = count % 2 == 0 && since == count + 1;
                if skips {
                    since = 0;
                } else {
                    side = !side;
                }
            }
        }
        assert!(fabric.holds(), "{count}");
        assert_eq!(fabric.float_staves(count + 1), if count % 2 == 0 { 2 } else { 1 });
    }
}

/// The weaver furthest behind comes to the front at each stave, and so on in turn.
#[test]
fn twined_rows_agree_with_weavers_that_take_turns() {
    for (weavers, count) in (2..=5_u32).flat_map(|weavers| (3..=120_u32).map(move |count| (weavers, count))) {
        for step_up in [false, true] {
            let fabric = Fabric::new(Passing::Twined(Twined { weavers, step_up }), count);
            let mut turn: std::collections::VecDeque<u32> = (0..weavers).collect();
            for row in 0..weavers + 2 {
                if step_up {
                    turn = (0..weavers).collect();
                }
                for stave in 0..count {
                    let wanted = Cell { outside: Some(turn[0]), inside: Some(turn[1]) };
                    assert_eq!(fabric.cell(row, stave), wanted, "{weavers} on {count}: {row} {stave}");
                    turn.rotate_left(1);
                }
            }
            assert!(fabric.holds());
        }
    }
}

/// A start further round turns the whole weave and changes nothing else.
#[test]
fn a_start_turns_the_weave() {
    for (over, under, count, start) in [(2, 2, 13, 5), (3, 1, 40, 39), (1, 1, 9, 1)] {
        let at_first = repeat(over, under, Follow::Spiral, count);
        let further = at_first.clone().starting_at(start);
        for (row, stave) in (0..8).flat_map(|row| (0..count).map(move |stave| (row, stave))) {
            assert_eq!(further.cell(row, (stave + start) % count), at_first.cell(row, stave));
        }
    }
}

/// Along the diagonal the walked rows lie on each other; where it climbs from row to row, the nearest way is
/// the one it goes, unless like cells touch the other way.
#[test]
fn diagonals_climb_as_walked() {
    for (over, under) in (1..=6).flat_map(|over| (1..=6).map(move |under| (over, under))) {
        let repeat_of = over + under;
        for count in (2 * repeat_of).max(3)..=60 {
            let walk = walked(over, under, Follow::Spiral, count, 13);
            let moved = |by: i64, rows: usize| {
                (0..i64::from(count)).all(|stave| {
                    let below = stave - by;
                    !(0..i64::from(count)).contains(&below)
                        || walk[rows].1[stave as usize] == walk[0].1[below as usize]
                })
            };
            let half = i64::from(repeat_of) / 2;
            let near = (-half..=half).min_by_key(|by| if moved(*by, 1) { by.abs() } else { i64::MAX });
            match repeat(over, under, Follow::Spiral, count).diagonal(Eye::USUAL) {
                Diagonal::Stacks => assert!(moved(0, 1)),
                Diagonal::Alternates => assert!(moved(half, 1) && moved(-half, 1)),
                Diagonal::Climbs { staves, rows: 1 } => {
                    assert_eq!(near, Some(i64::from(staves)), "{over}/{under} on {count}");
                }
                Diagonal::Climbs { staves, rows } => {
                    assert!(moved(staves.into(), rows as usize), "{over}/{under} on {count}");
                    assert!(near.is_some_and(|near| near.unsigned_abs() > u64::from(over.min(under))));
                }
                Diagonal::None => assert!(near.is_some_and(|near| near.unsigned_abs() > 1)),
                other => panic!("{other:?}"),
            }
        }
    }
}
