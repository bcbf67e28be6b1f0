//! The lid in the round: all that is cut for it is there, and it opens as a stiff thing does.

mod common;

use basket::steps::Stage;
use basket::{Basket, Catalogue, Draft, Hand, Of, Piece};
use common::solids::{assert_sound, of_kind};
use drawings::solid::{Detail, LidPose, Solid, with_lid};
use glam::Vec3;

const MOULDS: [&str; 3] = [
    r#"base = "6 in", rim = "8 in", height = "4 in", side = "bowl""#,
    r#"shape = "oval", length = "9 in", width = "6 in", rim = "10 in", height = "4 in", side = "bowl""#,
    r#"shape = "rectangle", length = "8 in", width = "5 in", corner = "1 1/2 in", rim = "9 in", height = "4 in", side = "bowl""#,
];
const LIDS: [&str; 4] = [
    r#"fit = "drop-in""#,
    r#"fit = "cap", lift = "none""#,
    r#"fit = "flush", lift = "loop""#,
    r#"fit = "flush", hinge = "end""#,
];

fn draft(mould: &str, lid: &str) -> Draft {
    let text = format!("title = \"Box\"\nmould = {{ {mould} }}\nlid = {{ {lid} }}\n");
    let pattern = basket::pattern::read(&text, Catalogue::built_in()).unwrap();
    Draft::of(pattern, Catalogue::built_in(), &Hand::USUAL)
}

fn made(basket: &Basket, pose: LidPose) -> Solid {
    with_lid(basket, Stage::Finished, Detail::Thumbnail, pose)
}

/// What moves with the lid.
fn moving(solid: &Solid) -> Vec<Vec3> {
    let stays = [Piece::Hinge, Piece::Peg, Piece::Ledge];
    let parts = solid.parts.iter().filter(|part| part.of == Of::Lid && !stays.contains(&part.piece));
    parts.flat_map(|part| &part.mesh.positions).map(|at| Vec3::from(*at)).collect()
}

#[test]
fn all_that_is_cut_for_a_lid_is_in_the_picture() {
    for mould in MOULDS {
        for lid in LIDS {
            let draft = draft(mould, lid);
            for pose in LidPose::ALL {
                let solid = made(&draft.basket, pose);
                assert_sound(&solid);
                for cut in draft.cuts.iter().filter(|cut| cut.of == Of::Lid) {
                    let of_lid = |part: &&drawings::solid::Part| part.of == Of::Lid;
                    let is_there = of_kind(&solid, cut.piece.sort()).any(|part| of_lid(&part));
                    assert!(is_there, "{lid}: no {:?} in {pose:?}", cut.piece);
                }
            }
        }
    }
}

#[test]
fn a_lid_moves_as_a_stiff_thing() {
    for mould in MOULDS {
        for lid in LIDS {
            let basket = draft(mould, lid).basket;
            let [shut, open, off] = LidPose::ALL.map(|pose| moving(&made(&basket, pose)));
            for moved in [open, off] {
                assert_eq!(shut.len(), moved.len(), "{lid}");
                let step = shut.len() / 97;
                for (a, b) in (0..shut.len() - step).step_by(step).map(|at| (at, at + step)) {
                    let [was, is] = [&shut, &moved].map(|places| places[a].distance(places[b]));
                    assert!((was - is).abs() < 0.01, "{lid}: {was} became {is}");
                }
            }
        }
    }
}

#[test]
fn a_hinged_lid_leaves_the_mouth_free_and_touches_the_rim() {
    for mould in MOULDS {
        for lid in [r#"fit = "flush""#, r#"fit = "flush", hinge = "end""#] {
            let basket = draft(mould, lid).basket;
            let solid = made(&basket, LidPose::Open);
            let inner = of_kind(&solid, Piece::InnerHoop).find(|part| part.of == Of::Body).unwrap();
            let mouth: Vec<Vec3> = inner.mesh.positions.iter().map(|at| Vec3::from(*at)).collect();
            let top = mouth.iter().map(|at| at.z).fold(f32::MIN, f32::max);
            // From the middle toward the hinge nothing of the lid comes before the inner hoop's inner face.
            let loops = of_kind(&solid, Piece::Hinge).next().unwrap();
            let sum: Vec3 = loops.mesh.positions.iter().map(|at| Vec3::from(*at)).sum();
            let out = (sum / loops.mesh.positions.len() as f32).with_z(0.0).normalize();
            let reach = mouth.iter().map(|at| at.dot(out)).fold(f32::MIN, f32::max);
            let lid_places = moving(&solid);
            let nearest = lid_places.iter().map(|at| at.dot(out)).fold(f32::MAX, f32::min);
            let mouth = reach - basket.body.rim().inner.stock.thickness.to_mm() as f32;
            assert!(nearest > mouth, "{lid}: {nearest} before {reach}");
            let lowest = lid_places.iter().map(|at| at.z).fold(f32::MAX, f32::min);
            assert!((lowest - top).abs() < 25.0, "{lid}: {lowest} for a rim at {top}");
        }
    }
}

#[test]
fn a_loose_lid_is_lifted_or_stands_beside_the_basket_on_the_same_table() {
    for mould in MOULDS {
        for lid in [LIDS[0], LIDS[1]] {
            let basket = draft(mould, lid).basket;
            let reach = basket.across().length.to_mm() as f32 / 2.0;
            let foot = -(basket.body.base().thickness.to_mm() as f32);
            let off = moving(&made(&basket, LidPose::Off));
            let low = off.iter().map(|at| at.z).fold(f32::MAX, f32::min);
            assert!((low - foot).abs() < 0.01, "{low} {foot}");
            assert!(off.iter().all(|at| at.x > reach));
            let top = basket.body.profile().at(basket.body.rim().along + basket.body.rim().height).height;
            let open = moving(&made(&basket, LidPose::Open));
            assert!(open.iter().all(|at| f64::from(at.z) > top.to_mm()));
        }
    }
}
