//! Units and language of a pattern.

use super::word::{Word, words};
use crate::measure::Unit;
use crate::term::Term;

/// The units in which a pattern's bare numbers are meant and its sheets are printed first.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, serde::Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Units {
    /// Inches and fractions.
    #[default]
    Inches,
    /// Millimetres.
    Millimetres,
}

impl Units {
    /// The unit of a bare number.
    pub const fn unit(self) -> Unit {
        match self {
            Self::Inches => Unit::Inch,
            Self::Millimetres => Unit::Millimetre,
        }
    }
}

words! { Units:
    Inches = "in", "units-inches";
    Millimetres = "mm", "units-millimetres";
}

/// The language in which a pattern's sheets are written.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, serde::Serialize)]
pub enum Language {
    /// English.
    #[default]
    #[serde(rename = "en")]
    English,
    /// German.
    #[serde(rename = "de")]
    German,
}

impl Language {
    /// All languages.
    pub const ALL: &'static [Self] = &[Self::English, Self::German];

    /// The language's tag, such as `en`.
    pub const fn tag(self) -> &'static str {
        match self {
            Self::English => "en",
            Self::German => "de",
        }
    }

    /// The language of this tag.
    pub fn of(tag: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|language| language.tag() == tag)
    }

    /// The units that its readers want first, whatever the pattern is written in; none where the
    /// pattern's own come first.
    pub const fn units(self) -> Option<Units> {
        match self {
            Self::English => None,
            Self::German => Some(Units::Millimetres),
        }
    }
}

impl Word for Language {
    const ALL: &'static [Self] = Self::ALL;

    fn word(self) -> &'static str {
        self.tag()
    }
}

impl Term for Language {
    fn term(self) -> &'static str {
        match self {
            Self::English => "language-english",
            Self::German => "language-german",
        }
    }
}
