//! Each way of handle, base, ears and hoops in the round.

mod common;

use basket::Basket;
use basket::piece::{FloorPart, Piece};
use basket::steps::Stage;
use common::solids::{assert_sound, of_kind, volume};
use common::{HANDLES, HARBOUR, basket, with_handle};
use drawings::solid::{Detail, Part, solid};

const DETAILS: [Detail; 4] = [Detail::Full, Detail::Page, Detail::Column, Detail::Thumbnail];

#[test]
fn every_way_of_a_handle_is_closed_and_there_from_its_stage_on() {
    for handle in HANDLES {
        let basket = basket(&with_handle(handle));
        let kind = if handle.contains("knob") { Piece::Knobs } else { Piece::Handle };
        let first = if handle.contains("fixed") { Stage::EarsSet } else { Stage::Handled };
        for detail in DETAILS {
            let solid = solid(&basket, Stage::Finished, detail);
            assert_sound(&solid);
            for part in of_kind(&solid, kind) {
                assert!(volume(&part.mesh) > 0.0, "{handle} {detail:?}: {} is inside out", part.name());
            }
        }
        for stage in Stage::ALL {
            let is_there = of_kind(&solid(&basket, stage, Detail::Thumbnail), kind).next().is_some();
            assert_eq!(is_there, basket.has_reached(first, stage), "{handle} at {stage:?}");
        }
    }
}

/// Rings are turned where the pattern wants them: a face without them is as plain as the other.
#[test]
fn turned_rings_are_on_the_face_that_the_pattern_names() {
    let depth = |rings: &str, face: fn(&basket::base::Base) -> f64| {
        let basket = basket(&HARBOUR.replace("[base]", &format!("[base]\nrings = \"{rings}\"")));
        let solid = solid(&basket, Stage::BaseOnMould, Detail::Full);
        let disc = of_kind(&solid, Piece::Floor(FloorPart::Disc)).next().expect("a base");
        let (level, base) = (face(basket.body.base()), basket.body.base());
        let turned = base.groove_radius().to_mm() * 0.999;
        let within = |at: &&[f32; 3]| f64::from(at[0].hypot(at[1])) < turned;
        let off = |at: &[f32; 3]| (f64::from(at[2]) - level).abs();
        disc.mesh.positions.iter().filter(within).map(off).filter(|off| (0.1..0.5).contains(off)).count()
    };
    let (below, above) = (|base: &basket::base::Base| -base.thickness.to_mm(), |_: &basket::base::Base| 0.0);
    assert!(depth("out", below) > 0 && depth("out", above) == 0);
    assert!(depth("in", below) == 0 && depth("in", above) > 0);
    assert!(depth("none", below) == 0 && depth("none", above) == 0);
}

/// Each way of ears and hoops shows at each stage what is there then.
#[test]
fn ways_of_ears_and_hoops_show_what_exists_then() {
    let with = |ears: &str, rim: &str| {
        basket(
            &HARBOUR
                .replace("[ears]\n", &format!("[ears]\n{ears}\n"))
                .replace("[rim]\n", &format!("[rim]\n{rim}\n")),
        )
    };
    let count =
        |basket: &Basket, stage, kind| of_kind(&solid(basket, stage, Detail::Thumbnail), kind).count();
    let pushed_down = with("way = \"pushed-down\"", "hoops = \"bent\"");
    assert_eq!(count(&pushed_down, Stage::Woven, Piece::Ears), 0);
    assert_eq!(count(&pushed_down, Stage::OffMould, Piece::Ears), 0);
    assert_eq!(count(&pushed_down, Stage::EarsSet, Piece::Ears), 2);
    assert_eq!(count(&pushed_down, Stage::EarsSet, Piece::Mould), 0);
    assert_eq!(count(&pushed_down, Stage::RingsMade, Piece::OuterHoop), 0);
    let as_stave = with("way = \"as-stave\"", "hoops = \"bought\"");
    assert_eq!(count(&as_stave, Stage::EarsSet, Piece::Ears), 2);
    assert_eq!(count(&as_stave, Stage::EarsSet, Piece::Uprights), 0);
    assert_eq!(count(&as_stave, Stage::BaseOnMould, Piece::Ears), 0);
    let staves = as_stave.body.uprights().count as usize;
    assert_eq!(count(&as_stave, Stage::Finished, Piece::Uprights), staves, "brass lies on its stave");
    let wood = basket(
        &HARBOUR.replace("[ears]\nmaterial = \"brass\"", "[ears]\nmaterial = \"wood\"\nway = \"as-stave\""),
    );
    assert_eq!(count(&wood, Stage::Finished, Piece::Uprights), staves - 2, "wood stands for its stave");
    assert_eq!(count(&wood, Stage::Finished, Piece::Ears), 2);
}

/// Rings that lie ready touch neither the mould nor what stands on it, and lie as low as the base does.
#[test]
fn rings_lie_ready_beside_the_mould() {
    let basket = basket(HARBOUR);
    let solid = solid(&basket, Stage::RingsMade, Detail::Thumbnail);
    let bounds = |ring: bool, axis: usize| {
        let is_ring = |part: &&Part| matches!(part.piece, Piece::OuterHoop | Piece::InnerHoop) == ring;
        let at = solid.parts.iter().filter(is_ring).flat_map(|part| &part.mesh.positions).map(|at| at[axis]);
        at.fold([f32::MAX, f32::MIN], |[low, high], at| [low.min(at), high.max(at)])
    };
    assert!(bounds(true, 0)[0] > bounds(false, 0)[1], "{:?} {:?}", bounds(true, 0), bounds(false, 0));
    assert!((bounds(true, 2)[0] + basket.body.base().thickness.to_mm() as f32).abs() < 0.01);
}
