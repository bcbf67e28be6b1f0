//! What was chosen because the pattern left it open.

use basket::choice;
use serde::Serialize;
use words::Words;

use super::value::Value;

/// One value that the pattern left out.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(crate) struct Choice {
    /// The pattern key that would fix it, such as `staves.count`.
    key: &'static str,
    /// What was chosen, with its kind.
    value: Value,
    /// Why.
    reason: String,
}

impl Choice {
    pub(super) fn of(choice: &choice::Choice, words: &Words) -> Self {
        let choice::Choice { key, value, reason } = choice;
        Self { key, value: value.into(), reason: words.say(reason) }
    }
}
