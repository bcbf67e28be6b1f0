//! Two knobs in place of a bail: each stands on an ear, outside, on a rivet through both.

use super::rivets::{Rivets, WASHER};
use super::{Lashed, Rest, Ring};
use crate::making::Making;
use crate::measure::Length;
use crate::message::Message;
use crate::pattern::HandlePattern;
use crate::pattern::keys;

/// Usual size of a knob: how wide, how far it stands out (common practice).
const SIZE: [Length; 2] = [Length::inches(0.75), Length::inches(0.5)];

/// The knobs as computed.
#[derive(Clone, Debug, PartialEq)]
pub struct Knobs {
    /// Diameter of a knob.
    pub diameter: Length,
    /// How far it stands out from its washer.
    pub length: Length,
    /// Height of its middle above the rim.
    pub pivot_height: Length,
    /// Room between a knob and the lashed rim below it; negative where it would press on the rim.
    pub rim_room: Length,
    /// The rivets.
    pub rivets: Rivets,
}

impl Knobs {
    /// The knobs of a basket that is ready for them.
    pub fn of(pattern: &HandlePattern, basket: &Lashed<'_>, making: &mut Making<'_>) -> Self {
        let [width, out] = SIZE;
        let diameter = making
            .or(pattern.width, keys::handle::WIDTH.path, width, |_| Message::new("choice-handle-knob-width"));
        let length = making.or(pattern.thickness, keys::handle::THICKNESS.path, out, |_| {
            Message::new("choice-handle-knob-length")
        });
        let ears = basket.ears;
        let reach = basket.level(Length::ZERO).reach(ears.axis);
        let rings = basket.rings(ears.hole_height);
        let rim = rings.iter().filter(|ring| ring.part == Rest::Rim);
        let top = rim.map(Ring::top).reduce(Length::min).unwrap_or(ears.hole_height);
        let through = (ears.thickness + WASHER + length, 2);
        Self {
            diameter,
            length,
            pivot_height: ears.hole_height,
            rim_room: top - diameter / 2.0,
            rivets: Rivets::of(pattern.rivet.as_ref(), through, reach, making),
        }
    }
}
