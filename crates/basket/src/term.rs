//! The computation's own words: stages, weaves, placings and the like.

/// A word with a name in the message files.
pub trait Term {
    /// Identifier of its name in the message files.
    fn term(self) -> &'static str;
}
