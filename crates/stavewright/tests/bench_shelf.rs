//! The shelf on the bench: who may see it, when it is made, and what cannot be done with it.

#[path = "common/server.rs"]
mod server;

use serde_json::{Value, json};
use server::Served;

/// A hank of fine cane, as a page sends it.
fn hank(name: &str, length: &str) -> Value {
    json!({ "do": "put", "new": true, "item": {
        "name": name, "material": "cane fine", "colour": "blue", "count": 70, "length": length,
        "width": "", "thickness": "", "unit": "hank", "holds": 83, "price": "48,50",
        "bought_from": "", "reorder": 80, "note": "" } })
}

#[test]
fn a_shelf_is_made_when_it_is_asked_for_and_not_before() {
    let bench = Served::start();
    assert_eq!(bench.get("/api/shelf").json()["there"], false);
    bench.ask("POST", "/api/shelf", Some(&hank("hank 1", "12 ft"))).assert_refused(404);
    assert!(!bench.folder().join("workshop.db").exists(), "looking makes nothing");
    assert_eq!(bench.post("/api/shelf", &json!({ "do": "begin" }))["there"], true);
    let shelf = bench.post("/api/shelf", &hank("hank 1", "12 ft"));
    let item = &shelf["items"][0];
    assert_eq!((&item["count"], &item["low"], &item["price"]), (&json!(70), &json!(true), &json!("48.50")));
    assert_eq!(item["length"], "12 ft");
}

#[test]
fn what_came_and_went_is_booked_and_taken_back() {
    let bench = Served::start();
    bench.post("/api/shelf", &json!({ "do": "begin" }));
    bench.post("/api/shelf", &hank("hank 1", "3.6 m"));
    let cut = json!({ "do": "book", "kind": "cut", "note": "autumn", "items": [], "changes": [{ "item": "hank 1", "count": -12 }] });
    let shelf = bench.post("/api/shelf", &cut);
    assert_eq!(shelf["items"][0]["count"], 58);
    let movement = &shelf["movements"][0];
    assert_eq!((&movement["kind"], &movement["note"]), (&json!("cut"), &json!("autumn")));
    let shelf = bench.post("/api/shelf", &json!({ "do": "undo", "movement": movement["id"] }));
    assert_eq!((&shelf["items"][0]["count"], &shelf["movements"][0]["undone"]), (&json!(70), &json!(true)));
    let all = json!({ "do": "book", "kind": "cut", "note": "", "items": [], "changes": [{ "item": "hank 1", "count": -71 }] });
    bench.ask("POST", "/api/shelf?language=de", Some(&all)).assert_refused(422);
    assert_eq!(bench.get("/api/shelf").json()["items"][0]["count"], 70);
}

#[test]
fn nonsense_is_refused_in_the_readers_language_and_changes_nothing() {
    let bench = Served::start();
    bench.post("/api/shelf", &json!({ "do": "begin" }));
    bench.post("/api/shelf", &hank("hank 1", "12 ft"));
    for (act, word) in [
        (hank("hank 1", "12 ft"), "liegt schon"),
        (hank("  ", "12 ft"), "Name"),
        (hank("hank 2", "long"), "keine Länge"),
        (hank("hank 2", "-3 ft"), "keine Länge"),
        (
            json!({ "do": "take-in", "csv": "name,material,count\nhank 3,cane fine,many\n" }),
            "keine ganze Zahl",
        ),
        (
            json!({ "do": "take-in", "csv": "name,colour\nhank 3,blue\n" }),
            "Spalte \u{201e}material\u{201c} fehlt",
        ),
        (json!({ "do": "lend", "mould": "A", "to": " ", "due": "" }), "wer die Form bekommt"),
    ] {
        let german = [("Accept-Language", "de")];
        let answer = bench.ask_with("POST", "/api/shelf", &german, Some(&act));
        answer.assert_refused(422);
        assert!(answer.json()["what"].as_str().unwrap().contains(word), "{}", answer.text());
        let english = bench.ask("POST", "/api/shelf", Some(&act)).text();
        assert!(!english.contains(word) && !english.contains("workshop-"), "{english}");
    }
    assert_eq!(bench.get("/api/shelf").json()["items"].as_array().unwrap().len(), 1);
}

#[test]
fn a_table_goes_out_and_comes_back_in() {
    let bench = Served::start();
    bench.post("/api/shelf", &json!({ "do": "begin" }));
    bench.post("/api/shelf", &hank("hank 1", "12 ft"));
    let table = bench.get("/api/shelf.csv").text();
    assert!(table.contains("hank 1,cane fine,blue,3657.6"), "{table}");
    let counted = table.replace(",70,", ",61,");
    let shelf = bench.post("/api/shelf", &json!({ "do": "take-in", "csv": counted }));
    assert_eq!(shelf["items"][0]["count"], 61);
    assert_eq!(shelf["movements"][0]["kind"], "counted");
}

#[test]
fn a_file_of_another_program_is_left_alone() {
    let bench = Served::start();
    let file = bench.folder().join("workshop.db");
    std::fs::write(&file, "somebody else's").unwrap();
    bench.ask("GET", "/api/shelf", None).assert_refused(409);
    bench.ask("POST", "/api/shelf", Some(&json!({ "do": "begin" }))).assert_refused(409);
    assert_eq!(std::fs::read_to_string(&file).unwrap(), "somebody else's");
}

#[cfg(unix)]
#[test]
fn a_link_that_leads_out_of_the_folder_is_not_followed() {
    let (bench, other) = (Served::start(), Served::start());
    other.post("/api/shelf", &json!({ "do": "begin" }));
    std::os::unix::fs::symlink(other.folder().join("workshop.db"), bench.folder().join("workshop.db"))
        .unwrap();
    bench.ask("GET", "/api/shelf", None).assert_refused(409);
}

#[test]
fn guests_neither_see_nor_change_it_unless_they_may_write() {
    let bench = Served::with(&["--studio"]);
    let guest = bench.guest(1);
    guest.ask("GET", "/api/shelf", None).assert_refused(403);
    guest.ask("GET", "/api/shelf.csv", None).assert_refused(403);
    guest.ask("POST", "/api/shelf", Some(&json!({ "do": "begin" }))).assert_refused(403);
    assert!(!bench.folder().join("workshop.db").exists());
    let bench = Served::with(&["--studio-write"]);
    assert_eq!(bench.guest(1).ask("GET", "/api/shelf", None).status, 200);
}

/// Everything that is measured on the shelf, as far as a pattern can name it.
fn measured(bench: &Served, width: &str) {
    let item = json!({ "name": "the wide lot", "material": "cane fine", "colour": "natural", "count": 70,
        "length": "12 ft", "width": width, "thickness": "", "unit": "", "holds": 0, "price": "",
        "bought_from": "", "reorder": 0, "note": "" });
    bench.post("/api/shelf", &json!({ "do": "put", "new": false, "item": item }));
}

#[test]
fn patterns_are_opened_with_what_was_measured_on_the_shelf() {
    let bench = Served::start();
    let look = || bench.post("/api/look", &json!({ "source": bench.file("harbour.toml") }))["basket"].clone();
    let cane = |shown: &Value| -> Value {
        let all = shown["materials"].as_array().unwrap();
        all.iter().find(|material| material["name"] == "cane fine").cloned().unwrap_or_default()
    };
    let plain = look();
    assert_eq!((cane(&plain), &plain["shelf_unread"]), (Value::Null, &json!(false)));
    bench.post("/api/shelf", &json!({ "do": "begin" }));
    measured(&bench, "3.4 mm");
    let own = look();
    assert_eq!(cane(&own)["width_mm"], 3.4);
    assert!(cane(&own)["size"].as_str().unwrap().contains("by your shelf"), "{}", cane(&own));
    assert_ne!(own["figures"], plain["figures"], "wider cane, fewer rows");
    let stock = bench.get("/api/stock").json();
    let of_stock = stock["materials"].as_array().unwrap().iter().find(|own| own["name"] == "cane fine");
    assert_eq!(of_stock.unwrap()["width_mm"], 3.4);

    // Measured again, the next look has it; taken off the shelf, the catalogue's holds again.
    measured(&bench, "2.9 mm");
    assert_eq!(cane(&look())["width_mm"], 2.9);
    let off = json!({ "do": "remove", "item": "the wide lot" });
    let shelf = bench.post("/api/shelf", &off);
    assert_eq!((&shelf["items"], &shelf["movements"][0]["kind"]), (&json!([]), &json!("removed")));
    assert_eq!(look(), plain);
    let back = json!({ "do": "undo", "movement": shelf["movements"][0]["id"] });
    assert_eq!(bench.post("/api/shelf", &back)["items"][0]["count"], 70);
    assert_eq!(cane(&look())["width_mm"], 2.9);
}

#[test]
fn a_shelf_that_cannot_be_read_stops_no_pattern() {
    let bench = Served::start();
    let look = || bench.post("/api/look", &json!({ "source": bench.file("harbour.toml") }))["basket"].clone();
    let plain = look();
    std::fs::write(bench.folder().join("workshop.db"), "somebody else's").unwrap();
    let shown = look();
    assert_eq!((&shown["shelf_unread"], &shown["figures"]), (&json!(true), &plain["figures"]));
    std::fs::remove_file(bench.folder().join("workshop.db")).unwrap();
    assert_eq!(look(), plain);
}

/// Of ten thousand items the page gets what it shows; the rest is looked for where it lies.
#[test]
fn of_a_large_shelf_only_what_is_looked_for_is_sent() {
    let bench = Served::start();
    bench.post("/api/shelf", &json!({ "do": "begin" }));
    let item = |number: u32| {
        let (material, colour) =
            if number == 7777 { ("brass pin 18 x 1/2 in", "natural") } else { ("cane fine", "blue") };
        format!("lot {number:05},{material},{colour},{}\n", number % 90)
    };
    let table = "name,material,colour,count\n".to_owned() + &(0..10_000).map(item).collect::<String>();
    let shelf = bench.post("/api/shelf", &json!({ "do": "take-in", "csv": table }));
    let count = |shelf: &Value| shelf["items"].as_array().unwrap().len();
    assert_eq!((count(&shelf), &shelf["found"], &shelf["all"]), (200, &json!(10_000), &json!(10_000)));
    assert_eq!(shelf["colours"], json!(["blue", "natural"]));
    let answer = bench.get("/api/shelf?language=de&find=777%20blau");
    assert!(answer.body.len() < 200_000, "{} bytes", answer.body.len());
    let found = answer.json();
    assert_eq!(
        (&found["found"], &found["all"]),
        (&json!(18), &json!(10_000)),
        "0777 to 9777 and 7770 to 7779, less the pins"
    );
    let pins = bench.get("/api/shelf?find=lot%20BRASS").json();
    assert_eq!((count(&pins), &pins["items"][0]["name"]), (1, &json!("lot 07777")));
    assert_eq!(count(&bench.get("/api/shelf?find=nothing").json()), 0);
}
