//! The computation behind Stavewright: from what a maker wrote (a [`Pattern`]) to everything a
//! basket needs (a [`Basket`]): staves, rows, joins, hoops, wraps, pins, ears, handle, cut list,
//! steps and findings.
//!
//! This crate never touches a file, a clock or the terminal, and never panics on any input.
//! The same pattern and catalogue give the same basket, to the bit.

#![cfg_attr(
    not(test),
    deny(
        clippy::unwrap_used,
        clippy::expect_used,
        clippy::panic,
        clippy::todo,
        clippy::unimplemented,
        clippy::unreachable,
        clippy::indexing_slicing
    )
)]

pub mod assemble;
pub mod chance;
pub mod choice;
pub mod colour;
pub mod follows;
pub mod measure;
pub mod message;
pub mod parts;
pub mod pattern;
pub mod stock;

pub use assemble::{Basket, assemble};
pub use colour::Colour;
pub use follows::findings::{Finding, Grade};
pub use follows::{cuts, demonstration, findings, steps};
pub use measure::{Angle, Length};
pub use parts::{base, fittings, lashing, mould, rim, staves, weave};
pub use pattern::Pattern;
pub use stock::{Catalogue, Material};
