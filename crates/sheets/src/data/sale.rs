//! What the title page of a pattern for sale says beside the basket's own figures.

use basket::Draft;
use basket::pattern::Sale;
use serde::Serialize;

use crate::handout::paragraphs;

/// The maker's lines; empty where the pattern has none.
#[derive(Serialize)]
pub(crate) struct TitlePage<'a> {
    edition: &'a str,
    rights: &'a str,
    words: Vec<String>,
}

impl<'a> TitlePage<'a> {
    pub(crate) fn of(draft: &'a Draft) -> Self {
        let Sale { edition, rights, words } = &draft.pattern.sale;
        Self {
            edition: edition.as_deref().unwrap_or_default(),
            rights: rights.as_deref().unwrap_or_default(),
            words: paragraphs(words.as_deref()),
        }
    }
}
