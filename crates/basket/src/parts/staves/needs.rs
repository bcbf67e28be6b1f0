//! What the rest of the basket asks of the staves.

use crate::form::Form;
use crate::measure::Length;
use crate::stock::Material;
use crate::uprights::Standing;
use crate::weave::Running;

/// What the rest of the basket asks of the staves.
#[derive(Clone, Copy)]
pub struct Needs<'a> {
    /// The form over which they stand.
    pub form: &'a Form,
    /// What they may be cut from where the pattern names no stock.
    pub stocks: &'a [Material],
    /// Top of the last row, along the mould.
    pub wall: Length,
    /// Height of the rim's hoops.
    pub rim: Length,
    /// Thickness of the thickest weaver.
    pub weaver: Length,
    /// Width of the weaver at the rim.
    pub row: Length,
    /// How far the rows hold the staves off the form.
    pub behind: &'a Standing,
    /// Whether the basket has two ears.
    pub ears: bool,
    /// How the courses do on a count of staves.
    pub running: &'a dyn Fn(u32) -> Running,
}

impl Needs<'_> {
    /// The same with lengths that make sense: finite and not negative.
    pub(super) fn sound(&self) -> Self {
        let sound = |length: Length| Length::mm(length.to_mm().clamp(0.0, 1e5)).max(Length::ZERO);
        Self {
            wall: sound(self.wall),
            rim: sound(self.rim),
            weaver: sound(self.weaver),
            row: sound(self.row),
            ..*self
        }
    }
}
