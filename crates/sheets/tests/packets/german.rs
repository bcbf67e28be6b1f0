//! The sheets in German: with no English left on them.

use basket::Draft;
use sheets::PacketFile;

use crate::common::{poppler, text};

/// English words that stand on each English sheet and are no German ones.
const ENGLISH: &[&str] =
    &["stave", "weaver", "row", "groove", "rim", "lashing", "reed", "cane", "natural", "the", "of", "and"];

/// The maker's title and notes stay as written. Keys and values of the pattern are the same in every
/// language: the remedies quote them, and one is named where its choice is explained.
pub(crate) fn assert_no_english(name: &str, pdf: &[u8], draft: &Draft) {
    let said = poppler("pdftotext", &["-", "-"], pdf);
    let notes = draft.basket.notes.iter().filter_map(|note| note.text.as_deref());
    let keys = draft.basket.choices.iter().map(|choice| choice.key);
    let own = notes.chain([draft.basket.title.as_str()]).chain(keys);
    let said = own.fold(said.replace("other-stave", ""), |said, own| said.replace(own, ""));
    let said: String = said.split('"').step_by(2).collect();
    let found: Vec<_> =
        said.split(|sign: char| !sign.is_alphanumeric()).filter(|word| ENGLISH.contains(word)).collect();
    assert!(found.is_empty(), "{name}: {found:?}");
}

/// Names are German, figures are for machines.
pub(crate) fn assert_tables(packet: &[PacketFile]) {
    let first = text(packet, "cuts.csv").lines().nth(1).expect("a piece");
    assert!(first.starts_with("Boden,"), "{first}");
    let json: serde_json::Value = serde_json::from_str(text(packet, "basket.json")).expect("it is JSON");
    assert_eq!(json["language"], "de");
    assert_eq!(json["cuts"][0]["piece"], "Boden");
    assert_eq!(json["cuts"][0]["kind"], "base");
    assert!(json["cuts"][0]["width_mm"].is_number());
}
