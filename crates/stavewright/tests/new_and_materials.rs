//! `new` and `materials`.

mod common;

use std::fs;

use common::{fits, names, room, run, stavewright};

#[test]
fn new_writes_a_pattern_that_can_be_checked() {
    let room = room();
    let said = run(stavewright(room.path()).args(["new", "mine.toml"]));
    assert_eq!((said.code, said.err.as_str()), (0, ""));
    assert_eq!(said.out, "Wrote mine.toml. Fill it in, then: stavewright check mine.toml\n");
    assert_eq!(names(room.path()), ["mine.toml"]);
    let said = run(stavewright(room.path()).args(["check", "mine.toml"]));
    assert_eq!(said.code, 0, "{}{}", said.out, said.err);
}

#[test]
fn new_without_a_name_writes_basket_toml() {
    let room = room();
    assert_eq!(run(stavewright(room.path()).arg("new")).code, 0);
    assert_eq!(names(room.path()), ["basket.toml"]);
}

#[test]
fn new_prints_the_pattern_when_asked() {
    let room = room();
    let said = run(stavewright(room.path()).args(["new", "-"]));
    assert!(said.out.contains("[mould]") && said.out.starts_with('#'), "{}", said.out);
    assert_eq!(names(room.path()), Vec::<String>::new());
}

#[test]
fn new_never_writes_over_a_file() {
    let room = room();
    fs::write(room.path().join("mine.toml"), "mine").unwrap();
    let said = run(stavewright(room.path()).args(["new", "mine.toml"]));
    assert_eq!(said.code, 2);
    assert!(said.err.contains("mine.toml: there is a file of this name already"), "{}", said.err);
    assert_eq!(fs::read_to_string(room.path().join("mine.toml")).unwrap(), "mine");
}

#[test]
fn new_says_when_there_is_no_such_folder() {
    let room = room();
    let said = run(stavewright(room.path()).args(["new", "nowhere/mine.toml"]));
    assert_eq!(said.code, 2);
    assert!(said.err.contains("nowhere/mine.toml: cannot be written"), "{}", said.err);
    assert_eq!(names(room.path()), Vec::<String>::new());
}

#[test]
fn materials_by_words() {
    let said = run(stavewright(room().path()).args(["materials", "flat", "oval"]));
    insta::assert_snapshot!(said.out);
}

#[test]
fn materials_with_their_sources() {
    let said =
        run(stavewright(room().path()).args(["materials", "--kind", "chair-cane", "common", "--sources"]));
    fits(&said.out);
    insta::assert_snapshot!(said.out);
}

#[test]
fn every_kind_can_be_asked_for() {
    let all = run(stavewright(room().path()).args(["materials", "--format", "json"])).out;
    let all: serde_json::Value = serde_json::from_str(&all).unwrap();
    let mut kinds: Vec<_> =
        all["materials"].as_array().unwrap().iter().map(|one| one["kind"].as_str().unwrap()).collect();
    kinds.dedup();
    assert!(kinds.len() > 5, "{kinds:?}");
    for kind in kinds {
        let said = run(stavewright(room().path()).args(["materials", "--kind", kind, "--format", "json"]));
        let shown: serde_json::Value = serde_json::from_str(&said.out).unwrap();
        let shown = shown["materials"].as_array().unwrap();
        assert!(!shown.is_empty() && shown.iter().all(|one| one["kind"] == kind), "{kind}");
    }
}

#[test]
fn every_material_says_where_its_figures_come_from() {
    let all = run(stavewright(room().path()).args(["materials", "--format", "json"])).out;
    let all: serde_json::Value = serde_json::from_str(&all).unwrap();
    for one in all["materials"].as_array().unwrap() {
        assert!(one["sources"].as_object().is_some_and(|sources| !sources.is_empty()), "{one}");
    }
}

#[test]
fn materials_that_nobody_has() {
    let said = run(stavewright(room().path()).args(["materials", "unobtainium"]));
    assert_eq!(said.code, 2);
    assert!(said.err.contains("no material fits"), "{}", said.err);
}
