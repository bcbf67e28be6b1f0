//! What a workshop plans from its baskets: kits, what to buy, which pieces come from which strand, prices.
//!
//! Pure like [`basket`]: no file, no clock, no terminal, no panic on any input.

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

pub mod buying;
pub mod cutting;
pub mod kits;
pub mod price;
