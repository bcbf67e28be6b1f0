//! The drawings show the basket at the sizes that were computed.

mod common;

use basket::Length;
use common::{CHANNEL, FERRY, HARBOUR, ODD, all, basket, labels, words};
use drawings::{At, Drawing, Item, Line, TileSize, tiles};
use kurbo::{PathEl, Rect, Shape};

const PAGE: TileSize =
    TileSize { width: Length::mm(190.0), height: Length::mm(220.0), overlap: Length::mm(10.0) };

/// Straight strokes of one kind, as their two ends.
fn strokes(drawing: &Drawing, kind: Line) -> Vec<kurbo::Line> {
    let paths = drawing.items().iter().filter_map(|item| match item {
        Item::Path { path, line: Some(line), tone: None } if *line == kind => Some(path),
        _ => None,
    });
    paths
        .filter_map(|path| match path.elements() {
            [PathEl::MoveTo(from), PathEl::LineTo(to)] => Some(kurbo::Line::new(*from, *to)),
            _ => None,
        })
        .collect()
}

/// Bounds of all closed shapes that are drawn with this line.
fn shapes(drawing: &Drawing, kind: Line) -> Vec<Rect> {
    let paths = drawing.items().iter().filter_map(|item| match item {
        Item::Path { path, line: Some(line), .. } if *line == kind => Some(path),
        _ => None,
    });
    paths.filter(|path| path.elements().last() == Some(&PathEl::ClosePath)).map(Shape::bounding_box).collect()
}

fn close(a: f64, b: f64) -> bool {
    (a - b).abs() < 1e-6
}

#[test]
fn a_strip_is_as_long_as_the_girth() {
    for pattern in [HARBOUR, FERRY, CHANNEL] {
        let basket = basket(pattern);
        let words = words(&basket);
        let base = drawings::spacing_strip(&basket, &words, At::Base);
        let rim = drawings::spacing_strip(&basket, &words, At::Rim);
        let drill = drawings::drilling_template(&basket, &words);
        let longest =
            |drawing: &Drawing| shapes(drawing, Line::Edge).iter().map(Rect::width).fold(0.0, f64::max);
        let around = |radius: Length| std::f64::consts::TAU * radius.to_mm();
        assert!(close(longest(&base), around(basket.body.base().diameter / 2.0)));
        assert!(close(longest(&rim), around(basket.body.rim().radius() + basket.body.uprights().thickness)));
        assert!(close(longest(&drill), around(basket.body.rim().outer_radius(basket.body.uprights()))));
    }
}

#[test]
fn a_strip_has_a_tick_for_every_stave_at_even_steps() {
    let basket = basket(HARBOUR);
    let strip = drawings::spacing_strip(&basket, &words(&basket), At::Base);
    let mut ticks: Vec<f64> = strokes(&strip, Line::Edge)
        .iter()
        .filter(|line| close(line.p0.y, 0.0) && close(line.p0.x, line.p1.x))
        .map(|line| line.p0.x)
        .collect();
    ticks.sort_by(f64::total_cmp);
    assert_eq!(ticks.len(), basket.body.uprights().count as usize);
    let girth = std::f64::consts::PI * basket.body.base().diameter.to_mm();
    let pitch = girth / f64::from(basket.body.uprights().count);
    for pair in ticks.windows(2) {
        assert!(close(pair[1] - pair[0], pitch), "{} is not {pitch}", pair[1] - pair[0]);
    }
    assert!(close(ticks[0] + girth - ticks[ticks.len() - 1], pitch), "the strip closes with one more pitch");
}

/// On an oval whose staves are spaced evenly at the rim too, the strip for the rim has even steps; spaced at the foot
/// alone, they are wider round the ends.
#[test]
fn strips_of_an_oval_show_where_staves_are_even() {
    let oval = |spacing: &str| {
        basket(&format!(
            "title = \"Oval\"\nunits = \"mm\"\n[mould]\nshape = \"oval\"\nlength = \"240\"\nwidth = \"140\"\n\
             rim = \"300\"\nheight = \"120\"\n[staves]\ncount = 61\nspacing = \"{spacing}\"\n"
        ))
    };
    let steps = |basket: &basket::Basket, at: At| {
        let strip = drawings::spacing_strip(basket, &words(basket), at);
        let ticks = strokes(&strip, Line::Edge);
        let mut ticks: Vec<f64> = ticks
            .iter()
            .filter(|line| close(line.p0.y, 0.0) && close(line.p0.x, line.p1.x))
            .map(|line| line.p0.x)
            .collect();
        ticks.sort_by(f64::total_cmp);
        assert_eq!(ticks.len(), 61);
        let steps = ticks.windows(2).map(|pair| pair[1] - pair[0]);
        steps.fold([f64::INFINITY, 0.0], |[least, most], step: f64| [least.min(step), most.max(step)])
    };
    let (foot, rim) = (oval("foot"), oval("rim"));
    // At the base both begin alike; the strip at the rim lies half a stave outside their middles.
    for (one, other) in steps(&foot, At::Base).into_iter().zip(steps(&rim, At::Base)) {
        assert!(close(one, other), "{one} is not {other}");
    }
    let [least, most] = steps(&rim, At::Rim);
    assert!(most / least < 1.02, "{least} to {most}");
    let [least, most] = steps(&foot, At::Rim);
    assert!(most / least > 1.2, "{least} to {most}");
}

#[test]
fn pins_stand_on_the_staves_that_are_pinned() {
    let basket = basket(HARBOUR);
    let strip = drawings::drilling_template(&basket, &words(&basket));
    let hoop = basket.body.rim().outer.stock.width.to_mm();
    let holes = shapes(&strip, Line::Edge)
        .into_iter()
        .filter(|hole| close(hole.center().y, hoop / 2.0) && hole.width() < 5.0)
        .map(|hole| hole.center().x);
    let girth = std::f64::consts::TAU * basket.body.rim().outer_radius(basket.body.uprights()).to_mm();
    let pitch = girth / f64::from(basket.body.uprights().count);
    let wanted = basket.body.pins().each().into_iter().map(|(stave, _)| (f64::from(stave) - 0.5) * pitch);
    let (holes, wanted): (Vec<f64>, Vec<f64>) = (holes.collect(), wanted.collect());
    assert_eq!(holes.len(), basket.body.pins().count() as usize);
    assert!(holes.iter().zip(&wanted).all(|(hole, wanted)| close(*hole, *wanted)));
}

#[test]
fn check_bars_are_100_mm_and_4_in() {
    let basket = basket(HARBOUR);
    let bars = drawings::check_bars(&words(&basket));
    let mut lengths: Vec<f64> =
        strokes(&bars, Line::Edge).iter().map(|line| (line.p1.x - line.p0.x).abs()).collect();
    lengths.sort_by(|a, b| b.total_cmp(a));
    assert!(close(lengths[0], 101.6) && close(lengths[1], 100.0), "{lengths:?}");
}

#[test]
fn tiles_cover_the_drawing_and_share_their_marks() {
    let basket = basket(HARBOUR);
    let strip = drawings::spacing_strip(&basket, &words(&basket), At::Rim);
    let plan = drawings::base_plan(&basket, &words(&basket));
    let size = TileSize { width: Length::mm(90.0), height: Length::mm(70.0), overlap: Length::mm(12.0) };
    for drawing in [strip, plan] {
        let parts = tiles(&drawing, size, &words(&basket));
        assert!(parts.len() > 2);
        let whole = drawing.frame();
        for across in 0..=60 {
            for down in 0..=60 {
                let point = whole.origin()
                    + kurbo::Vec2::new(
                        whole.width() * f64::from(across) / 60.0,
                        whole.height() * f64::from(down) / 60.0,
                    );
                let inside = |part: &&Drawing| part.frame().inflate(1e-6, 1e-6).contains(point);
                assert!(parts.iter().find(inside).is_some(), "{point:?} is on no tile of {}", drawing.name);
            }
        }
        for part in &parts {
            assert!(part.width() <= 90.0 + 1e-6 && part.height() <= 70.0 + 1e-6);
        }
        let [first, second] = [&parts[0], &parts[1]];
        let shared = first.frame().intersect(second.frame());
        assert!(close(shared.width(), 12.0));
        let letters =
            |part: &Drawing| labels(part).filter(|label| label.text == "A").map(|label| label.at).next();
        assert!(letters(first).is_some_and(|at| shared.contains(at)));
        assert_eq!(letters(first), letters(second));
    }
}

#[test]
fn a_small_drawing_is_not_cut() {
    let basket = basket(FERRY);
    let disc = drawings::base_disc(&basket, &words(&basket));
    assert_eq!(tiles(&disc, PAGE, &words(&basket)), [disc]);
}

#[test]
fn what_would_take_a_book_of_pages_says_so_on_one() {
    let basket = basket(FERRY);
    let mut wide = Drawing::new("wide", "A wide one", "");
    wide.line((0.0, 0.0), (20_000.0, 0.0), Line::Edge);
    let says = |of: Drawing| {
        let parts = tiles(&of.fitted(1.0), PAGE, &words(&basket));
        let lines: Vec<&str> = labels(&parts[0]).map(|label| label.text.as_str()).collect();
        (parts.len(), lines.join(" "))
    };
    let (count, text) = says(wide);
    assert_eq!(count, 1);
    // 20 m on pages of 190 mm that share 10 mm: 20 002 − 10 over 180 is 111.1.
    assert!(text.contains("112 pages") && text.contains("at most 60"), "{text}");
    let mut less = Drawing::new("less", "A long one", "");
    less.line((0.0, 0.0), (10_000.0, 0.0), Line::Edge);
    assert_eq!(says(less).0, 56);
}

#[test]
fn the_stave_is_true_in_length_and_width() {
    let basket = basket(HARBOUR);
    let staves = drawings::stave_templates(&basket, &words(&basket));
    assert_eq!(staves.len(), 1);
    let outlines = shapes(&staves[0], Line::Outline);
    assert_eq!(outlines.len(), 1);
    assert!(close(outlines[0].height(), basket.body.staves().length.to_mm()));
    assert!(close(outlines[0].width(), basket.body.uprights().width.to_mm()));
}

#[test]
fn every_stave_of_a_crowded_base_is_numbered() {
    let basket = basket(ODD[4]);
    assert_eq!(basket.body.uprights().count, 107);
    let plan = drawings::base_plan(&basket, &words(&basket));
    for stave in 1..=107 {
        let number = stave.to_string();
        assert_eq!(labels(&plan).filter(|label| label.text == number).count(), 1, "stave {number}");
    }
}

#[test]
fn the_section_is_true_to_its_scale() {
    let basket = basket(HARBOUR);
    let section = drawings::section(&basket, &words(&basket));
    let levels = strokes(&section, Line::Dimension);
    // Harbour bread basket is drawn 1 : 3.
    assert!(section.title.contains("1 : 3"), "{}", section.title);
    for size in [basket.body.base().diameter, 2.0 * basket.body.rim().outer_radius(basket.body.uprights())] {
        let drawn = size.to_mm() / 3.0;
        assert!(levels.iter().any(|line| close(line.p1.x - line.p0.x, drawn)), "no dimension of {drawn} mm");
    }
    let overall = (basket.body.base().thickness
        + basket.body.form.profile.at(basket.body.rim().along + basket.body.rim().height).height)
        .to_mm();
    assert!(levels.iter().any(|line| close((line.p1.y - line.p0.y).abs(), overall / 3.0)));
}

#[test]
fn type_is_large_enough_and_inside_the_frame() {
    for pattern in [HARBOUR, FERRY, CHANNEL].into_iter().chain(ODD) {
        for drawing in all(&basket(pattern)) {
            for label in labels(&drawing) {
                assert!(label.size >= 2.2, "{} in {}", label.text, drawing.name);
                let (frame, bounds) = (drawing.frame().inflate(1.0, 1.0), label.bounds());
                let inside = frame.union(bounds) == frame;
                assert!(inside, "{:?} is cut off in {} of {pattern}", label.text, drawing.name);
                assert!(!label.text.contains("drawing-"), "{} has no message", label.text);
            }
        }
    }
}
