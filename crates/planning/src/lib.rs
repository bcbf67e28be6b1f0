//! What is planned from drafted baskets. Like `basket`, this crate never touches a file, a clock or the
//! terminal, and never panics on any input; a search that may take long asks its caller whether to go on.

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

pub mod class;
pub mod records;
