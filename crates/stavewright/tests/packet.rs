//! The packet on the disk: whole or not at all.

mod common;

use std::fs;
use std::path::Path;

use assert_cmd::Command;
use common::{Said, changed, harbour, names, pattern, room, run, stavewright};
use serde_json::Value;

const DATA: [&str; 7] =
    ["base.svg", "basket.json", "checksums.txt", "cuts.csv", "cuts.json", "pattern.toml", "section.svg"];
const SHEETS: [&str; 6] =
    ["bench-card.pdf", "demonstration.pdf", "handout.pdf", "maker.pdf", "teacher.pdf", "templates.pdf"];
const DRAWN: [&str; 2] = ["chart.svg", "picture.svg"];
const PAGES: [&str; 3] = ["demonstration.html", "handout.html", "teacher.html"];

fn draft(folder: &Path, pattern: &Path) -> Command {
    let mut command = stavewright(folder);
    command.arg("draft").arg(pattern);
    command
}

fn quick(folder: &Path, more: &[&str]) -> Said {
    run(draft(folder, &harbour()).arg("--no-sheets").args(more))
}

#[test]
fn the_whole_packet_goes_to_a_folder_of_the_patterns_name() {
    let room = room();
    let said = run(&mut draft(room.path(), &harbour()));
    assert!(said.code < 2, "{}", said.err);
    let packet = room.path().join("out/harbour-bread-basket");
    let mut expected = [&DATA[..], &DRAWN[..], &SHEETS[..], &PAGES[..]].concat();
    expected.sort_unstable();
    assert_eq!(names(&packet), expected);
    for sheet in SHEETS {
        let pdf = fs::read(packet.join(sheet)).unwrap();
        assert!(pdf.starts_with(b"%PDF-") && pdf.len() > 10_000, "{sheet}: {} bytes", pdf.len());
        assert!(said.out.contains(sheet), "the answer names {sheet}");
    }
    assert_eq!(names(&room.path().join("out")), ["harbour-bread-basket"], "nothing temporary stays");
}

#[test]
fn without_sheets_there_is_no_pdf() {
    let room = room();
    assert!(quick(room.path(), &["--out", "packet"]).code < 2);
    assert_eq!(names(&room.path().join("packet")), DATA);
}

#[test]
fn a_packet_is_replaced_whole() {
    let room = room();
    assert!(quick(room.path(), &["--out", "packet"]).code < 2);
    let metric = quick(room.path(), &["--out", "packet/", "--units", "mm"]);
    assert!(metric.code < 2 && !metric.out.contains("Kept"), "{}", metric.out);
    assert_eq!(names(&room.path().join("packet")), DATA);
    assert_eq!(names(room.path()), ["packet"]);
}

/// Whoever comes last, it is one whole packet, and nothing of the others stays.
#[test]
fn drafts_at_once_leave_one_whole_packet() {
    let room = room();
    let said: Vec<Said> = std::thread::scope(|scope| {
        let one = |units: &'static str| {
            let folder = room.path();
            scope.spawn(move || quick(folder, &["--out", "packet", "--units", units]))
        };
        let running: Vec<_> = ["in", "mm"].repeat(4).into_iter().map(one).collect();
        running.into_iter().map(|thread| thread.join().unwrap()).collect()
    });
    for one in &said {
        assert!(one.code < 2 && !one.out.contains("Kept"), "{}{}", one.out, one.err);
    }
    assert_eq!(names(room.path()), ["packet"]);
    assert_eq!(names(&room.path().join("packet")), DATA);
    let again = quick(room.path(), &["--out", "packet"]);
    assert!(again.code < 2 && !again.out.contains("Kept"), "it is as it was written: {}", again.out);
}

/// As if an earlier version of the program had chosen otherwise.
fn chose_otherwise(packet: &Path, count: u32) {
    let file = packet.join("basket.json");
    let mut computed: Value = serde_json::from_slice(&fs::read(&file).unwrap()).unwrap();
    let choices = computed["choices"].as_array_mut().unwrap();
    let chosen = choices.iter_mut().find(|choice| choice["key"] == "staves.count").unwrap();
    chosen["value"] = serde_json::json!({ "count": count });
    fs::write(&file, serde_json::to_vec(&computed).unwrap()).unwrap();
    fs::remove_file(packet.join("checksums.txt")).unwrap();
}

#[test]
fn what_comes_out_differently_is_said_once_with_the_way_back() {
    let room = room();
    let packet = room.path().join("packet");
    let again = || quick(room.path(), &["--out", "packet"]).out;
    assert!(!again().contains("Otherwise than"));
    chose_otherwise(&packet, 79);
    let said = again();
    assert!(said.contains("staves.count: 79 before, 71 now; to keep it: staves.count = 79"), "{said}");
    assert!(!again().contains("Otherwise than"), "it is said once");
    chose_otherwise(&packet, 79);
    fs::write(packet.join("pattern.toml"), "title = \"Another\"").unwrap();
    assert!(!again().contains("Otherwise than"), "another pattern may come out as it likes");
}

#[test]
fn a_packet_with_a_file_changed_by_hand_is_kept_and_told() {
    let room = room();
    assert!(quick(room.path(), &["--out", "packet"]).code < 2);
    fs::write(room.path().join("packet/cuts.csv"), "mine").unwrap();
    let said = quick(room.path(), &["--out", "packet"]);
    let told = "Kept packet-edited, the packet that was there:\n  changed by hand: cuts.csv\n";
    assert!(said.code < 2 && said.out.ends_with(told), "{}", said.out);
    assert_eq!(fs::read_to_string(room.path().join("packet-edited/cuts.csv")).unwrap(), "mine");
    assert_eq!(names(room.path()), ["packet", "packet-edited"]);
}

#[test]
fn the_list_in_a_packet_is_read_by_the_usual_tool() {
    let room = room();
    assert!(quick(room.path(), &["--out", "packet"]).code < 2);
    let Ok(check) = std::process::Command::new("sha256sum")
        .args(["--check", "--strict", "checksums.txt"])
        .current_dir(room.path().join("packet"))
        .output()
    else {
        return; // a system without that tool
    };
    let said = String::from_utf8_lossy(&check.stdout);
    assert!(check.status.success(), "{said}");
    assert_eq!(said.lines().count(), DATA.len() - 1, "{said}");
}

#[test]
fn the_same_pattern_gives_the_same_packet() {
    let room = room();
    quick(room.path(), &["--out", "one"]);
    quick(room.path(), &["--out", "two"]);
    for name in DATA {
        let read = |folder: &str| fs::read(room.path().join(folder).join(name)).unwrap();
        assert!(read("one") == read("two"), "{name} differs");
    }
}

#[test]
fn a_folder_with_other_files_is_refused_and_left_alone() {
    let room = room();
    fs::create_dir(room.path().join("plans")).unwrap();
    fs::write(room.path().join("plans/letter.txt"), "mine").unwrap();
    let said = quick(room.path(), &["--out", "plans"]);
    assert_eq!((said.code, said.out.as_str()), (2, ""));
    assert!(said.err.contains("plans: this folder holds more than a packet: letter.txt"), "{}", said.err);
    assert_eq!(names(&room.path().join("plans")), ["letter.txt"]);
    assert_eq!(names(room.path()), ["plans"]);
}

#[test]
fn a_file_in_the_way_is_left_alone() {
    let room = room();
    fs::write(room.path().join("note"), "mine").unwrap();
    for out in ["note", "note/packet"] {
        let said = quick(room.path(), &["--out", out]);
        assert_eq!((said.code, said.out.as_str()), (2, ""));
        assert!(said.err.contains("note"), "{}", said.err);
        assert!(!said.err.contains("panicked"), "{}", said.err);
    }
    assert_eq!(fs::read_to_string(room.path().join("note")).unwrap(), "mine");
    assert_eq!(names(room.path()), ["note"]);
}

#[test]
fn the_folder_one_works_in_is_not_replaced() {
    let room = room();
    let said = quick(room.path(), &["--out", "."]);
    assert_eq!(said.code, 2);
    assert!(said.err.contains("you are working in this folder"), "{}", said.err);
    assert_eq!(names(room.path()), Vec::<String>::new());
}

#[cfg(unix)]
#[test]
fn a_folder_in_which_nobody_may_write() {
    let room = room();
    let said = quick(room.path(), &["--out", "/proc/packet"]);
    assert_eq!((said.code, said.out.as_str()), (2, ""));
    assert!(said.err.contains("/proc/packet: the packet cannot be written"), "{}", said.err);
}

#[test]
fn standard_input_takes_the_folder_from_the_title() {
    let room = room();
    let text = fs::read_to_string(harbour()).unwrap();
    let said = run(stavewright(room.path()).args(["draft", "-", "--no-sheets"]).write_stdin(text));
    assert!(said.code < 2, "{}", said.err);
    assert_eq!(names(&room.path().join("out")), ["harbour-bread-basket"]);
}

#[test]
fn a_stop_finding_ends_with_status_one_and_writes_the_packet_all_the_same() {
    let room = room();
    let pattern = changed(&room, "[staves]\n", "[staves]\ncount = 68\n");
    let said = run(draft(room.path(), &pattern).args(["--no-sheets", "--out", "packet"]));
    assert_eq!(said.code, 1, "{}{}", said.out, said.err);
    assert!(said.out.contains("weave-does-not-lock"), "{}", said.out);
    assert_eq!(names(&room.path().join("packet")), DATA);
}

#[test]
fn the_scenarios_patterns_can_be_woven() {
    for name in [
        "harbour-bread-basket.toml",
        "ferry-egg-basket.toml",
        "channel-marker.toml",
        "pilot-letter-basket.toml",
    ] {
        let said = run(stavewright(room().path()).arg("check").arg(pattern(name)));
        assert_eq!(said.code, 0, "{name}: {}{}", said.out, said.err);
    }
}

#[test]
fn json_on_the_screen_is_the_basket_that_is_written() {
    let room = room();
    let said = quick(room.path(), &["--out", "packet", "--format", "json"]);
    let written = fs::read_to_string(room.path().join("packet/basket.json")).unwrap();
    assert_eq!(said.out.trim_end(), written.trim_end());
    assert!(said.err.contains("Wrote packet"), "messages go to standard error: {}", said.err);
}

#[test]
fn the_documented_keys_are_there() {
    let room = room();
    let said = quick(room.path(), &["--format", "json"]);
    let basket: Value = serde_json::from_str(&said.out).unwrap();
    let numbers = [
        "/staves/count",
        "/staves/width_mm",
        "/staves/length_mm",
        "/staves/gap_rim_mm",
        "/weave/rows",
        "/weave/length_mm",
        "/rim/outer/cut_mm",
        "/rim/inner/cut_mm",
        "/lashing/length_mm",
    ];
    for key in numbers {
        let number = basket.pointer(key).and_then(Value::as_f64);
        assert!(number.is_some_and(|number| number > 0.0), "{key}: {number:?}");
    }
    assert_eq!(basket.pointer("/staves/stock"), Some(&Value::from("flat oval reed 1/4 in")));
    let findings = basket["findings"].as_array().unwrap();
    assert!(!findings.is_empty());
    for finding in findings {
        for key in ["grade", "code", "where", "measured", "limit", "remedy"] {
            assert!(finding.get(key).is_some(), "{key} is missing in {finding}");
        }
    }
}
