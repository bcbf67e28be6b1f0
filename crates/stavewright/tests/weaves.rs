//! `weaves`, `find-weave` and `chart`: what is printed and written, and what bad input is told.

mod common;

use std::fs;
use std::path::{Path, PathBuf};

use common::{Said, fits, harbour, pattern, room, run, stavewright};
use resvg::tiny_skia::{Color, Pixmap, PremultipliedColorU8};
use tempfile::TempDir;

fn say(folder: &Path, args: &[&str]) -> Said {
    run(stavewright(folder).args(args))
}

/// The example woven in a drawn course that names this file.
fn drawn(room: &TempDir, file: &str) -> PathBuf {
    let text = fs::read_to_string(harbour()).unwrap();
    let (before, rest) = text.split_once("courses = [").unwrap();
    let (_, after) = rest.split_once("\n]").unwrap();
    let course =
        format!("{{ weave = \"drawn\", weaver = \"cane fine\", rows = 12, chart-file = \"{file}\" }}");
    let path = room.path().join("drawn.toml");
    fs::write(&path, format!("{before}courses = [{course}]{after}")).unwrap();
    path
}

#[test]
fn weaves_on_an_odd_and_an_even_count() {
    for count in ["73", "72"] {
        let said = say(room().path(), &["weaves", "--staves", count]);
        assert_eq!((said.code, said.err.as_str()), (0, ""));
        fits(&said.out);
        insta::assert_snapshot!(format!("weaves-{count}"), said.out);
    }
}

#[test]
fn weaves_as_json() {
    let said = say(room().path(), &["weaves", "--staves", "72", "--format", "json"]);
    let all: serde_json::Value = serde_json::from_str(&said.out).unwrap();
    let plain = &all[0];
    assert_eq!((plain["weave"].as_str(), plain["runs"].as_bool()), (Some("plain"), Some(false)));
    assert!(!plain["verdict"]["mends"].as_array().unwrap().is_empty());
}

#[test]
fn the_spiral_of_the_scenario() {
    let args = [
        "find-weave",
        "--look",
        "spiral",
        "--lean",
        "right",
        "--turns",
        "2",
        "--colours",
        "2",
        "--near",
        "73",
    ];
    let said = say(room().path(), &args);
    assert_eq!((said.code, said.err.as_str()), (0, ""));
    fits(&said.out);
    insta::assert_snapshot!(said.out);
}

#[test]
fn every_look_is_answered() {
    for look in ["spiral", "columns", "bands", "checks", "arrows", "plain"] {
        let said = say(room().path(), &["find-weave", "--look", look, "--near", "48", "--format", "json"]);
        // One weaver in one colour makes no bands.
        if look == "bands" {
            assert_eq!(said.code, 2, "{}", said.out);
            assert!(said.err.contains("no weave gives this look"), "{}", said.err);
            continue;
        }
        assert_eq!(said.code, 0, "{look}: {}", said.err);
        let all: serde_json::Value = serde_json::from_str(&said.out).unwrap();
        assert!(all.as_array().unwrap().iter().all(|one| one["seen"]["look"] == look), "{look}");
    }
}

#[test]
fn proposals_can_be_woven_as_written() {
    let args = [
        "find-weave",
        "--look",
        "columns",
        "--colours",
        "2",
        "--near",
        "72",
        "--format",
        "json",
        "--show",
        "8",
    ];
    let said = say(room().path(), &args);
    let all: serde_json::Value = serde_json::from_str(&said.out).unwrap();
    let text = fs::read_to_string(harbour()).unwrap();
    let (before, rest) = text.split_once("courses = [").unwrap();
    let (_, after) = rest.split_once("\n]").unwrap();
    for one in all.as_array().unwrap() {
        let keys: Vec<String> = one["course"]
            .as_object()
            .unwrap()
            .iter()
            .map(|(key, value)| format!("{key} = {}", value.as_str().unwrap()))
            .collect();
        let course = format!("{{ {}, weaver = \"cane fine\", rows = 12 }}", keys.join(", "));
        let room = room();
        let path = room.path().join("found.toml");
        let staves = format!("count = {}", one["staves"]);
        let text = format!("{before}courses = [{course}]{after}")
            .replace("[staves]", &format!("[staves]\n{staves}"));
        fs::write(&path, text).unwrap();
        let said = run(stavewright(room.path()).arg("check").arg(&path));
        assert_ne!(said.code, 2, "{course}: {}", said.err);
        assert!(
            !said.out.contains("does not hold") && !said.out.contains("does not lock"),
            "{course}: {}",
            said.out
        );
    }
}

#[test]
fn a_search_that_makes_no_sense_is_told() {
    for (args, wanted) in [
        (&["--look", "columns", "--near", "73", "--turns", "2"][..], "only a spiral has a lean and turns"),
        (
            &["--look", "spiral", "--near", "73", "--fewest", "90", "--most", "80"],
            "--fewest 90 is more than --most 80",
        ),
        (&["--look", "spiral", "--near", "73", "--turns", "nan"], "write a number from 0.05 to 50"),
        (&["--look", "spiral", "--near", "73", "--turns", "two"], "write a number such as 2 or 1.5"),
        (&["--look", "spiral", "--near", "2"], "2 is not in 3..=999"),
        (&["--look", "plain", "--near", "73", "--colours", "2"], "All alike has one colour"),
    ] {
        let said = say(room().path(), &[&["find-weave"], args].concat());
        assert_eq!(said.code, 2, "{args:?}");
        assert!(said.err.contains(wanted), "{args:?}: {}", said.err);
    }
}

#[test]
fn charts_are_written_as_svg_and_png() {
    let room = room();
    let channel = pattern("channel-marker.toml");
    let said = run(stavewright(room.path()).arg("chart").arg(&channel));
    assert_eq!(said.code, 0, "{}", said.err);
    let svg = fs::read_to_string(room.path().join("channel-marker-chart.svg")).unwrap();
    assert!(svg.starts_with("<svg") && svg.contains("#889ab6"), "the blue weaver, lightened for print");
    let said = run(stavewright(room.path())
        .arg("chart")
        .arg(&channel)
        .args(["--side", "inside", "--kind", "grid", "--out", "in.png"]));
    assert_eq!(said.code, 0, "{}", said.err);
    let picture = Pixmap::load_png(room.path().join("in.png")).unwrap();
    assert!(picture.width() > 1000);
    let blue = |dot: &PremultipliedColorU8| (dot.red(), dot.green(), dot.blue()) == (0x88, 0x9a, 0xb6);
    assert!(picture.pixels().iter().filter(|dot| blue(dot)).count() > 1000);
}

#[test]
fn rows_are_told_and_tallied() {
    let room = room();
    let said = run(stavewright(room.path()).arg("chart").arg(pattern("channel-marker.toml")).arg("--rows"));
    assert_eq!(said.code, 0, "{}", said.err);
    fits(&said.out);
    insta::assert_snapshot!(said.out);
    assert!(common::names(room.path()).is_empty(), "nothing is written");
}

#[test]
fn a_chart_cannot_be_written_just_anywhere() {
    let room = room();
    for (out, wanted) in
        [("chart.gif", "written as .svg or .png"), ("no/such/chart.svg", "cannot be written")]
    {
        let said = run(stavewright(room.path()).arg("chart").arg(harbour()).args(["--out", out]));
        assert_eq!(said.code, 2, "{out}");
        assert!(said.err.contains(wanted), "{}", said.err);
    }
}

#[test]
fn a_drawing_in_a_file_is_woven_as_drawn() {
    let room = room();
    fs::write(room.path().join("dots.csv"), "X,X,.\n.,X,X\nX,.,X\n").unwrap();
    let mut picture = Pixmap::new(3, 3).unwrap();
    picture.fill(Color::WHITE);
    for (row, column) in [(0, 0), (0, 1), (1, 1), (1, 2), (2, 0), (2, 2)] {
        picture.pixels_mut()[row * 3 + column] = PremultipliedColorU8::from_rgba(0, 0, 0, 255).unwrap();
    }
    picture.save_png(room.path().join("dots.png")).unwrap();
    let told = |file: &str| {
        let path = drawn(&room, file);
        let said = run(stavewright(room.path()).arg("chart").arg(path).arg("--rows"));
        assert_ne!(said.code, 2, "{}", said.err);
        said.out
    };
    assert_eq!(told("dots.csv"), told("dots.png"));
    assert!(told("dots.csv").contains("from stave 1") || told("dots.csv").contains("From stave 1"));
}

#[test]
fn a_faulty_drawing_is_told_where_and_how() {
    let room = room();
    let mut grey = Pixmap::new(2, 2).unwrap();
    grey.fill(Color::WHITE);
    grey.pixels_mut()[3] = PremultipliedColorU8::from_rgba(128, 128, 128, 255).unwrap();
    grey.save_png(room.path().join("grey.png")).unwrap();
    for (name, content) in [
        ("ragged.csv", "X,.\n\nX,.,X\n"),
        ("sign.csv", "X,.\n.,?\n"),
        ("empty.csv", "  \n"),
        ("broken.png", "no picture"),
        ("chart.gif", "GIF89a"),
    ] {
        fs::write(room.path().join(name), content).unwrap();
    }
    for (name, wanted) in [
        ("ragged.csv", "ragged.csv:3:1: "),
        ("sign.csv", "sign.csv:2:3: "),
        ("empty.csv", "the file is empty"),
        ("broken.png", "not a picture that can be read"),
        ("chart.gif", "a chart is a .csv, .txt or .png file"),
        ("grey.png", "the dot 2 from the left, 2 from the top (#808080) is neither dark nor light"),
        ("missing.png", "there is no such file"),
        ("missing.csv", "there is no such file"),
    ] {
        let path = drawn(&room, name);
        let said = run(stavewright(room.path()).arg("chart").arg(path));
        assert_eq!(said.code, 2, "{name}");
        assert!(said.err.contains(wanted), "{name}: {}", said.err);
    }
}
