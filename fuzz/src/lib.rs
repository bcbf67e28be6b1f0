//! Extreme patterns and mangled bytes, and what tries them on the program.
//!
//! The same seed gives the same pattern and the same bytes, so that whatever is found can be found again. What
//! brings something down is kept under `found/` and tried again by the tests from then on.

pub mod extreme;
pub mod mangle;
pub mod runner;
pub mod targets;
pub mod trial;
mod values;
