//! `stavewright mould`: each form by the ending of the file.

mod common;

use std::fs;

use common::{fits, pattern, room, run, stavewright};

#[test]
fn every_ending_writes_its_form() {
    let room = room();
    for (name, begins) in [
        ("mould.pdf", &b"%PDF-"[..]),
        ("mould.stl", b""),
        ("mould.3mf", b"PK"),
        ("mould.dxf", b"0\r\nSECTION"),
    ] {
        for of in ["harbour-bread-basket.toml", "pilot-letter-basket.toml"] {
            let said = run(stavewright(room.path()).arg("mould").arg(pattern(of)).args(["--out", name]));
            assert_eq!(said.code, 0, "{name}: {}", said.err);
            fits(&said.out);
            assert!(fs::read(room.path().join(name)).unwrap().starts_with(begins), "{name}");
        }
    }
    let lid = |of: &str| {
        run(stavewright(room.path()).arg("mould").arg(pattern(of)).args(["--lid", "--out", "lid.pdf"]))
    };
    let said = lid("pilot-letter-basket.toml");
    assert_eq!(said.code, 0, "{}", said.err);
    assert!(fs::read(room.path().join("lid.pdf")).unwrap().starts_with(b"%PDF-"));
    let said = lid("harbour-bread-basket.toml");
    assert!(said.code == 2 && said.err.contains("no lid"), "{}", said.err);
    let stl = fs::read(room.path().join("mould.stl")).unwrap();
    // 84 + 50·F bytes (M. Burns, Automated Fabrication, 1993, section 6.5); drawings' tests read it through.
    let triangles = u32::from_le_bytes([stl[80], stl[81], stl[82], stl[83]]) as usize;
    assert!(triangles > 1000 && stl.len() == 84 + 50 * triangles);
}

#[test]
fn bad_boards_and_endings_are_refused() {
    let room = room();
    let mould = |arguments: &[&str]| {
        run(stavewright(room.path()).arg("mould").arg(pattern("harbour-bread-basket.toml")).args(arguments))
    };
    let said = mould(&["--out", "mould.step"]);
    assert!(said.code == 2 && said.err.contains(".dxf"), "{}", said.err);
    let said = mould(&["--board", "0 in"]);
    assert!(said.code == 2 && said.err.contains("--board"), "{}", said.err);
}
