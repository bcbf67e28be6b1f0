//! The parts of a basket in making order; each sees only those before it.

pub mod base;
pub mod fittings;
pub mod lashing;
pub mod mould;
pub mod rim;
pub mod staves;
pub mod weave;
