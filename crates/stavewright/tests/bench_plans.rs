//! Plans of classes on the bench: told from patterns, changed with their comments kept, worked out against the shelf.

#[path = "common/server.rs"]
mod server;

use std::fs;
use std::path::Path;

use serde_json::{Value, json};
use server::{Served, until};

const KITS: &str = "# Who comes in autumn.\ntitle = \"Autumn\"\nneeded = \"2026-10-17\"\n\n[[students]]\npattern = \"harbour.toml\"\ncount = 2\n";

/// Has a plan worked out, and answers with what is shown of it and how the work ended.
fn worked(bench: &Served, kind: &str, source: &str) -> (Value, Value) {
    ordered(bench, &json!({ "kind": kind, "source": source, "sheets": false, "seconds": 4 }))
}

fn ordered(bench: &Served, order: &Value) -> (Value, Value) {
    let begun = bench.ask("POST", "/api/plans/work", Some(order));
    assert_eq!(begun.status, 202, "{}", begun.text());
    let place = format!("/api/packets/{}", begun.json()["id"].as_str().unwrap());
    until("it is worked out", || bench.get(&place).json()["state"] != "working");
    let packet = bench.get(&place).json();
    let shown = bench.ask("GET", &format!("{place}/shown.json"), None);
    (if shown.status == 200 { shown.json() } else { Value::Null }, packet)
}

fn kits() -> Served {
    let bench = Served::start();
    fs::write(bench.folder().join("autumn.toml"), KITS).unwrap();
    bench
}

#[test]
fn a_plan_is_listed_as_one_and_not_as_a_pattern() {
    let bench = kits();
    let plans = bench.get("/api/plans").json();
    assert_eq!(plans, json!([{ "name": "autumn", "title": "Autumn", "kind": "kits" }]));
    let patterns = bench.get("/api/patterns").json();
    let names: Vec<_> = patterns.as_array().unwrap().iter().map(|pattern| &pattern["name"]).collect();
    assert_eq!(names, ["harbour"]);
}

#[test]
fn a_change_keeps_the_comments_and_says_what_is_wrong() {
    let bench = kits();
    let edit = |value: Value| {
        let edits = json!([{ "do": "set", "path": "students[1].count", "value": value }]);
        bench.post("/api/plans", &json!({ "kind": "kits", "source": KITS, "edits": edits }))
    };
    let changed = edit(json!(12));
    assert_eq!(changed["source"], KITS.replace("count = 2", "count = 12"));
    assert_eq!((&changed["values"]["students"][0]["count"], &changed["problems"]), (&json!(12), &json!([])));
    let wrong = edit(json!("many"));
    assert!(wrong["problems"][0]["message"].as_str().unwrap().contains("count"), "{wrong}");
}

#[test]
fn kits_come_to_leaves_and_bookings_against_the_shelf() {
    let bench = kits();
    let (shown, _) = worked(&bench, "kits", KITS);
    let names: Vec<_> = shown["leaves"].as_array().unwrap().iter().map(|leaf| &leaf["id"]).collect();
    assert_eq!(names, ["kits", "shopping", "cutting", "price"]);
    assert_eq!(shown["cut"], Value::Null, "nothing lies there to be cut");
    bench.post("/api/shelf", &json!({ "do": "begin" }));
    let (items, changes) = (&shown["bought"]["items"], &shown["bought"]["changes"]);
    let book =
        json!({ "do": "book", "kind": "bought", "note": "Autumn", "items": items, "changes": changes });
    let shelf = bench.post("/api/shelf", &book);
    assert_eq!(shelf["items"].as_array().unwrap().len(), items.as_array().unwrap().len());
    let (shown, _) = worked(&bench, "kits", KITS);
    assert_eq!(shown["bought"], Value::Null, "everything is there now");
    let (items, changes) = (&shown["cut"]["items"], &shown["cut"]["changes"]);
    let book = json!({ "do": "book", "kind": "cut", "note": "Autumn", "items": items, "changes": changes });
    let after = bench.post("/api/shelf", &book);
    assert_eq!(after["movements"][0]["kind"], "cut");
    let back = bench.post("/api/shelf", &json!({ "do": "undo", "movement": after["movements"][0]["id"] }));
    let counts = |shelf: &Value| -> Vec<u64> {
        let items = shelf["items"].as_array().unwrap();
        items.iter().filter_map(|item| item["count"].as_u64().filter(|count| *count > 0)).collect()
    };
    assert_eq!(counts(&back), counts(&shelf), "taken back, the shelf is as it was");
}

#[test]
fn the_sheets_of_a_class_are_set_in_the_readers_language() {
    let bench = kits();
    let order = json!({ "kind": "kits", "source": KITS, "sheets": true, "seconds": 4, "language": "de" });
    let begun = bench.ask("POST", "/api/plans/work", Some(&order)).json();
    let place = format!("/api/packets/{}", begun["id"].as_str().unwrap());
    until("the sheets are set", || bench.get(&place).json()["state"] == "done");
    let files = bench.get(&place).json()["files"].clone();
    let names: Vec<&str> =
        files.as_array().unwrap().iter().map(|file| file["name"].as_str().unwrap()).collect();
    let sheets = ["kits.pdf", "shopping.pdf", "cutting.pdf", "price.pdf", "checks.pdf", "labels.pdf"];
    for name in sheets {
        assert!(names.contains(&name), "{names:?}");
        assert!(bench.get(&format!("{place}/{name}")).body.starts_with(b"%PDF-"), "{name}");
    }
    assert!(bench.get(&format!("{place}/shopping.csv")).text().starts_with("material,"));
}

/// The hand that the workshop took up holds for its kits as it holds for its packets.
#[test]
fn kits_go_by_the_hand_that_the_packets_go_by() {
    let bench = kits();
    let records = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../docs/workshop/harbour-records.toml");
    let logged = std::process::Command::new(env!("CARGO_BIN_EXE_stavewright"))
        .args(["records", "log", records.to_str().unwrap(), "harbour.toml"])
        .current_dir(bench.folder())
        .output()
        .unwrap();
    assert!(logged.status.success(), "{}", String::from_utf8_lossy(&logged.stderr));
    let price = || {
        let (shown, packet) = worked(&bench, "kits", &format!("{KITS}[price]\nwage = \"24\"\n"));
        assert_eq!(packet["state"], "done", "{packet}");
        shown["leaves"].as_array().unwrap().iter().find(|leaf| leaf["id"] == "price").unwrap()["sections"]
            .clone()
    };
    let minutes = || -> f64 {
        let begun = bench.post("/api/packets", &json!({ "source": bench.file("harbour.toml") }));
        let place = format!("/api/packets/{}", begun["id"].as_str().unwrap());
        until("the packet is made", || bench.get(&place).json()["state"] == "done");
        let basket = bench.get(&format!("{place}/basket.json")).json();
        basket["steps"].as_array().unwrap().iter().map(|step| step["work_minutes"].as_f64().unwrap()).sum()
    };
    let wage = |minutes: f64| format!("{:.2}", (minutes * 24.0 / 60.0 * 100.0).round() / 100.0);
    let (usual, of_packet) = (price(), minutes());
    assert!(usual.to_string().contains(&wage(of_packet)), "{} {usual}", wage(of_packet));
    bench.post("/api/log", &json!({ "do": "adopt" }));
    let (own, of_packet) = (price(), minutes());
    assert_ne!(own, usual);
    assert!(own.to_string().contains(&wage(of_packet)), "{} {own}", wage(of_packet));
    bench.post("/api/log", &json!({ "do": "take-back" }));
    assert_eq!(price(), usual);
}

#[test]
fn what_is_wrong_with_a_plan_is_said_in_the_readers_language() {
    let bench = kits();
    let told = |source: &str, language: &str| -> (String, String) {
        let request = json!({ "kind": "kits", "source": source, "edits": [], "language": language });
        let problems = bench.post("/api/plans", &request)["problems"].clone();
        let order =
            json!({ "kind": "kits", "source": source, "sheets": false, "seconds": 4, "language": language });
        let (_, packet) = ordered(&bench, &order);
        assert_eq!(packet["state"], "failed", "{packet}");
        let first = problems[0]["message"].as_str().unwrap_or_default().to_owned();
        (first, packet["fault"].as_str().unwrap().to_owned())
    };
    let wrong = KITS.replace("count = 2", "cuont = 2\ncolours = { blue = \"mauve\" }");
    let (problem, fault) = told(&wrong, "de");
    assert_eq!(problem, "`cuont` ist hier nicht bekannt.");
    assert!(fault.starts_with(&problem), "{fault}");
    assert_eq!(told(&wrong, "en").0, "`cuont` is not known here");
    let none = KITS.replace("harbour.toml", "none.toml");
    assert_eq!(told(&none, "de").1.split(':').next(), Some("none.toml"));
    assert!(told(&none, "de").1.contains("keine solche"), "{}", told(&none, "de").1);
    fs::write(bench.folder().join("broken.toml"), "title = 3\n").unwrap();
    let broken = KITS.replace("harbour.toml", "broken.toml");
    let (german, english) = (told(&broken, "de").1, told(&broken, "en").1);
    assert!(german.starts_with("broken.toml: ") && german != english, "{german}");
    // Another plan is wrong than the one that is open.
    fs::write(bench.folder().join("winter.toml"), &wrong).unwrap();
    let order = json!({ "kind": "kits", "source": KITS, "sheets": false, "seconds": 4, "language": "de", "plans": ["winter"] });
    let fault = ordered(&bench, &order).1["fault"].as_str().unwrap().to_owned();
    assert!(fault.starts_with("winter.toml, Zeile 7: `cuont`"), "{fault}");
}

#[test]
fn several_plans_and_orders_are_bought_for_together() {
    let bench = kits();
    let winter = KITS.replace("Autumn", "Winter").replace("count = 2", "count = 3");
    fs::write(bench.folder().join("winter.toml"), &winter).unwrap();
    bench.post("/api/shelf", &json!({ "do": "begin" }));
    let quote = std::process::Command::new(env!("CARGO_BIN_EXE_stavewright"))
        .args(["order", "quote", "bread baskets", "harbour.toml", "--count", "4", "--price", "180"])
        .args(["--needed", "2026-09-10"])
        .current_dir(bench.folder())
        .output()
        .unwrap();
    assert!(quote.status.success(), "{}", String::from_utf8_lossy(&quote.stderr));
    let orders = &bench.get("/api/shelf").json()["orders"];
    assert_eq!(
        orders,
        &json!([{ "name": "bread baskets", "pattern": "harbour.toml", "count": 4, "needed": "2026-09-10" }])
    );

    let bought = |plans: &[&str], orders: &[&str]| -> (i64, Value) {
        let order = json!({ "kind": "kits", "source": KITS, "sheets": false, "seconds": 4,
            "plans": plans, "orders": orders });
        let (shown, packet) = ordered(&bench, &order);
        assert_eq!(packet["state"], "done", "{packet}");
        let changes = shown["bought"]["changes"].as_array().unwrap();
        (changes.iter().map(|change| change["count"].as_i64().unwrap()).sum(), shown["leaves"].clone())
    };
    let (alone, leaves) = bought(&[], &[]);
    let (both, together) = bought(&["winter"], &["bread baskets"]);
    assert!(both > alone, "{both} {alone}");
    let of = |leaves: &Value, id: &str| {
        leaves.as_array().unwrap().iter().find(|leaf| leaf["id"] == id).cloned().unwrap()
    };
    assert_eq!(of(&together, "kits"), of(&leaves, "kits"), "the bags are those of the plan alone");
    assert_eq!(of(&together, "price"), of(&leaves, "price"), "and so is its price");
    assert_ne!(of(&together, "cutting"), of(&leaves, "cutting"));
    // One list for nine baskets is what a class of nine would take.
    let nine = KITS.replace("count = 2", "count = 9");
    let (shown, _) = worked(&bench, "kits", &nine);
    let whole: i64 =
        shown["bought"]["changes"].as_array().unwrap().iter().filter_map(|own| own["count"].as_i64()).sum();
    assert!((both - whole).abs() <= whole / 10, "spares alone differ: {both} {whole}");

    let missing = json!({ "kind": "kits", "source": KITS, "sheets": false, "seconds": 4, "orders": ["egg"] });
    bench.ask("POST", "/api/plans/work", Some(&missing)).assert_refused(404);
}

#[test]
fn a_pattern_that_lies_elsewhere_is_not_read() {
    let bench = kits();
    let outside = bench.folder().parent().unwrap().join("outside-of-the-bench.toml");
    for named in ["../harbour.toml", outside.to_str().unwrap(), "missing.toml"] {
        let source = KITS.replace("harbour.toml", named);
        let (shown, packet) = worked(&bench, "kits", &source);
        assert_eq!((&shown, &packet["state"]), (&Value::Null, &json!("failed")), "{named}");
        assert!(packet["fault"].as_str().unwrap().contains(named), "{packet}");
    }
}

#[test]
fn a_class_says_whether_it_fits_and_what_would_mend_it() {
    let bench = Served::start();
    let class = include_str!("../../../classes/harbour-weekend.toml")
        .replace("../patterns/harbour-bread-basket", "harbour");
    let (shown, packet) = worked(&bench, "class", &class);
    assert_eq!(packet["state"], "done", "{packet}");
    let sections = shown["leaves"][0]["sections"].as_array().unwrap();
    assert_eq!(sections[0]["heading"], "Harbour bread basket in two days");
    assert!(sections.len() > 1, "what would mend it: {sections:?}");
    let more = class
        .replace("count = 12", "count = 2")
        .replace("date = \"2027-04-11\"", "every = 1\ntimes = 6\ndate = \"2027-04-11\"");
    let (shown, _) = worked(&bench, "class", &more);
    assert!(shown["pictures"][0].as_str().is_some_and(|picture| picture.starts_with("<svg")), "{shown}");
}

#[test]
fn guests_see_no_plans_unless_they_may_write() {
    let bench = Served::with(&["--studio"]);
    let guest = bench.guest(1);
    guest.ask("GET", "/api/plans", None).assert_refused(403);
    let request = json!({ "kind": "kits", "source": KITS, "edits": [] });
    guest.ask("POST", "/api/plans", Some(&request)).assert_refused(403);
    let order = json!({ "kind": "kits", "source": KITS, "sheets": false, "seconds": 4 });
    guest.ask("POST", "/api/plans/work", Some(&order)).assert_refused(403);
}
