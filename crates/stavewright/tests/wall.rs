//! `poster` and `proposal`: what is written, and what bad input is told.

mod common;

use std::fs;
use std::path::Path;

use common::{Said, fits, harbour, names, pattern, room, run, stavewright};

fn say(folder: &Path, command: &str, args: &[&str]) -> Said {
    let said = run(stavewright(folder).arg(command).arg(harbour()).args(args));
    fits(&said.out);
    said
}

#[test]
fn a_poster_comes_whole_and_in_parts() {
    let room = room();
    for args in [&[][..], &["--tiled", "--size", "a2", "--paper", "a4", "--out", "parts.pdf"]] {
        let said = say(room.path(), "poster", args);
        assert_eq!((said.code, said.err.as_str()), (0, ""), "{args:?}");
    }
    assert_eq!(names(room.path()), ["harbour-bread-basket-poster.pdf", "parts.pdf"]);
    for name in names(room.path()) {
        assert!(fs::read(room.path().join(&name)).unwrap().starts_with(b"%PDF-"), "{name}");
    }
}

#[test]
fn a_proposal_is_a_page_or_a_pdf() {
    let room = room();
    let said = say(room.path(), "proposal", &["--level", "for beginners"]);
    assert_eq!((said.code, said.err.as_str()), (0, ""));
    let page = fs::read_to_string(room.path().join("harbour-bread-basket-proposal.html")).unwrap();
    assert!(page.starts_with("<!DOCTYPE html>") && page.contains("for beginners"));
    let said = say(room.path(), "proposal", &["--language", "de", "--out", "class.pdf"]);
    assert_eq!(said.code, 0, "{}", said.err);
    assert!(fs::read(room.path().join("class.pdf")).unwrap().starts_with(b"%PDF-"));
}

#[test]
fn what_cannot_be_is_told_and_writes_nothing() {
    let room = room();
    for (command, args, says) in [
        ("poster", ["--read-from", "40 ft"], "5 to 15 ft"),
        ("poster", ["--read-from", "ten"], "--read-from ten"),
        ("poster", ["--out", "wall.png"], "a poster is written as .pdf"),
        ("proposal", ["--out", "class.doc"], "a proposal is written as .html or .pdf"),
    ] {
        let said = say(room.path(), command, &args);
        assert_eq!(said.code, 2, "{args:?}");
        assert!(said.err.contains(says), "{}", said.err);
    }
    assert!(names(room.path()).is_empty());
}

#[test]
fn every_example_pattern_has_both() {
    let room = room();
    for name in ["ferry-egg-basket", "channel-marker"] {
        for command in ["poster", "proposal"] {
            let said = run(stavewright(room.path()).arg(command).arg(pattern(&format!("{name}.toml"))));
            assert_eq!((said.code, said.err.as_str()), (0, ""), "{command} {name}");
        }
    }
    assert_eq!(names(room.path()).len(), 4);
}
