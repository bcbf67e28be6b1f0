//! The words by which a pattern file says one of a few things.

use crate::stock::Kind;
use crate::term::Term;

/// One of a few things that a pattern file says by a word.
pub trait Word: Term + Copy + Eq + 'static {
    /// All of them, in the order in which they are offered.
    const ALL: &'static [Self];

    /// The word for it in a pattern file.
    fn word(self) -> &'static str;
}

/// Declares the values of an enum, each with its word in a pattern file and the identifier of its name
/// in the message files.
macro_rules! words {
    ($of:ident: $($value:ident = $word:literal, $term:literal;)+) => {
        impl $crate::pattern::Word for $of {
            const ALL: &'static [Self] = &[$(Self::$value),+];

            fn word(self) -> &'static str {
                match self {
                    $(Self::$value => $word,)+
                }
            }
        }

        impl $crate::term::Term for $of {
            fn term(self) -> &'static str {
                match self {
                    $(Self::$value => $term,)+
                }
            }
        }
    };
}
pub(super) use words;

impl Word for Kind {
    const ALL: &'static [Self] = &Self::ALL;

    fn word(self) -> &'static str {
        self.words()
    }
}
