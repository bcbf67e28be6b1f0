//! A straight frame at a place on the wall: out, round and up.

use glam::Vec3;

use super::mesh::toward;
use super::surface::Surface;

/// An origin and three directions at right angles.
#[derive(Clone, Copy, Debug)]
pub(super) struct Frame {
    pub(super) origin: Vec3,
    pub(super) out: Vec3,
    pub(super) aside: Vec3,
    pub(super) up: Vec3,
}

impl Frame {
    /// On the staves' inner face, so far along the mould and so far round: `out` is square to the
    /// wall, `aside` runs round it counter-clockwise, `up` along it.
    pub(super) fn on_wall(surface: &Surface, along: f32, turn: f32) -> Self {
        let node = surface.at(along);
        let [cos, sin] = toward(turn);
        let out = Vec3::new(node.out_radius * cos, node.out_radius * sin, node.out_height);
        let aside = Vec3::new(-sin, cos, 0.0);
        Self { origin: Vec3::from(node.point(0.0, [cos, sin])), out, aside, up: out.cross(aside) }
    }

    /// The place with these coordinates: out, aside, up.
    pub(super) fn point(&self, at: Vec3) -> [f32; 3] {
        (self.origin + self.out * at.x + self.aside * at.y + self.up * at.z).to_array()
    }
}
