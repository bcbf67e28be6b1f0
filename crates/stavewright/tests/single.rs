//! One file that is written over another one: its rights stay, and what may not be replaced is not.
#![cfg(unix)]

mod common;
#[path = "common/server.rs"]
mod server;

use std::fs::{self, Permissions};
use std::os::unix::fs::{MetadataExt, PermissionsExt, chown, symlink};
use std::path::Path;

use common::{Said, harbour, names, room, run, stavewright};
use serde_json::json;
use server::{Answer, Served};

fn chart(folder: &Path, out: &str) -> Said {
    run(stavewright(folder).arg("chart").arg(harbour()).args(["--out", out]))
}

fn mode(file: &Path) -> u32 {
    file.metadata().unwrap().permissions().mode() & 0o7777
}

fn save(bench: &Served, text: &str) -> Answer {
    let hash = bench.get("/api/patterns/harbour").json()["hash"].clone();
    bench.ask("PUT", "/api/patterns/harbour", Some(&json!({ "source": text, "base_hash": hash })))
}

#[test]
fn mode_and_owner_stay() {
    let room = room();
    let file = room.path().join("chart.svg");
    fs::write(&file, "old").unwrap();
    fs::set_permissions(&file, Permissions::from_mode(0o640)).unwrap();
    // Only a mighty user can give a file away; for all others it stays their own.
    let owner = if chown(&file, Some(4321), Some(4322)).is_ok() { (4321, 4322) } else { owner(&file) };
    assert_eq!(chart(room.path(), "chart.svg").code, 0);
    assert_ne!(fs::read(&file).unwrap(), b"old");
    assert_eq!((mode(&file), owner), (0o640, self::owner(&file)));
}

fn owner(file: &Path) -> (u32, u32) {
    let about = file.metadata().unwrap();
    (about.uid(), about.gid())
}

#[test]
fn a_protected_file_stays_as_it_is() {
    let room = room();
    let file = room.path().join("chart.svg");
    fs::write(&file, "mine").unwrap();
    fs::set_permissions(&file, Permissions::from_mode(0o444)).unwrap();
    let said = chart(room.path(), "chart.svg");
    assert_eq!(said.code, 2);
    assert!(said.err.contains("chart.svg: this file is write-protected"), "{}", said.err);
    assert_eq!(fs::read(&file).unwrap(), b"mine");
    assert_eq!(names(room.path()), ["chart.svg"]);
}

#[test]
fn a_link_stays_a_link() {
    let room = room();
    fs::create_dir(room.path().join("there")).unwrap();
    fs::write(room.path().join("there/chart.svg"), "old").unwrap();
    symlink("there/chart.svg", room.path().join("chart.svg")).unwrap();
    assert_eq!(chart(room.path(), "chart.svg").code, 0);
    assert!(room.path().join("chart.svg").is_symlink());
    assert_ne!(fs::read(room.path().join("there/chart.svg")).unwrap(), b"old");
}

#[test]
fn what_is_no_file_is_not_replaced() {
    let room = room();
    fs::create_dir(room.path().join("folder.svg")).unwrap();
    symlink("/dev/null", room.path().join("device.svg")).unwrap();
    for out in ["folder.svg", "device.svg"] {
        let said = chart(room.path(), out);
        assert_eq!(said.code, 2, "{out}");
        assert!(said.err.contains(&format!("{out}: this is not a file")), "{}", said.err);
    }
    assert!(!Path::new("/dev/null").metadata().unwrap().is_file());
}

#[test]
fn a_pattern_keeps_its_mode_when_it_is_saved() {
    let bench = Served::start();
    let file = bench.folder().join("harbour.toml");
    fs::set_permissions(&file, Permissions::from_mode(0o604)).unwrap();
    let text = server::harbour().replace("[weave]", "# saved\n[weave]");
    assert_eq!(save(&bench, &text).status, 200);
    assert_eq!((mode(&file), bench.file("harbour.toml")), (0o604, text));
}

#[test]
fn a_protected_pattern_is_not_saved() {
    let bench = Served::start();
    let file = bench.folder().join("harbour.toml");
    fs::set_permissions(&file, Permissions::from_mode(0o444)).unwrap();
    let refused = save(&bench, &server::harbour().replace("[weave]", "# saved\n[weave]"));
    refused.assert_refused(403);
    assert!(refused.text().contains("write-protected"), "{}", refused.text());
    assert_eq!(bench.file("harbour.toml"), server::harbour());
}

#[test]
fn of_two_benches_over_one_folder_the_second_is_told() {
    let one = Served::start();
    let other = Served::over(one.folder(), &[]);
    let hash = one.get("/api/patterns/harbour").json()["hash"].clone();
    let save = |bench: &Served, number: usize| {
        let text = server::harbour().replace("[weave]", &format!("# window {number}\n[weave]"));
        let body = json!({ "source": text, "base_hash": hash });
        bench.ask("PUT", "/api/patterns/harbour", Some(&body)).status
    };
    let statuses: Vec<u16> = std::thread::scope(|scope| {
        let (one, other, save) = (&one, &other, &save);
        let windows: Vec<_> = (0..24)
            .map(|number| scope.spawn(move || save(if number % 2 == 0 { one } else { other }, number)))
            .collect();
        windows.into_iter().map(|window| window.join().unwrap()).collect()
    });
    assert_eq!(statuses.iter().filter(|status| **status == 200).count(), 1, "{statuses:?}");
    assert_eq!(statuses.iter().filter(|status| **status == 409).count(), 23, "{statuses:?}");
    let left = names(one.folder()).into_iter().filter(|name| !name.starts_with("workshop.db"));
    assert_eq!(left.collect::<Vec<_>>(), ["harbour.toml"]);
}
