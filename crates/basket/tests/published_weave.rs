//! The weaving against published geometry, gauges and counts.

use basket::pattern::Rule;
use basket::weave::look::{Eye, Look, ROWS_READ, USUAL_PROPORTION};
use basket::weave::sights::Sights;
use basket::weave::{Diagonal, Fabric, Passing, Spiral, Twined};

fn spiral(over: u32, under: u32, count: u32) -> Fabric {
    Fabric::new(Passing::Spiral(Spiral { rule: Rule::new(over, under) }), count)
}

/// Anna A. Gill, *Practical Basketry* (1916), models 1 and 30, as row gauges: a row of plain weave in No. 2
/// reed (1.75 mm) is about the reed's diameter high.
#[test]
fn rows_lie_edge_to_edge() {
    let diameter = 1.75;
    let gauges = [(32.0, 2.25, diameter), (15.0, 2.25, 2.0 * diameter)];
    for (rows, inches, width) in gauges {
        let factor = inches * 25.4 / rows / width;
        assert!((0.9..=1.1).contains(&factor), "{rows} rows: {factor}");
    }
}

/// Continuous weaves on counts printed in Anna A. Gill, *Practical Basketry* (1916), pp. 124–136,
/// and Ellen Eddy Shaw, *Gardening and Farming*: all of them must hold.
#[test]
fn published_counts_hold() {
    let published = [(31, 3, 2), (26, 2, 1), (16, 2, 1), (31, 2, 1), (31, 1, 1)];
    for (count, over, under) in published {
        assert!(spiral(over, under, count).holds(), "over {over} under {under} on {count}");
    }
}

/// Gill's separate bottoms (*Practical Basketry*, pp. 51–154): plain weave is always given an odd
/// number of stakes.
#[test]
fn plain_weave_wants_an_odd_count() {
    for count in [31, 19, 21, 17, 33, 43, 67, 107] {
        assert!(spiral(1, 1, count).holds());
        assert!(!spiral(1, 1, count + 1).holds());
    }
}

/// Continuous counts as published, with what they leave over: on one more than a multiple of the repeat
/// the diagonal goes one way, on one fewer the other, and on a multiple it stands still. Anna A. Gill,
/// *Practical Basketry* (1916), models 57 (p. 135), 60 (p. 136) and 49 (p. 124); Ellen Eddy Shaw,
/// *Gardening and Farming*.
#[test]
fn published_counts_climb() {
    let diagonal = |count, over, under| spiral(over, under, count).diagonal(Eye::USUAL);
    let climbs = |staves| Diagonal::Climbs { staves, rows: 1 };
    assert_eq!(diagonal(31, 3, 2), climbs(-1));
    assert_eq!(diagonal(26, 2, 1), climbs(1));
    assert_eq!(diagonal(16, 2, 1), climbs(-1));
    assert_eq!(diagonal(31, 2, 1), climbs(-1));
    assert_eq!(diagonal(31, 1, 1), Diagonal::Alternates);
}

/// A maker's pages: a three-rod wale with one colour different spirals on 32 stakes, a colour repeat of
/// 14 spirals on 43, and one of 10 stands still on 40.
#[test]
fn published_colour_repeats() {
    let look = |count, repeat| {
        let fabric = Fabric::new(Passing::Twined(Twined { weavers: repeat, step_up: false }), count);
        let sights =
            Sights::of(ROWS_READ, count, |row, stave| u8::from(fabric.cell(row, stave).outside == Some(0)));
        sights.read(USUAL_PROPORTION).look
    };
    assert_eq!(look(32, 3), Look::Spiral);
    assert_eq!(look(43, 14), Look::Spiral);
    assert_eq!(look(40, 10), Look::Columns);
}
