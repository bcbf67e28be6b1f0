//! Drawings of the whole basket at a stage.

use basket::Basket;
use basket::steps::Stage;
use glam::Vec3;

use crate::drawing::Drawing;
use crate::lines::{Look, Style, View, draw};
use crate::solid::{Detail, Part, PartKind, Solid, solid};
use crate::stages::{Plate, look, parts, rows};

/// Width and height of a drawing, in mm.
const SIZE: [f64; 2] = [70.0, 72.0];
/// The same for a cover.
const COVER: [f64; 2] = [150.0, 170.0];
/// How far the hoops are drawn above their place, as shares of the basket's height.
const RAISED: [f32; 2] = [0.3, 0.62];
/// Distance of the eye from the finished basket, in widths of it.
const DISTANCE: f64 = 5.0;

/// The view, the stage and the look of each.
fn shot(plate: Plate) -> (Stage, View, fn(&Part) -> Look) {
    let on_mould = View::from(24.0, 26.0).base_up();
    let off_mould = View::from(24.0, 26.0);
    match plate {
        Plate::BaseOnMould => (Stage::BaseOnMould, on_mould, look::base),
        Plate::StavesSet => (Stage::StavesSet, on_mould, look::whole),
        Plate::FirstRows => (Stage::FirstRows, on_mould, look::whole),
        Plate::HalfWoven => (Stage::HalfWoven, on_mould, look::whole),
        Plate::Woven => (Stage::Woven, on_mould, look::whole),
        Plate::EarsSet => (Stage::EarsSet, off_mould, look::ears),
        Plate::HoopsScarfed | Plate::RimClamped => (Stage::RimClamped, off_mould, look::hoops),
        Plate::Pinned => (Stage::Pinned, off_mould, look::pins),
        Plate::Lashed => (Stage::Lashed, off_mould, look::lashing),
        Plate::Handled => (Stage::Handled, off_mould, look::handle),
        _ => (Stage::Finished, off_mould, look::whole),
    }
}

/// The drawing, and how many rows it shows.
pub(super) fn whole(basket: &Basket, plate: Plate) -> Option<(Drawing, u32)> {
    let (stage, view, look) = shot(plate);
    let mut solid = solid(basket, stage, Detail::Full);
    let mut size = SIZE;
    let mut view = view;
    match plate {
        Plate::HoopsScarfed => raise_hoops(&mut solid),
        Plate::Cover | Plate::Finished => {
            let width = 2.0 * basket.rim.outer_radius(&basket.staves).to_mm();
            view = view.at_distance(DISTANCE * width.max(1.0));
            if plate == Plate::Cover {
                size = COVER;
            }
        }
        _ => {}
    }
    let style = Style { look, ..Style::print(size[0], size[1]) };
    Some((draw(&solid, &view, &style).ok()?, rows(&solid)))
}

fn raise_hoops(solid: &mut Solid) {
    let [low, high] = parts::heights(solid);
    for (kind, share) in [(PartKind::InnerHoop, RAISED[0]), (PartKind::OuterHoop, RAISED[1])] {
        for part in solid.parts.iter_mut().filter(|part| part.kind == kind) {
            parts::moved(part, Vec3::Z * (high - low) * share);
        }
    }
}
