//! `stavewright outline`: from a drawing of a foot to a pattern that can be checked, and what is said of bad ones.

mod common;

use std::fs;
use std::path::Path;

use common::{room, run, stavewright};

fn outline(folder: &Path, name: &str, text: &str, more: &[&str]) -> common::Said {
    fs::write(folder.join(name), text).unwrap();
    run(stavewright(folder).args(["outline", name]).args(more))
}

/// An SVG of 300 by 300 mm with this inside.
fn svg(inside: &str) -> String {
    format!(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"300mm\" height=\"300mm\" viewBox=\"0 0 300 300\">{inside}</svg>"
    )
}

/// Rays of the pattern that was written, in mm.
fn rays(folder: &Path, name: &str) -> Vec<f64> {
    let text = fs::read_to_string(folder.join(name)).unwrap();
    let listed = text.split("rays = [").nth(1).unwrap().split(']').next().unwrap();
    listed.split(',').filter_map(|ray| ray.trim().trim_matches('"').parse().ok()).collect()
}

/// An ellipse of half axes 120 and 80, however it is drawn: its ray at the angle `t` is `1/√(cos²t/a² + sin²t/b²)`.
#[test]
fn an_ellipse_has_its_rays_however_it_is_drawn() {
    let room = room();
    let points: Vec<String> = (0..360)
        .map(|step| {
            let (sin, cos) = f64::from(step).to_radians().sin_cos();
            format!("{:.4}, {:.4}", 200.0 + 80.0 * sin, 150.0 + 120.0 * cos)
        })
        .collect();
    let drawings = [
        (
            "shape.svg",
            svg("<ellipse cx=\"150\" cy=\"150\" rx=\"120\" ry=\"80\" fill=\"none\" stroke=\"black\"/>"),
        ),
        (
            "turned.svg",
            svg(
                "<g transform=\"translate(150 140) rotate(90)\"><path d=\"M120 0A120 80 0 0 1 -120 0A120 80 0 0 1 120 0Z\"/></g>",
            ),
        ),
        ("path.txt", "M120 0 A120 80 0 0 1 -120 0 A120 80 0 0 1 120 0 Z".to_owned()),
        ("points.txt", points.join("\n")),
    ];
    for (name, text) in drawings {
        let said = outline(room.path(), name, &text, &["--units", "mm", "--out", "foot.toml"]);
        assert_eq!(said.code, 0, "{name}: {}", said.err);
        let rays = rays(room.path(), "foot.toml");
        assert_eq!(rays.len(), 72, "{name}");
        for (number, ray) in (0_u32..).zip(rays) {
            let (sin, cos) = (f64::from(number) * 5.0).to_radians().sin_cos();
            let wanted = 1.0 / (cos / 120.0).hypot(sin / 80.0);
            assert!((ray - wanted).abs() < 0.15, "{name}, ray {number}: {ray} is not {wanted}");
        }
        let checked = run(stavewright(room.path()).args(["check", "foot.toml"]));
        assert_ne!(checked.code, 2, "{name}: {}", checked.err);
    }
}

#[test]
fn a_length_gives_the_drawing_another_size() {
    let room = room();
    let square = "M0 0 H200 V100 H0 Z";
    let said = outline(room.path(), "a.txt", square, &["--length", "300 mm", "--units", "mm"]);
    assert_eq!(said.code, 0, "{}", said.err);
    assert!(said.out.contains("300.0 mm long and 150.0 mm wide"), "{}", said.out);
    let rays = rays(room.path(), "a.toml");
    assert!((rays[0] - 150.0).abs() < 0.1 && (rays[18] - 75.0).abs() < 0.1, "{rays:?}");
}

#[test]
fn what_is_no_outline_is_said() {
    let room = room();
    let bad = [
        ("open.txt", "M0 0 L200 0 L200 100 L100 150".to_owned(), "open"),
        ("crosses.txt", "M0 0 L200 100 L200 0 L0 100 Z".to_owned(), "crosses itself"),
        ("hollow.txt", "M0 0 L100 30 L200 0 L200 120 L0 120 Z".to_owned(), "hollow, 30.0 mm deep"),
        ("tiny.txt", "M0 0 L2 0 L2 1 L0 1 Z".to_owned(), "2.0 by 1.0 mm"),
        (
            "two.svg",
            svg("<circle r=\"50\" cx=\"60\" cy=\"60\"/><circle r=\"20\" cx=\"200\" cy=\"60\"/>"),
            "2 lines",
        ),
        ("none.svg", svg(""), "no outline"),
        ("words.txt", "a foot of nine inches".to_owned(), "neither a drawing nor points"),
        ("broken.svg", "<svg><path d=".to_owned(), "no SVG drawing"),
        ("again.svg", svg("<g id=\"a\"><path d=\"M0 0H9V9Z\"/></g><use href=\"#a\"/>"), "parts of itself"),
        ("empty.txt", String::new(), "empty"),
        ("sign.txt", "M0 0 \"/><script>".to_owned(), "signs that no path has"),
        ("endless.txt", "M0 0".to_owned() + &" L9 9 L0 5".repeat(3000) + "Z", "too many corners"),
    ];
    for (name, text, part) in bad {
        let said = outline(room.path(), name, &text, &[]);
        assert_eq!(said.code, 2, "{name}: {}", said.out);
        assert!(said.err.contains(part) && said.err.contains(name), "{name}: {}", said.err);
        assert!(!room.path().join(name).with_extension("toml").exists(), "{name}");
    }
}
