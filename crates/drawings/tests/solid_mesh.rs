//! Solids of baskets: closed, finite, as large and as long as the basket says.

mod common;

use std::f64::consts::TAU;

use basket::piece::{FloorPart, Piece};
use basket::steps::Stage;
use basket::{Basket, Length};
use common::solids::{assert_sound, of_kind, volume};
use common::{CHANNEL, FERRY, HARBOUR, ODD, basket};
use drawings::solid::{Detail, Mesh, Part, Solid, solid};
use glam::Vec3;
use proptest::prelude::*;

const DETAILS: [Detail; 4] = [Detail::Full, Detail::Page, Detail::Column, Detail::Thumbnail];

#[test]
fn every_part_is_closed_and_right_side_out_at_every_stage_and_detail() {
    for pattern in [HARBOUR, FERRY, CHANNEL] {
        let basket = basket(pattern);
        let every = Stage::ALL.into_iter().map(|stage| (stage, Detail::Thumbnail));
        for (stage, detail) in every.chain(DETAILS.map(|detail| (Stage::Finished, detail))) {
            let solid = solid(&basket, stage, detail);
            assert_sound(&solid);
            for part in &solid.parts {
                assert!(volume(&part.mesh) > 0.0, "{stage:?} {detail:?}: {} is inside out", part.name());
            }
        }
    }
}

#[test]
fn names_are_unique() {
    let solid = solid(&basket(HARBOUR), Stage::Finished, Detail::Full);
    let mut names: Vec<String> = solid.parts.iter().map(Part::name).collect();
    names.sort_unstable();
    names.dedup();
    assert_eq!(names.len(), solid.parts.len());
}

#[test]
fn each_stage_has_what_exists_then() {
    let basket = basket(HARBOUR);
    let count = |stage, kind| of_kind(&solid(&basket, stage, Detail::Thumbnail), kind).count();
    let staves = basket.body.uprights().count as usize;
    let rows = basket.body.weave.rows as usize;
    assert_eq!(count(Stage::BaseOnMould, Piece::Mould), 1);
    assert_eq!(count(Stage::BaseOnMould, Piece::Floor(FloorPart::Screw)), 1);
    assert_eq!(count(Stage::BaseOnMould, Piece::Uprights), 0);
    assert_eq!(count(Stage::StavesSet, Piece::Uprights), staves);
    assert_eq!(count(Stage::StavesSet, Piece::Band), 1);
    assert_eq!(count(Stage::FirstRows, Piece::Weaving), 4);
    assert_eq!(count(Stage::HalfWoven, Piece::Weaving), rows / 2);
    assert_eq!(count(Stage::Woven, Piece::Weaving), rows);
    // Its ears are woven in: they come between the rows, on the mould.
    assert_eq!(count(Stage::HalfWoven, Piece::Ears), 0);
    assert_eq!(count(Stage::EarsSet, Piece::Ears), 2);
    assert_eq!(count(Stage::EarsSet, Piece::Weaving), basket.rows_at(Stage::EarsSet) as usize);
    assert_eq!(count(Stage::EarsSet, Piece::Mould), 1);
    assert_eq!(count(Stage::Woven, Piece::Ears), 2);
    assert_eq!(count(Stage::Woven, Piece::OuterHoop), 0);
    assert_eq!(count(Stage::RingsMade, Piece::OuterHoop) + count(Stage::RingsMade, Piece::InnerHoop), 2);
    assert_eq!(count(Stage::RimClamped, Piece::OuterHoop) + count(Stage::RimClamped, Piece::InnerHoop), 2);
    assert_eq!(count(Stage::Woven, Piece::Mould), 1);
    assert_eq!(count(Stage::RingsMade, Piece::Mould), 1);
    assert_eq!(
        count(Stage::OffMould, Piece::Mould) + count(Stage::OffMould, Piece::Floor(FloorPart::Screw)),
        0
    );
    // As many as are listed with the tools of the step.
    assert_eq!(count(Stage::RimClamped, Piece::Clamps), 24);
    assert_eq!(count(Stage::Pinned, Piece::Clamps), 0);
    assert_eq!(count(Stage::Pinned, Piece::Pins), basket.body.pins().count() as usize);
    assert_eq!(count(Stage::Pinned, Piece::Lashing), 0);
    assert_eq!(
        count(Stage::Lashed, Piece::Lashing),
        basket.body.lashing().expect("it is lashed").wraps as usize
    );
    assert_eq!(count(Stage::Lashed, Piece::Fillers), 2);
    assert_eq!(count(Stage::Lashed, Piece::Handle), 0);
    assert_eq!(count(Stage::Handled, Piece::Handle), 1);
    assert_eq!(count(Stage::Handled, Piece::Washers), 4);
    assert_eq!(count(Stage::Finished, Piece::Mould), 0);
    assert_eq!(count(Stage::Finished, Piece::Floor(FloorPart::Plug)), 1);
}

#[test]
fn tips_stand_above_the_rim_until_they_are_trimmed() {
    let basket = basket(CHANNEL);
    let rim_top =
        basket.body.form.profile.at(basket.body.rim().along + basket.body.rim().height).height.to_mm() as f32;
    let top = |stage| {
        let solid = solid(&basket, stage, Detail::Full);
        let heights: Vec<f32> =
            of_kind(&solid, Piece::Uprights).flat_map(|part| &part.mesh.positions).map(|at| at[2]).collect();
        heights.into_iter().fold(f32::NEG_INFINITY, f32::max)
    };
    let trim = basket.body.staves().length_parts.trim.to_mm() as f32;
    assert!((top(Stage::RimClamped) - rim_top - trim).abs() < 1.0);
    assert!((top(Stage::Pinned) - rim_top).abs() < 0.5);
}

/// A stave's volume is its section times its width, summed along its length. Flat oval reed fills five
/// sixths of its box (as the catalogue's thicknesses take it).
#[test]
fn a_stave_has_the_volume_of_its_section_along_its_length() {
    for pattern in [HARBOUR, FERRY, CHANNEL] {
        let basket = basket(pattern);
        let staves = basket.body.staves();
        let parts = &staves.length_parts;
        let from = parts.groove + parts.turn;
        let length = from + basket.body.rim().along + basket.body.rim().height;
        let steps = 1000;
        let mean: f64 = (0..steps)
            .map(|step| {
                staves.uprights.width_at(length * ((f64::from(step) + 0.5) / f64::from(steps)) - from).to_mm()
            })
            .sum::<f64>()
            / f64::from(steps);
        let wanted = mean * staves.uprights.thickness.to_mm() * 5.0 / 6.0 * length.to_mm();
        let solid = solid(&basket, Stage::Finished, Detail::Full);
        // Stave 20 carries no ear.
        let volume = of_kind(&solid, Piece::Uprights).nth(19).map_or(0.0, |part| volume(&part.mesh));
        assert!((volume / wanted - 1.0).abs() < 0.05, "{}: {volume} for {wanted}", basket.title);
        println!("{}: {}", basket.title, volume / wanted);
    }
}

/// The length of the middle line of a swept part with so many corners in its section.
fn way(mesh: &Mesh, per: usize) -> f64 {
    let middles: Vec<Vec3> = mesh
        .positions
        .chunks(per)
        .map(|ring| ring.iter().map(|at| Vec3::from(*at)).sum::<Vec3>() / ring.len() as f32)
        .collect();
    middles.windows(2).map(|pair| f64::from(pair[0].distance(pair[1]))).sum()
}

#[test]
fn each_row_is_as_long_as_the_weaver_it_takes() {
    for pattern in [HARBOUR, FERRY, CHANNEL] {
        let basket = basket(pattern);
        let solid = solid(&basket, Stage::Woven, Detail::Full);
        let mut whole = [0.0, 0.0];
        for part in of_kind(&solid, Piece::Weaving) {
            let row = basket
                .body
                .weave
                .each_row
                .iter()
                .find(|row| Some(row.number) == part.row())
                .expect("the row");
            let course = &basket.body.weave.courses[row.course as usize - 1];
            if row.number == course.first_row || row.number + 1 == course.first_row + course.rows {
                continue;
            }
            let (drawn, reckoned) = (way(&part.mesh, 6), row.length.to_mm());
            assert!(
                (drawn / reckoned - 1.0).abs() < 0.02,
                "{}: {}: {drawn} for {reckoned}",
                basket.title,
                part.name()
            );
            whole = [whole[0] + drawn, whole[1] + reckoned];
        }
        println!("{}: {}", basket.title, whole[0] / whole[1]);
        assert!((whole[0] / whole[1] - 1.0).abs() < 0.02, "{}: {whole:?}", basket.title);
    }
}

#[test]
fn rows_go_over_and_under_as_the_weave_says() {
    let basket = basket(CHANNEL);
    let solid = solid(&basket, Stage::Woven, Detail::Full);
    let rows: Vec<&Part> = of_kind(&solid, Piece::Weaving).collect();
    for (part, stave) in
        rows.iter().skip(2).step_by(3).take(10).zip((2..=basket.body.uprights().count).cycle().step_by(5))
    {
        let number = part.row().expect("a row");
        let row = &basket.body.weave.each_row[number as usize - 1];
        let middle = basket.body.form.profile.at(row.along).radius + basket.body.uprights().thickness / 2.0;
        let angle = basket.body.uprights().turn(stave) * TAU;
        let at_stave = part.mesh.positions.iter().filter(|at| {
            // Numbers rise clockwise seen from above.
            let off = f64::from(-at[1]).atan2(f64::from(at[0])) - angle;
            (off - TAU * (off / TAU).round()).abs() < 0.003
        });
        let radii: Vec<f64> = at_stave.map(|at| f64::from(at[0]).hypot(f64::from(at[1]))).collect();
        assert!(!radii.is_empty(), "{} has no corner at stave {stave}", part.name());
        let outside = radii.iter().sum::<f64>() / radii.len() as f64 > middle.to_mm();
        assert_eq!(
            outside,
            basket.body.weave.cell(number, stave).outside.is_some(),
            "{} at stave {stave}",
            part.name()
        );
    }
}

#[test]
fn the_base_has_the_size_it_is_turned_to() {
    let basket = basket(HARBOUR);
    let solid = solid(&basket, Stage::BaseOnMould, Detail::Full);
    let base = of_kind(&solid, Piece::Floor(FloorPart::Disc)).next().expect("a base");
    let radii = base.mesh.positions.iter().map(|at| at[0].hypot(at[1]));
    assert!((radii.fold(0.0, f32::max) - basket.body.base().diameter.to_mm() as f32 / 2.0).abs() < 1e-3);
    let low = base.mesh.positions.iter().fold(0.0_f32, |low, at| low.min(at[2]));
    assert!((low + basket.body.base().thickness.to_mm() as f32).abs() < 1e-3);
    let (edge, root) =
        (basket.body.base().diameter.to_mm() / 2.0, basket.body.base().groove_radius().to_mm());
    let disc = TAU / 2.0 * edge * edge * basket.body.base().thickness.to_mm();
    let groove = TAU / 2.0 * (edge * edge - root * root) * basket.body.base().groove_width.to_mm();
    // Hole, plug's seat, turned rings and flat facets take less than 3 %.
    let share = volume(&base.mesh) / (disc - groove);
    assert!((0.97..1.0).contains(&share), "{share}");
}

fn longest(solid: &Solid, kind: Piece, per: usize) -> f64 {
    of_kind(solid, kind).map(|part| way(&part.mesh, per)).fold(0.0, f64::max)
}

/// The bail's middle line is as long as the handle's cut, and a hoop as its own with the lap.
#[test]
fn hoops_and_bail_are_as_long_as_they_are_cut() {
    let basket = basket(HARBOUR);
    let solid = solid(&basket, Stage::Finished, Detail::Full);
    let close = |drawn: f64, cut: Length, share: f64| {
        assert!((drawn / cut.to_mm() - 1.0).abs() < share, "{drawn} for {cut:?}");
    };
    close(longest(&solid, Piece::OuterHoop, 7), basket.body.rim().outer.cut, 0.015);
    close(longest(&solid, Piece::InnerHoop, 7), basket.body.rim().inner.cut, 0.015);
    close(longest(&solid, Piece::Handle, 8), basket.bow().expect("a handle").cut, 0.015);
    let wraps =
        longest(&solid, Piece::Lashing, 6) * f64::from(basket.body.lashing().expect("it is lashed").wraps);
    close(wraps, basket.body.lashing().expect("it is lashed").net, 0.2);
}

#[test]
fn odd_baskets_are_closed_too() {
    for pattern in ODD {
        let basket = basket(pattern);
        for (stage, detail) in [
            (Stage::HalfWoven, Detail::Thumbnail),
            (Stage::RimClamped, Detail::Page),
            (Stage::Finished, Detail::Full),
        ] {
            assert_sound(&solid(&basket, stage, detail));
        }
    }
}

/// Every weave that can be written, on a count that suits it and on one that does not.
#[test]
fn every_weave_is_closed() {
    for course in [
        "weave = \"twill 2/1\"",
        "weave = \"reversed twill 2/2\", band = 3",
        "weave = \"chase twill 2/2\", colours = [\"red\", \"blue\", \"green\"]",
        "weave = \"pairing\"",
        "weave = \"wale 3\", colours = [\"red\", \"blue\", \"green\"]",
        "weave = \"wale 5\", step-up = true",
        "weave = \"slew twill 2/2\", colours = [\"red\", \"blue\"]",
        "weave = \"skip one\", colours = [[\"red\", \"blue\"]], strands = [\"1200\", \"700\"]",
        "weave = \"drawn\", chart = [\"X..X..\", \".XX.XX\"], start = 5",
        "weave = \"plain\", doubled = 2",
    ] {
        for count in [24, 25] {
            let basket = basket(&format!(
                "title = \"Weave\"\nunits = \"mm\"\n[mould]\nside = \"cone\"\nbase = \"80\"\nrim = \"110\"\nheight = \"60\"\n\
                 [staves]\ncount = {count}\n[weave]\ncourses = [{{ {course}, weaver = \"cane fine\", rows = 7 }}]\n"
            ));
            let solid = solid(&basket, Stage::Woven, Detail::Full);
            assert_sound(&solid);
            let rows: Vec<u32> = of_kind(&solid, Piece::Weaving).filter_map(Part::row).collect();
            assert!((1..=7).all(|row| rows.contains(&row)), "{course} on {count}: {rows:?}");
        }
    }
}

#[test]
fn a_weaver_is_cut_where_its_strand_changes_colour() {
    let basket = basket(
        "title = \"Strands\"\nunits = \"mm\"\n[mould]\nside = \"cone\"\nbase = \"80\"\nrim = \"110\"\nheight = \"60\"\n\
         [staves]\ncount = 25\n[weave]\ncourses = [{ weave = \"plain\", weaver = \"cane fine\", rows = 7, \
         colours = [[\"red\", \"blue\"]], strands = [\"1200\"] }]\n",
    );
    let solid = solid(&basket, Stage::Woven, Detail::Full);
    let mut colours: Vec<[u8; 3]> = of_kind(&solid, Piece::Weaving).map(|part| part.colour).collect();
    assert!(colours.len() > 7, "{} pieces", colours.len());
    colours.sort_unstable();
    colours.dedup();
    assert_eq!(colours.len(), 2);
}

fn any_basket() -> impl Strategy<Value = Basket> {
    let sizes = (10_u32..600, 10_u32..600, 5_u32..400, 3_u32..120, 0_usize..4, 0_usize..3);
    sizes.prop_map(|(base_size, rim, height, count, stock, side)| {
        let stock = ["flat oval reed 1/4 in", "flat oval reed 3/8 in", "half round reed 3/8 in", "cane common"][stock];
        let side = ["cone", "bowl", "straight"][side];
        let side = if rim <= base_size && side == "bowl" { "cone" } else { side };
        let rim = if side == "straight" { base_size } else { rim };
        basket(&format!(
            "title = \"Any\"\nunits = \"mm\"\n[mould]\nside = \"{side}\"\nbase = \"{base_size}\"\nrim = \"{rim}\"\nheight = \"{height}\"\n[staves]\ncount = {count}\nstock = \"{stock}\"\n[ears]\n[handle]\n"
        ))
    })
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 16, failure_persistence: None, ..ProptestConfig::default() })]
    #[test]
    fn any_basket_gives_closed_and_finite_parts(basket in any_basket(), stage in 0_usize..12, detail in 0_usize..3) {
        assert_sound(&solid(&basket, Stage::ALL[stage], DETAILS[detail]));
    }
}
