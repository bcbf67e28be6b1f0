//! Every fault of a pattern has its sentence for those who do not read the file, and no sentence is left over.

use std::collections::BTreeSet;
use std::fs;
use std::path::{Path, PathBuf};

fn files(folder: &Path) -> Vec<PathBuf> {
    let entries = fs::read_dir(folder).expect("a folder").map(|entry| entry.expect("an entry").path());
    entries.flat_map(|path| if path.is_dir() { files(&path) } else { vec![path] }).collect()
}

/// The identifiers of faults that stand between quotes in the code.
fn asked() -> BTreeSet<String> {
    let own = Path::new(env!("CARGO_MANIFEST_DIR"));
    let code = files(&own.join("../basket/src"));
    code.iter().flat_map(|path| quoted(&fs::read_to_string(path).expect("code is text"))).collect()
}

fn quoted(code: &str) -> Vec<String> {
    code.split('"').filter(|text| is_fault(text)).map(str::to_owned).collect()
}

fn is_fault(text: &str) -> bool {
    text.starts_with("problem-") && text.chars().all(|sign| sign.is_ascii_lowercase() || sign == '-')
}

fn told(language: &str) -> BTreeSet<String> {
    let path = format!("{}/messages/{language}/problems.ftl", env!("CARGO_MANIFEST_DIR"));
    let text = fs::read_to_string(path).expect("messages are text");
    text.lines()
        .filter_map(|line| line.split_once(" ="))
        .map(|(id, _)| id.to_owned())
        .filter(|id| is_fault(id))
        .collect()
}

#[test]
fn every_fault_has_its_sentence_in_both_languages() {
    let asked = asked();
    assert!(asked.len() > 80, "only {} faults were found", asked.len());
    assert_eq!(asked, told("en"));
    assert_eq!(asked, told("de"));
}
