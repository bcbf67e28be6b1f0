//! The program is killed at every call that changes the disk: afterwards the old stands whole, or the
//! new, and the next run leaves nothing lying about.
#![cfg(target_os = "linux")]

mod common;
#[path = "common/faults.rs"]
mod faults;
#[path = "common/server.rs"]
mod server;

use std::collections::BTreeMap;
use std::fs;
use std::path::Path;

use common::{harbour, names, room};
use faults::{calls, content, faulty, restore, told, was_killed};
use serde_json::json;
use server::Served;

const DRAFT: [&str; 5] = ["draft", "new.toml", "--no-sheets", "--out", "out/packet"];
const NO_EXCHANGE: (&str, usize) = ("FAULTS_NO_EXCHANGE", 1);

type Packet = BTreeMap<String, Vec<u8>>;

/// Writes the pattern that is drafted, and gives the packets of the old one and of itself.
fn packets(room: &Path) -> (Packet, Packet) {
    let text = fs::read_to_string(harbour()).unwrap();
    let of = |title: &str| {
        fs::write(room.join("new.toml"), text.replace("Harbour bread basket", title)).unwrap();
        let output = faulty(room, &[]).args(DRAFT).output().unwrap();
        assert!(output.status.code().is_some_and(|code| code < 2), "{}", told(&output));
        let packet = content(&room.join("out/packet")).unwrap();
        fs::remove_dir_all(room.join("out")).unwrap();
        packet
    };
    (of("Old basket"), of("New basket"))
}

/// Drafts over an earlier packet, or none, and kills it at each call; returns at how many of them
/// neither packet stood.
fn kill_at_each(before: Option<&Packet>, room: &Path, new: &Packet, how: &[(&str, usize)]) -> usize {
    let out = room.join("out/packet");
    let begin = || {
        let _ = fs::remove_dir_all(room.join("out"));
        if let Some(before) = before {
            fs::create_dir(room.join("out")).unwrap();
            restore(&out, before);
        }
    };
    begin();
    let calls = calls(room, how, &DRAFT);
    assert_eq!(content(&out).as_ref(), Some(new));
    for wanted in ["open", "write", "fsync", "rename"] {
        assert!(calls.iter().any(|call| call == wanted), "{wanted} in {calls:?}");
    }
    let mut neither = 0;
    for (number, call) in (1..).zip(&calls) {
        begin();
        let kill = [how, &[("FAULTS_KILL", number)]].concat();
        let output = faulty(room, &kill).args(DRAFT).output().unwrap();
        assert!(was_killed(output.status), "{call} {number}: {}", told(&output));
        let stands = content(&out);
        assert!(
            stands.as_ref() == before || stands.as_ref() == Some(new) || stands.is_none(),
            "half a packet at {call} {number} of {calls:?}"
        );
        neither += usize::from(stands.is_none() && before.is_some());

        let output = faulty(room, how).args(DRAFT).output().unwrap();
        assert!(output.status.code().is_some_and(|code| code < 2), "{call} {number}: {}", told(&output));
        assert_eq!(content(&out).as_ref(), Some(new), "after {call} {number}");
        assert_eq!(names(&room.join("out")), ["packet"], "after {call} {number}");
    }
    neither
}

#[test]
fn a_packet_is_exchanged_in_one_step() {
    let room = room();
    let (old, new) = packets(room.path());
    assert_eq!(kill_at_each(Some(&old), room.path(), &new, &[]), 0);
}

#[test]
fn where_it_cannot_be_exchanged_the_next_run_brings_it_back() {
    let room = room();
    let (old, new) = packets(room.path());
    // Between the two renames, and nowhere else.
    assert_eq!(kill_at_each(Some(&old), room.path(), &new, &[NO_EXCHANGE]), 1);
}

#[test]
fn a_first_packet_is_whole_or_not_there() {
    let room = room();
    let (_, new) = packets(room.path());
    kill_at_each(None, room.path(), &new, &[]);
}

#[test]
fn a_packet_edited_by_hand_is_never_lost() {
    let room = room();
    let (mut old, new) = packets(room.path());
    old.insert("cuts.csv".to_owned(), b"mine".to_vec());
    let (out, kept) = (room.path().join("out/packet"), room.path().join("out/packet-edited"));
    let begin = || {
        let _ = fs::remove_dir_all(room.path().join("out"));
        fs::create_dir(room.path().join("out")).unwrap();
        restore(&out, &old);
    };
    for how in [&[][..], &[NO_EXCHANGE]] {
        begin();
        for number in 1..=calls(room.path(), how, &DRAFT).len() {
            begin();
            let kill = [how, &[("FAULTS_KILL", number)]].concat();
            assert!(was_killed(faulty(room.path(), &kill).args(DRAFT).output().unwrap().status));
            let output = faulty(room.path(), how).args(DRAFT).output().unwrap();
            assert!(output.status.code().is_some_and(|code| code < 2), "{number}: {}", told(&output));
            assert_eq!(content(&out).as_ref(), Some(&new), "{number}");
            assert_eq!(content(&kept).as_ref(), Some(&old), "{number}");
            assert_eq!(names(&room.path().join("out")), ["packet", "packet-edited"], "{number}");
        }
    }
}

#[test]
fn a_file_is_old_or_new() {
    let room = room();
    fs::copy(harbour(), room.path().join("new.toml")).unwrap();
    let chart = ["chart", "new.toml", "--out", "chart.svg"];
    let calls = calls(room.path(), &[], &chart);
    let file = room.path().join("chart.svg");
    let new = fs::read(&file).unwrap();
    for (number, call) in (1..).zip(&calls) {
        fs::write(&file, "old").unwrap();
        let output = faulty(room.path(), &[("FAULTS_KILL", number)]).args(chart).output().unwrap();
        assert!(was_killed(output.status), "{call} {number}: {}", told(&output));
        let stands = fs::read(&file).unwrap();
        assert!(stands == b"old" || stands == new, "{} bytes at {call} {number}", stands.len());
    }
    assert!(faulty(room.path(), &[]).args(chart).output().unwrap().status.code().is_some());
    assert_eq!(names(room.path()), ["chart.svg", "new.toml"], "what was left is swept");
}

/// Saves on a bench with faults; the answer, if there was one.
fn save(room: &Path, faults: &[(&str, usize)], log: &Path, text: &str) -> Option<u16> {
    let mut command = faulty(room, faults);
    let bench = Served::by(command.env("FAULTS_LOG", log).arg("bench"), room);
    let opened = bench.get("/api/patterns/harbour").json();
    let body = json!({ "source": text, "base_hash": opened["hash"] });
    let status = bench.ask("PUT", "/api/patterns/harbour", Some(&body)).status;
    (status != 0).then_some(status)
}

#[test]
fn a_saved_pattern_is_old_or_new() {
    let old = fs::read_to_string(harbour()).unwrap();
    let new = old.replace("[weave]", "# saved\n[weave]");
    let log = tempfile::NamedTempFile::new().unwrap();
    for how in [&[][..], &[NO_EXCHANGE]] {
        let room = room();
        let file = room.path().join("harbour.toml");
        fs::write(&file, &old).unwrap();
        fs::write(log.path(), "").unwrap();
        assert_eq!(save(room.path(), how, log.path(), &new), Some(200));
        assert_eq!(fs::read_to_string(&file).unwrap(), new);
        let calls = fs::read_to_string(log.path()).unwrap();
        let expected = if how.is_empty() { "renameat2" } else { "rename" };
        assert!(calls.lines().any(|call| call == expected), "{calls}");
        // Each time from the same start: the old text, and no history of it yet.
        let begin = || {
            fs::write(&file, &old).unwrap();
            for name in names(room.path()).iter().filter(|name| name.starts_with("workshop.db")) {
                fs::remove_file(room.path().join(name)).unwrap();
            }
        };
        for (number, call) in (1..).zip(calls.lines()) {
            begin();
            let kill = [how, &[("FAULTS_KILL", number)]].concat();
            assert_eq!(save(room.path(), &kill, log.path(), &new), None, "{call} {number}");
            let stands = fs::read_to_string(&file).unwrap();
            assert!(stands == old || stands == new, "{} bytes at {call} {number}", stands.len());
        }
        begin();
        assert_eq!(save(room.path(), how, log.path(), &new), Some(200));
        let left = names(room.path()).into_iter().filter(|name| !name.starts_with("workshop.db"));
        assert_eq!(left.collect::<Vec<_>>(), ["harbour.toml"], "what was left is swept");
    }
}

#[test]
fn what_somebody_writes_in_the_last_moment_is_not_lost() {
    let room = room();
    let (old, new) = packets(room.path());
    fs::create_dir(room.path().join("out")).unwrap();
    restore(&room.path().join("out/packet"), &old);
    let output = faulty(room.path(), &[]).env("FAULTS_MEDDLE", "/cuts.csv").args(DRAFT).output().unwrap();
    assert!(output.status.code().is_some_and(|code| code < 2), "{}", told(&output));
    assert_eq!(content(&room.path().join("out/packet")).as_ref(), Some(&new));
    let kept = content(&room.path().join("out/packet-edited")).unwrap();
    assert_eq!(kept["cuts.csv"], b"meddled");

    let text = fs::read_to_string(harbour()).unwrap();
    let room = common::room();
    let file = room.path().join("harbour.toml");
    fs::write(&file, &text).unwrap();
    let mut command = faulty(room.path(), &[]);
    let bench = Served::by(command.env("FAULTS_MEDDLE", "").arg("bench"), room.path());
    let hash = bench.get("/api/patterns/harbour").json()["hash"].clone();
    let body = json!({ "source": text.replace("[weave]", "# saved\n[weave]"), "base_hash": hash });
    bench.ask("PUT", "/api/patterns/harbour", Some(&body)).assert_refused(409);
    assert_eq!(fs::read_to_string(&file).unwrap(), "meddled");
    assert_eq!(names(room.path()), ["harbour.toml"]);
}
