//! Ears, pins and the swinging handle.

mod ears;
mod handle;
mod pins;

pub use ears::{Ear, EarOption, Ears};
pub use handle::{Fold, Handle};
pub use pins::{PinMeeting, Pins};
