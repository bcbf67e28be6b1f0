//! Every way in which a pattern cannot be read: a clear message, exit status 2, nothing written.

mod common;

use std::fs;
use std::path::Path;

use common::{changed, names, room, run, stavewright};
use tempfile::TempDir;

/// Drafts a file that must not be read; returns what was said.
fn refused(room: &TempDir, file: &Path) -> String {
    let before = names(room.path());
    let said = run(stavewright(room.path()).arg("draft").arg(file).arg("--no-sheets"));
    assert_eq!(said.code, 2, "{}{}", said.out, said.err);
    assert_eq!(said.out, "");
    assert!(!said.err.contains("panicked"), "{}", said.err);
    assert_eq!(names(room.path()), before, "nothing was written");
    said.err
}

/// Writes a file and drafts it.
fn refused_text(content: impl AsRef<[u8]>) -> String {
    let room = room();
    fs::write(room.path().join("it.toml"), content).unwrap();
    refused(&room, Path::new("it.toml"))
}

#[test]
fn a_missing_file() {
    let said = refused(&room(), Path::new("harbor.toml"));
    assert!(said.contains("harbor.toml: there is no such file"), "{said}");
    assert!(said.contains("stavewright new"), "{said}");
}

#[test]
fn a_folder() {
    let room = room();
    let said = refused(&room, room.path());
    assert!(said.contains("this is a folder, not a file"), "{said}");
}

#[test]
fn an_empty_file() {
    for nothing in ["", "\n \t\n", "\u{feff}"] {
        let said = refused_text(nothing);
        assert!(said.contains("it.toml: the file is empty"), "{said}");
    }
}

#[test]
fn a_file_that_is_not_utf8() {
    let said = refused_text(b"title = \"K\xc3\xb6rbchen\"\nunits = \"i\xffn\"\n");
    assert!(said.contains("it.toml:2:11: not UTF-8 text: the byte 0xff stands here"), "{said}");
    let said = refused_text(b"\xff\xfet\0i\0");
    assert!(said.contains("UTF-16"), "{said}");
}

#[test]
fn a_file_far_too_large() {
    for size in [1_000_001, 10_000_000] {
        let said = refused_text(vec![b'#'; size]);
        assert!(said.contains("it.toml: more than 1 MB"), "{said}");
    }
}

#[cfg(unix)]
#[test]
fn a_source_without_end() {
    let said = refused(&room(), Path::new("/dev/zero"));
    assert!(said.contains("/dev/zero: this is a device, not a file"), "{said}");
}

#[cfg(unix)]
#[test]
fn a_file_that_may_not_be_read() {
    use std::os::unix::fs::PermissionsExt;
    let room = room();
    let path = room.path().join("it.toml");
    fs::write(&path, "title = \"x\"").unwrap();
    fs::set_permissions(&path, fs::Permissions::from_mode(0o000)).unwrap();
    if fs::read(&path).is_ok() {
        return; // whoever runs this test may read everything
    }
    let said = refused(&room, &path);
    assert!(said.contains("you may not read this file"), "{said}");
}

#[test]
fn a_binary_file() {
    let said = refused_text([0_u8; 64]);
    assert!(said.contains("it.toml:1:1: "), "{said}");
}

/// The example with a change must be refused, and the message must point at `place` in it.
fn misread(from: &str, to: &str, place: &str) {
    let room = room();
    let text = fs::read_to_string(changed(&room, from, to)).unwrap();
    let start = text.find(to).unwrap() + to.find(place).unwrap();
    let line = text[..start].matches('\n').count() + 1;
    let column = start - text[..start].rfind('\n').map_or(0, |end| end + 1) + 1;
    let said = refused(&room, Path::new("changed.toml"));
    let expected = format!("changed.toml:{line}:{column}: ");
    assert!(
        said.lines().any(|one| one.starts_with(&expected)),
        "no line begins with {expected:?} in:\n{said}"
    );
}

#[test]
fn a_word_that_is_not_known_is_pointed_at() {
    misread("\"flat oval reed 1/4 in\"", "\"flat ovl reed 1/4 in\"", "\"flat ovl");
    misread("[rim]\nstock", "[rim]\nstokc", "stokc");
    misread("kind = \"swing\"", "kind = \"swingg\"", "\"swingg\"");
    misread("units = \"in\"", "units = \"inn\"", "\"inn\"");
}

#[test]
fn an_impossible_value_is_pointed_at() {
    misread("lap = \"4\"", "lap = \"-4\"", "-4");
    misread("lap = \"4\"", "lap = \"four\"", "four");
    misread("lap = \"4\"", "lap = \"4 parsecs\"", "parsecs");
    misread("lap = \"4\"", "lap = nan", "nan");
    misread("rows = 4", "rows = 0", "0");
    misread("[\"1\", \"19 3/4\"]", "[\"-1\", \"19 3/4\"]", "-1");
}

#[test]
fn a_chart_outside_the_patterns_folder_is_pointed_at() {
    for name in ["../waves.csv", "/etc/passwd", "a/../../waves.csv", "C:waves.csv"] {
        let course =
            format!("{{ weave = \"drawn\", weaver = \"cane fine\", rows = 4, chart-file = \"{name}\" }},");
        misread("courses = [", &format!("courses = [\n{course}"), &format!("\"{name}\""));
    }
}

#[test]
fn signs_that_a_terminal_obeys_are_shown() {
    let text = "title = \"Tin\u{1b}[2J\u{7}pail\u{202e}\"\nunits = \"\u{1b}]0;owned\u{7}\"\nstvaes\u{9b}8m = \u{2066}3\n";
    for part in [text, &text[text.find("units").unwrap()..], &text[text.find("stvaes").unwrap()..]] {
        let said = refused_text(part);
        let obeyed = |sign: char| sign.is_control() && sign != '\n' || "\u{202e}\u{2066}".contains(sign);
        assert!(!said.contains(obeyed), "{said:?}");
        assert!(said.contains('␛') || said.contains("\\u{9b}"), "{said}");
    }
    let said = refused(&room(), Path::new("no\u{1b}[31m\u{202e}such.toml"));
    assert!(said.contains("no␛[31m\\u{202e}such.toml: there is no such file"), "{said}");
}

#[test]
fn a_title_cannot_turn_the_line_on_the_screen_and_json_says_it_as_it_is() {
    let room = room();
    let title = "Harbour \u{202e}daerb";
    changed(&room, "Harbour bread basket", title);
    let said = run(stavewright(room.path()).args(["draft", "changed.toml", "--no-sheets"]));
    assert!(said.out.contains("Harbour \\u{202e}daerb"), "{}", said.out);
    assert!(!said.out.contains('\u{202e}'), "{}", said.out);
    let said =
        run(stavewright(room.path()).args(["draft", "changed.toml", "--no-sheets", "--format", "json"]));
    assert!(!said.out.contains('\u{202e}'), "{}", said.out);
    let basket: serde_json::Value = serde_json::from_str(&said.out).unwrap();
    assert_eq!(basket["title"], title);
}

#[test]
fn broken_toml_is_pointed_at() {
    misread("lap = \"4\"\n", "lap = \"4 in\n", "\n");
}

#[test]
fn all_problems_are_shown_at_once() {
    let room = room();
    let text = fs::read_to_string(common::harbour()).unwrap();
    let text = text.replace("lap = \"4\"", "lap = \"-4\"").replace("every = \"stave\"", "evry = \"stave\"");
    fs::write(room.path().join("changed.toml"), text).unwrap();
    let said = refused(&room, Path::new("changed.toml"));
    insta::assert_snapshot!(said);
}

#[test]
fn standard_input_is_named() {
    let room = room();
    let said = run(stavewright(room.path()).args(["check", "-"]).write_stdin("title = 3\n"));
    assert_eq!(said.code, 2);
    assert!(said.err.starts_with("standard input:1:"), "{}", said.err);
}

#[test]
fn a_shelf_is_read_with_the_same_care() {
    let room = room();
    fs::write(room.path().join("shelf.toml"), "[materials.\"mine\"]\nlike = \"flat ovl reed 1/4 in\"\n")
        .unwrap();
    let said =
        run(stavewright(room.path()).arg("check").arg(common::harbour()).args(["--shelf", "shelf.toml"]));
    assert_eq!(said.code, 2);
    assert!(said.err.starts_with("shelf.toml:2:8: "), "{}", said.err);
    let said =
        run(stavewright(room.path()).arg("check").arg(common::harbour()).args(["--shelf", "nowhere.toml"]));
    assert_eq!(said.code, 2);
    assert!(said.err.contains("nowhere.toml: there is no such file"), "{}", said.err);
}

#[test]
fn wrong_usage_ends_with_status_two() {
    for arguments in [
        &["draft"][..],
        &["dratf", "x"],
        &["draft", "x", "--paper", "a5"],
        &["draft", "x", "--units", "ft"],
        &[],
    ] {
        let said = run(stavewright(room().path()).args(arguments));
        assert_eq!(said.code, 2, "{arguments:?}");
        assert!(said.err.contains("--help"), "{arguments:?}: {}", said.err);
    }
}
