//! A basket in the making: what is at hand, and what was chosen on the way.

use crate::choice::Choice;
use crate::hand::Hand;
use crate::measure::Length;
use crate::message::{Message, Value};
use crate::stock::Catalogue;

/// What every part is made with, and the choices made so far.
pub struct Making<'c> {
    /// The materials that there are.
    pub catalogue: &'c Catalogue,
    /// The maker's own figures.
    pub hand: &'c Hand,
    choices: Vec<Choice>,
}

impl<'c> Making<'c> {
    /// The beginning, with nothing chosen.
    pub const fn new(catalogue: &'c Catalogue, hand: &'c Hand) -> Self {
        Self { catalogue, hand, choices: Vec::new() }
    }

    /// The written length, else the usual one, noted with its reason.
    pub fn or(
        &mut self,
        written: Option<Length>,
        key: &'static str,
        usual: Length,
        reason: impl FnOnce(Length) -> Message,
    ) -> Length {
        written.unwrap_or_else(|| {
            self.chose(key, usual, reason(usual));
            usual
        })
    }

    /// Notes what was chosen for a key, and why.
    pub fn chose(&mut self, key: &'static str, value: impl Into<Value>, reason: Message) {
        self.choices.push(Choice { key, value: value.into(), reason });
    }

    /// The choices made so far, in making order.
    pub fn take_choices(&mut self) -> Vec<Choice> {
        std::mem::take(&mut self.choices)
    }
}
