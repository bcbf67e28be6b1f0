//! The swinging handle: bail, joint with the ears, rivets, swing clearance and how far it folds.

use super::bow::{self, Bow, Feet, tilt};
use super::rivets::{Rivets, WASHER};
use super::{Fold, Lashed, Plan, Rest, Swing};
use crate::making::Making;
use crate::measure::{Angle, Length};
use crate::pattern::{HandleJoint, HandlePattern};

/// Wood beyond each pivot (common practice).
pub const END: Length = Length::inches(0.5);
/// Least wood that is left beyond a pivot, whatever shows of the ear.
const LEAST_END: Length = Length::mm(0.5);
/// How much wider than the ear a slot is, so that the handle swings (common practice).
const SLOT_PLAY: Length = Length::mm(0.4);

/// The swinging handle as computed.
#[derive(Clone, Debug, PartialEq)]
pub struct SwingHandle {
    /// The bail.
    pub bow: Bow,
    /// How it meets its ears.
    pub joint: HandleJoint,
    /// Width of the slot in each end; none without slots.
    pub slot: Option<Length>,
    /// Height of the pivots above the rim.
    pub pivot_height: Length,
    /// How much of an ear shows between the rim and the end of the handle; negative where the end would
    /// reach below the rim's top.
    pub shows: Length,
    /// Least room between the bail's rounded ends and the rim, all the way from where it rests on one side
    /// to where it rests on the other.
    pub swing_clearance: Length,
    /// Room between the bail's sides and the outer face of the rim as it goes down.
    pub side_clearance: Length,
    /// Where it comes to rest.
    pub fold: Fold,
    /// Where it rests: how far along the rim from an ear.
    pub rests: Length,
    /// The rivets.
    pub rivets: Rivets,
    /// How far the handle leans when the ears do not face each other.
    pub tilt: Angle,
}

impl SwingHandle {
    /// The handle of a basket that is ready for it.
    pub fn of(pattern: &HandlePattern, basket: &Lashed<'_>, making: &mut Making<'_>) -> Self {
        let ears = basket.ears;
        let reach = basket.level(Length::ZERO).reach(ears.axis);
        let joint = pattern.joint.unwrap_or_default();
        let ear = ears.thickness;
        let on_ears = basket.level(basket.uprights.thickness / 2.0);
        let turns = ears.each.map(|ear| ear.turn);
        let middle = on_ears.chord(turns, ears.off_opposite).half;
        let span = |thickness: Length| match joint {
            HandleJoint::Outside => middle + ear / 2.0 + WASHER + thickness / 2.0,
            HandleJoint::Slot | HandleJoint::Between => middle,
        };
        let end = pattern.shows.map_or(END, |shows| (ears.hole_height - shows).max(LEAST_END));
        let width = bow::width(pattern, reach, making);
        let feet = Feet { span: &span, beyond: end, layers: layers(joint) };
        let (bow, bail) = Bow::of(pattern, width, &feet, making);

        let at_ears = at_ears(joint, bow.thickness, ear);
        let rings = basket.rings(ears.hole_height);
        let plan = Plan::of(&on_ears, turns, ears.off_middle);
        let swing = Swing { bail: &bail, width, thickness: at_ears, end, plan: &plan };
        let rested = swing.down(&rings);
        let rim = rings.iter().filter(|ring| ring.part == Rest::Rim);
        let inner_face = bow.half_span - at_ears / 2.0;
        let through = match joint {
            HandleJoint::Outside => (bow.thickness + ear + WASHER, 2),
            HandleJoint::Slot | HandleJoint::Between => (at_ears, 1),
        };
        Self {
            joint,
            slot: (joint == HandleJoint::Slot).then_some(ear + SLOT_PLAY),
            pivot_height: ears.hole_height,
            shows: ears.hole_height - end,
            swing_clearance: swing.end_room(rested, &rings),
            side_clearance: inner_face - rim.map(|ring| basket.reach(ring.outer())).fold(reach, Length::max),
            fold: Fold::of(bail.rise(), rested),
            rests: basket.rim.outer_radius(basket.uprights) * rested.from_ear.to_radians(),
            rivets: Rivets::of(pattern.rivet.as_ref(), through, reach, making),
            tilt: tilt(ears.off_middle, bail.rise()),
            bow,
        }
    }

    /// Thickness from outer face to outer face at the ears.
    pub fn at_ears(&self, ear: Length) -> Length {
        at_ears(self.joint, self.bow.thickness, ear)
    }

    /// Wood on each side of the ear, where the handle has it between.
    pub fn cheek(&self) -> Option<Length> {
        match self.joint {
            HandleJoint::Outside => None,
            HandleJoint::Slot => self.slot.map(|slot| (self.bow.thickness - slot) / 2.0),
            HandleJoint::Between => Some(self.bow.thickness / 2.0),
        }
    }

    /// By how much its half span grows with its thickness, and of how many layers it is bent.
    pub(super) fn growth(&self) -> (f64, f64) {
        (if self.joint == HandleJoint::Outside { 0.5 } else { 0.0 }, layers(self.joint))
    }
}

fn layers(joint: HandleJoint) -> f64 {
    if joint == HandleJoint::Between { 2.0 } else { 1.0 }
}

/// Two halves lie close together but where the ear parts them; for what they meet on the way down they
/// count as thick as there.
fn at_ears(joint: HandleJoint, thickness: Length, ear: Length) -> Length {
    if joint == HandleJoint::Between { thickness + ear } else { thickness }
}
