//! What stands on paper is legible: large enough, not cut off, and told apart without colour.

mod common;

use basket::piece::Piece;
use basket::steps::{self, Stage};
use basket::weave::Face;
use basket::{Basket, Colour, Length};
use common::{CHANNEL, FERRY, HARBOUR, ODD, basket, labels, words};
use drawings::solid::{Detail, solid};
use drawings::{At, ChartKind, Drawing, Item, Label, TileSize, Tone, chart, moves, tiles};
use kurbo::Rect;
use words::{Language, Words};

/// 8 pt, of 72 to an inch.
const EIGHT_POINTS: f64 = 8.0 / 72.0 * 25.4;
/// The column of a sheet on A4 with margins of 20 mm, and what stands on it, in mm.
const COLUMN: f64 = 170.0;
const TALLEST: [(&str, f64); 4] =
    [("section", 126.0), ("base-plan", 165.0), ("chart", 200.0), ("moves", 60.0)];

/// The drawings that are printed as large as they are drawn.
fn printed(basket: &Basket, words: &Words) -> Vec<Drawing> {
    let mut all = vec![drawings::section(basket, words), drawings::base_plan(basket, words)];
    for face in [Face::Outside, Face::Inside] {
        all.extend([ChartKind::True, ChartKind::Grid].map(|kind| chart(basket, words, face, kind)));
    }
    let courses = 1..=basket.body.weave.courses.len() as u32;
    all.extend(courses.filter_map(|number| moves(basket, words, number)));
    all
}

#[test]
fn charts_plans_and_sections_fit_their_place_with_lettering_of_8_points() {
    let mut faults = Vec::new();
    for pattern in [HARBOUR, FERRY, CHANNEL].into_iter().chain(ODD) {
        let basket = basket(pattern);
        for language in [Language::English, Language::German] {
            for drawing in printed(&basket, &Words::new(language, basket.units)) {
                let of = format!("{} of {} in {language:?}", drawing.name, basket.title);
                let tallest = TALLEST.iter().find(|(name, _)| drawing.name.starts_with(name));
                let tallest = tallest.map_or(0.0, |(_, height)| *height);
                if drawing.width() > COLUMN || drawing.height() > tallest {
                    faults.push(format!("{of}: {:.1} × {:.1} mm", drawing.width(), drawing.height()));
                }
                let small = labels(&drawing).filter(|label| label.size < EIGHT_POINTS - 1e-9);
                faults.extend(small.map(|label| format!("{of}: {label:?}")));
            }
        }
    }
    assert!(faults.is_empty(), "{faults:#?}");
}

/// How wide a text is in the type that a browser falls back on: 0.6 of its height a letter (measured over the
/// labels of the section in DejaVu Serif).
fn in_fallback(label: &Label) -> f64 {
    label.text.chars().count() as f64 * label.size * 0.6
}

#[test]
fn no_label_is_cut_off_at_the_edge_whatever_the_type() {
    for pattern in [HARBOUR, FERRY, CHANNEL] {
        let basket = basket(pattern);
        for drawing in
            [drawings::section(&basket, &words(&basket)), drawings::base_plan(&basket, &words(&basket))]
        {
            let frame = drawing.frame();
            for label in labels(&drawing).filter(|label| label.turn == 0.0) {
                let width = in_fallback(label);
                let bounds = label.bounds();
                let (left, right) = match label.anchor {
                    drawings::Anchor::Start => (bounds.x0, bounds.x0 + width),
                    drawings::Anchor::Middle => (label.at.x - width / 2.0, label.at.x + width / 2.0),
                    drawings::Anchor::End => (bounds.x1 - width, bounds.x1),
                };
                assert!(frame.x0 <= left && right <= frame.x1, "{}: {label:?}", drawing.name);
            }
        }
    }
}

fn holds(outer: Rect, inner: Rect) -> bool {
    outer.union(inner) == outer
}

#[test]
fn every_word_of_a_tiled_template_stands_whole_on_one_of_its_pages() {
    for pattern in [HARBOUR, FERRY, CHANNEL] {
        let basket = basket(pattern);
        let words = words(&basket);
        for strip in [
            drawings::spacing_strip(&basket, &words, At::Base),
            drawings::spacing_strip(&basket, &words, At::Rim),
            drawings::drilling_template(&basket, &words),
        ] {
            let [width, height, overlap] = [150.0, 220.0, 15.0].map(Length::mm);
            let pages = tiles(&strip, TileSize { width, height, overlap }, &words);
            assert!(pages.len() > 1, "{} goes on one page", strip.name);
            for page in &pages {
                let cut = labels(page).find(|label| !holds(page.frame(), label.bounds()));
                assert!(cut.is_none(), "{}: {cut:?}", page.name);
            }
            for label in labels(&strip) {
                let found = pages.iter().flat_map(labels).any(|shown| shown.text == label.text);
                assert!(found, "{} of {}", label.text, strip.name);
            }
        }
    }
}

#[test]
fn a_label_longer_than_the_overlap_is_moved_into_one_page() {
    let mut drawing = Drawing::new("strip", "", "");
    drawing.stroke(Rect::new(0.0, 0.0, 200.0, 10.0), drawings::Line::Edge);
    drawing.label(Label::new("a label longer than the overlap", (100.0, 5.0)).middle());
    let [width, height, overlap] = [110.0, 50.0, 5.0].map(Length::mm);
    let words = Words::new(Language::English, basket::pattern::Units::Inches);
    let pages = tiles(&drawing.fitted(0.0), TileSize { width, height, overlap }, &words);
    let whole = pages.iter().flat_map(|page| labels(page).map(move |label| (page, label)));
    let whole: Vec<_> = whole.filter(|(_, label)| label.text.starts_with("a label")).collect();
    assert_eq!(whole.len(), 1);
    assert!(holds(whole[0].0.frame(), whole[0].1.bounds()));
}

#[test]
fn the_staves_marked_on_the_plans_are_those_that_the_steps_name() {
    for pattern in [HARBOUR, FERRY, CHANNEL] {
        let basket = basket(pattern);
        let words = words(&basket);
        let said: Vec<String> = steps::list(&basket)
            .iter()
            .flat_map(|step| &step.text)
            .filter(|message| message.id == "step-base-text-mark")
            .map(|message| words.say(message))
            .collect();
        let numbers = |text: &str| -> Vec<u32> {
            text.split(|sign: char| !sign.is_ascii_digit()).filter_map(|word| word.parse().ok()).collect()
        };
        let named: Vec<u32> = said.iter().flat_map(|text| numbers(text)).collect();
        assert!(named.len() >= 4, "{said:?}");
        for drawing in [drawings::plan(&basket, &words), drawings::base_plan(&basket, &words)] {
            let marked: Vec<u32> = labels(&drawing)
                .filter(|label| label.bold)
                .filter_map(|label| label.text.parse().ok())
                .collect();
            assert_eq!(marked.len(), 4, "{}: {marked:?}", drawing.name);
            assert!(marked.iter().all(|stave| named.contains(stave)), "{marked:?} in {said:?}");
        }
    }
}

#[test]
fn a_basket_that_dries_banded_shows_its_band() {
    let basket = basket(HARBOUR);
    let band = |stage| {
        let parts = solid(&basket, stage, Detail::Page).parts;
        parts.into_iter().find(|part| part.piece == Piece::Band)
    };
    let [half, woven] = [Stage::HalfWoven, Stage::Woven].map(|stage| band(stage).expect("a band"));
    let reach = |part: &drawings::solid::Part| {
        part.mesh.positions.iter().map(|at| at[0].hypot(at[1])).fold(0.0_f32, f32::max)
    };
    assert!(reach(&woven) > reach(&half) + 0.3, "it lies over the rows");
    assert!(band(Stage::OffMould).is_none());
}

/// Relative luminance of WCAG 2.2.
fn luminance(rgb: [u8; 3]) -> f64 {
    let [red, green, blue] = rgb.map(|part| {
        let share = f64::from(part) / 255.0;
        if share <= 0.04045 { share / 12.92 } else { ((share + 0.055) / 1.055).powf(2.4) }
    });
    0.2126 * red + 0.7152 * green + 0.0722 * blue
}

/// Every built-in colour prints light enough for black marks, and each chart of two of them has two hatches.
#[test]
fn colours_of_a_chart_are_told_apart_without_colour() {
    for name in ["blue", "red", "black", "brown", "purple", "green"] {
        assert!(Colour::built_in(name).is_some());
        let pattern = CHANNEL.replace("colours = \"blue\"", &format!("colours = \"{name}\""));
        let basket = basket(&pattern);
        let drawing = chart(&basket, &words(&basket), Face::Outside, ChartKind::True);
        let mut darkest = 1.0_f64;
        let mut hatches = 0;
        for item in drawing.items() {
            match item {
                Item::Path { tone: Some(Tone::Dyed(rgb)), .. } => darkest = darkest.min(luminance(*rgb)),
                Item::Path { tone: Some(Tone::Black), path, .. } if path.elements().len() > 100 => {
                    hatches += 1
                }
                _ => {}
            }
        }
        // Contrast of black marks (WCAG 2.2 asks 3 : 1 of graphics).
        assert!((darkest + 0.05) / 0.05 >= 4.5, "{name} prints at a luminance of {darkest}");
        assert!(hatches > 0, "{name} has no hatch");
        for text in [format!("2 {name}"), "1 natural".to_owned(), "course 2: 2".to_owned()] {
            assert!(labels(&drawing).any(|label| label.text == text), "{text}");
        }
    }
}

/// The bands of the moves cover and uncover staves as the chart of the same course does.
#[test]
fn the_moves_are_those_of_the_fabric() {
    let basket = basket(CHANNEL);
    for (course, number) in basket.body.weave.courses.iter().zip(1..) {
        let drawing = moves(&basket, &words(&basket), number).expect("a drawing");
        let numbers: Vec<u32> = labels(&drawing)
            .filter(|label| !label.bold)
            .filter_map(|label| label.text.parse().ok())
            .collect();
        let shown = |place: u32| course.fabric.stave_in(0, place) + 1;
        let wanted: Vec<u32> = (0..numbers.len() as u32).map(shown).collect();
        assert_eq!(numbers, wanted, "staves of course {number}");
        // From the top item down: the stave where it covers the weaver, the band where that goes over.
        for (label, place) in labels(&drawing).filter(|label| !label.bold).take(numbers.len()).zip(0..) {
            let rows = labels(&drawing).filter(|label| label.bold && label.text.parse::<u32>().is_ok());
            for (row, index) in rows.zip(0..) {
                let at = kurbo::Point::new(label.at.x, row.at.y);
                let top = drawing.items().iter().rev().find_map(|item| match item {
                    Item::Path { path, tone: Some(tone), .. } if kurbo::Shape::contains(path, at) => {
                        Some(*tone)
                    }
                    _ => None,
                });
                let over = course.fabric.is_over(index, course.fabric.stave_in(0, place));
                assert_eq!(top != Some(Tone::Pale), over, "course {number} row {index} place {place}");
            }
        }
    }
}
