//! Which pieces to cut from which strands, coils and offcuts: at least cost, then from the least length of
//! stock, then with the longest offcuts.
//!
//! Cutting stock with several lengths of stock, each with a cost and perhaps limited, and a kerf: pieces
//! fit where `Σ(length + kerf) ≤ stock + kerf`. Solved over ways to cut one strand (P. C. Gilmore and
//! R. E. Gomory, "A Linear Programming Approach to the Cutting-Stock Problem", *Operations Research* 9,
//! 1961): the relaxation gives a lower bound, and only ways whose reduced cost lies within the gap can take
//! part in a better plan, so the integer program over those alone proves the optimum.

mod first_fit;
mod job;
mod offcuts;
mod openings;
mod plan;
mod relaxed;
mod solve;
mod task;
mod ways;
mod whole;

pub mod bounds;

pub use first_fit::strands_by_first_fit;
pub use job::{CuttingError, Job, Piece, Stock};
pub use plan::{Plan, Progress, Strand};
pub use solve::solve;
