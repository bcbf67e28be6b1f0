//! The log of makings on the bench: what guests may not do with it, its photographs, and what is refused.

#[path = "common/server.rs"]
mod server;

use std::fs;

use image::codecs::jpeg::JpegEncoder;
use image::metadata::Orientation;
use image::{DynamicImage, ImageDecoder, ImageEncoder};
use serde_json::{Value, json};
use server::{Answer, Guest, Served, harbour};

/// A making as the page sends it, with these fields filled in.
fn making(filled: &Value) -> Value {
    let mut making = json!({ "made": "", "who": "", "learner": false, "minutes": [], "weaver": "", "rows": "",
        "wet": "", "dry": "", "girth_wet": "", "girth_dry": "", "staves": "", "spoilt": "", "wood": "",
        "went_wrong": "", "photos": [] });
    for (key, value) in filled.as_object().unwrap() {
        making[key] = value.clone();
    }
    json!({ "do": "log", "pattern": "harbour", "making": making })
}

/// A photograph that lies on its side, with what a camera tells of it (Exif 2.32, CIPA DC-008-2019, §4.6): when it
/// was taken, and in its part for the place a datum.
fn photograph() -> Vec<u8> {
    let (time, datum) = (b"2027:04:11 15:00:00\0", b"harbour wall\0");
    let entry = |tag: u16, kind: u16, count: usize, value: u32| {
        let count = u32::try_from(count).unwrap();
        [&tag.to_le_bytes()[..], &kind.to_le_bytes(), &count.to_le_bytes(), &value.to_le_bytes()].concat()
    };
    // The head, a part of three entries, one of a single entry, then the two texts.
    let (place, text) = (8 + 2 + 3 * 12 + 4, 8 + 2 + 3 * 12 + 4 + 2 + 12 + 4);
    let told = [
        &b"II*\0\x08\0\0\0\x03\0"[..],
        &entry(0x0112, 3, 1, 6),
        &entry(0x0132, 2, time.len(), text),
        &entry(0x8825, 4, 1, place),
        &[0; 4],
        &1_u16.to_le_bytes(),
        &entry(0x0012, 2, datum.len(), text + 20),
        &[0; 4],
        time,
        datum,
    ];
    let mut bytes = Vec::new();
    let mut encoder = JpegEncoder::new(&mut bytes);
    encoder.set_exif_metadata(told.concat()).unwrap();
    DynamicImage::new_rgb8(32, 16).write_with_encoder(encoder).unwrap();
    bytes
}

fn holds(bytes: &[u8], text: &str) -> bool {
    bytes.windows(text.len()).any(|window| window == text.as_bytes())
}

fn send(bench: &Served, path: &str, photo: &[u8], language: &str) -> Answer {
    let host = bench.address;
    let head = format!(
        "POST {path} HTTP/1.1\r\nHost: {host}\r\nOrigin: http://{host}\r\nContent-Type: image/jpeg\r\n\
         Accept-Language: {language}\r\nContent-Length: {}\r\nConnection: close\r\n\r\n",
        photo.len()
    );
    bench.raw(&head, photo)
}

/// Names of the files of the folder, without those that the store has beside it while it is open.
fn files(bench: &Served) -> Vec<String> {
    let names = fs::read_dir(bench.folder()).unwrap();
    let mut names: Vec<String> =
        names.map(|entry| entry.unwrap().file_name().into_string().unwrap()).collect();
    names.retain(|name| !name.ends_with("-wal") && !name.ends_with("-shm"));
    names.sort();
    names
}

#[test]
fn guests_without_the_right_to_write_have_no_part_in_records_hand_and_history() {
    let bench = Served::with(&["--studio"]);
    let guest = bench.guest(1);
    let forget = json!({ "do": "forget", "numbers": [1] });
    let (adopt, back) = (json!({ "do": "adopt" }), json!({ "do": "take-back" }));
    let written = making(&json!({ "rows": "36" }));
    for (method, path, body) in [
        ("GET", "/api/log", None),
        ("POST", "/api/log", Some(&written)),
        ("POST", "/api/log", Some(&forget)),
        ("POST", "/api/log", Some(&adopt)),
        ("POST", "/api/log", Some(&back)),
        ("GET", "/api/log/hand", None),
        ("GET", "/api/log/form/harbour", None),
        ("GET", "/api/log.toml", None),
        ("GET", "/api/log.toml?who=student%201", None),
        ("GET", "/api/log.pdf", None),
        ("GET", "/api/log/1/card.pdf", None),
        ("POST", "/api/log/photos", Some(&written)),
        ("POST", "/api/log/photos?all", Some(&written)),
        ("GET", "/api/log/photos/making-0123456789abcdef.jpg", None),
        ("GET", "/api/patterns/harbour/history", None),
    ] {
        let answer = guest.ask(method, path, body);
        assert_eq!(answer.status, 403, "{method} {path}: {}", answer.text());
        answer.assert_refused(403);
    }
    assert_eq!(files(&bench), ["harbour.toml"], "nothing was made");

    let bench = Served::with(&["--studio-write"]);
    let guest: Guest = bench.guest(1);
    assert_eq!(guest.ask("POST", "/api/log", Some(&written)).status, 200);
    assert_eq!(guest.ask("GET", "/api/log", None).json()["makings"][0]["number"], 1);
}

#[test]
fn place_and_time_of_a_photograph_stay_only_where_they_are_wanted() {
    let bench = Served::start();
    let photo = photograph();
    for (path, all) in [("/api/log/photos", false), ("/api/log/photos?all", true)] {
        let kept = send(&bench, path, &photo, "en").json();
        let name = kept["name"].as_str().unwrap();
        let shown = bench.get(&format!("/api/log/photos/{name}")).body;
        assert_eq!(shown, fs::read(bench.folder().join(name)).unwrap());
        for told in ["2027:04:11", "harbour wall"] {
            assert!(holds(&photo, told));
            assert_eq!(holds(&shown, told), all, "{path}: {told}");
        }
        // It stands upright, and nobody turns it once more.
        let mut decoder = image::codecs::jpeg::JpegDecoder::new(std::io::Cursor::new(&shown)).unwrap();
        assert_eq!(decoder.dimensions(), (16, 32), "{path}");
        assert_eq!(decoder.orientation().unwrap(), Orientation::NoTransforms, "{path}");
    }
}

#[test]
fn a_photograph_that_is_too_large_gets_a_clear_answer_and_nothing_is_lost() {
    let bench = Served::start();
    let kept = send(&bench, "/api/log/photos", &photograph(), "en").json();
    bench.post("/api/log", &making(&json!({ "rows": "36", "photos": [kept["name"]] })));
    let (log, before) = (bench.get("/api/log").json(), files(&bench));

    // The head says 10000 by 10000, a hundred million (ITU-T T.81, 1992, B.2.2).
    let mut huge = photograph();
    let at = huge.windows(2).position(|marker| marker == [0xff, 0xc0]).unwrap() + 5;
    huge[at..at + 4].copy_from_slice(&[0x27, 0x10, 0x27, 0x10]);
    for path in ["/api/log/photos", "/api/log/photos?all"] {
        for (language, says) in [("en", "more than 40 million pixels"), ("de", "mehr als 40 Millionen")] {
            let answer = send(&bench, path, &huge, language);
            answer.assert_refused(422);
            assert!(answer.json()["what"].as_str().unwrap().contains(says), "{}", answer.text());
            assert_ne!(answer.json()["how_to_mend"], "");
        }
    }
    let heavy = send(&bench, "/api/log/photos", &vec![0xff; 26_000_000], "en");
    heavy.assert_refused(413);
    assert!(heavy.json()["what"].as_str().unwrap().contains("25 MB"), "{}", heavy.text());
    let mut broken = photograph();
    broken.truncate(300);
    send(&bench, "/api/log/photos", &broken, "en").assert_refused(422);
    send(&bench, "/api/log/photos", b"GIF89a", "en").assert_refused(422);

    bench.assert_lives();
    assert_eq!((bench.get("/api/log").json(), files(&bench)), (log, before));
}

#[test]
fn a_making_that_cannot_be_taken_says_why_and_the_log_stays() {
    let bench = Served::start();
    bench.post("/api/log", &making(&json!({ "rows": "36", "who": "student 1" })));
    let log = bench.get("/api/log").json();
    let missing = json!({ "rows": "36", "photos": ["making-0123456789abcdef.jpg"] });
    let outside = json!({ "rows": "36", "photos": ["../harbour.toml"] });
    let nothing = json!({});
    let far = json!({ "rows": "36", "wet": "300 in" });
    let unread = json!({ "wet": "long" });
    let day = json!({ "rows": "36", "made": "last week" });
    let step = json!({ "minutes": [{ "step": "boil", "minutes": "5" }] });
    for (filled, status) in
        [(missing, 404), (outside, 404), (nothing, 422), (far, 422), (unread, 422), (day, 422), (step, 422)]
    {
        let answer = bench.ask("POST", "/api/log", Some(&making(&filled)));
        assert_eq!(answer.status, status, "{filled}: {}", answer.text());
        answer.assert_refused(status);
    }
    let mut gone = making(&json!({ "rows": "36" }));
    gone["pattern"] = json!("ferry");
    bench.ask("POST", "/api/log", Some(&gone)).assert_refused(404);
    assert_eq!(bench.get("/api/log").json(), log);
}

#[test]
fn the_log_and_the_card_of_a_making_are_printed() {
    let bench = Served::start();
    bench.ask("GET", "/api/log.pdf", None).assert_refused(404);
    for who in ["student 1", "student 2"] {
        bench.post("/api/log", &making(&json!({ "rows": "36", "who": who, "wood": "ash" })));
    }
    for path in
        ["/api/log.pdf?language=de", "/api/log.pdf?who=student%202", "/api/log/2/card.pdf?language=de"]
    {
        let answer = bench.get(path);
        assert!(answer.head.contains("application/pdf") && answer.body.starts_with(b"%PDF"), "{path}");
    }
    bench.ask("GET", "/api/log.pdf?who=nobody", None).assert_refused(404);
    bench.ask("GET", "/api/log/9/card.pdf", None).assert_refused(404);
    fs::remove_file(bench.folder().join("harbour.toml")).unwrap();
    let gone = bench.ask("GET", "/api/log/1/card.pdf", None);
    gone.assert_refused(404);
    assert!(gone.json()["what"].as_str().unwrap().contains("Harbour bread basket"), "{}", gone.text());
}

#[test]
fn a_record_of_another_pattern_is_left_out_of_the_hand_and_is_said_to_be() {
    let bench = Served::start();
    bench.post("/api/log", &making(&json!({ "rows": "36", "wet": "4 1/4 in" })));
    let hand = bench.get("/api/log/hand").json();
    assert_eq!((&hand["makings"], &hand["left_out"]), (&json!(1), &json!(0)));
    let other = harbour().replace("Harbour bread basket", "Another basket");
    fs::write(bench.folder().join("harbour.toml"), other).unwrap();
    let hand = bench.get("/api/log/hand").json();
    assert_eq!((&hand["makings"], &hand["left_out"]), (&json!(0), &json!(1)));
    bench.ask("POST", "/api/log", Some(&json!({ "do": "adopt" }))).assert_refused(404);
    let log = bench.get("/api/log").json();
    assert_eq!((log["makings"].as_array().unwrap().len(), &log["adopted"]), (1, &Value::Null));
}
