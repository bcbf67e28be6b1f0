//! The mould by itself, as it is turned, milled or printed.

use basket::{Basket, Piece};

use super::colour;
use super::detail::Detail;
use super::maker::Maker;
use super::mesh::{Ends, Mesh};
use super::part::{Part, Solid};
use super::shape::Shape;
use crate::around::Around;

/// Places along its side.
const STEPS: u32 = 240;
/// Sides of the hole.
const LEAST_SIDES: u32 = 180;

/// The mould with the hole for the screw through its middle, foot below: one closed surface.
pub fn mould_solid(basket: &Basket, detail: Detail) -> Solid {
    let maker = Maker::of(basket, detail);
    let hole = (basket.body.base().screw_hole.to_mm() / 2.0).max(0.5) as f32;
    let wall = basket.body.profile().spots(STEPS + 1);
    let side: Vec<[f32; 2]> =
        wall.map(|spot| [(spot.radius.to_mm() as f32).max(hole + 0.1), spot.height.to_mm() as f32]).collect();
    let top = side.last().map_or(0.0, |at| at[1]);
    let profile: Vec<[f32; 2]> = std::iter::once([hole, 0.0]).chain(side).chain([[hole, top]]).collect();
    let widest = profile.iter().fold(0.0_f32, |widest, at| widest.max(at[0]));
    let mut mesh = Mesh::lathe(&profile, detail.segments(widest).max(LEAST_SIDES), Ends::Joined);
    let laid = maker.laid();
    if !Around::of(basket).is_round() {
        mesh.positions.iter_mut().for_each(|at| *at = laid.evenly(*at, f64::from(hole) + 0.05));
    }
    let part = Part::new(Piece::Mould, colour::MOULD, Shape { mesh, edges: Vec::new() });
    Solid { parts: vec![part], simplified: None }
}
