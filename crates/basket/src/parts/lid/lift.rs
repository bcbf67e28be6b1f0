//! What one lifts a lid by, and what it is shut with: their usual sizes.

use super::Lid;
use crate::measure::Length;
use crate::pattern::LidLift;
use crate::stock::Material;

/// A usual knob: how wide, how high (common practice).
pub const KNOB: [Length; 2] = [Length::inches(0.75), Length::inches(0.625)];
/// A usual peg of a latch: how wide, how long (common practice).
pub const PEG: [Length; 2] = [Length::inches(0.375), Length::inches(0.75)];
/// How high a loop stands through which one puts a finger (common practice).
pub const LOOP_HEIGHT: Length = Length::inches(0.625);

impl Lid {
    /// What loop, hinge and latch are made of: the cane with which the lid is lashed.
    pub fn cane(&self) -> Option<&Material> {
        self.vessel.lashing().map(|lashing| &lashing.weaver)
    }

    /// How far what lifts it stands up from its plaque.
    pub const fn lift_height(&self) -> Length {
        match self.lift {
            LidLift::Knob => KNOB[1],
            LidLift::Loop => LOOP_HEIGHT,
            LidLift::None => Length::ZERO,
        }
    }
}
