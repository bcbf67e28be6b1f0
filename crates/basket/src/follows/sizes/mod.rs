//! The same basket over moulds of other sizes, and whether each stands in the next.

mod changes;
mod nest;
mod serving;

pub use changes::{Change, across, changes};
pub use nest::Nest;
pub use serving::{serving, to_the_mark};
