//! The sheets as other programs see them: poppler (`pdfinfo`, `pdffonts`, `pdftotext`) opens them.

use crate::common::{info, poppler, told};
use crate::tags::assert_tagged;

/// A sheet opens with its title, paper and language, declares PDF/UA-1, holds its fonts, and tells of each
/// drawing to those who cannot see it.
pub(crate) fn assert_sound(pdf: &[u8], (paper, language): (&str, &str), title: &str) {
    let report = poppler("pdfinfo", &["-"], pdf);
    let name = info(&report, "Title");
    assert!(name.starts_with(title), "{report}");
    assert_eq!(info(&report, "Tagged"), "yes", "{name}");
    assert!(info(&report, "Page size").starts_with(paper), "{report}");
    let document = lopdf::Document::load_mem(pdf).expect("lopdf opens it");
    let catalog = document.catalog().expect("a catalog");
    let declared = catalog.get(b"Lang").and_then(lopdf::Object::as_str).expect("a language");
    assert_eq!(declared, language.as_bytes(), "{name}");
    let metadata = poppler("pdfinfo", &["-meta", "-"], pdf);
    assert!(metadata.contains("<pdfuaid:part>1</pdfuaid:part>"), "{name}: {metadata}");
    assert_drawings_are_told(pdf, &document, name);
    assert_fonts_are_inside(pdf, name);
    assert_tagged(pdf, name);
}

fn assert_drawings_are_told(pdf: &[u8], document: &lopdf::Document, name: &str) {
    let structure = poppler("pdfinfo", &["-struct", "-"], pdf);
    let figures: Vec<_> = document
        .objects
        .values()
        .filter_map(|object| object.as_dict().ok())
        .filter(|dict| dict.get(b"S").and_then(lopdf::Object::as_name).ok() == Some(b"Figure"))
        .collect();
    let drawn = structure.lines().filter(|line| line.trim_start().starts_with("Figure")).count();
    assert_eq!(figures.len(), drawn, "{name}");
    for figure in figures {
        let alt = figure.get(b"Alt").and_then(lopdf::Object::as_str).unwrap_or_default();
        assert!(alt.len() > 10, "{name}: a figure without text");
    }
}

fn assert_fonts_are_inside(pdf: &[u8], name: &str) {
    let report = poppler("pdffonts", &["-"], pdf);
    let fonts: Vec<_> = report.lines().skip(2).collect();
    assert!(!fonts.is_empty(), "{name} has text");
    for font in fonts {
        let columns: Vec<_> = font.split_whitespace().rev().collect();
        assert_eq!(columns.get(4), Some(&"yes"), "{name}: not embedded: {font}");
    }
}

/// Whether every page says that the basket cannot be woven.
pub(crate) fn says_stop(pdf: &[u8]) -> bool {
    let text = poppler("pdftotext", &["-layout", "-", "-"], pdf);
    let stop = "STOP: cannot be woven as written – see findings";
    text.trim_end_matches('\u{c}').split('\u{c}').all(|page| page.contains(stop))
}

/// What stands ready, the days before in their order, and what lies ready.
pub(crate) fn assert_demonstration(pdf: &[u8]) {
    let said = told(pdf);
    let mut from = 0;
    for part in [
        "6 samples",
        "Staves set under a band",
        "Finished",
        "3 days before",
        "2 days before",
        "The day before",
        "At the show",
        "Next comes",
    ] {
        let at = said[from..].find(part).unwrap_or_else(|| panic!("{part} in its place: {said}"));
        from += at;
    }
}

/// The note stands in the step that it names.
pub(crate) fn assert_notes(pdf: &[u8]) {
    let said = told(pdf);
    let (_, after) = said.split_once("Lay the filler and lash the rim").expect("the step");
    let step = after.split_once("Set the handle").expect("the next step").0;
    assert!(step.contains("Shiny side out.") && step.contains("The first wrap"), "{step}");
}
