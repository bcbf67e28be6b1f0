//! The wall of the basket as coordinates: along the mould, round it, and out from it.
//!
//! Staves, rows and rim are described by how far along the mould, how far round and how far out from
//! the staves' inner face they lie, and put in space by one map. Pieces that keep clear of each
//! other in these coordinates keep clear in space. The wall is round; an outline of another shape
//! would be mapped here.

use basket::{Basket, Length};

use crate::wall::Wall;

/// Step between the places in the table, in mm.
const STEP: f32 = 0.25;
/// Most places in the table.
const MOST: f32 = 8192.0;

/// A place on the staves' inner face: radius and height, and the direction out from it.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct Node {
    pub(super) radius: f32,
    pub(super) height: f32,
    pub(super) out_radius: f32,
    pub(super) out_height: f32,
}

impl Node {
    /// The place so far out from the inner face, in the direction of this cosine and sine.
    pub(super) fn point(&self, out: f32, [cos, sin]: [f32; 2]) -> [f32; 3] {
        let radius = self.radius + out * self.out_radius;
        [radius * cos, radius * sin, self.height + out * self.out_height]
    }
}

/// The wall from the feet of the staves to beyond their tips.
pub(super) struct Surface {
    from: f32,
    step: f32,
    nodes: Vec<Node>,
}

impl Surface {
    pub(super) fn of(basket: &Basket) -> Self {
        let wall = Wall::of(basket);
        let from = wall.foot().to_mm() as f32;
        let parts = &basket.body.staves().length_parts;
        let rim = (basket.body.rim().along + basket.body.rim().height).max(basket.body.form.arc());
        let to = (parts.total() - parts.groove - parts.turn).max(rim).to_mm() as f32 + 10.0;
        let step = STEP.max((to - from) / MOST);
        let node = |number: u32| {
            let along = Length::mm(f64::from(from + step * number as f32));
            let (inner, out) = (wall.at(along, 0.0), wall.at(along, 1.0) - wall.at(along, 0.0));
            Node {
                radius: inner.x.max(0.0) as f32,
                height: inner.y as f32,
                out_radius: out.x as f32,
                out_height: out.y as f32,
            }
        };
        let count = ((to - from) / step).max(1.0) as u32 + 2;
        Self { from, step, nodes: (0..count).map(node).collect() }
    }

    /// The place this far along the mould.
    pub(super) fn at(&self, along: f32) -> Node {
        let steps = ((along - self.from) / self.step).max(0.0);
        let index = (steps as usize).min(self.nodes.len().saturating_sub(2));
        let [below, above] =
            self.nodes.get(index..index + 2).map_or([Node::default(); 2], |pair| [pair[0], pair[1]]);
        let share = steps - index as f32;
        let mix = |from: f32, to: f32| from + (to - from) * share;
        Node {
            radius: mix(below.radius, above.radius),
            height: mix(below.height, above.height),
            out_radius: mix(below.out_radius, above.out_radius),
            out_height: mix(below.out_height, above.out_height),
        }
    }
}
