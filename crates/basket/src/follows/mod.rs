//! What follows from a computed basket: its steps, its cuts, its findings, its samples for a show.

pub mod cuts;
pub mod demonstration;
pub mod findings;
pub mod steps;
pub mod teaching;
