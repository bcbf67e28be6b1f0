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
        ("mould.svg", b"<svg"),
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

#[test]
fn a_printer_cuts_the_mould_and_is_told_how() {
    let room = room();
    let mould = |arguments: &[&str]| {
        run(stavewright(room.path()).arg("mould").arg(pattern("pilot-letter-basket.toml")).args(arguments))
    };
    for (size, name) in
        [("8 x 8 x 10 in", "in.3mf"), ("200 mm x 200 mm x 250 mm", "mm.stl"), ("20x20x25 cm", "cm.pdf")]
    {
        let said = mould(&["--printer", size, "--out", name]);
        assert_eq!(said.code, 0, "{size}: {}", said.err);
        fits(&said.out);
        let told = said.out.split_whitespace().collect::<Vec<_>>().join(" ");
        assert!(
            told.contains("cut into 2 parts") && told.contains("2 pegs hold it together"),
            "{size}: {told}"
        );
    }
    let said = mould(&["--printer", "1000 x 1000 x 1000 mm", "--out", "whole.3mf"]);
    assert!(said.code == 0 && said.out.contains("in one piece"), "{}{}", said.out, said.err);
    for (size, why) in [
        ("200 x 200 mm", "2 lengths instead of three"),
        ("200 x 200 x tall mm", "--printer"),
        ("1 x 1 x 1 mm", "no printer has such a side"),
        ("50 x 50 x 50 mm", "parts"),
        ("", "--printer"),
    ] {
        let said = mould(&["--printer", size, "--out", "no.stl"]);
        assert!(said.code == 2 && said.err.contains(why), "{size}: {}{}", said.out, said.err);
        assert!(!room.path().join("no.stl").exists());
    }
}

#[test]
fn a_mould_in_pieces_is_written_as_core_and_segments() {
    let room = room();
    let urn = |neck: &str| {
        format!(
            "title = \"Urn\"\nunits = \"mm\"\n[mould]\npieces = \"several\"\n\
             girths = [[\"0\", \"560\"], [\"60\", \"760\"], [\"140\", \"{neck}\"]]\n"
        )
    };
    fs::write(room.path().join("urn.toml"), urn("660")).unwrap();
    fs::write(room.path().join("flask.toml"), urn("150")).unwrap();
    for name in ["urn.3mf", "urn.stl", "urn.pdf"] {
        let said = run(stavewright(room.path()).args(["mould", "urn.toml", "--out", name]));
        let told = said.out.split_whitespace().collect::<Vec<_>>().join(" ");
        assert!(said.code < 2 && told.contains("Draw the core out upward"), "{name}: {told}{}", said.err);
        fits(&said.out);
    }
    let said = run(stavewright(room.path()).args(["mould", "flask.toml", "--out", "flask.3mf"]));
    assert!(said.code == 2 && said.err.contains("does not come apart"), "{}{}", said.out, said.err);
    let said = run(stavewright(room.path()).args(["mould", "flask.toml", "--out", "flask.pdf"]));
    assert_eq!(said.code, 1, "{}{}", said.out, said.err);
}
