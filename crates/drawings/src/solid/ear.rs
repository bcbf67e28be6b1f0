//! Ears: the tail lies on a stave behind the weaving, the blade between the hoops, and the head stands
//! upright above the rim.
//!
//! Hoops and staves leave an ear no room of its own, so stave and ear are thinned to share the stave's
//! thickness where they meet, as a half lap.

use basket::Basket;
use basket::fittings::{Ear, Ears};

use super::mesh::{Ends, direction};
use super::stave::Shave;
use super::surface::Surface;
use super::{Detail, Mesh, Part, PartKind, colour, edges};

/// Most of a stave's thickness that is given to an ear.
const MOST: f32 = 2.0 / 3.0;
/// Way over which an ear widens from tail to blade and from blade to head, in mm.
const WIDENS: f32 = 0.3;

/// Thickness of the ear's blade and tail, from the staves' outer face inward.
fn blade(basket: &Basket, ears: &Ears) -> f32 {
    let stave = basket.staves.thickness.to_mm() as f32;
    (ears.thickness.to_mm() as f32).min(stave * MOST)
}

/// Where staves are thinned: under the tail, and between the hoops as wide as the ear is.
pub(super) fn shaves(basket: &Basket) -> Vec<Shave> {
    let Some(ears) = &basket.ears else { return Vec::new() };
    let (staves, rim) = (&basket.staves, &basket.rim);
    let left = staves.thickness.to_mm() as f32 - blade(basket, ears);
    let girth = rim.radius.to_mm() * std::f64::consts::TAU;
    let reach = (ears.width + staves.width).to_mm() / 2.0 / girth.max(1.0);
    let shave = |index: u32| {
        let off = |ear: &Ear| {
            let off = staves.turn(index + 1) - ear.turn;
            (off - off.round()).abs()
        };
        let under = ears.each.iter().any(|ear| ear.stave == index + 1);
        let beside = ears.each.iter().any(|ear| off(ear) < reach);
        let from = rim.along.to_mm() as f32 - if under { tail(basket, ears) } else { 0.0 };
        (under || beside).then_some(Shave { stave: index, from, left })
    };
    (0..staves.count).filter_map(shave).collect()
}

/// Length of the tail, no longer than there is wall.
fn tail(basket: &Basket, ears: &Ears) -> f32 {
    ears.tail.min(basket.rim.along * 0.9).max(basket::Length::ZERO).to_mm() as f32
}

/// Both ears.
pub(super) fn ears(basket: &Basket, surface: &Surface, detail: Detail) -> Vec<Part> {
    let Some(ears) = &basket.ears else { return Vec::new() };
    let colour = colour::of_ear(ears.material);
    let material = match ears.material {
        basket::pattern::EarMaterial::Brass => "brass",
        basket::pattern::EarMaterial::Oak => "oak",
        basket::pattern::EarMaterial::Bone => "bone",
    };
    let part = |(ear, number): (&Ear, u32)| {
        let positions = positions(basket, surface, ears, ear, detail);
        let edges = (0..4).map(|corner| edges::line(&positions, 4, corner)).collect();
        let mesh = Mesh::swept(positions, 4, Ends::Capped);
        Part {
            edges,
            number: Some(number),
            ..Part::new(&format!("ear {number}"), PartKind::Ear, material, colour, mesh)
        }
    };
    ears.each.iter().zip(1..).map(part).collect()
}

/// Radius of the ear's middle where it holds the bail.
pub(super) fn middle(basket: &Basket) -> f32 {
    (basket.rim.radius + basket.staves.thickness / 2.0).to_mm() as f32
}

/// Height of the pivots.
pub(super) fn pivot_height(basket: &Basket, surface: &Surface, ears: &Ears) -> f32 {
    surface.at((basket.rim.along + basket.rim.height).to_mm() as f32).height + ears.hole_height.to_mm() as f32
}

/// Sections of an ear from the tail's end to the top, four corners each.
fn positions(basket: &Basket, surface: &Surface, ears: &Ears, ear: &Ear, detail: Detail) -> Vec<[f32; 3]> {
    let stave = basket.staves.thickness.to_mm() as f32;
    let (half, thick) = (ears.width.to_mm() as f32 / 2.0, ears.thickness.to_mm() as f32);
    let blade = blade(basket, ears);
    let low = basket.rim.along.to_mm() as f32;
    let high = low + basket.rim.height.to_mm() as f32;
    let radius = middle(basket);
    let angle = |aside: f32| direction(ear.turn as f32 * std::f32::consts::TAU + aside / radius.max(1.0));
    let mut positions = Vec::new();

    let off = -(ear.off_stave.to_mm() as f32);
    let narrow = (basket.staves.width_at(basket.rim.along).to_mm() as f32 / 2.0).min(half);
    let tail_end = low - tail(basket, ears);
    let steps = if detail == Detail::Full { 8 } else { 3 };
    let mut wall = |along: f32, left: f32, right: f32| {
        let node = surface.at(along);
        for (aside, out) in [(left, stave), (right, stave), (right, stave - blade), (left, stave - blade)] {
            positions.push(node.point(out, angle(aside)));
        }
    };
    for step in 0..=steps {
        let along = tail_end + (low - tail_end) * step as f32 / steps as f32;
        let width = basket.staves.width_at(basket::Length::mm(f64::from(along))).to_mm() as f32 / 2.0;
        let narrow = width.min(narrow);
        wall(along, off - narrow, off + narrow);
    }
    for step in 0..=3 {
        let from = low + WIDENS.min((high - low) / 4.0);
        wall(from + (high - from) * step as f32 / 3.0, -half, half);
    }

    let rim_top = surface.at(high).height;
    let hole = ears.hole_height.to_mm() as f32;
    let mut head = |up: f32, half: f32| {
        for (aside, from) in
            [(-half, thick / 2.0), (half, thick / 2.0), (half, -thick / 2.0), (-half, -thick / 2.0)]
        {
            let [cos, sin] = direction(ear.turn as f32 * std::f32::consts::TAU);
            let out = radius + from;
            positions.push([out * cos - aside * sin, out * sin + aside * cos, rim_top + up]);
        }
    };
    head(WIDENS.min(hole / 2.0), half);
    let rounding = if detail == Detail::Thumbnail { 3 } else { 8 };
    for step in 0..=rounding {
        let (sin, cos) = (std::f32::consts::FRAC_PI_2 * 0.96 * step as f32 / rounding as f32).sin_cos();
        head(hole + half * sin, half * cos);
    }
    positions
}
