//! Where a lid that lies on the rim is hinged, and where it is shut.

use std::f64::consts::TAU;

use super::rims::edge;
use crate::measure::Length;
use crate::parts::rim::MOST_APART;
use crate::parts::vessel::Vessel;
use crate::pattern::{Direction, EarAxis, LidHinge};
use crate::uprights::Uprights;

/// How far the rim may curve out between the two loops of a hinge: a loop of cane gives so much, and what stands
/// out further presses on the basket's rim when the lid is opened (common practice: 1/16 in).
const BULGE: Length = Length::inches(1.0 / 16.0);
/// Halvings by which the distance of the loops is found: to a millionth of the round.
const HALVINGS: u32 = 20;

/// The hinge of a lid, two loops round both rims, and its latch on the other side.
#[derive(Clone, Debug, PartialEq)]
pub struct Hinge {
    /// Where it is.
    pub at: LidHinge,
    /// Way along the rim from the first loop to the second.
    pub apart: Length,
    /// How far the rim curves out between them.
    pub bulge: Length,
    /// Where the loops go round the rims.
    pub loops: [HingePlace; 2],
    /// Where the latch does.
    pub latch: HingePlace,
}

/// A gap of the basket, and the gap of the lid that comes to lie over it. Staves of a lid that was turned over count
/// the other way round.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct HingePlace {
    /// Staves of the basket on both sides of its gap.
    pub body: [u32; 2],
    /// Staves of the lid on both sides of its gap.
    pub lid: [u32; 2],
}

impl Hinge {
    /// A hinge on this side of a basket and its lid; none where there is to be none.
    pub(crate) fn of(at: LidHinge, body: &Vessel, lid: &Vessel) -> Option<Self> {
        let axis = match at {
            LidHinge::Side => EarAxis::Short,
            LidHinge::End => EarAxis::Long,
            LidHinge::None => return None,
        };
        let radius = edge(body);
        let level = body.rim_level(radius);
        let [mut hinge, mut latch] = level.ends(Some(axis));
        // On the far side of a basket that stands with stave 1 at the right.
        if body.weave.direction == Direction::Right {
            (hinge, latch) = (latch, hinge);
        }
        let bulge = |half: f64| {
            let [from, middle, to] = [hinge - half, hinge, hinge + half].map(|turn| level.place(turn));
            bulge_of(from, middle, to)
        };
        let (mut less, mut more) = (0.0, MOST_APART / 2.0);
        if bulge(more) <= BULGE {
            less = more;
        }
        for _ in 0..HALVINGS {
            let middle = f64::midpoint(less, more);
            if bulge(middle) <= BULGE { less = middle } else { more = middle }
        }
        let place =
            |turn: f64| HingePlace { body: gap(body.uprights(), turn), lid: gap(lid.uprights(), -turn) };
        Some(Self {
            at,
            apart: radius * (TAU * less * 2.0),
            bulge: bulge(less),
            loops: [hinge - less, hinge + less].map(place),
            latch: place(latch),
        })
    }
}

/// How far a place lies off the straight way between two others.
fn bulge_of([ax, ay]: [f64; 2], [x, y]: [f64; 2], [bx, by]: [f64; 2]) -> Length {
    let length = libm::hypot(bx - ax, by - ay);
    let area = (bx - ax) * (y - ay) - (by - ay) * (x - ax);
    if length > 0.0 { Length::mm((area / length).abs()) } else { Length::ZERO }
}

/// The uprights on both sides of a place so far round.
fn gap(uprights: &Uprights, turn: f64) -> [u32; 2] {
    let count = uprights.count.max(1);
    let before = (turn.rem_euclid(1.0) * f64::from(count)).floor() as u32 % count;
    [before + 1, (before + 1) % count + 1]
}
