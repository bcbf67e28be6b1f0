//! The templates from which sheets are set: built in, or replaced by a teacher's own.

use std::collections::BTreeMap;

const BUILT_IN: [(&str, &str); 20] = [
    ("house.typ", include_str!("../templates/house.typ")),
    ("own-notes.typ", include_str!("../templates/own-notes.typ")),
    ("card.typ", include_str!("../templates/card.typ")),
    ("class.typ", include_str!("../templates/class.typ")),
    ("demonstration.html", include_str!("../templates/demonstration.html")),
    ("demonstration.typ", include_str!("../templates/demonstration.typ")),
    ("page.html", include_str!("../templates/page.html")),
    ("sections.typ", include_str!("../templates/sections.typ")),
    ("handout.typ", include_str!("../templates/handout.typ")),
    ("teacher.typ", include_str!("../templates/teacher.typ")),
    ("maker.typ", include_str!("../templates/maker.typ")),
    ("sale.typ", include_str!("../templates/sale.typ")),
    ("mould.typ", include_str!("../templates/mould.typ")),
    ("bench-card.typ", include_str!("../templates/bench-card.typ")),
    ("poster.typ", include_str!("../templates/poster.typ")),
    ("proposal.html", include_str!("../templates/proposal.html")),
    ("proposal.typ", include_str!("../templates/proposal.typ")),
    ("templates.typ", include_str!("../templates/templates.typ")),
    ("workshop.typ", include_str!("../templates/workshop.typ")),
    ("labels.typ", include_str!("../templates/labels.typ")),
];

/// Typst sources by file name, such as `handout.typ`.
#[derive(Clone, Debug)]
pub struct Templates(BTreeMap<String, String>);

impl Default for Templates {
    /// The built-in templates.
    fn default() -> Self {
        Self(BUILT_IN.iter().map(|(name, text)| ((*name).to_owned(), (*text).to_owned())).collect())
    }
}

impl Templates {
    /// Replaces the template of this name, or adds a file that templates may import.
    #[must_use]
    pub fn with(mut self, name: impl Into<String>, text: impl Into<String>) -> Self {
        self.0.insert(name.into(), text.into());
        self
    }
    /// The names of all templates.
    pub fn names(&self) -> impl Iterator<Item = &str> {
        self.0.keys().map(String::as_str)
    }
    /// The text of one template.
    pub fn text(&self, name: &str) -> Option<&str> {
        self.0.get(name).map(String::as_str)
    }
}
