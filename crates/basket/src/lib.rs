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
pub mod base;
pub mod chance;
pub mod choice;
pub mod colour;
pub mod cuts;
pub mod demonstration;
pub mod findings;
pub mod fittings;
pub mod lashing;
pub mod measure;
pub mod message;
pub mod mould;
pub mod pattern;
pub mod rim;
pub mod staves;
pub mod steps;
pub mod stock;
pub mod terms;
pub mod weave;

pub use assemble::{Basket, assemble};
pub use colour::Colour;
pub use findings::{Finding, Grade};
pub use measure::{Angle, Length};
pub use pattern::Pattern;
pub use stock::{Catalogue, Material};
