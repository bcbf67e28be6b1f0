//! Sizes of ears that a pattern leaves open.

use std::f64::consts::TAU;

use crate::form::{Form, Level};
use crate::making::Making;
use crate::measure::Length;
use crate::message::Message;
use crate::parts::seat::Seat;
use crate::pattern::{EarMaterial, EarWay, keys};
use crate::stock::Wood;
use crate::uprights::Uprights;
use crate::weave::Row;

/// An ear is no narrower than this, so that a hole of 1/8 in leaves 1/16 in on both sides of it, and no
/// wider than is needed to hold a handle (common practice).
const WIDTHS: [Length; 2] = [Length::inches(0.25), Length::inches(0.5)];
/// Hole above the rim: the bail's end swings clear with 1/8 in to spare (common practice).
const HOLE_HEIGHT: Length = Length::inches(0.625);
/// Tail below the rim where it is pushed down (a basket supplier's page on ears: about 2 in).
const PUSHED_DOWN: Length = Length::inches(2.0);
/// Tail below the rim where rows are woven over it: ears are laid on when about 1 in of the mould is left
/// (common practice).
const WOVEN_IN: Length = Length::inches(1.0);

/// What ears are set into.
#[derive(Clone, Copy)]
pub struct Wall<'a> {
    /// The shape of the wall.
    pub form: &'a Form,
    /// Where the hoops sit.
    pub seat: &'a Seat,
    /// Height of the hoops.
    pub height: Length,
    /// What stands round the wall.
    pub uprights: &'a Uprights,
    /// The rows, from the base upward.
    pub rows: &'a [Row],
    /// Upper end of the mould, along the wall.
    pub mould: Length,
    /// What a stave has below the wall: in the groove, and round the bend.
    pub foot: Length,
    /// The wood of the base.
    pub wood: &'a Wood,
}

impl Wall<'_> {
    /// The inner faces of the staves in the middle of the rim.
    pub(super) fn level(&self) -> Level<'_> {
        self.form.level(self.seat.height, self.seat.girth / TAU)
    }
}

pub(super) fn choose_width(stave: Length, making: &mut Making<'_>) -> Length {
    let [least, most] = WIDTHS;
    let width = stave.max(least).min(most);
    let id = if width == stave {
        "choice-ears-width"
    } else if width > stave {
        "choice-ears-width-least"
    } else {
        "choice-ears-width-most"
    };
    making.chose(keys::ears::WIDTH.path, width, Message::new(id).with("stave", stave));
    width
}

/// Usual thicknesses (common practice). A wooden blank is 3/8 in square (a maker's weblog, 2014); dressed to
/// 1/4 in above the rim, a usual rivet reaches through it.
pub(super) fn choose_thickness(material: EarMaterial, making: &mut Making<'_>) -> Length {
    let (inches, id) = match material {
        EarMaterial::Brass => (0.0625, "choice-ears-size-brass"),
        EarMaterial::Wood | EarMaterial::Oak => (0.25, "choice-ears-size-wood"),
        EarMaterial::Bone => (0.1875, "choice-ears-size-bone"),
    };
    let thickness = Length::inches(inches);
    making.chose(keys::ears::THICKNESS.path, thickness, Message::new(id));
    thickness
}

pub(super) fn choose_hole(making: &mut Making<'_>) -> Length {
    making.chose(keys::ears::HOLE.path, HOLE_HEIGHT, Message::new("choice-ears-hole-height"));
    HOLE_HEIGHT
}

pub(super) fn choose_tail(way: EarWay, making: &mut Making<'_>) -> Length {
    let (tail, id) = match way {
        EarWay::PushedDown => (PUSHED_DOWN, "choice-ears-tail-pushed-down"),
        EarWay::WovenIn | EarWay::AsStave => (WOVEN_IN, "choice-ears-tail-woven-in"),
    };
    making.chose(keys::ears::TAIL.path, tail, Message::new(id));
    tail
}

/// Whether a tail of this stuff can stand in the groove in the place of a stave.
pub(super) const fn is_shaved_to_a_stave(material: EarMaterial) -> bool {
    matches!(material, EarMaterial::Wood | EarMaterial::Oak)
}

/// A tail that runs to the base: to the bottom of the groove where it stands in the place of its stave,
/// else down the wall on it.
pub(super) fn whole_tail(material: EarMaterial, wall: &Wall<'_>, making: &mut Making<'_>) -> Length {
    let (tail, id) = if is_shaved_to_a_stave(material) {
        (wall.seat.along + wall.foot, "choice-ears-tail-stave")
    } else {
        (wall.seat.along, "choice-ears-tail-on-stave")
    };
    let tail = tail.max(Length::ZERO);
    making.chose(keys::ears::TAIL.path, tail, Message::new(id).with("foot", wall.foot));
    tail
}
