//! For whom a basket is.

use super::word::words;

/// What a maker should have done before.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Level {
    /// Nothing.
    Beginner,
    /// A basket or two.
    Intermediate,
    /// Many, and finer ones.
    Advanced,
}

words! { Level:
    Beginner = "beginner", "level-beginner";
    Intermediate = "intermediate", "level-intermediate";
    Advanced = "advanced", "level-advanced";
}
