//! The weaving against published geometry, gauges and counts.

use std::f64::consts::TAU;

use basket::pattern::Rule;
use basket::pattern::read;
use basket::weave::Diagonal;
use basket::weave::fabric::{Fabric, Follow, Passing};
use basket::weave::look::{Look, ROWS_READ, Sights, USUAL_PROPORTION};
use basket::weave::take_up::{over_one_pitch, take_up};
use basket::{Catalogue, Hand, Length, assemble};

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

/// Simpson's rule on so many slices.
fn integral(from: f64, to: f64, slices: u32, of: impl Fn(f64) -> f64) -> f64 {
    let step = (to - from) / f64::from(slices);
    let slice = |index: u32| {
        let at = from + step * f64::from(index);
        (of(at) + 4.0 * of(at + step / 2.0) + of(at + step)) * step / 6.0
    };
    (0..slices).map(slice).sum()
}

/// A frustum of radius 100 to 150 mm and 130 mm slant, woven at 1.7 mm a row: a spiral of the true helix
/// is as long as area over pitch says, to parts per million; with 25 staves three quarters of their
/// pitch wide, staves and weaver 1.5 mm thick, on the middle surface of the staves, take-up brings it to
/// 61352.485 mm, 1.543 % more. The figures were computed independently of this program (adaptive
/// quadrature).
#[test]
fn a_whole_basket_of_weaver() {
    let radius = |along: f64| 100.0 + 50.0 * along / 130.0;
    let helix = integral(0.0, 130.0, 200, |along| (1.0 + (TAU * radius(along) / 1.7).powi(2)).sqrt());
    assert_close(helix, 60_060.002_2, 5e-5);
    let area = integral(0.0, 130.0, 200, |along| TAU * radius(along) / 1.7);
    assert_close(area, 60_059.859_6, 5e-5);
    let middle = |along: f64| TAU * (radius(along) + 0.75);
    let woven = integral(0.0, 130.0, 400, |along| {
        let pitch = middle(along) / 25.0;
        middle(along) / 1.7 * (1.0 + take_up(mm(0.75 * pitch), mm(0.25 * pitch), mm(1.5), mm(1.5)))
    });
    assert_close(woven, 61_352.485, 5e-4);
    let straight = integral(0.0, 130.0, 200, |along| middle(along) / 1.7);
    assert_close(woven / straight - 1.0, 0.015_43, 5e-6);
}

/// The rows of a basket on that frustum add up to the same integral over the staves as they are cut.
#[test]
fn rows_add_up_to_the_spiral() {
    let text = r#"
title = "A frustum"
units = "mm"
[mould]
base = "200"
rim = "300"
height = "120"
[staves]
count = 25
stock = "mine"
[weave]
courses = [{ weaver = "strip", rows = 76 }]
[materials.mine]
kind = "splint"
width = "18"
thickness = "1.5"
[materials.strip]
kind = "splint"
width = "1.7"
thickness = "1.5"
"#;
    let pattern = read(text, Catalogue::built_in()).expect("the pattern reads");
    let basket = assemble(&pattern, Catalogue::built_in(), &Hand::USUAL);
    let staves = basket.body.staves();
    let wanted = integral(0.0, 76.0 * 1.7, 76 * 40, |along| {
        let girth = TAU * (100.0 + 50.0 * along / 130.0 + 0.75);
        let width = staves.uprights.width_at(mm(along));
        let gap = mm(girth / 25.0) - width;
        girth / 1.7 * (1.0 + take_up(width, gap, mm(1.5), mm(1.5)))
    });
    let got = basket.body.weave.length.to_mm();
    assert!((got / wanted - 1.0).abs() < 2e-4, "{got} {wanted}");
    let straight = got / (1.0 + basket.body.weave.courses[0].take_up);
    let area = integral(0.0, 76.0 * 1.7, 100, |along| TAU * (100.75 + 50.0 * along / 130.0) / 1.7);
    assert_close(straight, area, 1e-3);
}

/// Continuous counts as published, with what they leave over: on one more than a multiple of the repeat
/// the diagonal goes one way, on one fewer the other, and on a multiple it stands still. Anna A. Gill,
/// *Practical Basketry* (1916), models 57 (p. 135), 60 (p. 136) and 49 (p. 124); Ellen Eddy Shaw,
/// *Gardening and Farming*.
#[test]
fn published_counts_climb() {
    let diagonal = |count, over, under| {
        let passing = Passing::Repeat { rule: Rule::new(over, under), follow: Follow::Spiral };
        Fabric { passing, count, start: 0, spread: 0 }.diagonal()
    };
    assert_eq!(diagonal(31, 3, 2), Diagonal::Climbs(-1));
    assert_eq!(diagonal(26, 2, 1), Diagonal::Climbs(1));
    assert_eq!(diagonal(16, 2, 1), Diagonal::Climbs(-1));
    assert_eq!(diagonal(31, 2, 1), Diagonal::Climbs(-1));
    assert_eq!(diagonal(31, 1, 1), Diagonal::Alternates);
}

/// A maker's pages: a three-rod wale with one colour different spirals on 32 stakes, a colour repeat of
/// 14 spirals on 43, and one of 10 stands still on 40.
#[test]
fn published_colour_repeats() {
    let look = |count, repeat| {
        let fabric = Fabric {
            passing: Passing::Twined { weavers: repeat, step_up: false },
            count,
            start: 0,
            spread: 0,
        };
        let sights =
            Sights::of(ROWS_READ, count, |row, stave| u8::from(fabric.cell(row, stave).outside == Some(0)));
        sights.read(USUAL_PROPORTION).look
    };
    assert_eq!(look(32, 3), Look::Spiral);
    assert_eq!(look(43, 14), Look::Spiral);
    assert_eq!(look(40, 10), Look::Columns);
}
