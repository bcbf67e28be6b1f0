//! The weaving against published geometry, gauges and counts.

use basket::Length;
use basket::weave::Rule;
use basket::weave::take_up::{over_one_pitch, take_up};

fn mm(length: f64) -> Length {
    Length::mm(length)
}

#[track_caller]
fn assert_close(got: f64, wanted: f64, within: f64) {
    assert!((got - wanted).abs() <= within, "got {got}, wanted {wanted} within {within}");
}

/// Race-track section for flat staves, after A. Kemp, *Journal of the Textile Institute* 49 (1958), T44,
/// with the crossing of F. T. Peirce, *Journal of the Textile Institute* 28 (1937), T45;
/// the figures were computed independently of this program.
#[test]
fn race_track_section() {
    let length = over_one_pitch(mm(16.0), mm(6.0), mm(1.5), mm(1.5));
    assert_close(length.to_mm(), 22.6084, 5e-5);
    assert_close(take_up(mm(16.0), mm(6.0), mm(1.5), mm(1.5)), 0.0277, 5e-5);
    assert_close(take_up(mm(16.0), mm(1.5), mm(1.5), mm(1.5)), 0.0979, 5e-5);
}

/// Anna A. Gill, *Practical Basketry* (1916), models 1, 30 and 51, as row gauges: a row of plain weave
/// in No. 2 reed (1.75 mm) is 0.8 to 1.1 of the reed's diameter high.
#[test]
fn rows_lie_edge_to_edge() {
    let diameter = 1.75;
    let gauges = [(32.0, 2.25, diameter), (15.0, 2.25, 2.0 * diameter), (9.0, 0.5, diameter)];
    for (rows, inches, width) in gauges {
        let factor = inches * 25.4 / rows / width;
        assert!((0.8..=1.1).contains(&factor), "{rows} rows: {factor}");
    }
}

/// Continuous weaves on counts printed in Anna A. Gill, *Practical Basketry* (1916), pp. 124–136,
/// and Ellen Eddy Shaw, *Gardening and Farming*: all of them must hold.
#[test]
fn published_counts_hold() {
    let published = [(31, 3, 2), (26, 2, 1), (16, 2, 1), (31, 2, 1), (31, 1, 1)];
    for (count, over, under) in published {
        assert!(Rule::new(over, under).holds(count), "over {over} under {under} on {count}");
    }
}

/// Gill's separate bottoms (*Practical Basketry*, pp. 51–154): plain weave is always given an odd
/// number of stakes.
#[test]
fn plain_weave_wants_an_odd_count() {
    for count in [31, 19, 21, 17, 33, 43, 67, 107] {
        assert!(Rule::new(1, 1).holds(count));
        assert!(!Rule::new(1, 1).holds(count + 1));
    }
}
