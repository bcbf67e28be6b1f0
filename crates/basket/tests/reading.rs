//! Patterns are read whole, or every problem is named with its place.

use basket::pattern::{STARTER, read};
use basket::{Catalogue, Pattern};

fn read_well(text: &str) -> Pattern {
    read(text, Catalogue::built_in()).unwrap_or_else(|problems| panic!("{problems:#?}"))
}

#[test]
fn the_starter_reads() {
    assert_eq!(read_well(STARTER).title, "My first basket");
}

#[test]
fn every_pattern_of_the_repository_reads() {
    let folder = concat!(env!("CARGO_MANIFEST_DIR"), "/../../patterns");
    let mut titles = Vec::new();
    for entry in std::fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        titles.push(read_well(&std::fs::read_to_string(path).unwrap()).title);
    }
    titles.sort();
    assert_eq!(titles, ["Channel marker", "Ferry egg basket", "Harbour bread basket"]);
}
