//! Ears, pins and what one lifts the basket by.

mod bail;
mod bend;
mod bow;
mod ear_places;
mod ear_sizes;
mod ears;
mod fixed;
mod fold;
mod handle;
mod knobs;
mod pin_places;
mod pins;
mod plan;
mod ring;
mod rivets;
mod swing;
mod swing_handle;

pub use bail::Bail;
pub(crate) use bow::BEND_LIMIT;
pub use bow::{Bow, tilt};
pub use ear_places::{Ear, EarOption};
pub use ear_sizes::Wall;
pub use ears::{Ears, WovenIn};
pub use fixed::FixedHandle;
pub use fold::Fold;
pub use handle::Handle;
pub use knobs::Knobs;
pub use pins::{PinSet, Pins, length_needed};
pub use plan::Plan;
pub use ring::{Lashed, Rest, Ring, Stretch};
pub use rivets::Rivets;
pub use swing::{Rested, Swing};
pub use swing_handle::SwingHandle;

/// Diameters of a pin or rivet that forming its head takes (rule for rivet stock in a how-to article).
pub const FORMED_HEAD: f64 = 1.5;
