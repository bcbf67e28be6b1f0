//! `picture` and `solid`: what is written, and what bad input is told.

mod common;

use std::fs;
use std::path::Path;

use common::{Said, fits, harbour, names, room, run, stavewright};
use resvg::tiny_skia::Pixmap;

fn say(folder: &Path, command: &str, args: &[&str]) -> Said {
    let said = run(stavewright(folder).arg(command).arg(harbour()).args(args));
    fits(&said.out);

    said
}

#[test]
fn a_picture_from_a_named_view_and_from_angles() {
    let room = room();
    for (view, file) in [("top", "top.svg"), ("-40,15.5", "angles.svg")] {
        let said = say(room.path(), "picture", &["--view", view, "--out", file, "--width", "3 in"]);
        assert_eq!((said.code, said.err.as_str()), (0, ""), "{view}");
        let svg = fs::read_to_string(room.path().join(file)).unwrap();
        assert!(svg.starts_with("<svg") && svg.contains("Harbour bread basket</title>"), "{view}");
    }
    assert_eq!(names(room.path()), ["angles.svg", "top.svg"]);
}

#[test]
fn a_stage_drawing_has_the_width_that_is_asked_for() {
    let room = room();
    let said = say(room.path(), "picture", &["--stage", "lashing-start", "--width", "140 mm"]);
    assert_eq!(said.code, 0, "{}", said.err);
    let svg = fs::read_to_string(room.path().join("harbour-bread-basket-lashing-start.svg")).unwrap();
    assert!(svg.contains(" width=\"140mm\""), "{}", &svg[..300]);
    let said = say(room.path(), "picture", &["--stage", "join", "--width", "50 mm", "--out", "join.png"]);
    assert_eq!(said.code, 0, "{}", said.err);
    let picture = Pixmap::decode_png(&fs::read(room.path().join("join.png")).unwrap()).unwrap();
    assert!((400..=401).contains(&picture.width()), "{}", picture.width());
}

#[test]
fn a_shaded_picture_has_colours() {
    let room = room();
    let args =
        ["--view", "side", "--style", "shaded", "--stage", "half-woven", "--base-up", "--width", "40 mm"];
    let said = say(room.path(), "picture", &args);
    assert_eq!(said.code, 0, "{}", said.err);
    let file = fs::read(room.path().join("harbour-bread-basket-half-woven.png")).unwrap();
    let picture = Pixmap::decode_png(&file).unwrap();
    assert!(picture.width().max(picture.height()) <= 340);
    let coloured = picture.pixels().iter().filter(|dot| dot.alpha() > 0 && dot.red() != dot.blue()).count();
    assert!(coloured > 1000, "{coloured}");
}

#[test]
fn the_bare_mould_is_a_stage_too() {
    let room = room();
    for args in [&["--stage", "prepared"][..], &["--stage", "prepared", "--style", "shaded"]] {
        let said = say(room.path(), "picture", &[args, &["--width", "40 mm"]].concat());
        assert_eq!((said.code, said.err.as_str()), (0, ""), "{args:?}");
    }
    let said = say(room.path(), "solid", &["--stage", "prepared", "--out", "mould.stl"]);
    assert_eq!((said.code, said.err.as_str()), (0, ""));
    let wanted = ["harbour-bread-basket-prepared.png", "harbour-bread-basket-prepared.svg", "mould.stl"];
    assert_eq!(names(room.path()), wanted);
}

#[test]
fn pictures_that_cannot_be_drawn_say_what_there_is() {
    let room = room();
    let cases: [(&[&str], &[&str]); 9] = [
        (&["--view", "sideways"], &["no view called “sideways”", "front, side, back, top", "three-quarter"]),
        (&["--view", "10,100"], &["no view 10,100", "-90 to 90"]),
        (&["--stage", "half"], &["no stage drawing called “half”", "prepared", "half-woven", "exploded"]),
        (&["--stage", "join", "--view", "top"], &["has its own view", "prepared, base-on-mould, staves-set"]),
        (&["--width", "0 mm"], &["--width 0 mm", "from 5 mm to 1000 mm"]),
        (&["--width", "-5 in"], &["--width -5 in"]),
        (&["--width", "5 inn"], &["--width 5 inn", "did you mean"]),
        (&["--style", "shaded", "--out", "a.svg"], &["a.svg: a shaded picture is written as .png"]),
        (&["--style", "shaded", "--width", "900 mm"], &["at most 300 mm"]),
    ];
    for (args, wanted) in cases {
        let said = say(room.path(), "picture", args);
        assert_eq!(said.code, 2, "{args:?}: {}", said.out);
        for part in wanted {
            let plain = said.err.replace("\n      ", " ");
            assert!(plain.contains(part), "{args:?}: {}", said.err);
        }
    }
    assert!(names(room.path()).is_empty(), "{:?}", names(room.path()));
}

#[test]
fn a_drawing_of_what_a_basket_has_not_is_refused() {
    let room = room();
    let text = fs::read_to_string(harbour()).unwrap();
    let (body, _) = text.split_once("[handle]").unwrap();
    fs::write(room.path().join("bare.toml"), body).unwrap();
    let said = run(stavewright(room.path()).args(["picture", "bare.toml", "--stage", "ear-with-rivet"]));
    assert_eq!(said.code, 2);
    assert!(said.err.contains("nothing to show in a drawing called “ear-with-rivet”"), "{}", said.err);
    assert!(said.err.contains("ears-set"), "{}", said.err);
}

#[test]
fn solids_in_three_forms() {
    let room = room();
    for (file, begins) in [("a.glb", &b"glTF"[..]), ("a.stl", b"basket in millimetres"), ("a.3mf", b"PK")] {
        let said = say(room.path(), "solid", &["--detail", "thumbnail", "--stage", "woven", "--out", file]);
        assert_eq!((said.code, said.err.as_str()), (0, ""));
        assert!(said.out.contains("triangles"), "{}", said.out);
        assert!(fs::read(room.path().join(file)).unwrap().starts_with(begins), "{file}");
    }
}

#[test]
fn solids_that_cannot_be_written() {
    let room = room();
    let said = say(room.path(), "solid", &["--out", "a.obj"]);
    assert_eq!(said.code, 2);
    assert!(
        said.err.contains("a.obj: a basket in the round is written as .glb, .stl or .3mf"),
        "{}",
        said.err
    );
    let said = say(room.path(), "solid", &["--out", "nowhere/a.glb", "--detail", "thumbnail"]);
    assert_eq!(said.code, 2);
    assert!(said.err.contains("nowhere/a.glb: cannot be written"), "{}", said.err);
    let said = run(stavewright(room.path()).args(["solid", "x.toml", "--stage", "wovn"]));
    assert!(said.code == 2 && said.err.contains("woven"), "{}", said.err);
    assert!(names(room.path()).is_empty());
}

#[test]
fn a_basket_with_a_stop_is_drawn_all_the_same_and_told_by_the_exit_status() {
    let room = room();
    let even = common::changed(&room, "# Count, taper", "count = 72 # taper");
    let commands: [(&[&str], &str); 3] = [
        (&["solid", "--detail", "thumbnail"], "changed-solid.glb"),
        (&["picture", "--stage", "prepared", "--width", "20 mm"], "changed-prepared.svg"),
        (&["chart"], "changed-chart.svg"),
    ];
    for (args, file) in commands {
        let said = run(stavewright(room.path()).args(args).arg(&even));
        assert_eq!(said.code, 1, "{args:?}: {}", said.err);
        assert!(room.path().join(file).is_file(), "{file}: {:?}", names(room.path()));
    }
}
