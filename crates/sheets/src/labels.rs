//! The fixed texts of the templates, from the message files.

use std::collections::BTreeMap;

use crate::scribe::Scribe;

/// What a template may ask for with `t("…")`; each is the message `sheet-` and its name.
pub(crate) const LABELS: &[&str] = &[
    "bar-measures",
    "bench-card",
    "card-joins",
    "card-more-joins",
    "caution",
    "class",
    "class-cards",
    "class-cautions",
    "class-chance",
    "class-due",
    "class-mends",
    "class-samples",
    "class-say",
    "class-sessions",
    "class-step",
    "class-then",
    "class-timetable",
    "class-tray",
    "class-waits",
    "class-when",
    "class-who",
    "demo-begin",
    "demo-days",
    "demo-mould",
    "demo-nothing",
    "demo-out",
    "demo-out-note",
    "demo-sample",
    "demo-samples",
    "demo-shows",
    "demo-stop",
    "demo-work",
    "demonstration",
    "handout",
    "maker",
    "measure-first",
    "mould",
    "mould-bevel",
    "mould-blank",
    "mould-board",
    "mould-boards",
    "mould-hole",
    "mould-note",
    "mould-part",
    "mould-part-of",
    "mould-part-size",
    "mould-pieces",
    "mould-up-to",
    "mould-upper",
    "of",
    "own-note",
    "poster",
    "poster-join-parts",
    "print-at",
    "print-full-size",
    "proposal",
    "proposal-about",
    "proposal-bring",
    "proposal-edit",
    "proposal-hours",
    "proposal-level",
    "proposal-print",
    "proposal-save",
    "proposal-terms",
    "proposal-title",
    "sale",
    "skip",
    "stop-mark",
    "strips-scale",
    "teacher",
    "templates",
    "templates-note",
];

pub(crate) fn labels(scribe: &Scribe<'_>) -> BTreeMap<&'static str, String> {
    LABELS.iter().map(|id| (*id, scribe.label(id))).collect()
}

#[cfg(test)]
mod tests {
    use std::collections::BTreeSet;

    use words::{Language, Words};

    use super::LABELS;
    use crate::Templates;

    /// What a template asks for with `t("…")`; the end of `.at("…")` is no such call.
    fn uses(template: &str) -> impl Iterator<Item = &str> {
        template.match_indices("t(\"").filter_map(|(start, call)| {
            let alone = !template[..start].ends_with(char::is_alphanumeric);
            let (id, _) = template[start + call.len()..].split_once('"')?;
            alone.then_some(id)
        })
    }

    #[test]
    fn templates_ask_for_exactly_these_labels() {
        let templates = Templates::default();
        let mut asked = BTreeSet::new();
        for text in templates.names().filter_map(|name| templates.text(name)) {
            asked.extend(uses(text));
        }
        assert_eq!(asked, LABELS.iter().copied().collect());
    }

    #[test]
    fn every_label_has_a_message() {
        for language in Language::ALL {
            let words = Words::new(*language, basket::pattern::Units::Inches);
            let missing: Vec<_> = LABELS.iter().filter(|id| !words.has(&format!("sheet-{id}"))).collect();
            assert!(missing.is_empty(), "{language:?} lacks {missing:?}");
        }
    }
}
