//! How long the program takes, start to finish, against the targets.
//!
//! Pattern to basket: at most 1 ms for 75 staves and 80 rows. `draft` without sheets: at most
//! 60 ms; with all sheets: at most 400 ms.

use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

use basket::{Catalogue, Pattern};

fn main() {
    divan::main();
}

/// A basket of 75 staves and 80 rows.
const LARGE: &str = r#"
title = "Large"
units = "mm"
[mould]
shape = "round"
girths = [["0", "394"], ["25", "502"], ["51", "565"], ["76", "610"], ["108", "638"], ["260", "650"]]
[base]
diameter = "124"
[staves]
count = 75
stock = "flat oval reed 1/4 in"
[weave]
courses = [{ weave = "plain", weaver = "cane fine", rows = 80 }]
[ears]
[handle]
kind = "swing"
"#;

fn large() -> Pattern {
    basket::pattern::read(LARGE, Catalogue::built_in()).expect("the pattern reads")
}

#[divan::bench]
fn pattern_to_basket_75_staves_80_rows(bencher: divan::Bencher) {
    let (pattern, catalogue) = (large(), Catalogue::built_in());
    let basket = basket::assemble(&pattern, catalogue, &basket::Hand::USUAL);
    assert_eq!((basket.body.uprights().count, basket.body.weave.rows), (75, 80));
    bencher.bench(|| basket::assemble(divan::black_box(&pattern), catalogue, &basket::Hand::USUAL));
}

#[divan::bench]
fn reading_a_pattern(bencher: divan::Bencher) {
    let catalogue = Catalogue::built_in();
    bencher.bench(|| basket::pattern::read(divan::black_box(LARGE), catalogue));
}

#[divan::bench(sample_count = 20, sample_size = 1)]
fn draft_without_sheets(bencher: divan::Bencher) {
    let room = tempfile::tempdir().expect("a temporary folder");
    bencher.bench(|| draft(room.path(), &["--no-sheets"]));
}

#[divan::bench(sample_count = 20, sample_size = 1)]
fn draft_with_all_sheets(bencher: divan::Bencher) {
    let room = tempfile::tempdir().expect("a temporary folder");
    bencher.bench(|| draft(room.path(), &[]));
}

/// The process, start to finish.
fn draft(folder: &Path, more: &[&str]) {
    let status = Command::new(env!("CARGO_BIN_EXE_stavewright"))
        .arg("draft")
        .arg(harbour())
        .args(more)
        .current_dir(folder)
        .stdout(Stdio::null())
        .stderr(Stdio::null())
        .status()
        .expect("the program runs");
    assert!(status.code().is_some_and(|code| code < 2), "{status}");
}

fn harbour() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../../patterns/harbour-bread-basket.toml")
}
