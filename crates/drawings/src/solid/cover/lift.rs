//! What one lifts a lid by: a knob or a loop in the hole of its plaque.

use basket::lid::{KNOB, LOOP_HEIGHT, Lid};
use basket::pattern::LidLift;
use basket::piece::Piece;
use glam::Vec3;

use super::super::colour;
use super::super::handle;
use super::super::maker::Maker;
use super::super::mesh::{Ends, Mesh, toward};
use super::super::part::Part;
use super::super::section::section;
use super::super::shape::Shape;
use super::cane::{Laid, twice};

/// How far a tenon ends within the plaque, in mm.
const WITHIN: f32 = 0.05;
/// Steps round a loop.
const STEPS: u32 = 24;

impl Maker<'_> {
    /// The lift of a lid that lies plaque down, as on its mould.
    pub(super) fn lift(&self, lid: &Lid) -> Option<Part> {
        let base = lid.vessel.base();
        let thick = base.thickness.to_mm() as f32;
        let plug = base.plug_diameter.to_mm() as f32 / 2.0;
        let hole = (base.screw_hole.to_mm() as f32 / 2.0).clamp(0.01, plug.max(0.02) * 0.9);
        match lid.lift {
            LidLift::Knob => {
                let [radius, height] = [KNOB[0] / 2.0, KNOB[1]].map(|size| size.to_mm() as f32);
                let turned = handle::KNOB.iter().rev();
                // Its foot covers what is wider than the hole.
                let foot = radius.mul_add(handle::KNOB[0][1], 0.0).max(plug * 1.1);
                let profile: Vec<[f32; 2]> = turned
                    .map(|[out, wide]| {
                        [(radius * wide).max(if *out > 0.0 { 0.0 } else { foot }), -thick - height * out]
                    })
                    .chain([[hole, -thick], [hole, -WITHIN]])
                    .collect();
                let sides = self.detail.segments(radius);
                let edges = profile.iter().take(6).map(|[wide, at]| {
                    let place = |step: u32| {
                        let [cos, sin] = toward(step as f32 / sides as f32);
                        [wide * cos, wide * sin, *at]
                    };
                    (0..=sides).map(place).collect()
                });
                let shape =
                    Shape { edges: edges.collect(), mesh: Mesh::lathe(&profile, sides, Ends::Capped) };
                Some(Part::new(Piece::Lift, colour::KNOB, shape))
            }
            LidLift::Loop => {
                let stock = lid.cane()?;
                let radius = LOOP_HEIGHT.to_mm() as f32 / 2.0;
                let apart = (hole * 0.5).min(radius * 0.9);
                // From the hole round and back to it.
                let from = (apart / radius).asin() / std::f32::consts::TAU;
                let middle = -thick - radius * toward(from)[0];
                let round = (0..=STEPS).map(|step| {
                    let turn = from + (1.0 - 2.0 * from) * step as f32 / STEPS as f32;
                    let [cos, sin] = toward(turn);
                    let out = Vec3::new(0.0, sin, cos);
                    (Vec3::new(0.0, 0.0, middle) + out * radius, out)
                });
                let end = |side: f32| (Vec3::new(0.0, side * apart, -WITHIN), Vec3::Y * side);
                let way: Vec<Laid> = std::iter::once(end(1.0)).chain(round).chain([end(-1.0)]).collect();
                let section = section(stock, stock.width.to_mm() as f32, self.detail);
                Some(Part::new(Piece::Lift, colour::stock(stock), twice(&way, &section, Ends::Capped)))
            }
            LidLift::None => None,
        }
    }
}
