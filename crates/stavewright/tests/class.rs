//! `stavewright class` and `stavewright hand`, as a teacher runs them.

mod common;

use common::{fits, room, run, stavewright};

/// A folder with an example class and the patterns it names.
fn school() -> tempfile::TempDir {
    let room = room();
    let root = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../..");
    for folder in ["classes", "patterns"] {
        std::fs::create_dir(room.path().join(folder)).unwrap();
        for entry in std::fs::read_dir(root.join(folder)).unwrap() {
            let path = entry.unwrap().path();
            if path.is_file() {
                std::fs::copy(&path, room.path().join(folder).join(path.file_name().unwrap())).unwrap();
            }
        }
    }
    room
}

#[test]
fn a_weekend_that_is_too_short_is_refused_with_reasons_and_mends() {
    let room = school();
    let said = run(stavewright(room.path()).args(["class", "classes/harbour-weekend.toml"]));
    assert_eq!(said.code, 1, "{}", said.err);
    fits(&said.out);
    insta::assert_snapshot!(said.out);
}

#[test]
fn a_class_that_fits_is_written_as_pdf_and_calendar() {
    let room = school();
    let said = run(stavewright(room.path()).args(["class", "classes/ferry-two-weekends.toml"]).args([
        "--sheet",
        "plan.pdf",
        "--calendar",
        "plan.ics",
    ]));
    assert_eq!(said.code, 0, "{}{}", said.out, said.err);
    fits(&said.out);
    assert!(said.out.contains("that is proven") && !said.out.contains("does not fit"), "{}", said.out);
    assert!(std::fs::read(room.path().join("plan.pdf")).unwrap().starts_with(b"%PDF"));
    let calendar = std::fs::read_to_string(room.path().join("plan.ics")).unwrap();
    assert_eq!(calendar.matches("BEGIN:VEVENT").count(), 8);
    assert!(calendar.contains("TZID=America/New_York:20270306T090000"), "{calendar}");
}

#[test]
fn a_class_speaks_german_and_json() {
    let room = school();
    let class = "classes/harbour-weekend.toml";
    let said = run(stavewright(room.path()).args(["class", class, "--language", "de"]));
    assert!(said.out.contains("Die Zeit reicht nicht") && said.out.contains("Formen mehr"), "{}", said.out);
    let said = run(stavewright(room.path()).args(["class", class, "--format", "json"]));
    let told: serde_json::Value = serde_json::from_str(&said.out).unwrap();
    assert_eq!(
        (told["answer"].as_str(), told["students"].as_array().map(Vec::len)),
        (Some("does-not-fit"), Some(0))
    );
}

#[test]
fn a_wrong_class_is_told_with_its_place() {
    let room = school();
    let path = room.path().join("classes/harbour-weekend.toml");
    let text = std::fs::read_to_string(&path).unwrap().replace("moulds = 4", "moulds = 0");
    std::fs::write(&path, text).unwrap();
    let said = run(stavewright(room.path()).args(["class", "classes/harbour-weekend.toml"]));
    assert_eq!(said.code, 2);
    assert!(
        said.err.contains("`moulds` cannot be 0") && said.err.contains("harbour-weekend.toml:8:10"),
        "{}",
        said.err
    );
}

#[test]
fn a_hand_is_learned_from_records() {
    let room = school();
    let record = |number: u32| {
        format!(
            "[[record]]\nnumber = {number}\npattern = \"Harbour bread basket\"\nminutes = {{ half = 66, rest = 48 }}\n\
             rows = 36\nwet = \"4 1/4 in\"\ndry = \"4 in\"\nstaves = 71\nspoilt = 6\n"
        )
    };
    std::fs::write(room.path().join("records.toml"), record(1) + &record(2)).unwrap();
    let hand = ["hand", "records.toml", "patterns/harbour-bread-basket.toml"];
    let said = run(stavewright(room.path()).args(hand));
    assert_eq!(said.code, 0, "{}", said.err);
    fits(&said.out);
    insta::assert_snapshot!(said.out);
    let other = ["hand", "records.toml", "patterns/ferry-egg-basket.toml"];
    let said = run(stavewright(room.path()).args(other));
    assert_eq!(said.code, 2);
    assert!(said.err.contains("record 1 is of “Harbour bread basket”"), "{}", said.err);
}
