//! Charts: every crossing where it belongs, in its colour, from both sides.

use basket::pattern::Rule;
use basket::pattern::{CoursePattern, Until, WeaveKind};
use basket::weave::Face;
use basket::{Basket, Catalogue, Colour, Hand, Length, assemble};
use drawings::{ChartKind, Drawing, Item, Label, Tone, chart};
use kurbo::{Point, Shape};
use words::{Language, Words};

const HARBOUR: &str = include_str!("../../../patterns/harbour-bread-basket.toml");
const BLUE: [u8; 3] = [0x2b, 0x4c, 0x7e];
/// The same lightened to 152 of 255 (0.299 R + 0.587 G + 0.114 B), by hand.
const BLUE_ON_PAPER: [u8; 3] = [0x88, 0x9a, 0xb6];

fn basket(count: u32, weave: WeaveKind, colours: &[&str], rows: u32) -> Basket {
    let catalogue = Catalogue::built_in();
    let mut pattern = basket::pattern::read(HARBOUR, catalogue).expect("the pattern can be read");
    pattern.staves.count = Some(count);
    let cane = catalogue.material("cane common").expect("in the catalogue").clone();
    let colours = colours.iter().map(|name| vec![Colour::built_in(name).expect("a colour")]).collect();
    pattern.weave.courses =
        vec![CoursePattern { colours, ..CoursePattern::new(weave, cane, Until::Rows(rows)) }];
    assemble(&pattern, catalogue, &Hand::USUAL)
}

fn draw(basket: &Basket, face: Face, kind: ChartKind) -> Drawing {
    chart(basket, &Words::new(Language::English, basket.units), face, kind)
}

/// The uppermost tone at a place; hatches and lines apart.
fn tone_at(drawing: &Drawing, at: Point) -> Option<Tone> {
    drawing.items().iter().rev().find_map(|item| match item {
        Item::Path { path, tone: Some(tone @ Tone::Dyed(_)), .. } if path.contains(at) => Some(*tone),
        _ => None,
    })
}

fn label<'a>(drawing: &'a Drawing, text: &str) -> Option<&'a Label> {
    drawing.items().iter().find_map(|item| match item {
        Item::Label(label) if label.text == text => Some(label),
        _ => None,
    })
}

/// Middle of a crossing on a grid of 4 mm or, with many staves, of a share of 130 mm.
fn middle(basket: &Basket, face: Face, row: u32, stave: u32) -> Point {
    let count = f64::from(basket.body.uprights().count);
    let square = (130.0 / count).min(4.0);
    let from_left = match face {
        Face::Outside => count - f64::from(stave) + 0.5,
        Face::Inside => f64::from(stave) - 0.5,
    };
    Point::new((from_left - count / 2.0) * square, (0.5 - f64::from(row)) * square)
}

#[test]
fn each_crossing_of_a_grid_shows_what_is_seen() {
    for face in [Face::Outside, Face::Inside] {
        let basket = basket(29, WeaveKind::Twill(Rule::new(2, 1)), &["blue"], 12);
        let drawing = draw(&basket, face, ChartKind::Grid);
        for row in 1..=12 {
            for stave in 1..=29 {
                // A little off the middle, beside hatches.
                let at = middle(&basket, face, row, stave) + kurbo::Vec2::new(1.2, 1.5);
                let blue = basket.body.weave.colour(row, stave, face).colour.rgb == BLUE;
                let tone = tone_at(&drawing, at);
                assert_eq!(
                    tone == Some(Tone::Dyed(BLUE_ON_PAPER)),
                    blue,
                    "{face:?} row {row} stave {stave}: {tone:?}"
                );
            }
        }
    }
}

/// Numbers rise to the left outside and to the right inside: on the mould, base up, staves are
/// numbered to the right round the outside, and the chart stands base down.
#[test]
fn numbers_rise_to_the_left_outside_and_to_the_right_inside() {
    let basket = basket(73, WeaveKind::Plain, &["natural"], 20);
    let x = |face, text: &str| label(&draw(&basket, face, ChartKind::True), text).expect("a number").at.x;
    assert!(x(Face::Outside, "70") < x(Face::Outside, "35"));
    assert!(x(Face::Inside, "70") > x(Face::Inside, "35"));
}

#[test]
fn rows_of_a_true_chart_have_their_true_girth() {
    let basket = basket(73, WeaveKind::Plain, &["natural"], 20);
    let drawing = draw(&basket, Face::Outside, ChartKind::True);
    // The ground behind the staves is as wide as each row.
    let ground = drawing.items().iter().find_map(|item| match item {
        Item::Path { path, tone: Some(Tone::Mid), .. } => Some(path),
        _ => None,
    });
    let ground = ground.expect("a ground");
    let uprights = basket.body.uprights();
    let girth = |along: Length| {
        let face = uprights.standing.at(along) + uprights.thickness;
        (basket.body.form.profile.at(along).radius + face).to_mm() * std::f64::consts::TAU
    };
    let widest = basket.body.weave.each_row.iter().map(|row| girth(row.along)).fold(0.0, f64::max);
    let scale = 130.0 / widest;
    for row in &basket.body.weave.each_row {
        let y = -row.along.to_mm() * scale;
        let half = girth(row.along) * scale / 2.0;
        for side in [-1.0, 1.0] {
            assert!(ground.contains(Point::new(side * (half - 0.05), y)), "row {}", row.number);
            assert!(!ground.contains(Point::new(side * (half + 0.05), y)), "row {}", row.number);
        }
    }
}

#[test]
fn every_colour_has_a_sample_with_its_own_hatch() {
    let basket = basket(72, WeaveKind::Wale(3), &["natural", "blue", "red"], 6);
    let drawing = draw(&basket, Face::Outside, ChartKind::Grid);
    for name in ["1 natural", "2 blue", "3 red"] {
        assert!(label(&drawing, name).is_some(), "{name}");
    }
    let svg = drawing.to_svg();
    for colour in ["#d9be8c", "#889ab6", "#c68582"] {
        assert!(svg.contains(colour), "{colour}");
    }
}

#[test]
fn joins_ears_and_courses_are_marked() {
    let basket = basket(73, WeaveKind::Plain, &["natural"], 25);
    let joins: usize = basket.body.weave.courses.iter().map(|course| course.joins.len()).sum();
    assert!(joins > 0);
    let drawing = draw(&basket, Face::Outside, ChartKind::True);
    let marks = drawing.items().iter().filter(|item| {
        matches!(item, Item::Path { tone: Some(Tone::White), line: Some(_), path } if path.bounding_box().width() < 2.5)
    });
    // One in the key besides.
    assert_eq!(marks.count(), joins + 1);
    assert!(label(&drawing, "ear 1").is_some() && label(&drawing, "ear 2").is_some());
    assert!(label(&drawing, "course 1").is_some());
}

#[test]
fn odd_baskets_are_charted_without_a_panic() {
    for count in [3, 4, 107] {
        for weave in [WeaveKind::Plain, WeaveKind::SkipOne, WeaveKind::Drawn, WeaveKind::Wale(5)] {
            for rows in [0, 1, 300] {
                let basket = basket(count, weave, &[], rows);
                for kind in [ChartKind::True, ChartKind::Grid] {
                    let drawing = draw(&basket, Face::Inside, kind);
                    assert!(drawing.frame().is_finite() && drawing.width() > 0.0, "{count} {weave} {rows}");
                }
            }
        }
    }
}
