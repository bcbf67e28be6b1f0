//! Ears, pins and the swinging handle.

mod bail;
mod ears;
mod fold;
mod handle;
mod pins;

pub use bail::Bail;
pub use ears::{Ear, EarOption, Ears, off_middle};
pub use fold::{Fold, Ledge, fold_on_wall, rest_on_rim};
pub use handle::{Handle, tilt};
pub use pins::{PinMeeting, Pins, length_needed};

/// Diameters of a pin or rivet that forming its head takes (rule for rivet stock in a how-to article).
pub const FORMED_HEAD: f64 = 1.5;
