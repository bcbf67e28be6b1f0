//! To which side a diagonal climbs.

use super::word::words;

/// To which side a diagonal climbs, seen from outside.
#[derive(Clone, Copy, Debug, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Lean {
    /// Up to the left.
    Left,
    /// Up to the right.
    Right,
}

words! { Lean:
    Left = "left", "lean-left";
    Right = "right", "lean-right";
}

impl Lean {
    /// The other side.
    #[must_use]
    pub const fn other(self) -> Self {
        match self {
            Self::Left => Self::Right,
            Self::Right => Self::Left,
        }
    }
}
