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
mod basket;
pub mod chance;
pub mod choice;
pub mod colour;
mod cover;
mod draft;
pub mod follows;
mod hand;
pub mod limits;
mod making;
pub mod measure;
pub mod message;
pub mod parts;
pub mod pattern;
pub mod piece;
pub mod stock;
mod term;

pub use self::assemble::assemble;
pub use self::basket::Basket;
pub use self::colour::Colour;
pub use self::draft::Draft;
pub use self::follows::findings::{Finding, Grade};
pub use self::follows::{cuts, findings, mould, sizes, steps, teaching};
pub use self::hand::{Hand, Pace};
pub use self::making::Making;
pub use self::measure::{Angle, Length};
pub use self::parts::lid::Lid;
pub use self::parts::{
    base, construction, edge, fittings, form, lashing, lid, neck, rim, seat, staves, uprights, vessel, weave,
};
pub use self::pattern::Pattern;
pub use self::piece::{Of, Piece};
pub use self::stock::{Catalogue, Material};
