//! A teacher's own templates, notes and photographs: what is taken, and what bad input is told.

mod common;

use std::fs;
use std::path::{Path, PathBuf};

use common::{Said, fits, harbour, names, room, run, stavewright};
use resvg::tiny_skia::Pixmap;
use tempfile::TempDir;

fn png() -> Vec<u8> {
    Pixmap::new(6, 4).unwrap().encode_png().unwrap()
}

/// The example with a note for its rim that names this photo, on line 4 of the note.
fn noted(room: &TempDir, photo: &str) -> PathBuf {
    let text = fs::read_to_string(harbour()).unwrap();
    let note = format!("\n[[note]]\nstep = \"rim\"\nphoto = \"{photo}\"\ncaption = \"Both hoops\"\n");
    let path = room.path().join("noted.toml");
    fs::write(&path, text + &note).unwrap();
    path
}

fn draft(folder: &Path, pattern: &Path, args: &[&str]) -> Said {
    let said = run(stavewright(folder).arg("draft").arg(pattern).args(args));
    fits(&said.out);
    said
}

#[test]
fn bad_photos_point_into_the_pattern() {
    let room = room();
    let line = fs::read_to_string(harbour()).unwrap().lines().count() + 4;
    fs::create_dir(room.path().join("album")).unwrap();
    fs::create_dir(room.path().join("album.jpg")).unwrap();
    fs::write(room.path().join("text.jpg"), "no picture").unwrap();
    fs::write(room.path().join("really.jpg"), png()).unwrap();
    fs::write(room.path().join("cut.png"), &png()[..40]).unwrap();
    fs::write(room.path().join("huge.png"), vec![0; 25_000_001]).unwrap();
    let mut wide = png();
    wide[16..20].copy_from_slice(&50_000_u32.to_be_bytes());
    fs::write(room.path().join("wide.png"), wide).unwrap();
    let cases = [
        ("nowhere.jpg", "cannot be read"),
        ("album.jpg", "is not a file"),
        ("text.jpg", "is not a JPEG file inside"),
        ("really.jpg", "is not a JPEG file inside"),
        ("cut.png", "is broken"),
        ("huge.png", "is larger than 25 MB"),
        ("wide.png", "wide.png"),
        ("../outside.png", "cannot be `../outside.png`"),
    ];
    for (photo, wanted) in cases {
        let said = draft(room.path(), &noted(&room, photo), &["--out", "out"]);
        assert_eq!(said.code, 2, "{photo}: {}", said.out);
        assert!(said.err.contains(&format!("noted.toml:{line}:9: ")), "{photo}: {}", said.err);
        assert!(said.err.contains(wanted) && said.err.contains("help: "), "{photo}: {}", said.err);
        assert!(!room.path().join("out").exists(), "{photo}");
    }
}

#[cfg(unix)]
#[test]
fn a_link_out_of_the_folder_is_not_followed() {
    let (room, elsewhere) = (room(), room());
    fs::write(elsewhere.path().join("private.png"), png()).unwrap();
    std::os::unix::fs::symlink(elsewhere.path().join("private.png"), room.path().join("link.png")).unwrap();
    let said = draft(room.path(), &noted(&room, "link.png"), &[]);
    assert_eq!(said.code, 2);
    assert!(said.err.contains("lies outside the pattern's folder"), "{}", said.err);
}

#[test]
fn templates_are_written_changed_and_used_with_photos_and_the_stages_of_a_show() {
    let room = room();
    let said = run(stavewright(room.path()).args(["templates", "--out", "ours"]));
    assert_eq!((said.code, said.err.as_str()), (0, ""));
    let ours = room.path().join("ours");
    assert!(names(&ours).contains(&"handout.typ".to_owned()), "{:?}", names(&ours));
    let again = run(stavewright(room.path()).args(["templates", "--out", "ours"]));
    assert!(again.code == 2 && again.err.contains("there is something of this name"), "{}", again.err);

    let page = fs::read_to_string(ours.join("page.html")).unwrap();
    fs::write(ours.join("page.html"), page.replace("<footer>", "<footer>Our own school. ")).unwrap();
    let sheet = fs::read_to_string(ours.join("demonstration.typ")).unwrap();
    fs::write(ours.join("demonstration.typ"), format!("{sheet}\n#assert.eq(plan.samples.len(), 2)\n"))
        .unwrap();
    fs::create_dir(room.path().join("photos")).unwrap();
    fs::write(room.path().join("photos/rim.png"), png()).unwrap();
    let args = ["--out", "out", "--templates", "ours", "--show", "pinned,woven", "--show-hours", "3"];
    let said = draft(room.path(), &noted(&room, "photos/rim.png"), &args);
    assert_eq!((said.code, said.err.as_str()), (0, ""));
    let page = fs::read_to_string(room.path().join("out/handout.html")).unwrap();
    assert!(page.contains("Our own school.") && page.contains("alt=\"Both hoops\""));
}

#[test]
fn wrong_templates_are_pointed_at() {
    let room = room();
    let ours = room.path().join("ours");
    let cases: [(&str, &[u8], &str); 5] = [
        (
            "handout.typ",
            b"#import \"house.typ\": *\n\n  #nonsense",
            "handout.typ:3:4: unknown variable: nonsense",
        ),
        ("page.html", b"<p>\n{{ nonsense }}", "page.html:2:"),
        ("handuot.typ", b"x", "no sheet is set from a file of this name"),
        ("house.typ", b"\xff\xfe", "not UTF-8 text"),
        (".hidden", b"x", "there is no template in this folder"),
    ];
    for (name, text, wanted) in cases {
        fs::create_dir(&ours).unwrap();
        fs::write(ours.join(name), text).unwrap();
        let said = draft(room.path(), &harbour(), &["--out", "out", "--templates", "ours"]);
        assert_eq!(said.code, 2, "{name}: {}", said.out);
        assert!(said.err.contains(wanted) && said.err.contains("help: "), "{name}: {}", said.err);
        assert!(!room.path().join("out").exists(), "{name}");
        fs::remove_dir_all(&ours).unwrap();
    }
    let said = draft(room.path(), &harbour(), &["--templates", "nowhere"]);
    assert!(said.code == 2 && said.err.contains("nowhere: this folder of templates"), "{}", said.err);
}

/// What a template holds doubles with each step, without an end that memory would reach.
#[test]
#[cfg(target_os = "linux")]
fn a_template_that_takes_all_memory_is_ended() {
    let room = room();
    let ours = room.path().join("ours");
    fs::create_dir(&ours).unwrap();
    let text = "#let held = (0,)\n#for step in range(40) { held = held + held }\n";
    fs::write(ours.join("bench-card.typ"), text).unwrap();
    let said = draft(room.path(), &harbour(), &["--out", "out", "--templates", "ours"]);
    assert_eq!(said.code, 2, "{}", said.out);
    assert!(said.err.contains("take more than 2 GB of memory"), "{}", said.err);
    assert!(!room.path().join("out").exists());
}

#[test]
fn a_show_that_makes_no_sense_is_refused() {
    let room = room();
    let said = draft(room.path(), &harbour(), &["--show", "wovn"]);
    assert!(said.code == 2 && said.err.contains("woven"), "{}", said.err);
    let said = draft(room.path(), &harbour(), &["--show-hours", "0"]);
    assert!(said.code == 2 && said.err.contains("1..=24"), "{}", said.err);
}
