//! What Stavewright chose because the pattern left it open, and why.

use crate::message::{Message, Value};

/// One value that the pattern left out.
#[derive(Clone, Debug, PartialEq)]
pub struct Choice {
    /// The pattern key that would fix it, such as `staves.count`.
    pub key: &'static str,
    /// What was chosen.
    pub value: Value,
    /// Why.
    pub reason: Message,
}
