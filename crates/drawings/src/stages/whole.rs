//! Drawings of the whole basket at a stage.

use basket::pattern::EarWay;
use basket::steps::Stage;
use basket::{Basket, Piece};
use glam::Vec3;

use crate::drawing::Drawing;
use crate::lines::{PartStyle, Style, View};
use crate::solid::{LidPose, Part};
use crate::stages::look;
use crate::stages::parts::{self, Parts, rows};
use crate::stages::plate::Plate;
use crate::stages::studio::Studio;

/// Width and height of a drawing, in mm.
const SIZE: [f64; 2] = [70.0, 72.0];
/// The same for a cover.
const COVER: [f64; 2] = [150.0, 170.0];
/// Pixels of the raster in a mm of paper: for a drawing and for a cover.
const DENSITY: [f64; 2] = [9.0, 8.0];
/// How far the hoops are drawn above their place, as shares of the basket's height.
const RAISED: [f32; 2] = [0.3, 0.62];
/// Distance of the eye from the finished basket, in widths of it.
const DISTANCE: f64 = 5.0;

/// The view, the stage and the look of each. The base is screwed on, and the staves are set, with the
/// foot of the mould up; from then on mould and basket stand upright.
fn shot(basket: &Basket, plate: Plate) -> (Stage, View, fn(&Part) -> PartStyle) {
    let foot_up = View::from(24.0, 26.0).base_up();
    let upright = View::from(24.0, 26.0);
    // Lower, so that the first rows are not seen from too far above.
    let on_mould = View::from(24.0, 9.0);
    let ears_from = match basket.ears.as_ref().map(|ears| ears.way) {
        Some(EarWay::AsStave) => foot_up,
        Some(EarWay::WovenIn) => View::from(66.0, 14.0),
        _ => upright,
    };
    match plate {
        Plate::BaseOnMould => (Stage::BaseOnMould, foot_up, look::whole),
        Plate::StavesSet => (Stage::StavesSet, foot_up, look::whole),
        Plate::FirstRows => (Stage::FirstRows, on_mould, look::whole),
        Plate::HalfWoven => (Stage::HalfWoven, on_mould, look::whole),
        Plate::Woven => (Stage::Woven, on_mould, look::whole),
        Plate::EarsSet => (Stage::EarsSet, ears_from, look::ears),
        Plate::RingsMade => (Stage::RingsMade, upright, look::hoops),
        Plate::HandleSet => (Stage::EarsSet, upright, look::handle),
        Plate::HoopsScarfed => (Stage::RimClamped, upright, look::hoops),
        Plate::RimClamped => (Stage::RimClamped, upright, look::clamps),
        Plate::Pinned => (Stage::Pinned, upright, look::pins),
        Plate::Lashed => (Stage::Lashed, upright, look::lashing),
        Plate::Handled => (Stage::Handled, upright, look::handle),
        _ => (Stage::Finished, upright, look::whole),
    }
}

/// The drawing, and how many rows it shows.
pub(super) fn whole(studio: &Studio<'_>, plate: Plate) -> Option<(Drawing, u32)> {
    let (stage, mut view, look) = shot(studio.basket, plate);
    let cache = if plate == Plate::Cover { &studio.near } else { &studio.far };
    let mut seen = cache.at(stage);
    match plate {
        Plate::Cover | Plate::Finished => seen.extend(cache.lid(LidPose::Closed)),
        Plate::LidFitted => seen.extend(cache.lid(LidPose::Open)),
        _ => {}
    }
    let mut parts = parts::shared(seen);
    let (mut size, mut density) = (SIZE, DENSITY[0]);
    match plate {
        Plate::HoopsScarfed => raise_hoops(&mut parts),
        Plate::Cover | Plate::Finished | Plate::LidFitted => {
            let basket = studio.basket;
            let width = basket.across().length.to_mm();
            view = view.at_distance(DISTANCE * width.max(1.0));
            if plate == Plate::Cover {
                (size, density) = (COVER, DENSITY[1]);
            }
        }
        _ => {}
    }
    let style = Style { density, look: &look, ..Style::print(size[0], size[1]) };
    let (drawing, _) = parts::picture(&parts, &view, &style).ok()?;
    Some((drawing, rows(&parts)))
}

/// The hoops above their places, not yet clamped.
fn raise_hoops(parts: &mut Parts<'_>) {
    parts.retain(|part| part.piece.sort() != Piece::Clamps);
    let [low, high] = parts::heights(parts);
    for (kind, share) in [(Piece::InnerHoop, RAISED[0]), (Piece::OuterHoop, RAISED[1])] {
        for part in parts.iter_mut().filter(|part| part.piece.sort() == kind) {
            parts::moved(part.to_mut(), Vec3::Z * (high - low) * share);
        }
    }
}
