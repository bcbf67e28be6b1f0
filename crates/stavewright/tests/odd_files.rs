//! What is no file is refused as pattern, chart, photograph, template and shelf, and nobody is waited for.
#![cfg(unix)]

mod common;

use std::fs;
use std::os::unix::fs::symlink;
use std::os::unix::net::UnixListener;
use std::path::{Path, PathBuf};
use std::process::Command;
use std::time::Duration;

use common::{changed, harbour, room, stavewright};
use tempfile::TempDir;

/// Whoever waits for a pipe waits for ever.
const PATIENCE: Duration = Duration::from_secs(20);
/// What is no file, and what it is called.
const ODD: [(&str, &str); 5] = [
    ("pipe", "a pipe"),
    ("socket", "a socket"),
    ("device", "a device"),
    ("endless", "a device"),
    ("folder", "a folder"),
];

/// Puts something that is no file at a place.
fn put(kind: &str, at: &Path) {
    match kind {
        "pipe" => assert!(Command::new("mkfifo").arg(at).status().unwrap().success()),
        "socket" => drop(UnixListener::bind(at).unwrap()),
        "device" => symlink("/dev/null", at).unwrap(),
        "endless" => symlink("/dev/zero", at).unwrap(),
        _ => fs::create_dir(at).unwrap(),
    }
}

/// Runs a command that has to be refused; returns what was said.
fn refused(room: &TempDir, arguments: &[&str]) -> String {
    let output = stavewright(room.path()).args(arguments).timeout(PATIENCE).output().unwrap();
    let said = String::from_utf8(output.stderr).unwrap();
    assert_eq!(output.status.code(), Some(2), "{arguments:?}: {said}");
    assert!(said.contains("help: "), "{said}");
    said
}

fn with_chart(room: &TempDir, name: &str) -> PathBuf {
    let course = format!(
        "courses = [\n    {{ weave = \"drawn\", weaver = \"cane fine\", rows = 4, chart-file = \"{name}\" }},"
    );
    changed(room, "courses = [", &course)
}

#[test]
fn as_a_pattern() {
    for (kind, called) in ODD {
        let room = room();
        put(kind, &room.path().join("it.toml"));
        let said = refused(&room, &["check", "it.toml"]);
        assert!(said.contains(&format!("it.toml: this is {called}, not a file")), "{said}");
    }
}

#[test]
fn as_a_shelf() {
    for (kind, called) in ODD {
        let room = room();
        put(kind, &room.path().join("shelf.toml"));
        let said = refused(&room, &["check", harbour().to_str().unwrap(), "--shelf", "shelf.toml"]);
        assert!(said.contains(&format!("shelf.toml: this is {called}, not a file")), "{said}");
    }
}

#[test]
fn as_a_chart() {
    for (kind, called) in ODD {
        for name in ["waves.txt", "waves.png"] {
            let room = room();
            put(kind, &room.path().join(name));
            with_chart(&room, name);
            let said = refused(&room, &["check", "changed.toml"]);
            // The devices are reached by a link, which leads out of the folder.
            let wanted = match called {
                "a device" => "this lies outside the pattern's folder".to_owned(),
                _ => format!("this is {called}, not a file"),
            };
            assert!(said.contains(&format!("{name}: {wanted}")), "{said}");
        }
    }
}

#[test]
fn a_chart_is_read_from_the_patterns_folder_and_below() {
    let room = room();
    let outside = tempfile::tempdir().unwrap();
    fs::write(outside.path().join("waves.txt"), "topsecret").unwrap();
    symlink(outside.path().join("waves.txt"), room.path().join("link.txt")).unwrap();
    symlink(outside.path(), room.path().join("away")).unwrap();
    for name in ["link.txt", "away/waves.txt"] {
        with_chart(&room, name);
        let said = refused(&room, &["check", "changed.toml"]);
        assert!(said.contains("this lies outside the pattern's folder"), "{said}");
        assert!(!said.contains("topsecret"), "{said}");
    }
    fs::create_dir(room.path().join("charts")).unwrap();
    fs::write(room.path().join("charts/waves.txt"), "X.X\n.X.\n").unwrap();
    symlink("charts/waves.txt", room.path().join("within.txt")).unwrap();
    for name in ["charts/waves.txt", "within.txt"] {
        with_chart(&room, name);
        let output = stavewright(room.path()).args(["check", "changed.toml"]).output().unwrap();
        assert!(output.status.code().is_some_and(|code| code < 2), "{name}");
    }
}

#[test]
fn as_a_photograph() {
    for (kind, _) in ODD {
        let room = room();
        put(kind, &room.path().join("rim.png"));
        let text = fs::read_to_string(harbour()).unwrap();
        let note = "\n[[note]]\nstep = \"rim\"\ntext = \"Look.\"\nphoto = \"rim.png\"\ncaption = \"A rim\"\n";
        fs::write(room.path().join("it.toml"), text + note).unwrap();
        let output = stavewright(room.path()).args(["draft", "it.toml"]).timeout(PATIENCE).output().unwrap();
        let said = String::from_utf8(output.stderr).unwrap();
        assert_eq!(output.status.code(), Some(2), "{kind}: {said}");
        assert!(
            said.contains("the photo `rim.png` is not a file") || said.contains("lies outside"),
            "{kind}: {said}"
        );
    }
}

#[test]
fn as_a_template() {
    for (kind, called) in ODD {
        let room = room();
        fs::create_dir(room.path().join("ours")).unwrap();
        put(kind, &room.path().join("ours/handout.typ"));
        let said = refused(&room, &["draft", harbour().to_str().unwrap(), "--templates", "ours"]);
        assert!(said.contains(&format!("ours/handout.typ: this is {called}, not a file")), "{said}");
        put("pipe", &room.path().join("pipe"));
        let said = refused(&room, &["draft", harbour().to_str().unwrap(), "--templates", "pipe"]);
        assert!(said.contains("pipe: this folder of templates cannot be read"), "{said}");
    }
}
