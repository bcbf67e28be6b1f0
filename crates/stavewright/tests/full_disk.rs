//! A full disk is told as such by everything that writes, and what was there still is.
#![cfg(target_os = "linux")]

mod common;
#[path = "common/faults.rs"]
mod faults;

use std::fs;

use common::{harbour, names, room};
use faults::{calls, content, faulty, restore, told};

/// Arguments, and what is written.
const COMMANDS: [(&[&str], &str); 6] = [
    (&["draft", "it.toml", "--no-sheets", "--out", "out/packet"], "out/packet"),
    (&["chart", "it.toml", "--out", "out/chart.svg"], "out/chart.svg"),
    (&["picture", "it.toml", "--stage", "base-on-mould", "--out", "out/picture.svg"], "out/picture.svg"),
    (&["solid", "it.toml", "--detail", "thumbnail", "--out", "out/solid.stl"], "out/solid.stl"),
    (&["new", "out/new.toml"], "out/new.toml"),
    (&["templates", "--out", "out/templates"], "out/templates"),
];

#[test]
fn a_full_disk_is_told_as_such() {
    for (arguments, written) in COMMANDS {
        let room = room();
        fs::copy(harbour(), room.path().join("it.toml")).unwrap();
        fs::create_dir(room.path().join("out")).unwrap();
        let calls = calls(room.path(), &[], arguments);
        let kept = room.path().join(written);
        // The last call makes sure that the new name lasts: all is written then.
        let some = [1, 2, calls.len() / 2, calls.len() - 2];
        for call in some {
            let again = arguments[0] != "new" && arguments[0] != "templates";
            let before = content(&kept);
            if !again {
                let _ = fs::remove_file(&kept);
                let _ = fs::remove_dir_all(&kept);
            }
            let output = faulty(room.path(), &[("FAULTS_FULL", call)]).args(arguments).output().unwrap();
            let said = told(&output);
            let needed =
                calls[call - 1..].iter().any(|name| ["open", "write", "fsync", "mkdir"].contains(&&**name));
            assert!(needed, "{calls:?}");
            assert_eq!(output.status.code(), Some(2), "{arguments:?} at {call} of {calls:?}: {said}");
            assert!(said.contains(&format!("{written}: ")) || said.contains("error: out: "), "{said}");
            assert!(said.contains(": the disk is full\n"), "{said}");
            assert!(said.contains("help: "), "{said}");
            if again {
                assert_eq!(content(&kept), before, "{arguments:?} at {call}");
            }
            assert!(names(&room.path().join("out")).len() <= 1, "{arguments:?} at {call}");
        }
    }
}

#[test]
fn the_earlier_packet_outlives_a_full_disk() {
    let room = room();
    fs::copy(harbour(), room.path().join("it.toml")).unwrap();
    let (arguments, written) = COMMANDS[0];
    calls(room.path(), &[], arguments);
    let out = room.path().join(written);
    let earlier = content(&out).unwrap();
    fs::write(room.path().join("it.toml"), fs::read_to_string(harbour()).unwrap().replace("Harbour", "New"))
        .unwrap();
    let all = calls(room.path(), &[], arguments);
    for call in (1..=all.len()).filter(|call| ["open", "write", "fsync"].contains(&&*all[call - 1])) {
        fs::remove_dir_all(&out).unwrap();
        restore(&out, &earlier);
        let output = faulty(room.path(), &[("FAULTS_FULL", call)]).args(arguments).output().unwrap();
        let swapped = all[..call - 1].iter().any(|name| name == "renameat2");
        assert_eq!(output.status.code(), Some(2), "{call} of {all:?}");
        assert_eq!(content(&out).unwrap() == earlier, !swapped, "{call} of {all:?}");
        assert_eq!(names(&room.path().join("out")), ["packet"]);
    }
}

#[test]
fn an_answer_that_has_no_room_is_told_so() {
    let room = room();
    let full = fs::OpenOptions::new().write(true).open("/dev/full").unwrap();
    let output = faulty(room.path(), &[]).arg("check").arg(harbour()).stdout(full).output().unwrap();
    assert_eq!(output.status.code(), Some(2));
    assert!(told(&output).contains("cannot print the answer: the disk is full"), "{}", told(&output));
}
