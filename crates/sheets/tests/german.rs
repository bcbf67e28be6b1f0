//! The sheets in German: whole, and with no English left on them.

mod common;

use basket::pattern::Units;
use common::{FIXED, STOPPED, basket, file, info, poppler, text};
use sheets::{Options, PacketFile, Paper, packet};
use words::{Language, Words};

fn german(pattern: &str) -> Vec<PacketFile> {
    let words = Words::new(Language::German, Units::Millimetres);
    let options = Options { paper: Paper::A4, ..Options::default() };
    packet(&basket(pattern), &words, &options, &mut |_| ()).expect("the packet can be made")
}

/// English words that stand on each English sheet and are no German ones.
const ENGLISH: &[&str] =
    &["stave", "weaver", "row", "groove", "rim", "lashing", "reed", "cane", "natural", "the", "of", "and"];

#[test]
fn handout_bench_card_and_templates_read_in_german() {
    let packet = german(FIXED);
    for name in ["handout.pdf", "bench-card.pdf", "templates.pdf"] {
        let said = poppler("pdftotext", &["-layout", "-", "-"], file(&packet, name));
        insta::assert_snapshot!(name, said.replace('\u{a0}', " "));
        let report = poppler("pdfinfo", &["-"], file(&packet, name));
        assert_eq!(info(&report, "Tagged"), "yes");
    }
}

/// Keys and values of the pattern are the same in every language: the remedies quote them, and one is named
/// where its choice is explained.
#[test]
fn no_english_word_is_left() {
    for pattern in [FIXED, STOPPED] {
        let packet = german(pattern);
        let names = ["bench-card.pdf", "templates.pdf"].into_iter();
        for name in names.chain((pattern == FIXED).then_some("handout.pdf")) {
            let said = poppler("pdftotext", &["-", "-"], file(&packet, name));
            let title = &basket(pattern).title;
            let said = said.replace(title.as_str(), "").replace("other-stave", "");
            let said: String = said.split('"').step_by(2).collect();
            let found: Vec<_> = said
                .split(|sign: char| !sign.is_alphanumeric())
                .filter(|word| ENGLISH.contains(word))
                .collect();
            assert!(found.is_empty(), "{name}: {found:?}");
        }
    }
}

#[test]
fn cut_lists_are_in_german_with_figures_for_machines() {
    let packet = german(FIXED);
    let first = text(&packet, "cuts.csv").lines().nth(1).expect("a piece").to_owned();
    assert!(first.starts_with("Boden,"), "{first}");
    let json: serde_json::Value = serde_json::from_str(text(&packet, "basket.json")).expect("it is JSON");
    assert_eq!(json["language"], "de");
    assert_eq!(json["cuts"][0]["piece"], "Boden");
    assert!(json["cuts"][0]["width_mm"].is_number());
}
