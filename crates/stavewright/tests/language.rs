//! The language of sheets and answers: asked for, written in the pattern, or neither.

mod common;

use std::fs;

use common::{Said, changed, fits, harbour, pattern, room, run, stavewright};
use tempfile::TempDir;

fn say(room: &TempDir, args: &[&str]) -> Said {
    run(stavewright(room.path()).args(args))
}

fn german_pattern(room: &TempDir) -> String {
    changed(room, "units = \"in\"\n", "units = \"in\"\nlanguage = \"de\"\n").display().to_string()
}

#[test]
fn a_draft_in_german() {
    let room = room();
    let said = run(stavewright(room.path())
        .args(["draft", "--language", "de", "--no-sheets", "--out", "mappe"])
        .arg(harbour()));
    assert_eq!(said.code, 0, "{}", said.err);
    insta::assert_snapshot!(said.out);
    let file = fs::read_to_string(room.path().join("mappe/basket.json")).unwrap();
    let file: serde_json::Value = serde_json::from_str(&file).unwrap();
    assert_eq!(file["language"], "de");
    assert_eq!(file["units"], "millimetres");
    assert_eq!(file["cuts"][0]["piece"], "Boden");
    assert_eq!(file["steps"][0]["title"], "Staken zuschneiden und formen");
}

#[test]
fn german_stays_within_eighty_columns() {
    for name in [
        "harbour-bread-basket.toml",
        "ferry-egg-basket.toml",
        "channel-marker.toml",
        "pilot-letter-basket.toml",
    ] {
        for units in ["in", "mm"] {
            let said = run(stavewright(room().path())
                .args(["draft", "--language", "de", "--no-sheets", "--out", "mappe", "--units", units])
                .arg(pattern(name)));
            fits(&said.out);
            assert!(said.out.contains("Staken"), "{}", said.out);
        }
    }
}

#[test]
fn the_pattern_names_its_language_and_the_option_wins() {
    let room = room();
    let file = german_pattern(&room);
    let own = say(&room, &["check", &file]).out;
    assert!(own.contains("Befunde") && !own.contains("Findings"), "{own}");
    let asked = say(&room, &["check", &file, "--language", "en"]).out;
    assert!(asked.contains("Findings") && !asked.contains("Befunde"), "{asked}");
    let plain = run(stavewright(room.path()).arg("check").arg(harbour())).out;
    assert_eq!(asked, plain, "English is the same whether it is asked for or not");
}

#[test]
fn german_reads_millimetres_first_unless_inches_are_asked_for() {
    let room = room();
    let file = german_pattern(&room);
    let rows = |units: &[&str]| {
        let args = [&["draft", file.as_str(), "--no-sheets", "--out", "mappe"], units].concat();
        say(&room, &args).out.replace("\u{a0}", " ")
    };
    assert!(rows(&[]).contains("Scheibe aus Kirschbaum, 124 mm Durchmesser"), "{}", rows(&[]));
    let inches = rows(&["--units", "in"]);
    assert!(inches.contains("Scheibe aus Kirschbaum, 4 7/8 Zoll Durchmesser"), "{inches}");
}

#[test]
fn charts_rows_and_answers_about_weaves_in_german() {
    let room = room();
    let file = german_pattern(&room);
    let rows = say(&room, &["chart", &file, "--rows", "--out", "bild.svg"]);
    assert_eq!(rows.code, 0, "{}", rows.err);
    assert!(rows.out.contains("Strichliste, ein Kästchen je Reihe"), "{}", rows.out);
    let chart = fs::read_to_string(room.path().join("bild.svg")).unwrap();
    assert!(chart.contains("Flechtbild von außen") && !chart.contains("stave"), "{chart:.2000}");
    let weaves = say(&room, &["weaves", "--staves", "73", "--language", "de"]).out;
    assert!(weaves.contains("Geht auf 73 Staken"), "{weaves}");
    fits(&weaves);
    let found = say(&room, &["find-weave", "--look", "columns", "--near", "60", "--language", "de"]).out;
    assert!(found.contains("Säulen"), "{found}");
    fits(&found);
}

#[test]
fn an_unknown_language_is_refused_with_the_known_ones() {
    let room = room();
    let said = run(stavewright(room.path()).args(["draft", "--language", "xx"]).arg(harbour()));
    assert_eq!(said.code, 2);
    assert!(said.err.contains("'xx'") && said.err.contains("en, de"), "{}", said.err);
    let file = changed(&room, "units = \"in\"\n", "units = \"in\"\nlanguage = \"xyz\"\n");
    let said = run(stavewright(room.path()).arg("check").arg(file));
    assert_eq!(said.code, 2);
    assert!(said.err.contains("changed.toml:6:12: `language` cannot be `xyz`"), "{}", said.err);
    assert!(said.err.contains("write `en` or `de`"), "{}", said.err);
    assert_eq!(said.out, "");
}
