//! What follows from a computed basket: its steps, its cuts, its findings; and the
//! same basket in other sizes; the pieces of its mould.

pub mod cuts;
pub mod findings;
pub mod mould;
pub mod sizes;
pub mod steps;
pub mod teaching;
