//! Readable patterns that lie anywhere within the limits of their keys: the program does its work on each, within
//! 1 GiB and 20 s of work. `STAVEWRIGHT_EXTREME` says how many; `make test-long` asks for very many.

use basket::Catalogue;
use basket::pattern::read;
use fuzz::{extreme, targets, trial};

fn count(usual: u64) -> u64 {
    std::env::var("STAVEWRIGHT_EXTREME").ok().and_then(|text| text.parse().ok()).unwrap_or(usual)
}

#[track_caller]
fn works(command: &str, count: u64) {
    let program = targets::program().unwrap();
    assert!(program.exists(), "{} is not there: `cargo build --bins` makes it", program.display());
    for seed in 1..=count {
        let room = tempfile::tempdir().unwrap();
        std::fs::write(room.path().join("extreme.toml"), extreme::pattern(seed)).unwrap();
        let run = trial::run(&program, room.path(), &[command, "extreme.toml"]).unwrap();
        assert!(run.is_right(), "{command} of seed {seed}: {run:?}");
    }
}

#[test]
fn every_seed_gives_a_readable_pattern_and_the_same_again() {
    let mut texts = std::collections::BTreeSet::new();
    for seed in 1..=count(40) {
        let text = extreme::pattern(seed);
        assert!(read(&text, Catalogue::built_in()).is_ok(), "seed {seed}:\n{text}");
        assert_eq!(text, extreme::pattern(seed));
        texts.insert(text);
    }
    assert_eq!(texts.len() as u64, count(40));
}

#[test]
fn check() {
    works("check", count(20));
}

#[test]
fn chart() {
    works("chart", count(20));
}

#[test]
fn picture() {
    works("picture", count(10));
}

#[test]
fn solid() {
    works("solid", count(10));
}

/// Whole packets: a draft takes as long as twenty pictures.
#[test]
fn draft() {
    works("draft", count(40).div_ceil(10));
}
