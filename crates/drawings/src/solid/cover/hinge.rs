//! Hinge and latch: loops of cane, and a peg.

use basket::lid::{HingePlace, PEG};
use basket::piece::Piece;
use basket::stock::Material;
use glam::{Vec2, Vec3};

use super::super::colour;
use super::super::frame::Frame;
use super::super::mesh::{Ends, Mesh, round, toward};
use super::super::part::Part;
use super::super::section::section;
use super::super::shape::Shape;
use super::cane::{Laid, Plane, strand, twice};
use super::{Cover, Maker, at_rim, outward, rim_cut};

/// A turned peg: how wide, as a share of its radius, and how far out, as a share of what stands out of the hoop.
const SHAPE: [[f32; 2]; 7] =
    [[0.5, 0.0], [0.5, 0.45], [0.8, 0.55], [1.0, 0.7], [1.0, 0.85], [0.8, 0.96], [0.5, 1.0]];
/// Share of the peg's free length at which the latch lies.
const NECK: f32 = 0.3;
/// Room between the neck and the loop round it, in mm.
const ROOM: f32 = 0.4;
/// Steps round half a bend of the latch.
const STEPS: u32 = 8;

/// What a lid turns on.
pub(super) struct Turning {
    /// A place on its axis: the outer edge of both rims, where they touch.
    axis: Vec3,
    /// The level direction away from the basket there.
    out: Vec3,
}

/// The middle of a gap, as a share of the way round.
fn gap(maker: &Maker<'_>, [before, _]: [u32; 2]) -> f64 {
    let uprights = maker.basket.body.uprights();
    uprights.turn(before) + 0.5 / f64::from(uprights.count.max(1))
}

impl Cover<'_> {
    /// The rims of the basket and of the lid, shut, at a place of hinge or latch.
    fn rims(&self, place: HingePlace) -> [Vec<Vec3>; 2] {
        let body = rim_cut(self.body, gap(self.body, place.body));
        let lid = rim_cut(self.own, gap(self.own, place.lid)).into_iter().map(|at| self.over(at)).collect();
        [body, lid]
    }

    pub(super) fn hinge(&self) -> Option<Turning> {
        let [from, to] = self.lid.hinge.as_ref()?.loops;
        let [from_turn, to_turn] = [from, to].map(|place| gap(self.body, place.body));
        let middle = from_turn + (to_turn - from_turn).rem_euclid(1.0) / 2.0;
        let (rim, out) = (rim_cut(self.body, middle), outward(self.body, middle));
        let [body, lid] = self.rims(from);
        let top = body.iter().map(|at| at.z).reduce(f32::max)?;
        let low = lid.iter().map(|at| at.z).reduce(f32::min)?;
        let edge = rim.into_iter().max_by(|a, b| a.dot(out).total_cmp(&b.dot(out)))?;
        Some(Turning { axis: edge.with_z(f32::midpoint(top, low)), out })
    }

    /// The loop that shuts the lid: round its rim, and down over the peg.
    pub(super) fn latch(&self) -> Option<Part> {
        let place = self.lid.hinge.as_ref()?.latch;
        let stock = self.lid.cane()?;
        let section = section(stock, stock.width.to_mm() as f32, self.own.detail);
        let out = outward(self.body, gap(self.body, place.body));
        let [_, rim] = self.rims(place);
        let origin = rim.iter().sum::<Vec3>() / rim.len().max(1) as f32;
        let ring = strand(&Plane { origin, level: out }.tied(&rim), &section, Ends::Joined);
        let (peg, length) = self.peg_face(place);
        let neck = PEG[0].to_mm() as f32 / 2.0 * SHAPE[0][0] + ROOM;
        let reach = rim.iter().map(|at| (*at - peg).dot(out)).fold(length * NECK, f32::max);
        // Its ends lie level with what they hang on.
        let plane = Plane { origin: peg, level: Vec3::Z.cross(out) };
        let (top, foot) = (peg + out * reach + Vec3::Z * (origin.z - peg.z), peg + out * length * NECK);
        let bend = |middle: Vec3, from: f32| {
            (0..=STEPS).map(move |step| {
                let [cos, sin] = toward(from + 0.5 * step as f32 / STEPS as f32);
                let way = plane.direction(Vec2::new(cos, sin));
                (middle + way * neck, way)
            })
        };
        let hanging: Vec<Laid> = bend(top, 0.0).chain(bend(foot, 0.5)).collect();
        let shape = ring.and(strand(&hanging, &section, Ends::Joined));
        Some(Part::new(Piece::Latch, colour::stock(stock), shape))
    }

    /// Where the peg stands on the outer hoop, and how far out of it.
    fn peg_face(&self, place: HingePlace) -> (Vec3, f32) {
        let body = &self.body.basket.body;
        let hoop = body.rim().outer.stock.thickness;
        let face = [(body.uprights().thickness + hoop).to_mm(), (body.rim().height / 2.0).to_mm()];
        let at = at_rim(self.body, gap(self.body, place.body), face);
        (at, (PEG[1] - hoop).max(PEG[1] / 2.0).to_mm() as f32)
    }

    /// The peg over which the latch goes, glued into the outer hoop.
    pub(super) fn peg(&self) -> Option<Part> {
        let place = self.lid.hinge.as_ref()?.latch;
        let (origin, length) = self.peg_face(place);
        let out = outward(self.body, gap(self.body, place.body));
        let frame = Frame { origin, out, aside: Vec3::Z.cross(out), up: Vec3::Z };
        let radius = PEG[0].to_mm() as f32 / 2.0;
        let hoop = self.body.basket.body.rim().outer.stock.thickness.to_mm() as f32;
        let inside = [SHAPE[0][0], -hoop * 0.9 / length];
        let sides = round(self.body.detail.segments(radius));
        let ring = |[wide, far]: [f32; 2]| {
            let (frame, sides) = (&frame, &sides);
            let place = move |[cos, sin]: &[f32; 2]| {
                frame.point(Vec3::new(length * far, radius * wide * cos, radius * wide * sin))
            };
            sides.iter().map(place)
        };
        let positions: Vec<[f32; 3]> = std::iter::once(inside).chain(SHAPE).flat_map(ring).collect();
        let mesh = Mesh::swept(positions.clone(), sides.len(), Ends::Capped);
        let edges = positions.chunks(sides.len()).skip(2);
        let edges = edges.map(|ring| ring.iter().chain(ring.first()).copied().collect()).collect();
        Some(Part::new(Piece::Peg, colour::KNOB, Shape { mesh, edges }))
    }
}

impl Turning {
    /// A place of the shut lid when it is opened so far.
    pub(super) fn turned(&self, at: Vec3, angle: f32) -> Vec3 {
        let from = at - self.axis;
        let (out, up) = (from.dot(self.out), from.z);
        let (sin, cos) = angle.sin_cos();
        let aside = from - self.out * out - Vec3::Z * up;
        self.axis + aside + self.out * (out * cos + up * sin) + Vec3::Z * (up * cos - out * sin)
    }

    /// The loops on which it turns, twice round both rims, of a lid that is open so far.
    pub(super) fn loops(&self, cover: &Cover<'_>, angle: f32) -> Option<Part> {
        let stock: &Material = cover.lid.cane()?;
        let section = section(stock, stock.width.to_mm() as f32, cover.body.detail);
        let each = cover.lid.hinge.as_ref()?.loops.map(|place| {
            let [body, lid] = cover.rims(place);
            let origin = body.iter().sum::<Vec3>() / body.len().max(1) as f32;
            let lid = lid.into_iter().map(|at| self.turned(at, angle));
            let places: Vec<Vec3> = body.into_iter().chain(lid).collect();
            twice(&Plane { origin, level: self.out }.tied(&places), &section, Ends::Joined)
        });
        let shape = each.into_iter().reduce(Shape::and)?;
        Some(Part::new(Piece::Hinge, colour::stock(stock), shape))
    }
}
