//! Drawings of the making show the basket that was computed.

mod common;

use basket::steps::Stage;
use common::{CHANNEL, FERRY, HARBOUR, ODD, basket, labels, words};
use drawings::lines::{Look, PictureError, Region, Style, View, draw};
use drawings::solid::{Detail, Part, PartKind, Solid, solid};
use drawings::stages::{Plate, plates, stage_drawing};
use drawings::{Drawing, Item, Tone};
use kurbo::{PathEl, Rect, Shape};

/// A wide bowl, so that all staves are seen from the side of the base.
const BOWL: &str = "title = \"Bowl\"\nunits = \"mm\"\n[mould]\nside = \"cone\"\nbase = \"120\"\nrim = \"260\"\nheight = \"110\"\n[staves]\nstock = \"flat oval reed 3/8 in\"\n";

/// Staves in black, the rest without tone but hiding what lies behind it.
fn black_staves(part: &Part) -> Look {
    let tone = (part.kind == PartKind::Stave).then_some(Tone::Black);
    Look { edge: None, lit: tone, shaded: tone }
}

/// The staves set, without their band.
fn staves_set(count: usize) -> Solid {
    let basket = basket(&format!("{BOWL}count = {count}\n"));
    let mut solid = solid(&basket, Stage::StavesSet, Detail::Full);
    solid.parts.retain(|part| part.kind != PartKind::Band);
    solid
}

/// The separate patches of a tone that a drawing shows.
fn patches(drawing: &Drawing, wanted: Tone) -> Vec<Rect> {
    let paths = drawing.items().iter().filter_map(|item| match item {
        Item::Path { path, tone: Some(tone), .. } if *tone == wanted => Some(path.elements()),
        _ => None,
    });
    let pieces = paths.flat_map(|path| path.chunk_by(|_, next| !matches!(next, PathEl::MoveTo(_))));
    pieces.map(|piece| piece.bounding_box()).collect()
}

#[test]
fn a_basket_of_43_staves_shows_43() {
    for count in [43, 36, 51] {
        let style = Style { look: black_staves, ..Style::plain(110.0, 110.0) };
        let view = View::from(0.0, 90.0).base_up();
        let drawing = draw(&staves_set(count), &view, &style).expect("a picture");
        assert_eq!(patches(&drawing, Tone::Black).len(), count, "staves seen round the base");
    }
}

#[test]
fn from_the_front_each_stave_is_seen_at_its_place() {
    let (count, half_width) = (43, 130.0);
    let style = Style { look: black_staves, ..Style::plain(110.0, 110.0) };
    // Well above the base, where their feet stand close together.
    let band = Region { middle: [0.0, 0.0, 75.0], half_width, half_height: 20.0 };
    let drawing = draw(&staves_set(count), &View::from(0.0, 0.0).close_up(band), &style).expect("a picture");
    let scale = 108.0 / (2.0 * half_width);
    let seen: Vec<f64> =
        patches(&drawing, Tone::Black).iter().map(|patch| patch.center().x / scale - half_width).collect();
    // Mean radius of the staves between heights 55 and 95 on a cone from 60 to 130 over 110 mm, less
    // than a stave's thickness outside the mould.
    let radius = 60.0 + 70.0 * 75.0 / 110.0 + 1.0;
    let near = |x: f64| seen.iter().filter(|at| (*at - x).abs() < 4.0).count();
    let angles = (0..count).map(|stave| std::f64::consts::TAU * stave as f64 / count as f64);
    // In front, and not so far aside that neighbours hide the gaps between them.
    let front: Vec<f64> =
        angles.filter(|angle| angle.sin() < -0.7).map(|angle| radius * angle.cos()).collect();
    assert!(front.len() > 8);
    for x in front {
        assert_eq!(near(x), 1, "one stave at {x} mm; seen at {seen:?}");
    }
}

#[test]
fn every_stage_is_drawn_with_its_caption_and_prints() {
    for pattern in [HARBOUR, FERRY, CHANNEL] {
        let basket = basket(pattern);
        let words = words(&basket);
        for plate in plates(&basket) {
            let drawing = stage_drawing(&basket, &words, plate).expect("a drawing");
            let svg = drawing.to_svg();
            let name = &drawing.name;
            assert!(!drawing.title.starts_with("plate-"), "{name} has no caption");
            assert!(drawing.description.len() > 30 && !drawing.description.starts_with("plate-"), "{name}");
            assert!(!drawing.title.contains('{') && !drawing.description.contains('{'), "{name}");
            assert!(!svg.contains("NaN") && !svg.contains("inf"), "{name}");
            assert!(svg.len() < 1_500_000, "{name} has {} bytes", svg.len());
            let (width, height) =
                if matches!(plate, Plate::Exploded | Plate::Cover) { (180.0, 230.0) } else { (71.0, 73.0) };
            assert!(drawing.width() > 30.0 && drawing.width() < width, "{name}: {} mm wide", drawing.width());
            assert!(
                drawing.height() > 25.0 && drawing.height() < height,
                "{name}: {} mm high",
                drawing.height()
            );
            let frame = drawing.frame().inflate(0.5, 0.5);
            for item in drawing.items() {
                let bounds = match item {
                    Item::Path { path, .. } => path.bounding_box(),
                    Item::Label(label) => label.bounds(),
                };
                assert!(frame.contains_rect(bounds), "{name}: {bounds:?} lies beyond {frame:?}");
            }
        }
    }
}

#[test]
fn captions_count_what_is_drawn() {
    let basket = basket(HARBOUR);
    let words = words(&basket);
    let title = |plate| stage_drawing(&basket, &words, plate).expect("a drawing").title;
    assert!(title(Plate::StavesSet).contains(&basket.staves.count.to_string()));
    assert!(title(Plate::Woven).contains(&basket.weave.rows.to_string()));
    assert!(title(Plate::Lashed).contains(&basket.lashing.wraps.to_string()));
    let half = solid(&basket, Stage::HalfWoven, Detail::Full);
    let rows = half.parts.iter().filter(|part| part.kind == PartKind::Row).count();
    assert!(title(Plate::HalfWoven).contains(&rows.to_string()));
}

#[test]
fn a_join_shows_both_strands_and_the_staves_between() {
    for pattern in [HARBOUR, FERRY] {
        let basket = basket(pattern);
        let drawing = stage_drawing(&basket, &words(&basket), Plate::Join).expect("a drawing");
        assert!(!patches(&drawing, Tone::Mid).is_empty(), "the spent strand is seen");
        let mut joins = basket.weave.courses.iter().flat_map(|course| &course.joins);
        let join = joins.find(|join| join.start_behind < join.cut_over).expect("a join");
        for stave in join.start_behind..=join.cut_over {
            assert!(labels(&drawing).any(|label| label.text == stave.to_string()), "stave {stave}");
        }
    }
}

#[test]
fn every_drawing_goes_with_one_step() {
    let basket = basket(HARBOUR);
    let of_steps: Vec<Plate> = basket.steps.iter().flat_map(Plate::of_step).copied().collect();
    for plate in plates(&basket) {
        let expected = usize::from(!matches!(plate, Plate::Exploded | Plate::Cover));
        assert_eq!(of_steps.iter().filter(|one| **one == plate).count(), expected, "{plate:?}");
    }
}

#[test]
fn names_are_found_again_and_others_are_refused() {
    for plate in Plate::ALL {
        assert_eq!(Plate::named(plate.name()), Ok(plate));
    }
    let error = Plate::named("half-wovn").expect_err("no such drawing");
    assert!(matches!(error, PictureError::Unknown { .. }));
    assert!(error.to_string().contains("half-wovn") && error.to_string().contains("half-woven"), "{error}");
}

#[test]
fn what_a_basket_has_not_is_not_drawn() {
    let bare = basket(&format!("{BOWL}count = 43\n"));
    assert!(bare.ears.is_none() && bare.handle.is_none());
    for plate in [Plate::EarsSet, Plate::Handled, Plate::EarWithRivet] {
        assert_eq!(stage_drawing(&bare, &words(&bare), plate), None);
        assert!(!plates(&bare).contains(&plate));
    }
    assert!(stage_drawing(&bare, &words(&bare), Plate::Exploded).is_some());
}

#[test]
fn the_exploded_view_names_its_parts_from_the_top_down() {
    let basket = basket(HARBOUR);
    let drawing = stage_drawing(&basket, &words(&basket), Plate::Exploded).expect("a drawing");
    let mut names: Vec<(f64, String)> =
        labels(&drawing).map(|label| (label.at.y, label.text.clone())).collect();
    assert_eq!(names.len(), 10);
    names.sort_by(|a, b| a.0.total_cmp(&b.0));
    assert!(names.windows(2).all(|pair| pair[1].0 - pair[0].0 > 3.0), "names do not overlap");
    assert_eq!(names.first().map(|name| name.1.as_str()), Some("handle"));
    assert_eq!(names.last().map(|name| name.1.as_str()), Some("base and plug"));
}

#[test]
fn odd_baskets_give_finite_drawings_or_none() {
    for pattern in ODD {
        let basket = basket(pattern);
        for plate in plates(&basket) {
            let Some(drawing) = stage_drawing(&basket, &words(&basket), plate) else { continue };
            let svg = drawing.to_svg();
            assert!(!svg.contains("NaN") && !svg.contains("inf"), "{} of {}", drawing.name, basket.title);
        }
    }
}

#[test]
fn a_stage_is_written_the_same_every_time() {
    let svg = || {
        let basket = basket(FERRY);
        stage_drawing(&basket, &words(&basket), Plate::Finished).expect("a drawing").to_svg()
    };
    assert_eq!(svg(), svg());
}

#[test]
fn the_base_on_its_mould_is_written_as_it_was() {
    let basket = basket(FERRY);
    let drawing = stage_drawing(&basket, &words(&basket), Plate::BaseOnMould).expect("a drawing");
    insta::assert_snapshot!(drawing.to_svg());
}
