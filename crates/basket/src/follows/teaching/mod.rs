//! What a teacher wants to know of a basket beside its steps: the usual faults, what a class may be asked,
//! and where a session ends. All of it is common practice.

mod asked;
mod faults;
mod sessions;

pub use asked::questions;
pub use faults::faults;
pub use sessions::{Part, Session, sessions};

use crate::basket::Basket;

/// Whether something is said of a basket.
type When = fn(&Basket) -> bool;

/// Of every basket.
const ALWAYS: When = |_| true;
