//! The sheets as other programs see them: poppler (`pdfinfo`, `pdffonts`, `pdftotext`) opens them.

mod common;

use basket::pattern::Units;
use common::{FIXED, HARBOUR, STOPPED, file, info, packet_of, poppler};
use sheets::{Paper, SHEETS};

#[test]
fn sheets_open_tagged_with_title_and_page_size() {
    for (paper, size) in [(Paper::Letter, "612 x 792 pts"), (Paper::A4, "595.276 x 841.89 pts")] {
        let packet = packet_of(HARBOUR, paper, Units::Inches);
        for (_, name) in SHEETS {
            let report = poppler("pdfinfo", &["-"], file(&packet, name));
            assert!(info(&report, "Title").starts_with("Harbour bread basket – "), "{name}: {report}");
            assert_eq!(info(&report, "Tagged"), "yes", "{name}");
            assert!(info(&report, "Page size").starts_with(size), "{name}: {report}");
        }
    }
}

#[test]
fn sheets_declare_language_and_pdf_ua() {
    let packet = packet_of(HARBOUR, Paper::Letter, Units::Inches);
    for (_, name) in SHEETS {
        let document = lopdf::Document::load_mem(file(&packet, name)).expect("lopdf opens it");
        let catalog = document.catalog().expect("a catalog");
        let language = catalog.get(b"Lang").and_then(lopdf::Object::as_str).expect("a language");
        assert_eq!(language, b"en", "{name}");
        let metadata = poppler("pdfinfo", &["-meta", "-"], file(&packet, name));
        assert!(metadata.contains("<pdfuaid:part>1</pdfuaid:part>"), "{name}: {metadata}");
    }
}

#[test]
fn every_drawing_has_a_text_for_those_who_cannot_see_it() {
    let packet = packet_of(HARBOUR, Paper::Letter, Units::Inches);
    for (_, name) in SHEETS {
        let structure = poppler("pdfinfo", &["-struct", "-"], file(&packet, name));
        let document = lopdf::Document::load_mem(file(&packet, name)).expect("lopdf opens it");
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
}

#[test]
fn fonts_are_inside() {
    let packet = packet_of(HARBOUR, Paper::Letter, Units::Inches);
    for (_, name) in SHEETS {
        let report = poppler("pdffonts", &["-"], file(&packet, name));
        let fonts: Vec<_> = report.lines().skip(2).collect();
        assert!(!fonts.is_empty(), "{name} has text");
        for font in fonts {
            let columns: Vec<_> = font.split_whitespace().rev().collect();
            assert_eq!(columns.get(4), Some(&"yes"), "{name}: not embedded: {font}");
        }
    }
}

#[test]
fn bench_card_is_one_page_with_large_type() {
    for pattern in [HARBOUR, FIXED, STOPPED] {
        for paper in [Paper::Letter, Paper::A4] {
            for units in [Units::Inches, Units::Millimetres] {
                let packet = packet_of(pattern, paper, units);
                let report = poppler("pdfinfo", &["-"], file(&packet, "bench-card.pdf"));
                assert_eq!(info(&report, "Pages"), "1");
            }
        }
    }
}

#[test]
fn every_page_of_a_basket_that_cannot_be_woven_says_so() {
    let stop = "STOP: cannot be woven as written – see findings";
    let packet = packet_of(STOPPED, Paper::Letter, Units::Inches);
    for (_, name) in SHEETS {
        let text = poppler("pdftotext", &["-layout", "-", "-"], file(&packet, name));
        for (index, page) in text.trim_end_matches('\u{c}').split('\u{c}').enumerate() {
            assert!(page.contains(stop), "{name}, page {}:\n{page}", index + 1);
        }
    }
    let packet = packet_of(HARBOUR, Paper::Letter, Units::Inches);
    let text = poppler("pdftotext", &["-", "-"], file(&packet, "handout.pdf"));
    assert!(!text.contains(stop));
}

#[test]
fn handout_reads_as_before() {
    let packet = packet_of(FIXED, Paper::Letter, Units::Inches);
    let text = poppler("pdftotext", &["-layout", "-", "-"], file(&packet, "handout.pdf"));
    insta::assert_snapshot!("handout", text);
    let text = poppler("pdftotext", &["-layout", "-", "-"], file(&packet, "bench-card.pdf"));
    insta::assert_snapshot!("bench_card", text);
    let text = poppler("pdftotext", &["-layout", "-", "-"], file(&packet, "demonstration.pdf"));
    insta::assert_snapshot!("demonstration", text);
}

#[test]
fn same_basket_same_bytes() {
    let packet = |()| packet_of(HARBOUR, Paper::A4, Units::Millimetres);
    for (first, second) in packet(()).iter().zip(packet(())) {
        assert!(first.bytes == second.bytes, "{} differs", first.name);
    }
}

#[test]
fn demonstration_names_what_stands_ready_and_the_days_before() {
    let packet = packet_of(HARBOUR, Paper::Letter, Units::Inches);
    let text = poppler("pdftotext", &["-", "-"], file(&packet, "demonstration.pdf"));
    for part in
        ["6 samples", "Staves set under a band", "The day before", "At the show", "Tools for the next steps"]
    {
        assert!(text.contains(part), "{part}:\n{text}");
    }
}
