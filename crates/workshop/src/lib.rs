//! The store of a workshop: what lies on the shelf, which moulds there are and who has them, orders, and
//! every movement with the way back; and the log of what was made.
//!
//! One file of `SQLite`. Nothing of it is needed to work out a pattern. What was acknowledged is on the disk: a
//! kill at any point loses nothing of it. A file of a newer program, a damaged one, one that may not be
//! written and a full disk are each said as what they are, and the file is left as it was.

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

mod adopted;
mod fault;
mod measured;
mod money;
mod moulds;
mod moves;
mod orders;
mod plain;
mod records;
mod removed;
mod schema;
mod shelf;
mod shelf_csv;
mod store;
mod versions;

pub use fault::Fault;
pub use measured::{Measure, measured};
pub use moulds::{Girth, Loan, Mould};
pub use moves::{Change, Kind, Movement};
pub use orders::{Order, State};
pub use plain::Everything;
pub use shelf::Item;
pub use shelf_csv::{read_shelf, write_shelf};
pub use store::Store;
pub use versions::{PatternVersion, Version};
