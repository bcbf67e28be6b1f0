//! Languages: where their messages are, and how they write numbers and units. A language more is
//! one folder of message files and one line in each function here.

use std::sync::LazyLock;

use basket::pattern::Language;

use crate::messages::Messages;

static ENGLISH: LazyLock<Messages> = LazyLock::new(|| {
    Messages::read(
        Language::English,
        &[
            include_str!("../messages/en/terms.ftl"),
            include_str!("../messages/en/materials.ftl"),
            include_str!("../messages/en/findings.ftl"),
            include_str!("../messages/en/choices.ftl"),
            include_str!("../messages/en/cuts.ftl"),
            include_str!("../messages/en/lid.ftl"),
            include_str!("../messages/en/steps.ftl"),
            include_str!("../messages/en/cautions.ftl"),
            include_str!("../messages/en/sheets.ftl"),
            include_str!("../messages/en/teaching.ftl"),
            include_str!("../messages/en/class.ftl"),
            include_str!("../messages/en/drawings.ftl"),
            include_str!("../messages/en/stages.ftl"),
            include_str!("../messages/en/weaves.ftl"),
            include_str!("../messages/en/form.ftl"),
            include_str!("../messages/en/keys.ftl"),
            include_str!("../messages/en/takes.ftl"),
            include_str!("../messages/en/screen.ftl"),
            include_str!("../messages/en/problems.ftl"),
            include_str!("../messages/en/refusals.ftl"),
            include_str!("../messages/en/workshop.ftl"),
        ],
    )
});

static GERMAN: LazyLock<Messages> = LazyLock::new(|| {
    Messages::read(
        Language::German,
        &[
            include_str!("../messages/de/terms.ftl"),
            include_str!("../messages/de/materials.ftl"),
            include_str!("../messages/de/findings.ftl"),
            include_str!("../messages/de/choices.ftl"),
            include_str!("../messages/de/cuts.ftl"),
            include_str!("../messages/de/lid.ftl"),
            include_str!("../messages/de/steps.ftl"),
            include_str!("../messages/de/cautions.ftl"),
            include_str!("../messages/de/sheets.ftl"),
            include_str!("../messages/de/teaching.ftl"),
            include_str!("../messages/de/class.ftl"),
            include_str!("../messages/de/drawings.ftl"),
            include_str!("../messages/de/stages.ftl"),
            include_str!("../messages/de/weaves.ftl"),
            include_str!("../messages/de/form.ftl"),
            include_str!("../messages/de/keys.ftl"),
            include_str!("../messages/de/takes.ftl"),
            include_str!("../messages/de/screen.ftl"),
            include_str!("../messages/de/problems.ftl"),
            include_str!("../messages/de/refusals.ftl"),
            include_str!("../messages/de/workshop.ftl"),
        ],
    )
});

/// All messages of a language.
pub(crate) fn messages(language: Language) -> &'static Messages {
    match language {
        Language::English => &ENGLISH,
        Language::German => &GERMAN,
    }
}

/// What stands between the whole number and its decimals.
pub(crate) fn decimal_mark(language: Language) -> &'static str {
    match language {
        Language::English => ".",
        Language::German => ",",
    }
}

/// What stands between a number and its unit: in German a space at which no line breaks.
pub(crate) fn unit_space(language: Language) -> &'static str {
    match language {
        Language::English => " ",
        Language::German => "\u{a0}",
    }
}

/// A unit of length, from the way in which a maker writes it: `in` becomes `Zoll`.
pub(crate) fn unit(written: &str, language: Language) -> &str {
    match (language, written) {
        (Language::German, "in") => "Zoll",
        (Language::German, "ft") => "Fuß",
        _ => written,
    }
}

/// The texts of the local page, as a Fluent file; the page itself puts values into them.
pub fn page_texts(language: Language) -> &'static str {
    match language {
        Language::English => concat!(
            include_str!("../messages/en/bench.ftl"),
            include_str!("../messages/en/bench-choose.ftl"),
            include_str!("../messages/en/bench-guide.ftl"),
            include_str!("../messages/en/bench-workshop.ftl"),
        ),
        Language::German => concat!(
            include_str!("../messages/de/bench.ftl"),
            include_str!("../messages/de/bench-choose.ftl"),
            include_str!("../messages/de/bench-guide.ftl"),
            include_str!("../messages/de/bench-workshop.ftl"),
        ),
    }
}
