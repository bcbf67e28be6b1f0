//! The maker's file: what was written, and nothing that can be computed from it.

mod model;

pub use model::*;
