//! The fixed handle: a bow whose ends run down along the staves inside the rim.

use super::bow::{self, Bow, Feet, tilt};
use super::{Ears, Wall};
use crate::making::Making;
use crate::measure::{Angle, Length};
use crate::message::Message;
use crate::pattern::Word as _;
use crate::pattern::keys;
use crate::pattern::{EarAxis, EarMaterial, EarPlacing, EarWay, EarsPattern, HandlePattern};

/// How far its ends go down, as a share of the wall below the rim (common practice), and no further than
/// this (A. A. Gill, *Practical Basketry*, 1916, model 18: a handle is inserted 4 1/2 in down the side).
const ENDS: f64 = 0.5;
const MOST_ENDS: Length = Length::inches(4.5);

/// The fixed handle as computed.
#[derive(Clone, Debug, PartialEq)]
pub struct FixedHandle {
    /// The bow. Its feet are where it leaves the rim.
    pub bow: Bow,
    /// Its ends: they stand in the rim as ears do, each on a stave, and are pinned and lashed with it.
    pub ends: Ears,
    /// Length of each end, from the top of the rim down.
    pub leg: Length,
    /// How far it leans when its ends do not face each other.
    pub tilt: Angle,
}

impl FixedHandle {
    /// The handle in a wall.
    pub fn of(pattern: &HandlePattern, wall: &Wall<'_>, making: &mut Making<'_>) -> Self {
        let (seat, height) = (wall.seat, wall.height);
        let axis = pattern.axis.or_else(|| choose_axis(wall, making));
        let level = wall.level();
        let width = bow::width(pattern, level.reach(axis), making);
        let usual = (seat.along * ENDS).min(MOST_ENDS);
        let tail = making.or(pattern.ends, keys::handle::ENDS.path, usual, |_| {
            Message::new("choice-handle-ends").with("wall", seat.along)
        });
        let standing = EarsPattern {
            material: Some(EarMaterial::Oak),
            way: Some(EarWay::PushedDown),
            axis,
            placing: Some(EarPlacing::OnStaves),
            width: Some(width),
            thickness: pattern.thickness,
            hole_height: Some(Length::ZERO),
            tail: Some(tail),
            wood: None,
        };
        // What ears would choose has no key of its own here.
        let unsaid = &mut Making::new(making.catalogue, making.hand);
        let ends = Ears::of(&standing, wall, unsaid);

        let middle = level.grown(wall.uprights.thickness / 2.0);
        let half_span = middle.chord(ends.each.map(|end| end.turn), ends.off_opposite).half;
        let leg = height + tail;
        let feet = Feet { span: &|_| half_span, beyond: leg, layers: 1.0 };
        let (bow, bail) = Bow::of(pattern, width, &feet, making);
        Self {
            leg,
            tilt: tilt(ends.off_middle, bail.rise()),
            ends: Ears { of_handle: true, thickness: bow.thickness, ..ends },
            bow,
        }
    }
}

/// Across the middle from side to side a handle is short and stiff, and both ends stay open to the hand (common
/// practice for market baskets).
fn choose_axis(wall: &Wall<'_>, making: &mut Making<'_>) -> Option<EarAxis> {
    (!wall.form.outline.is_round()).then(|| {
        making.chose(keys::handle::AXIS.path, EarAxis::Short.word(), Message::new("choice-handle-axis"));
        EarAxis::Short
    })
}
