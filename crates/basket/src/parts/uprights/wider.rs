//! Uprights that are wider than the others, where the gaps grow.

use crate::measure::Length;

/// Uprights that are wider than the others.
#[derive(Clone, Debug, PartialEq)]
pub struct Wider {
    /// Their full width.
    pub width: Length,
    /// Their numbers, rising.
    pub numbers: Vec<u32>,
}
