//! Pins through hoops and staves: a domed head outside, and the end peened over inside.
//!
//! Holes are not cut in what a pin goes through; the pin fills its hole.

use basket::Piece;
use basket::fittings::PinSet;
use glam::Vec3;

use super::colour;
use super::detail::Detail;
use super::frame::Frame;
use super::maker::Maker;
use super::mesh::{Ends, Mesh, round, toward};
use super::part::{Part, Turned};
use super::shape::Shape;

/// Radius and height of the head in diameters of the pin (common practice: about two and a half
/// diameters across).
const HEAD: [f32; 2] = [1.2, 0.7];

impl Maker<'_> {
    /// All pins.
    pub(super) fn pins(&self) -> Vec<Part> {
        let basket = self.basket;
        let mut parts = Vec::new();
        for set in basket.body.pins().sets() {
            let shape = self.pin(set);
            let mut first: Option<(usize, f32)> = None;
            for stave in &set.staves {
                let turn = basket.body.uprights().turn(*stave) as f32;
                let (of, from) = *first.get_or_insert((parts.len(), turn));
                let shape = shape.turned(toward(turn));
                let part = Part::new(Piece::Pin { upright: *stave }, colour::stock(&set.stock), shape);
                let angle = toward(turn - from);
                parts.push(Part { turned: Some(Turned { of, angle }), ..part });
            }
        }
        parts
    }

    /// A pin through the stave on the x axis.
    fn pin(&self, pins: &PinSet) -> Shape {
        let basket = self.basket;
        let rim = basket.body.rim();
        let frame = Frame::on_wall(&self.surface, (rim.along + rim.height / 2.0).to_mm() as f32, 0.0);
        let diameter = pins.stock.width.to_mm() as f32;
        let half = diameter / 2.0;
        let outside = (basket.body.uprights().thickness + rim.outer.stock.thickness).to_mm() as f32;
        let inside = -(rim.inner.stock.thickness.to_mm() as f32);
        let sides = round(match self.detail {
            Detail::Full => 10,
            Detail::Page | Detail::Column => 6,
            Detail::Thumbnail => 3,
        });
        let mut positions = Vec::new();
        // Section across a way that runs inward, seen from ahead.
        let mut ring = |out: f32, radius: f32| {
            for [cos, sin] in &sides {
                positions.push(frame.point(Vec3::new(out, radius * sin, radius * cos)));
            }
        };
        let [head, height] = HEAD.map(|times| times * diameter);
        for share in [0.25_f32, 0.65, 1.0] {
            ring(outside + height * (1.0 - share * share), head * share);
        }
        ring(outside, head);
        ring(outside, half);
        // The end, peened over the hoop.
        ring(inside, half);
        ring(inside, half * 1.8);
        ring(inside - half * 0.8, half * 1.2);
        let per = sides.len();
        let circle = |index: usize| -> Vec<[f32; 3]> {
            let ring = positions.get(index * per..(index + 1) * per).unwrap_or_default();
            ring.iter().chain(ring.first()).copied().collect()
        };
        let edges = vec![circle(3)];
        Shape { mesh: Mesh::swept(positions, per, Ends::Capped), edges }
    }
}
