//! The clamps that hold both hoops while they dry: plain bent clips over the tips of the staves.

use basket::steps::Stage;
use basket::{Basket, Piece};
use glam::{Vec2, Vec3};

use super::frame::Frame;
use super::maker::Maker;
use super::part::Part;
use super::shape::Shape;
use super::{colour, stage};

/// Most clamps, as many as are listed with the tools.
const MOST: u32 = 24;
/// Least distance from clamp to clamp round the rim, in mm.
const APART: f32 = 14.0;
/// Width and thickness of a clamp, in mm.
const STRAP: [f32; 2] = [5.0, 1.4];
/// Room between a clamp and the curved hoops, and above the tips, in mm.
const ROOM: [f32; 2] = [0.12, 3.0];
/// Share of the hoops' height that a clamp holds.
const HOLDS: f32 = 0.8;

/// How many clamps hold the hoops: an even number that finds room beside the ears.
pub(crate) fn count(basket: &Basket) -> u32 {
    let girth = basket.body.rim().girth.to_mm() as f32;
    let ears = basket.in_rim().map_or(0.0, |ears| 2.0 * ears.width.to_mm() as f32);
    (((girth - ears) / APART) as u32 / 2 * 2).min(MOST)
}

impl Maker<'_> {
    /// All clamps, evenly round the rim, or evenly between the ears.
    pub(super) fn clamps(&self) -> Vec<Part> {
        let basket = self.basket;
        let count = count(basket);
        let half = (count / 2).max(1);
        let girth = (basket.body.rim().girth.to_mm() as f32).max(1.0);
        let (ears, beside) = basket.in_rim().map_or(([0.0, 0.5], 0.0), |ears| {
            (
                ears.each.each_ref().map(|ear| ear.turn as f32),
                (ears.width.to_mm() as f32 / 2.0 + STRAP[0] / 2.0) / girth,
            )
        });
        let across = (ears[1] - ears[0]).rem_euclid(1.0);
        (0..count)
            .map(|index| {
                let (from, way) = if index < half { (ears[0], across) } else { (ears[1], 1.0 - across) };
                let share = ((index % half) as f32 + 0.5) / half as f32;
                self.clamp(from + beside + (way - 2.0 * beside) * share, index + 1)
            })
            .collect()
    }

    fn clamp(&self, turn: f32, number: u32) -> Part {
        let basket = self.basket;
        let rim = basket.body.rim();
        let high = rim.height.to_mm() as f32;
        let frame = Frame::on_wall(&self.surface, rim.along.to_mm() as f32, turn);
        let tips = stage::tips(basket, Stage::RimClamped) - rim.along.to_mm() as f32;
        let outside = (basket.body.uprights().thickness + rim.outer.stock.thickness).to_mm() as f32 + ROOM[0];
        let inside = -(rim.inner.stock.thickness.to_mm() as f32) - ROOM[0];
        let (low, top) = (high * (1.0 - HOLDS), tips.max(high) + ROOM[1]);
        // The clip's face on the rim: up outside, over, and down inside.
        let way = [[outside, low], [outside, top], [inside, top], [inside, low]].map(Vec2::from);
        let across = STRAP[0] / 2.0;
        let positions: Vec<[f32; 3]> = (0..way.len())
            .flat_map(|index| {
                let off = outward(&way, index) * STRAP[1];
                let [near, far] = [way[index], way[index] + off];
                [(near, across), (near, -across), (far, -across), (far, across)]
            })
            .map(|(at, aside)| frame.point(Vec3::new(at.x, aside, at.y)))
            .collect();
        let shape = Shape::long(positions, 4);
        Part::new(Piece::Clamp(number), colour::STEEL, shape)
    }
}

/// Where the outer face lies from a corner of the inner one, for a thickness of 1.
fn outward(way: &[Vec2; 4], index: usize) -> Vec2 {
    let side = |from: Vec2, to: Vec2| -(to - from).normalize_or_zero().perp();
    let before = index.checked_sub(1).map(|before| side(way[before], way[index]));
    let after = way.get(index + 1).map(|after| side(way[index], *after));
    before.unwrap_or(Vec2::ZERO) + after.unwrap_or(Vec2::ZERO)
}
