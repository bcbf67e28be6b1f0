//! What follows from a computed basket: its steps, its cuts, its findings.

pub mod cuts;
pub mod findings;
pub mod steps;
pub mod teaching;
