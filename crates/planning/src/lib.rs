//! What a workshop plans from its baskets: kits, what to buy, which pieces come from which strand, prices, classes.
//!
//! Pure like [`basket`]: no file, no clock, no terminal, no panic on any input. A search that may take long asks its
//! caller whether to go on.

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
pub mod cells;
pub mod class;
pub mod cutting;
pub mod kits;
pub mod price;
pub mod promise;
pub mod records;
pub mod samples;
