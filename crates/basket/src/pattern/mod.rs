//! The maker's file: what was written, and nothing that can be computed from it.
//!
//! A pattern is a TOML file. [`read`] turns its text into a [`Pattern`] or lists everything that is
//! wrong with it, each with its place in the text and how to mend it.

mod colours;
mod course;
mod edge;
mod ends;
pub mod fields;
mod fittings;
mod form;
pub mod keys;
mod materials;
mod model;
mod notes;
mod problem;
mod read;
mod section;
mod text;
mod wall;
mod weave;
mod words;

pub use model::*;
pub use problem::Problem;
pub use read::read;
pub use weave::*;

/// A commented pattern to start from; it reads without problems.
pub const STARTER: &str = include_str!("starter.toml");

/// The longest text that [`read`] accepts, in bytes.
pub const LONGEST_TEXT: usize = 1_000_000;
