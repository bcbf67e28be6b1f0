//! `stavewright trace`: from a photograph to a pattern that can be checked, and what is said of bad ones.

mod common;

use std::f64::consts::PI;
use std::fs;
use std::path::Path;

use common::{fits, names, room, run, stavewright};
use image::{ImageFormat, Rgb, RgbImage};

const WOOD: Rgb<u8> = Rgb([150, 100, 60]);
const SHEET: Rgb<u8> = Rgb([225, 225, 228]);

/// A cone as it is seen from very far away: 200 pixels across at the foot, 320 at the top, 200 high.
fn cone() -> RgbImage {
    RgbImage::from_fn(600, 500, |x, y| {
        let up = 350.0 - f64::from(y);
        let half = 100.0 + 60.0 * up / 200.0;
        let inside = (0.0..=200.0).contains(&up) && (f64::from(x) - 300.0).abs() <= half;
        if inside { WOOD } else { SHEET }
    })
}

fn trace(folder: &Path, photo: &str) -> common::Said {
    run(stavewright(folder).args([
        "trace",
        photo,
        "--girth",
        "640 mm",
        "--distance",
        "500 m",
        "--units",
        "mm",
    ]))
}

/// The largest girth is 640 mm, so a pixel is 640/320π mm: the foot has 400 mm of girth and the height is 127 mm.
#[test]
fn a_photograph_becomes_a_pattern_that_can_be_checked() {
    let room = room();
    // The name says PNG, the file is a JPEG: what it holds decides.
    cone().save_with_format(room.path().join("mould.png"), ImageFormat::Jpeg).unwrap();
    let said = trace(room.path(), "mould.png");
    assert_eq!(said.code, 0, "{}", said.err);
    fits(&said.out);
    let text = fs::read_to_string(room.path().join("mould.toml")).unwrap();
    let numbers: Vec<f64> = text.split('"').filter_map(|part| part.parse().ok()).collect();
    let (foot, height, top) = (numbers[1], numbers[numbers.len() - 2], numbers[numbers.len() - 1]);
    assert!((foot - 400.0).abs() < 4.0, "{text}");
    assert!((top - 640.0).abs() < 2.0, "{text}");
    assert!((height - 640.0 / (320.0 * PI) * 200.0).abs() < 1.5, "{text}");
    let picture = image::open(room.path().join("mould-traced.png")).unwrap().into_rgb8();
    assert!(picture.pixels().any(|pixel| pixel.0 == [230, 0, 120]), "the edges are drawn");
    let checked = run(stavewright(room.path()).args(["check", "mould.toml"]));
    assert!(checked.code < 2, "{}", checked.err);
}

/// A camera that was held on its side says so in the file: orientation 6, "the 0th row is the visual right-hand side of
/// the image" (CIPA DC-008, *Exchangeable image file format*, tag 0112).
#[test]
fn a_photograph_taken_on_its_side_is_turned_upright() {
    let room = room();
    let mut bytes = Vec::new();
    let lying = image::imageops::rotate270(&cone());
    lying.write_to(&mut std::io::Cursor::new(&mut bytes), ImageFormat::Jpeg).unwrap();
    let mut turned = bytes[..2].to_vec();
    turned.extend(
        b"\xff\xe1\x00\x22Exif\0\0MM\0\x2a\0\0\0\x08\0\x01\x01\x12\0\x03\0\0\0\x01\0\x06\0\0\0\0\0\0",
    );
    turned.extend(&bytes[2..]);
    fs::write(room.path().join("side.jpg"), turned).unwrap();
    let said = trace(room.path(), "side.jpg");
    assert_eq!(said.code, 0, "{}", said.err);
    let text = fs::read_to_string(room.path().join("side.toml")).unwrap();
    let numbers: Vec<f64> = text.split('"').filter_map(|part| part.parse().ok()).collect();
    assert!((numbers[1] - 400.0).abs() < 4.0, "{text}");
    assert!((numbers[numbers.len() - 1] - 640.0).abs() < 2.0, "{text}");
}

#[test]
fn bad_photographs_get_a_reason() {
    let room = room();
    let write = |name: &str, picture: &RgbImage| {
        picture.save_with_format(room.path().join(name), ImageFormat::Png).unwrap();
    };
    let mut random = 7_u32;
    let noise = RgbImage::from_fn(400, 400, |_, _| {
        random = random.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
        Rgb([random >> 24, random >> 16 & 255, random >> 8 & 255].map(|byte| byte as u8))
    });
    write("noise.png", &noise);
    write("blank.png", &RgbImage::from_pixel(400, 400, SHEET));
    write("small.png", &RgbImage::from_pixel(40, 40, SHEET));
    let mut cut = cone();
    (0..300).for_each(|y| (140..460).for_each(|x| cut.put_pixel(x, y, WOOD)));
    write("cut.png", &cut);
    let mut two = cone();
    (150..340).for_each(|y| (20..100).for_each(|x| two.put_pixel(x, y, WOOD)));
    write("two.png", &two);
    let mut bulge = cone();
    (220..280).for_each(|y| (440..520).for_each(|x| bulge.put_pixel(x, y, WOOD)));
    write("bulge.png", &bulge);
    let knob = |name: &str, rows: std::ops::Range<u32>| {
        let mut knob = cone();
        rows.for_each(|y| (400..540).for_each(|x| knob.put_pixel(x, y, WOOD)));
        write(name, &knob);
    };
    knob("knob-above.png", 165..225);
    knob("knob-below.png", 280..340);
    fs::write(room.path().join("empty.jpg"), b"").unwrap();
    fs::write(room.path().join("words.jpg"), b"no picture").unwrap();
    fs::write(room.path().join("huge.png"), huge()).unwrap();
    for (name, reason) in [
        ("noise.png", "background is not plain"),
        ("blank.png", "alike"),
        ("small.png", "too small"),
        ("cut.png", "cut off"),
        ("two.png", "more than one thing"),
        ("bulge.png", "both sides differ"),
        ("knob-above.png", "both sides differ"),
        ("knob-below.png", "both sides differ"),
        ("empty.jpg", "the file is empty"),
        ("words.jpg", "neither a PNG nor a JPEG"),
        ("huge.png", "or 40 million in all"),
        ("absent.jpg", "absent.jpg"),
    ] {
        let said = trace(room.path(), name);
        assert_eq!(said.code, 2, "{name}: {}", said.out);
        assert!(said.err.contains(reason), "{name}: {}", said.err);
        fits(&said.err);
    }
    let written = names(room.path());
    let is_made = |name: &String| name.contains(".toml") || name.contains("-traced");
    assert!(!written.iter().any(is_made), "{written:?}");
}

/// The head of a picture of a hundred million pixels (W3C, *Portable Network Graphics*, 11.2.2), and where its pixels begin.
fn huge() -> Vec<u8> {
    let mut file = b"\x89PNG\r\n\x1a\n\0\0\0\rIHDR".to_vec();
    file.extend(10_000_u32.to_be_bytes());
    file.extend(10_000_u32.to_be_bytes());
    file.extend([8, 2, 0, 0, 0]);
    let crc = file[12..].iter().fold(u32::MAX, |crc, byte| {
        (0..8).fold(crc ^ u32::from(*byte), |crc, _| (crc >> 1) ^ (0xedb8_8320 * (crc & 1)))
    });
    file.extend((!crc).to_be_bytes());
    file.extend(b"\0\0\x10\0IDAT");
    file
}

#[test]
fn a_size_is_needed() {
    let room = room();
    cone().save(room.path().join("mould.png")).unwrap();
    let said = run(stavewright(room.path()).args(["trace", "mould.png"]));
    assert_eq!(said.code, 2);
    assert!(said.err.contains("--girth"), "{}", said.err);
    let said = run(stavewright(room.path()).args(["trace", "mould.png", "--girth", "640"]));
    assert!(said.err.contains("--girth 640"), "{}", said.err);
}

/// The largest picture that is taken, with no more than 1 GiB of memory to be had.
#[cfg(target_os = "linux")]
#[test]
fn forty_million_pixels_take_less_than_a_gibibyte() {
    let room = room();
    let side = 6300_u32;
    let mut picture = RgbImage::from_pixel(side, side, SHEET);
    for y in 2000..4500 {
        let half = 1000 + (4500 - y) / 4;
        (side / 2 - half..side / 2 + half).for_each(|x| picture.put_pixel(x, y, WOOD));
    }
    picture.save_with_format(room.path().join("large.png"), ImageFormat::Png).unwrap();
    drop(picture);
    let mut limited = std::process::Command::new("sh");
    limited.args(["-c", "ulimit -v 1048576; exec \"$0\" \"$@\"", env!("CARGO_BIN_EXE_stavewright")]);
    limited.args(["trace", "large.png", "--girth", "640 mm", "--distance", "2 m"]).current_dir(room.path());
    let said = limited.output().unwrap();
    assert!(said.status.success(), "{}", String::from_utf8_lossy(&said.stderr));
    assert!(room.path().join("large.toml").exists());
}
