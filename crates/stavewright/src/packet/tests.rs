//! Packets in folders of their own.

use super::*;

fn sheets(text: &str) -> Vec<PacketFile> {
    ["cuts.csv", KNOWN_BY].into_iter().map(|name| PacketFile { name, bytes: text.into() }).collect()
}

fn names(folder: &Path) -> Vec<String> {
    let mut names: Vec<_> = fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().file_name().to_string_lossy().into_owned())
        .collect();
    names.sort();
    names
}

fn message(failure: Failure) -> String {
    match failure {
        Failure::Plain { message, .. } => message,
        other => panic!("{other:?}"),
    }
}

#[test]
fn a_packet_takes_the_place_of_an_earlier_one_whole() {
    let room = tempfile::tempdir().unwrap();
    let out = room.path().join("deep/packet");
    write(&out, &sheets("first")).unwrap();
    let more = PacketFile { name: "handout.pdf", bytes: b"of this packet only".to_vec() };
    assert!(write(&out, &[sheets("more"), vec![more]].concat()).unwrap().kept.is_empty());
    assert!(write(&out, &sheets("second")).unwrap().kept.is_empty());
    assert_eq!(names(&out), [KNOWN_BY, LIST, "cuts.csv"]);
    assert_eq!(fs::read_to_string(out.join("cuts.csv")).unwrap(), "second");
    assert_eq!(names(&room.path().join("deep")), ["packet"], "nothing temporary stays");
}

#[test]
fn a_folder_with_other_files_is_left_alone() {
    let room = tempfile::tempdir().unwrap();
    let out = room.path().join("plans");
    fs::create_dir(&out).unwrap();
    for name in ["letter.txt", "cuts.csv", KNOWN_BY] {
        fs::write(out.join(name), "mine").unwrap();
    }
    let said = message(write(&out, &sheets("new")).unwrap_err());
    assert!(said.ends_with("this folder holds more than a packet: letter.txt"), "{said}");
    assert_eq!(fs::read_to_string(out.join("cuts.csv")).unwrap(), "mine");
    assert_eq!(names(room.path()), ["plans"]);
}

#[test]
fn files_with_the_names_of_sheets_are_no_packet_without_its_heart() {
    let room = tempfile::tempdir().unwrap();
    let out = room.path().join("plans");
    fs::create_dir(&out).unwrap();
    fs::write(out.join("handout.pdf"), "mine").unwrap();
    let said = message(write(&out, &sheets("new")).unwrap_err());
    assert!(said.ends_with("more than a packet: handout.pdf"), "{said}");
    assert_eq!(names(&out), ["handout.pdf"]);
}

#[test]
fn an_empty_folder_is_taken() {
    let room = tempfile::tempdir().unwrap();
    write(room.path().join("new").as_path(), &sheets("a")).unwrap();
    let out = room.path().join("empty");
    fs::create_dir(&out).unwrap();
    write(&out, &sheets("b")).unwrap();
    assert_eq!(names(&out), [KNOWN_BY, LIST, "cuts.csv"]);
}

#[test]
fn a_file_in_the_way_stays_and_folders_made_in_vain_go() {
    let room = tempfile::tempdir().unwrap();
    let out = room.path().join("note");
    fs::write(&out, "mine").unwrap();
    let said = message(write(&out, &sheets("a")).unwrap_err());
    assert!(said.contains("this is not a folder"), "{said}");
    assert_eq!(fs::read_to_string(&out).unwrap(), "mine");

    let doubled = [sheets("a"), sheets("b")].concat();
    let said = message(write(&room.path().join("x/y/z"), &doubled).unwrap_err());
    assert!(said.contains("the packet cannot be written"), "{said}");
    assert_eq!(names(room.path()), ["note"], "no folder and nothing temporary stays");
}

#[test]
fn the_earlier_packet_stays_when_the_new_one_cannot_take_its_place() {
    let room = tempfile::tempdir().unwrap();
    let out = room.path().join("packet");
    write(&out, &sheets("earlier")).unwrap();
    assert!(swap::swap(&room.path().join("nowhere"), &out).is_err());
    assert_eq!(fs::read_to_string(out.join("cuts.csv")).unwrap(), "earlier");
    assert_eq!(names(room.path()), ["packet"]);
}

#[test]
fn a_file_changed_by_hand_is_kept_beside() {
    let room = tempfile::tempdir().unwrap();
    let out = room.path().join("packet");
    let mut expected = vec!["packet".to_owned()];
    for (number, place) in [(1, "packet-edited"), (2, "packet-edited-2")] {
        write(&out, &sheets("written")).unwrap();
        fs::write(out.join("cuts.csv"), format!("mine {number}")).unwrap();
        let written = write(&out, &sheets("new")).unwrap();
        let [kept] = &written.kept[..] else { panic!("{written:?}") };
        assert_eq!((kept.place.clone(), &*kept.why), (room.path().join(place), "changed by hand: cuts.csv"));
        assert_eq!(fs::read_to_string(kept.place.join("cuts.csv")).unwrap(), format!("mine {number}"));
        assert_eq!(fs::read_to_string(out.join("cuts.csv")).unwrap(), "new");
        expected.push(place.to_owned());
        assert_eq!(names(room.path()), expected);
    }
}

#[test]
fn a_packet_without_a_list_is_kept_beside() {
    let room = tempfile::tempdir().unwrap();
    let out = room.path().join("packet");
    write(&out, &sheets("of an earlier version")).unwrap();
    fs::remove_file(out.join(LIST)).unwrap();
    assert_eq!(write(&out, &sheets("new")).unwrap().kept.len(), 1);
    assert_eq!(names(room.path()), ["packet", "packet-edited"]);
}

#[test]
fn what_killed_runs_left_is_swept_and_brought_back() {
    let room = tempfile::tempdir().unwrap();
    let beside = |name: &str| room.path().join(name);
    let (out, lost) = (beside("packet"), beside("lost"));
    write(&out, &sheets("standing")).unwrap();
    // Half a packet, a whole one exchanged out, an edited one, and one whose successor never came.
    fs::create_dir(beside(".packet.stavewright-aaaaaa.new")).unwrap();
    fs::write(beside(".packet.stavewright-aaaaaa.new/cuts.csv"), "hal").unwrap();
    let elsewhere = tempfile::tempdir().unwrap();
    for (old, text) in [("packet", "bbbbbb"), ("packet", "cccccc"), ("lost", "dddddd")] {
        let packet = elsewhere.path().join(text);
        write(&packet, &sheets(text)).unwrap();
        if text == "cccccc" {
            fs::write(packet.join("cuts.csv"), "mine").unwrap();
        }
        fs::rename(packet, beside(&format!(".{old}.stavewright-{text}.old"))).unwrap();
    }
    // None of ours: another name, a folder with a stranger's file.
    fs::create_dir(beside(".packet.stavewright-eeeeee.tmp")).unwrap();
    fs::create_dir(beside(".packet.stavewright-ffffff.new")).unwrap();
    fs::write(beside(".packet.stavewright-ffffff.new/letter.txt"), "mine").unwrap();

    let written = write(&out, &sheets("new")).unwrap();
    let left = [".packet.stavewright-eeeeee.tmp", ".packet.stavewright-ffffff.new"];
    assert_eq!(names(room.path()), [&left[..], &["lost", "packet", "packet-edited"]].concat());
    assert_eq!(fs::read_to_string(beside("packet-edited/cuts.csv")).unwrap(), "mine");
    assert_eq!(fs::read_to_string(lost.join("cuts.csv")).unwrap(), "dddddd");
    assert_eq!(written.kept.len(), 2, "{written:?}");
}

#[cfg(unix)]
#[test]
fn what_another_run_is_writing_is_not_swept() {
    let room = tempfile::tempdir().unwrap();
    let (at_work, _lock) = beside::folder(&room.path().join("other")).unwrap();
    fs::write(at_work.path().join("cuts.csv"), "hal").unwrap();
    write(&room.path().join("packet"), &sheets("new")).unwrap();
    assert!(at_work.path().join("cuts.csv").exists());
}

#[cfg(unix)]
#[test]
fn a_protected_packet_is_left_alone() {
    use std::os::unix::fs::PermissionsExt;
    for (protected, mode) in [("packet/cuts.csv", 0o444), ("packet", 0o555)] {
        let room = tempfile::tempdir().unwrap();
        let out = room.path().join("packet");
        write(&out, &sheets("mine")).unwrap();
        let protected = room.path().join(protected);
        fs::set_permissions(&protected, fs::Permissions::from_mode(mode)).unwrap();
        let said = message(write(&out, &sheets("new")).unwrap_err());
        assert!(said.starts_with(&format!("{}: this is write-protected", protected.display())), "{said}");
        assert_eq!(fs::read_to_string(out.join("cuts.csv")).unwrap(), "mine");
        fs::set_permissions(&protected, fs::Permissions::from_mode(0o755)).unwrap();
    }
}

#[cfg(unix)]
#[test]
fn a_private_packet_stays_private() {
    use std::os::unix::fs::PermissionsExt;
    let room = tempfile::tempdir().unwrap();
    let out = room.path().join("packet");
    write(&out, &sheets("first")).unwrap();
    fs::set_permissions(&out, fs::Permissions::from_mode(0o700)).unwrap();
    write(&out, &sheets("second")).unwrap();
    assert_eq!(out.metadata().unwrap().permissions().mode() & 0o777, 0o700);
}

#[cfg(unix)]
#[test]
fn a_link_to_a_packet_stays_a_link() {
    let room = tempfile::tempdir().unwrap();
    let (real, link) = (room.path().join("real"), room.path().join("link"));
    write(&real, &sheets("first")).unwrap();
    std::os::unix::fs::symlink(&real, &link).unwrap();
    write(&link, &sheets("second")).unwrap();
    assert!(link.symlink_metadata().unwrap().is_symlink());
    assert_eq!(fs::read_to_string(real.join("cuts.csv")).unwrap(), "second");
}

#[cfg(unix)]
#[test]
fn a_packet_has_the_rights_of_any_new_folder() {
    use std::os::unix::fs::PermissionsExt;
    let room = tempfile::tempdir().unwrap();
    let (out, usual) = (room.path().join("packet"), room.path().join("usual"));
    write(&out, &sheets("a")).unwrap();
    fs::create_dir(&usual).unwrap();
    let mode = |path: &Path| path.metadata().unwrap().permissions().mode();
    assert_eq!(mode(&out), mode(&usual));
}
