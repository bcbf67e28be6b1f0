//! What the tests of the program have in common.
#![allow(dead_code, reason = "each test file uses its part")]

use std::fs;
use std::path::{Path, PathBuf};

use assert_cmd::Command;
use tempfile::TempDir;

/// The program, working in this folder, on a plain terminal.
pub(crate) fn stavewright(folder: &Path) -> Command {
    let mut command = Command::new(assert_cmd::cargo::cargo_bin!("stavewright"));
    command.current_dir(folder).env_remove("CLICOLOR_FORCE").env_remove("NO_COLOR").env("COLUMNS", "80");
    command
}

/// A folder of its own, gone at the end of the test.
pub(crate) fn room() -> TempDir {
    tempfile::tempdir().unwrap()
}

/// A pattern of the scenario.
pub(crate) fn pattern(name: &str) -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../../patterns").join(name).canonicalize().unwrap()
}

/// The example of the scenario.
pub(crate) fn harbour() -> PathBuf {
    pattern("harbour-bread-basket.toml")
}

/// The example with a change.
pub(crate) fn changed(room: &TempDir, from: &str, to: &str) -> PathBuf {
    let text = fs::read_to_string(harbour()).unwrap();
    assert!(text.contains(from), "the example does not say {from}");
    let path = room.path().join("changed.toml");
    fs::write(&path, text.replace(from, to)).unwrap();
    path
}

/// What a run said and how it ended.
pub(crate) struct Said {
    pub(crate) out: String,
    pub(crate) err: String,
    pub(crate) code: i32,
}

/// Runs a command.
pub(crate) fn run(command: &mut Command) -> Said {
    let output = command.output().unwrap();
    Said {
        out: String::from_utf8(output.stdout).unwrap(),
        err: String::from_utf8(output.stderr).unwrap(),
        code: output.status.code().expect("no signal ended it"),
    }
}

/// Names in a folder, sorted.
pub(crate) fn names(folder: &Path) -> Vec<String> {
    let mut names: Vec<_> = fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().file_name().into_string().unwrap())
        .collect();
    names.sort();
    names
}

/// Asserts that no line is longer than 80 columns.
pub(crate) fn fits(text: &str) {
    for line in text.lines() {
        assert!(line.chars().count() <= 80, "{} columns: {line}", line.chars().count());
    }
}
