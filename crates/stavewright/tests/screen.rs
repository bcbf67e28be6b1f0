//! What stands on the screen: width, colour, and the text itself.

mod common;

use common::{changed, fits, harbour, names, pattern, room, run, stavewright};

const ESCAPE: char = '\u{1b}';

#[test]
fn the_answer_to_draft() {
    let said =
        run(stavewright(room().path()).arg("draft").arg(harbour()).args(["--no-sheets", "--out", "packet"]));
    insta::assert_snapshot!(said.out);
    assert_eq!(said.err, "");
}

#[test]
fn nothing_is_wider_than_eighty_columns() {
    for name in [
        "harbour-bread-basket.toml",
        "ferry-egg-basket.toml",
        "channel-marker.toml",
        "pilot-letter-basket.toml",
    ] {
        for units in ["in", "mm"] {
            let said = run(stavewright(room().path()).arg("draft").arg(pattern(name)).args([
                "--no-sheets",
                "--out",
                "packet",
                "--units",
                units,
            ]));
            fits(&said.out);
            assert!(said.out.lines().count() > 30, "{}", said.out);
        }
    }
    for arguments in
        [&["materials"][..], &["materials", "--sources"], &["materials", "--sources", "--units", "mm"]]
    {
        let said = run(stavewright(room().path()).args(arguments));
        assert_eq!(said.code, 0);
        fits(&said.out);
    }
}

#[test]
fn colour_comes_only_where_it_is_wanted() {
    let room = room();
    let stopped = changed(&room, "[staves]\n", "[staves]\ncount = 68\n");
    let check = || {
        let mut command = stavewright(room.path());
        command.arg("check").arg(&stopped);
        command
    };
    assert!(!run(&mut check()).out.contains(ESCAPE), "not into a pipe");
    let forced = run(check().env("CLICOLOR_FORCE", "1")).out;
    assert!(forced.contains("\u{1b}[1m\u{1b}[31mstop"), "a stop is red: {forced:?}");
    assert!(!run(check().env("NO_COLOR", "1")).out.contains(ESCAPE));
}

#[test]
fn check_writes_nothing_and_counts_the_findings() {
    let room = room();
    let said = run(stavewright(room.path()).arg("check").arg(harbour()));
    assert_eq!(said.code, 0, "{}", said.out);
    let last = said.out.lines().last().unwrap();
    assert!(last.starts_with("0 stop, ") && last.ends_with(" note"), "{last}");
    assert_eq!(names(room.path()), Vec::<String>::new());
}

#[test]
fn check_as_json_is_the_list_of_findings() {
    let room = room();
    let stopped = changed(&room, "[staves]\n", "[staves]\ncount = 68\n");
    let said = run(stavewright(room.path()).arg("check").arg(stopped).args(["--format", "json"]));
    assert_eq!(said.code, 1);
    let findings: Vec<serde_json::Value> = serde_json::from_str(&said.out).unwrap();
    let first = &findings[0];
    assert_eq!((&first["grade"], &first["code"]), (&"stop".into(), &"weave-does-not-lock".into()));
    assert!(first["remedy"].as_str().unwrap().contains("staves.count"), "{first}");
}

#[test]
fn units_change_what_is_printed_first() {
    let printed = |units| {
        run(stavewright(room().path()).arg("draft").arg(harbour()).args(["--no-sheets", "--units", units]))
            .out
    };
    assert!(printed("in").contains("4 1/4 in high"), "{}", printed("in"));
    assert!(printed("mm").contains("108 mm high"), "{}", printed("mm"));
}

#[test]
fn a_reader_who_goes_away_is_no_error() {
    let room = room();
    let program = assert_cmd::cargo::cargo_bin!("stavewright");
    let mut child = std::process::Command::new(program)
        .args(["materials", "--sources"])
        .current_dir(room.path())
        .stdout(std::process::Stdio::piped())
        .stderr(std::process::Stdio::piped())
        .spawn()
        .unwrap();
    drop(child.stdout.take());
    let output = child.wait_with_output().unwrap();
    assert_eq!(String::from_utf8(output.stderr).unwrap(), "");
}
