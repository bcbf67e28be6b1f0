//! One sheet alone.

mod common;

use std::fs;

use common::{harbour, room, run, stavewright};

#[test]
fn one_sheet_is_written_under_the_patterns_name_and_its_own() {
    let room = room();
    let said = run(stavewright(room.path()).args(["sheet", "teacher"]).arg(harbour()));
    assert_eq!((said.code, said.err.as_str()), (0, ""));
    assert_eq!(said.out, "Wrote harbour-bread-basket-teacher.pdf\n");
    let pdf = fs::read(room.path().join("harbour-bread-basket-teacher.pdf")).unwrap();
    assert!(pdf.starts_with(b"%PDF-") && pdf.len() > 10_000, "{} bytes", pdf.len());
}

#[test]
fn what_is_wrong_is_said_with_what_mends_it() {
    let room = room();
    let said = run(stavewright(room.path()).args(["sheet", "techer"]).arg(harbour()));
    assert!(said.code == 2 && said.err.contains("teacher"), "{}", said.err);
    let said = run(stavewright(room.path()).args(["sheet", "sale"]).arg(harbour()).args(["--out", "x.png"]));
    assert!(said.code == 2 && said.err.contains("a sheet is written as .pdf"), "{}", said.err);
    let pattern = fs::read_to_string(harbour()).unwrap();
    fs::write(room.path().join("mine.toml"), pattern + "\n[sale]\nedtion = \"first\"\n").unwrap();
    let said = run(stavewright(room.path()).args(["sheet", "sale", "mine.toml"]));
    assert!(said.code == 2 && said.err.contains("did you mean `edition`?"), "{}", said.err);
    assert!(!room.path().join("x.png").exists() && !room.path().join("mine-sale.pdf").exists());
}
