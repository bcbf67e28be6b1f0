//! The lid on its basket: made like any basket, plaque down, and turned over; with what it sits on, what one lifts
//! it by, and what it turns on.

mod cane;
mod hinge;
mod lift;
mod rings;

use basket::lid::Lid;
use basket::pattern::{Direction, LidLift};
use basket::piece::{FloorPart, Of, Piece};
use basket::steps::Stage;
use glam::Vec3;

use super::maker::Maker;
use super::mesh::toward;
use super::part::{Part, Solid};
use crate::rim_shape::RimShape;

/// Room between a basket and the lid that lies beside it or is lifted off it, in mm.
const ASIDE: f32 = 15.0;
/// How high a lid is lifted, as a share of the basket's length.
const LIFTED: f64 = 0.35;
/// How far a lid is turned on its hinge: a little over upright, so that it stays there.
const OPEN: f32 = 100.0 * std::f32::consts::PI / 180.0;

/// How a lid is shown on a finished basket.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum LidPose {
    /// Shut.
    #[default]
    Closed,
    /// Turned back on its hinge; one without a hinge, lifted straight up.
    Open,
    /// Beside the basket; one with a hinge stays on it, and is open.
    Off,
}

impl LidPose {
    /// All of them.
    pub const ALL: [Self; 3] = [Self::Closed, Self::Open, Self::Off];

    /// Its name in requests.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Closed => "closed",
            Self::Open => "open",
            Self::Off => "off",
        }
    }
}

/// A lid and its basket, each with what makes its parts.
struct Cover<'a> {
    lid: &'a Lid,
    body: &'a Maker<'a>,
    own: &'a Maker<'a>,
}

/// The parts of a basket's lid, and what the basket has for it; none where there is no lid.
pub(super) fn parts(body: &Maker<'_>, pose: LidPose) -> Vec<Part> {
    let (Some(lid), Some(alone)) = (body.basket.lid.as_ref(), body.basket.lid_alone()) else {
        return Vec::new();
    };
    let own = Maker::of(&alone, body.detail);
    let cover = Cover { lid, body, own: &own };
    let mut parts = cover.shut();
    let mut fixed = cover.on_basket();
    match (cover.hinge(), pose) {
        (hinge, LidPose::Closed) => fixed.extend(hinge.and_then(|hinge| hinge.loops(&cover, 0.0))),
        (Some(hinge), _) => {
            for part in &mut parts {
                each_place(part, |at| hinge.turned(at, OPEN));
            }
            fixed.extend(hinge.loops(&cover, OPEN));
        }
        (None, pose) => {
            let by = cover.away(&parts, pose);
            for part in &mut parts {
                each_place(part, |at| at + by);
            }
        }
    }
    parts.extend(fixed);
    for part in &mut parts {
        part.of = Of::Lid;
    }
    parts
}

impl Cover<'_> {
    /// All that goes with the lid, as it lies shut on the basket.
    fn shut(&self) -> Vec<Part> {
        let mut own = self.own.at(Stage::Finished).parts;
        // A knob closes the hole itself.
        own.retain(|part| self.lid.lift != LidLift::Knob || part.piece != Piece::Floor(FloorPart::Plug));
        let more = self.own.lift(self.lid).into_iter().chain(self.collar());
        own.extend(as_woven(self.own, more.collect()));
        for part in &mut own {
            let turned = part.turned;
            each_place(part, |at| self.over(at));
            part.turned = turned.map(|mut turned| {
                turned.angle[1] = -turned.angle[1];
                turned
            });
        }
        own.extend(self.latch());
        own
    }

    /// What stays on the basket when the lid is lifted.
    fn on_basket(&self) -> Vec<Part> {
        let ledge = self.ledge().map(|ledge| as_woven(self.body, self.body.outlined(vec![ledge])));
        ledge.into_iter().flatten().chain(self.peg()).collect()
    }

    /// A place of the lid on its mould, when the lid is turned over by half a turn about the long axis and shut.
    fn over(&self, at: Vec3) -> Vec3 {
        let body = &self.body.basket.body;
        let top = body.profile().at(body.rim().along + body.rim().height).height + self.lid.rises;
        let foot = top - self.lid.vessel.base().thickness;
        Vec3::new(at.x, -at.y, foot.to_mm() as f32 - at.z)
    }

    /// How far a loose lid is from where it lies shut.
    fn away(&self, parts: &[Part], pose: LidPose) -> Vec3 {
        let basket = self.body.basket;
        let reach = basket.across().length.to_mm();
        if pose == LidPose::Open {
            let handle = basket.handle.as_ref().map_or(0.0, |handle| handle.top().to_mm());
            return Vec3::Z * (handle as f32 + ASIDE).max((reach * LIFTED) as f32);
        }
        let places = || parts.iter().flat_map(|part| &part.mesh.positions);
        let [left, low] = [0, 2].map(|axis: usize| places().map(|at| at[axis]).fold(f32::INFINITY, f32::min));
        let foot = -(basket.body.base().thickness.to_mm() as f32);
        let by = Vec3::new(reach as f32 / 2.0 + ASIDE - left, 0.0, foot - low);
        if by.is_finite() { by } else { Vec3::ZERO }
    }
}

/// Parts put together for a vessel, as it is woven.
fn as_woven(maker: &Maker<'_>, parts: Vec<Part>) -> Vec<Part> {
    Solid { parts, simplified: None }.woven(maker.basket).parts
}

/// A place at a vessel's rim as it is woven: so far round, so far out from the staves' inner face, and up from the
/// hoops' lower edge.
fn at_rim(maker: &Maker<'_>, turn: f64, [out, up]: [f64; 2]) -> Vec3 {
    let low = maker.basket.body.rim().along.to_mm();
    let put = maker.surface.at((low + up) as f32).point(out as f32, toward(turn as f32));
    let at = Vec3::from(maker.laid().place(put, 0.0));
    if maker.basket.body.weave.direction == Direction::Right { at.with_y(-at.y) } else { at }
}

/// A vessel's lashed rim cut through so far round.
fn rim_cut(maker: &Maker<'_>, turn: f64) -> Vec<Vec3> {
    RimShape::of(maker.basket).lashing.iter().map(|at| at_rim(maker, turn, [at.x, at.y])).collect()
}

/// The level direction away from a vessel's rim so far round.
fn outward(maker: &Maker<'_>, turn: f64) -> Vec3 {
    let [near, far] = [0.0, 10.0].map(|out| at_rim(maker, turn, [out, 0.0]));
    (far - near).with_z(0.0).normalize_or(Vec3::X)
}

fn each_place(part: &mut Part, to: impl Fn(Vec3) -> Vec3) {
    let edges = part.edges.iter_mut().flatten();
    part.mesh.positions.iter_mut().chain(edges).for_each(|at| *at = to(Vec3::from(*at)).to_array());
    part.turned = None;
}
