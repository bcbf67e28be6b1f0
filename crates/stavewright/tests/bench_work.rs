//! What the bench works out: form, remedies, edits, pictures, comparison, packets, and its description.

#[path = "common/server.rs"]
mod server;

use std::time::{Duration, Instant};

use serde_json::{Value, json};
use server::{Served, harbour};

/// The count of staves that is chosen for the example.
fn chosen_count() -> u32 {
    let catalogue = basket::Catalogue::built_in();
    let pattern = basket::pattern::read(&harbour(), catalogue).unwrap();
    basket::assemble(&pattern, catalogue, &basket::Hand::USUAL).body.uprights().count
}

fn fields(look: &Value) -> Vec<Value> {
    let groups = look["basket"]["groups"].as_array().unwrap();
    groups.iter().flat_map(|group| group["fields"].as_array().unwrap().clone()).collect()
}

fn field(look: &Value, path: &str) -> Value {
    fields(look).into_iter().find(|field| field["path"] == path).unwrap_or_else(|| panic!("{path}"))
}

fn edit(bench: &Served, source: &str, edits: &Value) -> (String, Value) {
    let edited = bench.post("/api/edit", &json!({ "source": source, "edits": edits }));
    (edited["source"].as_str().unwrap().to_owned(), edited["look"].clone())
}

#[test]
fn what_is_chosen_is_said_and_can_be_taken_over_and_given_back() {
    let bench = Served::start();
    let look = bench.post("/api/look", &json!({ "source": harbour() }));
    let count = field(&look, "staves.count");
    assert_eq!(count["written"], json!(null));
    let chosen = chosen_count();
    assert_eq!(count["used"]["number"], json!(f64::from(chosen)));
    assert!(count["why"].as_str().unwrap().contains(&format!("{chosen} staves")), "{count}");
    let diameter = field(&look, "base.diameter");
    assert_eq!((&diameter["written"], &diameter["why"]), (&json!("4 7/8"), &json!(null)));
    assert_eq!(diameter["used"]["text"], "4 7/8 in (124 mm)");

    // Every value that was chosen can be written down without changing the basket, and taken out again.
    for chosen in fields(&look).iter().filter(|field| !field["take"].as_array().unwrap().is_empty()) {
        let path = chosen["path"].as_str().unwrap();
        let (taken, now) = edit(&bench, &harbour(), &chosen["take"]);
        assert_eq!(now["problems"], json!([]), "{path}: {taken}");
        let mine = field(&now, path);
        if chosen["kind"] != "part" {
            assert_eq!(mine["used"]["word"], chosen["used"]["word"], "{path}");
            assert_eq!(mine["why"], json!(null), "{path}");
            let (given, back) = edit(&bench, &taken, &mine["give"]);
            assert_eq!(field(&back, path)["written"], json!(null), "{path}: {given}");
            assert_eq!(back["basket"]["figures"], look["basket"]["figures"], "{path}");
        }
    }
}

#[test]
fn each_remedy_is_a_step_that_mends() {
    let bench = Served::start();
    let bad = harbour()
        .replace("[weave]", "count = 72\n\n[weave]")
        .replace("width = \"3/32\"", "width = \"1/32\"")
        .replace("lap = \"4\"", "lap = \"1/2\"");
    let look = bench.post("/api/look", &json!({ "source": bad }));
    let findings = look["basket"]["findings"].as_array().unwrap().clone();
    let with_steps: Vec<&Value> =
        findings.iter().filter(|finding| !finding["steps"].as_array().unwrap().is_empty()).collect();
    for code in ["groove-too-narrow", "weave-does-not-lock", "lap-too-short"] {
        let finding =
            with_steps.iter().find(|finding| finding["code"] == code).unwrap_or_else(|| panic!("{code}"));
        let step = &finding["steps"][0];
        let (mended, now) = edit(&bench, &bad, &step["edits"]);
        assert_eq!(now["problems"], json!([]), "{mended}");
        let left = now["basket"]["findings"].as_array().unwrap();
        assert!(left.iter().all(|other| other["code"] != code), "{code} after {step}");
    }
    let count = with_steps.iter().find(|finding| finding["code"] == "weave-does-not-lock").unwrap();
    let labels: Vec<&str> =
        count["steps"].as_array().unwrap().iter().map(|step| step["label"].as_str().unwrap()).collect();
    assert!(labels.contains(&"Staves: Count → 73"), "{labels:?}");
    assert_eq!(findings[0]["grade"], "stop");
}

#[test]
fn courses_are_put_in_moved_and_taken_out_with_their_comments() {
    let bench = Served::start();
    let look = bench.post("/api/look", &json!({ "source": harbour() }));
    let fresh = look["basket"]["courses"]["fresh"].clone();
    let list = "weave.courses";
    let (more, now) =
        edit(&bench, &harbour(), &json!([{ "do": "insert", "path": list, "at": 2, "value": fresh }]));
    assert_eq!(now["basket"]["courses"]["each"].as_array().unwrap().len(), 3);
    let row = "  { rows = 4, weave = \"plain\", weaver = \"cane fine\" },\n";
    let second = "  { weave = \"plain\", weaver = \"cane fine\", until";
    assert_eq!(more, harbour().replace(second, &format!("{row}{second}")));

    let (moved, _) = edit(&bench, &harbour(), &json!([{ "do": "move", "path": list, "from": 1, "to": 2 }]));
    let comment = "  # A narrow grade first: it lies better where the wall turns up.\n";
    let first = "  { weave = \"plain\", weaver = \"cane fine-fine\", rows = 4 },\n";
    let last = "  { weave = \"plain\", weaver = \"cane fine\", until = \"1 below mould top\" },\n";
    assert_eq!(
        moved,
        harbour().replace(&format!("{comment}{first}{last}"), &format!("{last}{comment}{first}"))
    );

    let (less, _) = edit(&bench, &harbour(), &json!([{ "do": "remove", "path": "weave.courses[1]" }]));
    assert_eq!(less, harbour().replace(first, ""));
}

#[test]
fn a_basket_grows_from_nothing_but_a_mould() {
    let bench = Served::start();
    let source = "title = \"New\"\nunits = \"mm\"\n\n[mould]\nbase = \"130\"\nrim = \"200\"\nheight = \"110\"\nside = \"bowl\"\n";
    let look = bench.post("/api/look", &json!({ "source": source }));
    let basket = &look["basket"];
    assert!(basket["courses"]["why"].is_string(), "{basket}");
    let (taken, now) = edit(&bench, source, &basket["courses"]["take"]);
    assert_eq!(now["basket"]["figures"], basket["figures"], "{taken}");
    let (measured, now) = edit(&bench, &taken, &basket["mould"]["measure"]);
    assert_eq!(now["problems"], json!([]), "{measured}");
    assert_eq!(now["basket"]["mould"]["girths"].as_array().unwrap().len(), 5);
    let (drawn, now) = edit(&bench, &measured, &now["basket"]["mould"]["draw"]);
    assert_eq!(now["problems"], json!([]), "{drawn}");
    assert!(now["basket"]["mould"]["girths"].as_array().unwrap().is_empty());
    let handle = field(&now, "handle");
    assert_eq!(handle["written"], json!(false));
    let (held, now) = edit(&bench, &drawn, &handle["take"]);
    assert_eq!(now["problems"], json!([]), "{held}");
    assert!(field(&now, "handle.width")["used"]["number"].as_f64().unwrap() > 5.0);
}

#[test]
fn what_is_typed_wrong_is_written_and_told_with_its_place() {
    let bench = Served::start();
    let edits = json!([{ "do": "set", "path": "base.diameter", "value": "5 5/8 inn" }]);
    let (source, look) = edit(&bench, &harbour(), &edits);
    assert!(source.contains("diameter = \"5 5/8 inn\""), "{source}");
    assert_eq!(look["basket"], json!(null));
    let problem = &look["problems"][0];
    assert_eq!((&problem["path"], &problem["help"]), (&json!("base.diameter"), &json!("did you mean `in`?")));
    for edits in [
        json!([{ "do": "set", "path": "no such", "value": 1 }]),
        json!([{ "do": "set", "path": "weave.courses[9].rows", "value": 1 }]),
        json!([{ "do": "insert", "path": "weave.courses", "at": 9, "value": {} }]),
        json!([{ "do": "move", "path": "weave.courses", "from": 1, "to": 3 }]),
        json!([{ "do": "measure", "path": "base.diameter", "mm": -5 }]),
        json!([{ "do": "jump" }]),
    ] {
        let body = json!({ "source": harbour(), "edits": edits });
        bench.ask("POST", "/api/edit", Some(&body)).assert_refused(422);
    }
}

#[test]
fn pictures_and_drawings_are_there_for_every_name() {
    let bench = Served::start();
    let look = bench.post("/api/look", &json!({ "source": harbour() }));
    for stage in look["basket"]["stages"].as_array().unwrap() {
        let body = json!({ "source": harbour(), "stage": stage["word"], "detail": "thumbnail" });
        let picture = bench.ask("POST", "/api/picture", Some(&body));
        assert_eq!(&picture.body[..4], b"glTF", "{stage}: {}", picture.status);
        gltf_names(&picture.body, if stage["word"] == "prepared" { "mould" } else { "base" });
    }
    for (format, begins) in [("stl", "".as_bytes()), ("3mf", b"PK")] {
        let body = json!({ "source": harbour(), "detail": "thumbnail", "format": format });
        let file = bench.ask("POST", "/api/picture", Some(&body));
        assert!(file.status == 200 && file.body.len() > 10_000 && file.body.starts_with(begins), "{format}");
    }
    let drawings = look["basket"]["drawings"].as_array().unwrap();
    assert!(drawings.len() > 30, "{}", drawings.len());
    for drawing in drawings {
        let label = drawing["label"].as_str().unwrap();
        assert!(!label.starts_with("form-"), "{label} has no message");
        // The stage drawings take a while each; two stand for all.
        if drawing["view"] == "stage"
            && !["stage-join", "stage-first-rows"].contains(&drawing["name"].as_str().unwrap())
        {
            continue;
        }
        let body = json!({ "source": harbour(), "name": drawing["name"] });
        let svg = bench.ask("POST", "/api/drawing", Some(&body));
        assert!(svg.status == 200 && svg.text().contains("<svg"), "{drawing}: {}", svg.status);
    }
    let none = json!({ "source": harbour(), "name": "stage-nothing" });
    bench.ask("POST", "/api/drawing", Some(&none)).assert_refused(422);
    let none = json!({ "source": harbour(), "stage": "nothing" });
    bench.ask("POST", "/api/picture", Some(&none)).assert_refused(422);
}

/// The names of nodes stand in the JSON part of a GLB.
fn gltf_names(glb: &[u8], name: &str) {
    let length = u32::from_le_bytes(glb[12..16].try_into().unwrap()) as usize;
    let tree: Value = serde_json::from_slice(&glb[20..20 + length]).unwrap();
    let nodes = tree["nodes"].as_array().unwrap();
    assert!(nodes.iter().any(|node| node["name"] == name), "{name}");
}

#[test]
fn the_chart_tells_each_crossing() {
    let bench = Served::start();
    let chart = bench.post("/api/chart", &json!({ "source": harbour() }));
    let rows = chart["rows"].as_array().unwrap();
    let staves = chosen_count();
    assert_eq!((chart["staves"].as_u64(), rows.len()), (Some(staves.into()), 36));
    let seen = |row: usize, stave: usize| {
        let index = chart["rows"][row]["cells"][stave].as_u64().unwrap() as usize;
        chart["seen"][index]["weaver"].is_u64()
    };
    // Plain weave on an odd count: over and under in turn, along the row and from row to row.
    for row in 0..4 {
        for stave in 0..staves as usize - 1 {
            assert_ne!(seen(row, stave), seen(row, stave + 1), "row {row}, stave {stave}");
            assert_ne!(seen(row, stave), seen(row + 1, stave), "row {row}, stave {stave}");
        }
    }
}

#[test]
fn versions_are_compared() {
    let bench = Served::start();
    let right = harbour().replace("[weave]", "count = 72\n\n[weave]");
    let body = json!({ "left": harbour(), "right": right });
    let compared = bench.post("/api/compare", &body);
    let staves =
        compared["figures"].as_array().unwrap().iter().find(|pair| pair["id"] == "staves").unwrap().clone();
    assert_eq!(
        (&staves["left"], &staves["right"], &staves["same"]),
        (&json!(chosen_count().to_string()), &json!("72"), &json!(false))
    );
    let cuts = compared["cuts"].as_array().unwrap();
    assert!(cuts.iter().any(|pair| pair["label"] == "Stave, flat oval reed 1/4 in"), "{cuts:?}");
    let new = compared["right_findings"].as_array().unwrap();
    assert!(new.iter().any(|finding| finding["code"] == "weave-does-not-lock"), "{new:?}");
    let same = bench.post("/api/compare", &json!({ "left": harbour(), "right": harbour() }));
    assert_eq!(
        (&same["fields"], &same["cuts"], &same["left_findings"]),
        (&json!([]), &json!([]), &json!([]))
    );
}

#[test]
fn a_packet_is_made_taken_and_stopped() {
    let bench = Served::start();
    let begun = bench.post("/api/packets", &json!({ "source": harbour(), "paper": "a4" }));
    assert_eq!(begun["state"], "working");
    let path = format!("/api/packets/{}", begun["id"].as_str().unwrap());
    let start = Instant::now();
    let mut heard = Vec::new();
    let done = loop {
        let now = bench.get(&path).json();
        heard.extend(now["now"].as_str().map(str::to_owned));
        match now["state"].as_str().unwrap() {
            "working" => std::thread::sleep(Duration::from_millis(20)),
            "done" => break now,
            other => panic!("{other}: {now}"),
        }
        assert!(start.elapsed() < Duration::from_mins(2), "{now}");
    };
    assert!(heard.iter().any(|step| step.contains(".pdf")), "{heard:?}");
    assert_eq!(done["done"], done["total"]);
    let names: Vec<&str> =
        done["files"].as_array().unwrap().iter().map(|file| file["name"].as_str().unwrap()).collect();
    for name in ["handout.pdf", "bench-card.pdf", "templates.pdf", "cuts.csv", "basket.json", "packet.zip"] {
        assert!(names.contains(&name), "{names:?}");
    }
    let handout = bench.get(&format!("{path}/handout.pdf"));
    assert!(handout.body.starts_with(b"%PDF-") && handout.head.contains("content-type: application/pdf"));
    let page = bench.get(&format!("{path}/handout.html"));
    assert!(page.head.contains("default-src 'none'; style-src 'sha256-"), "{}", page.head);
    assert!(!page.head.contains("unsafe") && page.text().contains("<style>"), "{}", page.head);
    assert!(bench.get(&format!("{path}/handout.pdf?save")).head.contains("attachment"));
    let all = bench.get(&format!("{path}/packet.zip")).body;
    let mut zip = zip::ZipArchive::new(std::io::Cursor::new(all)).unwrap();
    assert_eq!(zip.len() + 1, names.len());
    let mut inside = Vec::new();
    std::io::copy(&mut zip.by_name("handout.pdf").unwrap(), &mut inside).unwrap();
    assert_eq!(inside, handout.body);
    bench.ask("GET", &format!("{path}/..%2fharbour.toml"), None).assert_refused(404);

    let other = bench.post("/api/packets", &json!({ "source": harbour() }));
    let other = format!("/api/packets/{}", other["id"].as_str().unwrap());
    assert_eq!(bench.ask("DELETE", &other, None).json()["state"], "stopped");
    assert_eq!(bench.get(&other).json()["state"], "stopped");
    bench.ask("GET", &format!("{other}/handout.pdf"), None).assert_refused(404);
    bench.ask("GET", "/api/packets/nothing", None).assert_refused(404);
}

#[test]
fn only_a_few_packets_are_made_at_a_time() {
    let bench = Served::start();
    let statuses: Vec<u16> = (0..6)
        .map(|_| bench.ask("POST", "/api/packets", Some(&json!({ "source": harbour() }))).status)
        .collect();
    assert!(statuses.iter().all(|status| [202, 429].contains(status)), "{statuses:?}");
    assert_eq!(statuses[..2], [202, 202]);
    assert!(statuses.contains(&429), "{statuses:?}");
}

#[test]
fn all_that_is_described_is_there() {
    let bench = Served::start();
    let description = bench.get("/api/openapi.json").json();
    assert!(description["openapi"].as_str().unwrap().starts_with("3."), "{description}");
    let paths = description["paths"].as_object().unwrap();
    assert!(paths.len() >= 16, "{:?}", paths.keys());
    for (path, methods) in paths {
        let address = path.replace("{name}", "harbour").replace("{id}", "x").replace("{file}", "y");
        for method in methods.as_object().unwrap().keys() {
            let answer = bench.ask(&method.to_uppercase(), &address, None);
            assert_ne!(answer.status, 405, "{method} {path}");
            assert!(!answer.text().contains("nothing at this address"), "{method} {path}");
        }
    }
    // What the answers hold is described too.
    for name in ["Looked", "Edited", "Fault", "Packet", "Comparison", "Chart", "EditValue"] {
        assert!(description["components"]["schemas"][name].is_object(), "{name}");
    }
    bench.ask("PATCH", "/api/look", None).assert_refused(405);
    bench.ask("GET", "/api/nothing", None).assert_refused(404);
}

#[test]
fn the_page_is_served() {
    let bench = Served::start();
    let page = bench.get("/");
    assert!(
        page.head.contains("content-type: text/html")
            && page.text().to_lowercase().contains("<!doctype html>")
    );
    assert!(!page.text().contains("<style") && !page.text().contains("onclick="), "{}", page.text());
    let texts = bench.get("/api/messages?language=en");
    assert!(texts.text().contains("bench-"), "{}", texts.text());
    bench.ask("GET", "/api/messages?language=xx", None).assert_refused(422);
}

#[test]
fn materials_of_a_shelf_may_be_named() {
    let room = tempfile::tempdir().unwrap();
    let shelf = room.path().join("shelf.toml");
    std::fs::write(&shelf, "[materials.\"our cane\"]\nlike = \"cane fine\"\nwidth = \"2.4 mm\"\n").unwrap();
    let bench = Served::with(&["--shelf", shelf.to_str().unwrap()]);
    let source = harbour().replace("weaver = \"cane fine\", until", "weaver = \"our cane\", until");
    assert_ne!(source, harbour());
    let stock = bench.get("/api/stock").json();
    let names: Vec<&Value> =
        stock["materials"].as_array().unwrap().iter().map(|material| &material["name"]).collect();
    assert!(names.contains(&&json!("our cane")) && names.contains(&&json!("cane fine")), "{names:?}");
    let look = bench.post("/api/look", &json!({ "source": source }));
    assert_eq!(look["problems"], json!([]));
    let cuts = look["basket"]["cuts"].as_array().unwrap();
    assert!(cuts.iter().any(|cut| cut["material"] == "our cane"), "{cuts:?}");
    let picture =
        bench.ask("POST", "/api/picture", Some(&json!({ "source": source, "detail": "thumbnail" })));
    assert_eq!(&picture.body[..4], b"glTF", "{}", picture.status);
    let compared = bench.post("/api/compare", &json!({ "left": harbour(), "right": source }));
    assert_ne!(compared["cuts"], json!([]));

    let without = Served::start().post("/api/look", &json!({ "source": source }));
    assert!(without["problems"][0]["message"].as_str().unwrap().contains("our cane"), "{without}");
}
