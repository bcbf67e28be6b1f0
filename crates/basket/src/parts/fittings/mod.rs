//! Ears, pins and the swinging handle.

mod bail;
mod bend;
mod ear_places;
mod ear_sizes;
mod ears;
mod fold;
mod handle;
mod pin_places;
mod pins;
mod ring;
mod swing;

pub use bail::Bail;
pub use ear_sizes::Wall;
pub use ears::{Ear, EarOption, Ears, WovenIn, off_middle};
pub use fold::Fold;
pub(crate) use handle::BEND_LIMIT;
pub use handle::{Handle, tilt};
pub use pins::{PinSet, Pins, length_needed};
pub use ring::{Lashed, Rest, Ring, Stretch};
pub use swing::{Rested, Swing};

/// Diameters of a pin or rivet that forming its head takes (rule for rivet stock in a how-to article).
pub const FORMED_HEAD: f64 = 1.5;
