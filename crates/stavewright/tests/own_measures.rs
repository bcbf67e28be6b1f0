//! What the maker measured holds for every command as it holds on the bench, and no shelf is needed to draft.

mod common;
#[path = "common/server.rs"]
mod server;

use std::fs;
use std::path::Path;
use std::process::Command;

use common::{Said, names, run, stavewright};
use serde_json::{Value, json};
use server::{Served, harbour, until};
use workshop::{Item, Store};

/// A lot of fine cane that is wider than the catalogue has it.
fn measure(folder: &Path) {
    let mut store = Store::open(&folder.join("workshop.db")).unwrap();
    let lot = Item {
        name: "the wide lot".to_owned(),
        material: "cane fine".to_owned(),
        count: 70,
        length_mm: Some(3600.0),
        width_mm: Some(3.4),
        ..Item::default()
    };
    store.put_items(&[lot]).unwrap();
}

/// A folder with the example in it.
fn room() -> tempfile::TempDir {
    let room = common::room();
    fs::write(room.path().join("harbour.toml"), harbour()).unwrap();
    room
}

fn drafted(folder: &Path) -> (Value, Said) {
    let said = run(stavewright(folder).args(["draft", "harbour.toml", "--no-sheets", "--out", "packet"]));
    assert_eq!(said.code, 0, "{}", said.err);
    let file = fs::read_to_string(folder.join("packet/basket.json")).unwrap();
    (serde_json::from_str(&file).unwrap(), said)
}

#[test]
fn packets_of_command_and_bench_are_the_same() {
    let bench = Served::start();
    let folder = bench.folder();
    measure(folder);
    let done = Command::new(env!("CARGO_BIN_EXE_stavewright"))
        .args(["draft", "harbour.toml", "--out", "packet"])
        .current_dir(folder)
        .output()
        .unwrap();
    let told = String::from_utf8(done.stderr).unwrap();
    assert!(done.status.success(), "{told}");
    assert!(told.contains("Measured on your shelf: cane fine") && told.contains("3.4 mm"), "{told}");

    let begun = bench.post("/api/packets", &json!({ "source": bench.file("harbour.toml") }));
    let place = format!("/api/packets/{}", begun["id"].as_str().unwrap());
    until("the packet is made", || bench.get(&place).json()["state"] == "done");
    let files = bench.get(&place).json()["files"].clone();
    let mut made: Vec<&str> =
        files.as_array().unwrap().iter().filter_map(|file| file["name"].as_str()).collect();
    made.retain(|name| *name != "packet.zip");
    assert!(made.contains(&"handout.pdf") && made.contains(&"basket.json"), "{made:?}");
    for name in made {
        let ours = fs::read(folder.join("packet").join(name)).unwrap();
        assert!(ours == bench.get(&format!("{place}/{name}")).body, "{name} differs");
    }
    let page = fs::read_to_string(folder.join("packet/handout.html")).unwrap();
    assert!(page.contains("3.4 mm") && page.contains("measured"), "the handout says what was measured");
    let basket: Value =
        serde_json::from_str(&fs::read_to_string(folder.join("packet/basket.json")).unwrap()).unwrap();
    assert_eq!(basket["own_measures"][0]["material"], "cane fine");
    assert_eq!(basket["own_measures"][0]["width_mm"], 3.4);
}

#[test]
fn every_command_that_drafts_takes_them() {
    let room = room();
    let folder = room.path();
    let (plain, said) = drafted(folder);
    assert_eq!((&plain["own_measures"], said.err.as_str()), (&json!([]), ""));
    assert!(!folder.join("workshop.db").exists(), "drafting makes no shelf");
    measure(folder);
    let (own, _) = drafted(folder);
    let rows = own["weave"]["rows"].as_u64().unwrap();
    assert!(rows < plain["weave"]["rows"].as_u64().unwrap(), "of wider cane fewer rows");

    fs::write(folder.join("kits.toml"), "title = \"Autumn\"\n[[students]]\npattern = \"harbour.toml\"\n")
        .unwrap();
    for arguments in [
        &["check", "harbour.toml"][..],
        &["chart", "harbour.toml"],
        &["sizes", "harbour.toml", "--across", "9,10"],
        &["kits", "kits.toml"],
        &["buy", "kits.toml"],
        &["cutting", "kits.toml"],
        &["price", "kits.toml"],
        &["order", "quote", "one", "harbour.toml", "--price", "180"],
    ] {
        let said = run(stavewright(folder).args(arguments));
        assert!(said.err.contains("Measured on your shelf: cane fine"), "{arguments:?}: {}", said.err);
    }
    // A folder elsewhere has a shelf of its own, and a pattern from there its measures.
    let from = common::room();
    let path = folder.join("harbour.toml");
    let said = run(stavewright(from.path()).args(["check", path.to_str().unwrap()]));
    assert!(said.err.contains("Measured on your shelf: cane fine"), "{}", said.err);
    assert_eq!(names(from.path()), [""; 0]);
}

#[test]
fn a_shelf_that_cannot_be_read_keeps_no_pattern_from_being_drafted() {
    let plain = drafted(room().path()).0;
    let foreign = |path: &Path| fs::write(path, "somebody else's").unwrap();
    let newer = |path: &Path| {
        drop(Store::open(path).unwrap());
        rusqlite::Connection::open(path).unwrap().pragma_update(None, "user_version", 99).unwrap();
    };
    let damaged = |path: &Path| {
        measure(path.parent().unwrap());
        let mut bytes = fs::read(path).unwrap();
        bytes.iter_mut().skip(100).for_each(|byte| *byte = 0xa5);
        fs::write(path, bytes).unwrap();
    };
    let spoilers: [fn(&Path); 3] = [foreign, newer, damaged];
    for (spoil, why) in spoilers.into_iter().zip(["no shelf", "newer", "damaged"]) {
        let room = room();
        let file = room.path().join("workshop.db");
        spoil(&file);
        let before = fs::read(&file).unwrap();
        let (basket, said) = drafted(room.path());
        assert!(
            said.err.contains("so the catalogue’s measures hold") && said.err.contains(why),
            "{}",
            said.err
        );
        assert_eq!(basket, plain, "{why}");
        assert!(fs::read(&file).unwrap() == before, "{why}: it was changed");
    }
}

#[test]
fn a_shelf_that_another_program_holds_is_not_waited_for_in_vain() {
    let plain = drafted(room().path()).0;
    let room = room();
    measure(room.path());
    let holder = rusqlite::Connection::open(room.path().join("workshop.db")).unwrap();
    holder.pragma_update_and_check(None, "locking_mode", "EXCLUSIVE", |_| Ok(())).unwrap();
    holder.execute_batch("BEGIN EXCLUSIVE; UPDATE items SET count = 1").unwrap();
    let (basket, said) = drafted(room.path());
    assert!(said.err.contains("so the catalogue’s measures hold"), "{}", said.err);
    assert_eq!(basket, plain);
    drop(holder);
    assert_eq!(drafted(room.path()).0["own_measures"][0]["width_mm"], 3.4);
}
