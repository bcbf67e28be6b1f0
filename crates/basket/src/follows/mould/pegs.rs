//! Pegs between the pieces of a mould: lengths of dowel in holes that lie at the same places in both faces.

use std::f64::consts::TAU;

use super::block::{Axis, Block};
use super::sections::Sections;
use crate::measure::Length;
use crate::pattern::Units;

/// Dowels as they are sold, largest first.
const DOWELS_INCHES: [Length; 3] = [Length::inches(0.3125), Length::inches(0.25), Length::inches(0.1875)];
const DOWELS_MM: [Length; 3] = [Length::mm(8.0), Length::mm(6.0), Length::mm(4.0)];
/// How much wider a hole is than its dowel: printed holes come out narrow (common practice).
const WIDER: Length = Length::mm(0.4);
/// How much deeper a hole is than the peg reaches: for glue (common practice).
const DEEPER: Length = Length::mm(1.0);
/// How far a peg reaches into each piece, in its own diameters (common practice).
const INTO: f64 = 1.5;
/// Least wall between a hole and any surface (common practice: three or four lines of a printer).
const WALL: Length = Length::mm(3.0);
/// Places along each side of a joint that are looked at.
const TRIED: u32 = 25;
/// Directions and depths in which the wall round a hole is looked at.
const DIRECTIONS: u32 = 12;
const DEPTHS: [f64; 5] = [-1.0, -0.5, 0.0, 0.5, 1.0];

/// The dowel that is used, and its holes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PegSize {
    /// Diameter of the dowel.
    pub dowel: Length,
    /// Length of a peg.
    pub length: Length,
    /// Diameter of its holes.
    pub hole: Length,
    /// Depth of each of its holes.
    pub depth: Length,
}

/// A peg across a joint.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Peg {
    /// Its middle, on the joint.
    pub at: [Length; 3],
    /// The axis along which it lies.
    pub axis: Axis,
    /// Which pieces it joins, counted from 0: the one before the joint, the one behind it.
    pub joins: [usize; 2],
}

/// A joint between two pieces.
#[derive(Clone, Copy, Debug)]
pub(super) struct Joint {
    axis: Axis,
    joins: [usize; 2],
    blocks: [Block; 2],
}

/// All pegs, and how many joints have none.
#[derive(Clone, Debug)]
pub(super) struct Pegged {
    pub(super) size: PegSize,
    pub(super) pegs: Vec<Peg>,
    pub(super) bare: usize,
}

impl PegSize {
    fn of(dowel: Length) -> Self {
        let into = dowel * INTO;
        Self { dowel, length: into * 2.0, hole: dowel + WIDER, depth: into + DEEPER }
    }
}

/// Two pegs across each joint where there is room: of the largest dowel with which none goes bare, or else of the
/// smallest.
pub(super) fn pegged(sections: &Sections, joints: &[Joint], screw_hole: Length, units: Units) -> Pegged {
    let dowels = match units {
        Units::Inches => DOWELS_INCHES,
        Units::Millimetres => DOWELS_MM,
    };
    let [largest, smaller @ ..] =
        dowels.map(|dowel| Ground { sections, screw_hole, size: PegSize::of(dowel) });
    let mut best = largest.pegs(joints);
    for ground in smaller {
        if best.bare == 0 {
            break;
        }
        let tried = ground.pegs(joints);
        if tried.bare < best.bare {
            best = tried;
        }
    }
    best
}

impl Joint {
    /// The joint of two pieces, where the second begins where the first ends.
    pub(super) fn between(joins: [usize; 2], blocks: [Block; 2]) -> Option<Self> {
        let [before, behind] = blocks;
        let touch = |axis: Axis| (before.side(axis)[1] - behind.side(axis)[0]).abs() < Length::mm(1e-6);
        let overlap = |axis: Axis| {
            let [from, to] = before.shared(&behind, axis);
            from < to
        };
        let is_across = |axis: &Axis| touch(*axis) && axis.others().into_iter().all(overlap);
        let axis = Axis::ALL.into_iter().find(is_across)?;
        Some(Self { axis, joins, blocks })
    }

    /// The place on it that lies so far along both of its sides, in mm.
    fn place(&self, shares: [f64; 2]) -> [f64; 3] {
        let [before, behind] = &self.blocks;
        let on_joint = self.axis.put([0.0; 3], before.side(self.axis)[1].to_mm());
        self.axis.others().into_iter().zip(shares).fold(on_joint, |place, (axis, share)| {
            let [from, to] = before.shared(behind, axis).map(Length::to_mm);
            axis.put(place, from + (to - from) * share)
        })
    }
}

struct Ground<'a> {
    sections: &'a Sections,
    screw_hole: Length,
    size: PegSize,
}

impl Ground<'_> {
    fn pegs(&self, joints: &[Joint]) -> Pegged {
        let mut pegs: Vec<Peg> = Vec::new();
        let mut bare = 0;
        for joint in joints {
            let found = self.pair(joint, &pegs);
            bare += usize::from(found.is_empty());
            let peg = |at: [f64; 3]| Peg { at: at.map(Length::mm), axis: joint.axis, joins: joint.joins };
            pegs.extend(found.into_iter().map(peg));
        }
        Pegged { size: self.size, pegs, bare }
    }

    /// The two places of a joint that lie farthest apart; one, where there is no room for two.
    fn pair(&self, joint: &Joint, taken: &[Peg]) -> Vec<[f64; 3]> {
        let near: Vec<&Peg> =
            taken.iter().filter(|peg| peg.joins.iter().any(|piece| joint.joins.contains(piece))).collect();
        let share = |step: u32| (f64::from(step) + 0.5) / f64::from(TRIED);
        let all = (0..TRIED).flat_map(|across| (0..TRIED).map(move |along| [share(across), share(along)]));
        let free = all.map(|shares| joint.place(shares)).filter(|at| self.is_free(joint, *at, &near));
        let free: Vec<[f64; 3]> = free.collect();
        let apart = |[a, b]: &[[f64; 3]; 2]| libm::hypot(libm::hypot(a[0] - b[0], a[1] - b[1]), a[2] - b[2]);
        let pairs =
            free.iter().enumerate().flat_map(|(index, a)| free.iter().skip(index + 1).map(|b| [*a, *b]));
        let farthest = pairs.max_by(|a, b| apart(a).total_cmp(&apart(b)));
        let least = (self.size.hole + WALL).to_mm();
        match farthest {
            Some(pair) if apart(&pair) >= least => pair.to_vec(),
            _ => free.first().copied().into_iter().collect(),
        }
    }

    /// Whether a hole here keeps its wall all round, to all surfaces and to all other holes.
    fn is_free(&self, joint: &Joint, at: [f64; 3], near: &[&Peg]) -> bool {
        let round = (self.size.hole / 2.0 + WALL).to_mm();
        let deep = (self.size.depth + WALL).to_mm();
        let [before, behind] = &joint.blocks;
        let stands = |place: [f64; 3], depth: f64| {
            let block = if depth > 0.0 { behind } else { before };
            block.holds(place) && self.sections.hold(place)
        };
        let [first, second] = joint.axis.others();
        let wall = |depth: f64, direction: u32| {
            let (sin, cos) = libm::sincos(f64::from(direction) / f64::from(DIRECTIONS) * TAU);
            let place = first.put(at, first.of(at) + cos * round);
            let place = second.put(place, second.of(at) + sin * round);
            stands(joint.axis.put(place, joint.axis.of(at) + depth * deep), depth)
        };
        self.sections.hold(at)
            && DEPTHS.iter().all(|depth| (0..DIRECTIONS).all(|direction| wall(*depth, direction)))
            && self.clear_of_axis(joint.axis, at)
            && near.iter().all(|peg| self.apart(joint.axis, at, peg))
    }

    /// Whether a hole passes the screw hole in the middle.
    fn clear_of_axis(&self, axis: Axis, at: [f64; 3]) -> bool {
        let deep = self.size.depth.to_mm();
        let [x, y] = [Axis::Length, Axis::Width]
            .map(|side| (side.of(at).abs() - if side == axis { deep } else { 0.0 }).max(0.0));
        libm::hypot(x, y) >= (self.screw_hole / 2.0 + self.size.hole / 2.0 + WALL).to_mm()
    }

    /// Whether a hole keeps clear of that of another peg. Both lie along an axis, so that their middle lines are boxes
    /// without width.
    fn apart(&self, axis: Axis, at: [f64; 3], other: &Peg) -> bool {
        let deep = self.size.depth.to_mm();
        let [x, y, z] = Axis::ALL.map(|side| {
            let reach = f64::from(u8::from(side == axis) + u8::from(side == other.axis)) * deep;
            ((side.of(at) - side.of(other.at).to_mm()).abs() - reach).max(0.0)
        });
        let between = libm::hypot(libm::hypot(x, y), z);
        between >= (self.size.hole + WALL).to_mm()
    }
}
