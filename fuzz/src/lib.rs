//! Extreme patterns and mangled bytes, and what tries them on the program.
//!
//! The same seed gives the same pattern and the same bytes, so that whatever is found can be found again.

pub mod extreme;
pub mod trial;
mod values;
