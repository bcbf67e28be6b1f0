//! The parts of a basket in making order; each sees only those before it.

pub mod base;
pub mod construction;
pub mod edge;
pub mod fittings;
pub mod form;
pub mod lashing;
pub mod lid;
pub mod neck;
pub mod rim;
pub mod seat;
pub mod staves;
pub mod uprights;
pub mod vessel;
pub mod weave;
