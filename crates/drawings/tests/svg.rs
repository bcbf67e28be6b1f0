//! What is written is sound SVG that other programs show.

mod common;

use basket::Length;
use common::{CHANNEL, FERRY, HARBOUR, ODD, all, basket, words};
use drawings::{Dimension, Drawing, Label, Line, TileSize, Tone, tiles};
use kurbo::{Circle, Point, Rect};
use resvg::{tiny_skia, usvg};

#[test]
fn a_dimension_is_written_the_same_every_time() {
    let mut drawing = Drawing::new("sample", "A & B", "Less < more");
    drawing.shape(Rect::new(0.0, 0.0, 30.0, 1.0 / 3.0), Tone::Pale, Line::Outline);
    Dimension::level([Point::new(0.0, 0.0), Point::new(30.0, 0.0)], 8.0, "30 \"mm\"").draw(&mut drawing);
    drawing.label(Label::new("7", (4.0, 5.0)).middle().turned(-90.0).bold());
    insta::assert_snapshot!(drawing.fitted(1.0).to_svg());
}

#[test]
fn check_bars_are_written_the_same_every_time() {
    insta::assert_snapshot!(drawings::check_bars(&words(&basket(FERRY))).to_svg_at(2.0));
}

#[test]
fn text_comes_back_as_it_was_given() {
    let title = "Nuts & <bolts> \"5/8\"\u{7} in";
    let svg = Drawing::new("text", title, "").fitted(5.0).to_svg();
    let document = usvg::roxmltree::Document::parse(&svg).expect("sound XML");
    let written = document.descendants().find(|node| node.has_tag_name("title")).and_then(|node| node.text());
    assert_eq!(written, Some("Nuts & <bolts> \"5/8\" in"));
}

/// One pixel a millimetre.
fn rendered(svg: &str) -> (tiny_skia::Pixmap, usvg::Size) {
    let tree = usvg::Tree::from_str(svg, &usvg::Options::default()).expect("sound SVG");
    let scale = 25.4 / 96.0;
    let size = tree.size();
    let side = |length: f32| (length * scale).ceil() as u32;
    let mut picture = tiny_skia::Pixmap::new(side(size.width()), side(size.height())).expect("a size");
    picture.fill(tiny_skia::Color::WHITE);
    resvg::render(&tree, tiny_skia::Transform::from_scale(scale, scale), &mut picture.as_mut());
    (picture, size)
}

#[test]
fn every_drawing_is_shown_at_its_size_and_not_blank() {
    for pattern in [HARBOUR, FERRY, CHANNEL] {
        for drawing in all(&basket(pattern)) {
            let (picture, size) = rendered(&drawing.to_svg());
            let width_mm = f64::from(size.width()) * 25.4 / 96.0;
            assert!((width_mm - drawing.width()).abs() < 0.02, "{} is {width_mm} mm wide", drawing.name);
            let inked = picture.pixels().iter().filter(|pixel| pixel.red() < 240).count();
            assert!(inked > 50, "{} has {inked} dark pixels", drawing.name);
        }
    }
}

#[test]
fn a_window_shows_nothing_beyond_its_edge() {
    let mut drawing = Drawing::new("dots", "", "");
    drawing.fill(Circle::new((0.0, 0.0), 4.0), Tone::Black);
    drawing.fill(Circle::new((100.0, 0.0), 4.0), Tone::Black);
    let window = drawing.window(Rect::new(-10.0, -10.0, 10.0, 10.0));
    assert_eq!(window.items().len(), 1);
    let (picture, _) = rendered(&window.to_svg());
    assert_eq!((picture.width(), picture.height()), (20, 20));
}

#[test]
fn odd_baskets_give_finite_drawings() {
    for pattern in ODD {
        let basket = basket(pattern);
        for drawing in all(&basket) {
            let svg = drawing.to_svg();
            let numbers = svg.split(['"', ' ', 'M', 'L', 'C', 'Z', '\n']);
            let broken = numbers.filter(|word| ["NaN", "inf", "-inf"].contains(word)).count();
            assert_eq!(broken, 0, "{} of {}", drawing.name, basket.title);
            assert!(drawing.frame().is_finite() && drawing.width() > 0.0 && drawing.height() > 0.0);
            usvg::Tree::from_str(&svg, &usvg::Options::default())
                .unwrap_or_else(|error| panic!("{} of {}: {error}", drawing.name, basket.title));
            let page = [190.0, 220.0, 12.0].map(Length::mm);
            let page = TileSize { width: page[0], height: page[1], overlap: page[2] };
            assert!(!tiles(&drawing, page, &words(&basket)).is_empty());
        }
    }
}

#[test]
fn drawing_twice_gives_the_same_bytes() {
    let (one, other) = (all(&basket(HARBOUR)), all(&basket(HARBOUR)));
    for (one, other) in one.iter().zip(&other) {
        assert_eq!(one.to_svg(), other.to_svg());
    }
}
