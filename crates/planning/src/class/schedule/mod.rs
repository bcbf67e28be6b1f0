//! Who does what when, so that the last one is done as early as can be.
//!
//! Students of a group are alike, so they can take turns: if one begins a step before another, it can begin
//! each later step before the other too (exchange what both still have to do; no mould, drill or pair of hands
//! is taken more than before). With turns fixed within each group, a plan is the order in which students take
//! what there is too little of, and each order has one earliest plan. [`solve`] searches those orders layer by
//! layer, keeps of two that stand at the same steps only the one that is behind in nothing, and is exact
//! unless it is told to stop or has more orders open than it may keep; then it says how good its answer is.

mod chain;
mod hours;
mod label;
mod plan;
mod problem;
mod replay;
mod search;

pub use hours::Hours;
pub use plan::{Placed, Plan, Turn};
pub use problem::{Group, Minute, Problem, Task, Window};
pub use search::{Answer, Progress, solve};
