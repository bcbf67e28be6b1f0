//! Drawings of the making show the basket that was computed.

mod common;

use basket::Piece;
use basket::steps::Stage;
use common::{CHANNEL, FERRY, HARBOUR, ODD, basket, labels, words};
use drawings::lines::{PartStyle, PictureError, Region, Style, View, draw};
use drawings::solid::{Detail, Part, Solid, solid};
use drawings::stages::{Plate, plates, stage_drawing, stage_drawings};
use drawings::{Drawing, Item, Tone};
use kurbo::{PathEl, Rect, Shape};

/// A wide bowl, so that all staves are seen from the side of the base.
const BOWL: &str = "title = \"Bowl\"\nunits = \"mm\"\n[mould]\nside = \"cone\"\nbase = \"120\"\nrim = \"260\"\nheight = \"110\"\n[staves]\nstock = \"flat oval reed 3/8 in\"\n";

/// A small basket with all there is to one.
const SMALL: &str = "title = \"Small\"\nunits = \"mm\"\n[mould]\nside = \"cone\"\nbase = \"60\"\nrim = \"90\"\nheight = \"30\"\n[staves]\ncount = 21\nstock = \"flat oval reed 1/4 in\"\n[ears]\n[handle]\n";

/// Staves in black, the rest without tone but hiding what lies behind it.
/// Undyed cane of the drawings, (214, 172, 102), at 58 %.
const SPENT: Tone = Tone::Dyed([124, 100, 59]);

fn black_staves(part: &Part) -> PartStyle {
    let tone = (part.piece.sort() == Piece::Uprights).then_some(Tone::Black);
    PartStyle { edge: None, lit: tone, shaded: tone }
}

/// The staves set, without their band.
fn staves_set(count: usize) -> Solid {
    let basket = basket(&format!("{BOWL}count = {count}\n"));
    let mut solid = solid(&basket, Stage::StavesSet, Detail::Full);
    solid.parts.retain(|part| part.piece.sort() != Piece::Band);
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
        let style = Style { look: &black_staves, ..Style::plain(110.0, 110.0) };
        let view = View::from(0.0, 90.0).base_up();
        let drawing = draw(&staves_set(count), &view, &style).expect("a picture");
        assert_eq!(patches(&drawing, Tone::Black).len(), count, "staves seen round the base");
    }
}

#[test]
fn from_the_front_each_stave_is_seen_at_its_place() {
    let (count, half_width) = (43, 130.0);
    let style = Style { look: &black_staves, ..Style::plain(110.0, 110.0) };
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
        let drawings = stage_drawings(&basket, &words);
        assert!(drawings.iter().map(|(plate, _)| *plate).eq(plates(&basket)), "one for each plate");
        for (plate, drawing) in drawings {
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
    assert!(title(Plate::StavesSet).contains(&basket.body.uprights().count.to_string()));
    assert!(title(Plate::Woven).contains(&basket.body.weave.rows.to_string()));
    assert!(title(Plate::Lashed).contains(&basket.body.lashing().expect("it is lashed").wraps.to_string()));
    let half = solid(&basket, Stage::HalfWoven, Detail::Full);
    let rows = half.parts.iter().filter(|part| part.piece.sort() == Piece::Weaving).count();
    assert!(title(Plate::HalfWoven).contains(&rows.to_string()));
}

#[test]
fn drawings_made_together_are_those_made_one_by_one() {
    let basket = basket(SMALL);
    let words = words(&basket);
    let one_by_one: Vec<(Plate, Drawing)> = plates(&basket)
        .into_iter()
        .filter_map(|plate| Some((plate, stage_drawing(&basket, &words, plate)?)))
        .collect();
    assert!(one_by_one.len() > 15);
    assert!(stage_drawings(&basket, &words) == one_by_one);
}

/// All numbers that a text names.
fn numbers(text: &str) -> Vec<u32> {
    text.split(|letter: char| !letter.is_ascii_digit()).filter_map(|digits| digits.parse().ok()).collect()
}

#[test]
fn captions_and_descriptions_differ_and_name_true_counts_only() {
    for pattern in [HARBOUR, FERRY, CHANNEL] {
        let basket = basket(pattern);
        let words = words(&basket);
        let rows = |stage| of_kind(&solid(&basket, stage, Detail::Thumbnail), Piece::Weaving);
        let clamped = solid(&basket, Stage::RimClamped, Detail::Thumbnail);
        let join = basket.body.weave.courses.iter().flat_map(|course| &course.joins);
        let mut known: Vec<u32> =
            join.flat_map(|join| [join.row, join.cut_over, join.start_behind]).collect();
        known.extend(basket.ears.iter().flat_map(|ears| ears.each.iter().map(|ear| ear.stave)));
        known.extend([basket.body.rim().outer.scarf.from_stave, basket.body.rim().outer.scarf.to_stave]);
        known.extend([
            basket.body.uprights().count,
            basket.body.pins().count(),
            basket.body.lashing().expect("it is lashed").wraps,
        ]);
        known.extend([Stage::FirstRows, Stage::HalfWoven, Stage::EarsSet, Stage::Woven].map(rows));
        known.push(of_kind(&clamped, Piece::Clamps));
        let drawings = stage_drawings(&basket, &words);
        for (plate, drawing) in &drawings {
            assert_ne!(drawing.title, drawing.description, "{plate:?}");
            assert!(drawing.description.len() > drawing.title.len() / 2, "{plate:?}");
            for number in numbers(&drawing.title).into_iter().chain(numbers(&drawing.description)) {
                assert!(known.contains(&number), "{plate:?} of {} names {number}", basket.title);
            }
        }
        let count = |plate| {
            drawings.iter().find(|(one, _)| *one == plate).map(|(_, drawing)| numbers(&drawing.title))
        };
        assert_eq!(count(Plate::StavesSet), Some(vec![basket.body.uprights().count]));
        assert_eq!(count(Plate::Pinned), Some(vec![basket.body.pins().count()]));
        assert_eq!(count(Plate::RimClamped), Some(vec![of_kind(&clamped, Piece::Clamps)]));
        assert_eq!(count(Plate::Woven), Some(vec![basket.body.weave.rows, basket.body.uprights().count]));
    }
}

fn of_kind(solid: &Solid, kind: Piece) -> u32 {
    let parts = solid.parts.iter().filter(|part| part.piece.sort() == kind);
    let mut numbers: Vec<Piece> = parts.map(|part| part.piece).collect();
    numbers.dedup();
    numbers.len() as u32
}

#[test]
fn no_two_labels_overlap() {
    for pattern in [HARBOUR, FERRY, CHANNEL] {
        let basket = basket(pattern);
        let words = words(&basket);
        let plan = drawings::plan(&basket, &words);
        let drawings = stage_drawings(&basket, &words).into_iter().map(|(_, drawing)| drawing).chain([plan]);
        for drawing in drawings {
            let all: Vec<&drawings::Label> = labels(&drawing).collect();
            for (index, one) in all.iter().enumerate() {
                for other in &all[..index] {
                    let shared = one.bounds().intersect(other.bounds());
                    assert!(shared.area() == 0.0, "{}: {:?} on {:?}", drawing.name, one.text, other.text);
                }
            }
        }
    }
}

#[test]
fn the_plan_is_to_scale_and_says_its_sizes_in_both_systems() {
    let basket = basket(HARBOUR);
    let words = words(&basket);
    let plan = drawings::plan(&basket, &words);
    let rim = basket.body.rim().outer_radius(basket.body.uprights()) * 2.0;
    for length in [rim, basket.body.base().diameter] {
        let size = words.both(length);
        assert!(size.contains("in") && size.contains("mm"), "{size}");
        assert!(labels(&plan).any(|label| label.text == size), "{size} stands at a dimension line");
        assert!(plan.description.contains(&size));
    }
    assert!(plan.title.contains("1 : 4"), "{}", plan.title);
    // The dashed circle of the base, to that scale.
    let hidden = plan.items().iter().find_map(|item| match item {
        Item::Path { path, line: Some(drawings::Line::Hidden), .. } => Some(path.bounding_box()),
        _ => None,
    });
    let across = hidden.expect("a hidden line").width();
    assert!((across - basket.body.base().diameter.to_mm() / 4.0).abs() < 0.05, "{across}");
}

#[test]
fn a_join_shows_both_strands_and_the_staves_between() {
    for pattern in [HARBOUR, FERRY] {
        let basket = basket(pattern);
        let drawing = stage_drawing(&basket, &words(&basket), Plate::Join).expect("a drawing");
        assert!(!patches(&drawing, SPENT).is_empty(), "the spent strand is seen");
        let mut joins = basket.body.weave.courses.iter().flat_map(|course| &course.joins);
        let join = joins.find(|join| join.start_behind < join.cut_over).expect("a join");
        for stave in join.start_behind..=join.cut_over {
            assert!(labels(&drawing).any(|label| label.text == stave.to_string()), "stave {stave}");
        }
    }
}

#[test]
fn every_drawing_goes_with_one_step() {
    let basket = basket(HARBOUR);
    let steps = basket::steps::list(&basket);
    let of_steps: Vec<Plate> = steps.iter().flat_map(|step| Plate::of_step(step.kind)).copied().collect();
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
fn drawings_of_a_small_basket_are_written_as_they_were() {
    let basket = basket(SMALL);
    for plate in [Plate::BaseOnMould, Plate::FirstRows, Plate::PinAndClinch] {
        let drawing = stage_drawing(&basket, &words(&basket), plate).expect("a drawing");
        insta::assert_snapshot!(plate.name(), drawing.to_svg());
    }
}
