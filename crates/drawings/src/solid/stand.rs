//! The upright plane in which a handle stands on two places of the rim.

use glam::Vec3;

use super::detail::Detail;
use super::maker::Maker;
use super::mesh::{Ends, Mesh, round, toward};
use super::shape::Shape;
use crate::around::Around;

/// The plane in which a handle stands: the middle between both pivots, the direction to the first.
pub(super) struct Stand {
    detail: Detail,
    middle: Vec3,
    along: Vec3,
    /// Half the distance between the middles of what it stands on.
    pub(super) half: f32,
}

impl Stand {
    /// The plane through two places round the rim, so high.
    pub(super) fn at(maker: &Maker<'_>, turns: [f64; 2], height: f32) -> Self {
        let radius = maker.ear_radius();
        let around = Around::of(maker.basket);
        let [first, second] = turns.map(|turn| {
            let [cos, sin] = toward(turn as f32);
            let at = [radius * cos, radius * sin, height];
            Vec3::from(if around.is_round() { at } else { maker.laid().place(at, 0.0) })
        });
        Self {
            detail: maker.detail,
            middle: (first + second) / 2.0,
            along: (first - second).normalize_or(Vec3::X),
            half: first.distance(second) / 2.0,
        }
    }

    /// The place so far from the middle toward the first foot, aside, and above the feet.
    pub(super) fn point(&self, along: f32, aside: f32, up: f32) -> [f32; 3] {
        (self.middle + self.along * along + Vec3::Z.cross(self.along) * aside + Vec3::Z * up).to_array()
    }

    /// A profile of radii and distances from the ear's middle outward, turned round a pivot's axis.
    pub(super) fn turned(&self, side: f32, profile: &[[f32; 2]], ends: Ends) -> Shape {
        let sides = round(if self.detail == Detail::Full { 20 } else { 10 });
        let ring = |[radius, out]: [f32; 2]| {
            let sides = &sides;
            sides.iter().map(move |[cos, sin]| {
                self.point(side * (self.half + out), side * radius * cos, radius * sin)
            })
        };
        let positions: Vec<[f32; 3]> = profile.iter().flat_map(|at| ring(*at)).collect();
        let per = sides.len();
        let circle = |index: usize| -> Vec<[f32; 3]> {
            positions.iter().skip(index * per).take(per).chain(positions.get(index * per)).copied().collect()
        };
        let edges = vec![circle(0), circle(1)];
        Shape { mesh: Mesh::swept(positions, per, ends), edges }
    }
}
