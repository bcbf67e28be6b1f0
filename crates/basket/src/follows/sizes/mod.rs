//! The same basket over moulds of other sizes, and whether each stands in the next.

mod changes;
mod nest;

pub use changes::{Change, across, changes};
pub use nest::Nest;
