//! Languages, and where their messages are. A language more is one variant, one folder of
//! message files and one line in each function here.

use std::sync::LazyLock;

use crate::messages::Messages;

/// A language that has a complete set of messages.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Language {
    /// English.
    #[default]
    English,
}

static ENGLISH: LazyLock<Messages> = LazyLock::new(|| {
    Messages::read(
        Language::English,
        &[
            include_str!("../messages/en/terms.ftl"),
            include_str!("../messages/en/findings.ftl"),
            include_str!("../messages/en/choices.ftl"),
            include_str!("../messages/en/cuts.ftl"),
            include_str!("../messages/en/steps.ftl"),
            include_str!("../messages/en/sheets.ftl"),
            include_str!("../messages/en/drawings.ftl"),
            include_str!("../messages/en/stages.ftl"),
            include_str!("../messages/en/weaves.ftl"),
            include_str!("../messages/en/form.ftl"),
        ],
    )
});

impl Language {
    /// All languages.
    pub const ALL: &'static [Self] = &[Self::English];

    /// The language's tag, such as `en`.
    pub fn tag(self) -> &'static str {
        match self {
            Self::English => "en",
        }
    }
    /// What stands between the whole number and its decimals.
    pub(crate) fn decimal_mark(self) -> &'static str {
        match self {
            Self::English => ".",
        }
    }
    /// The texts of the local page, as a Fluent file; the page itself puts values into them.
    pub fn page(self) -> &'static str {
        match self {
            Self::English => include_str!("../messages/en/bench.ftl"),
        }
    }
    pub(crate) fn messages(self) -> &'static Messages {
        match self {
            Self::English => &ENGLISH,
        }
    }
}
