//! How far something reaches from edge to edge, seen from above.

use crate::measure::Length;
use crate::message::{Message, Value};

/// Length and width over all; both alike where it is round.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Across {
    /// Along the longer axis.
    pub length: Length,
    /// Along the shorter axis.
    pub width: Length,
}

impl Across {
    /// Something round.
    pub const fn round(diameter: Length) -> Self {
        Self { length: diameter, width: diameter }
    }

    /// Whether both are alike.
    pub fn is_round(&self) -> bool {
        self.length == self.width
    }

    /// The same with so much more on every side.
    #[must_use]
    pub fn grown(self, by: Length) -> Self {
        Self { length: self.length + 2.0 * by, width: self.width + 2.0 * by }
    }
}

impl From<Across> for Value {
    fn from(across: Across) -> Self {
        if across.is_round() {
            return across.length.into();
        }
        Message::new("length-by-width").with("length", across.length).with("width", across.width).into()
    }
}
