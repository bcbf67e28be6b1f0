//! The side of a turned mould from a photograph of it.
//!
//! Pixels in, heights and girths out; nothing is read or written here. The mould stands before a plain
//! background and is seen whole, from the height of its middle. Its outline is found, its axis
//! straightened, both sides averaged, and the perspective undone exactly.

mod background;
mod edges;
mod failed;
mod fit;
mod perspective;
mod shape;
mod side;
mod trace;

pub use background::Picture;
pub use edges::{Axis, Edge};
pub use failed::Failed;
pub use trace::{Camera, Known, Side, Traced, trace};
