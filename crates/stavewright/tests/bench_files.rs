//! The bench and the files of its folder: what the maker wrote stays, and nothing is lost.

#[path = "common/server.rs"]
mod server;

use serde_json::{Value, json};
use server::{Served, harbour};

fn opened(bench: &Served, name: &str) -> (String, Value) {
    let text = bench.get(&format!("/api/patterns/{name}")).json();
    (text["source"].as_str().unwrap().to_owned(), text["hash"].clone())
}

fn edited(bench: &Served, source: &str, edits: &Value) -> String {
    let edited = bench.post("/api/edit", &json!({ "source": source, "edits": edits }));
    assert_eq!(edited["look"]["problems"], json!([]), "{edited}");
    edited["source"].as_str().unwrap().to_owned()
}

#[test]
fn a_change_keeps_comments_and_layout() {
    let bench = Served::start();
    let (source, hash) = opened(&bench, "harbour");
    let changed = edited(
        &bench,
        &source,
        &json!([
            { "do": "set", "path": "staves.count", "value": 73 },
            { "do": "measure", "path": "base.diameter", "mm": 127.2 },
            { "do": "set", "path": "weave.courses[1].rows", "value": 6 },
            { "do": "measure", "path": "mould.girths[2][2]", "mm": 508.0 },
        ]),
    );
    let saved =
        bench.ask("PUT", "/api/patterns/harbour", Some(&json!({ "source": changed, "base_hash": hash })));
    assert_eq!(saved.status, 200, "{}", saved.text());
    let expected = harbour()
        .replace("stock = \"flat oval reed 1/4 in\"\n", "stock = \"flat oval reed 1/4 in\"\ncount = 73\n")
        .replace("diameter = \"4 7/8\"", "diameter = \"5\"")
        .replace("rows = 4", "rows = 6")
        .replace("[\"1\", \"19 3/4\"]", "[\"1\", \"20\"]");
    assert_eq!(bench.file("harbour.toml"), expected);
}

#[test]
fn a_file_changed_outside_is_never_overwritten() {
    let bench = Served::start();
    let (source, hash) = opened(&bench, "harbour");
    let tag = format!("\"{}\"", hash.as_str().unwrap());
    let unchanged = [("If-None-Match", tag.as_str())];
    assert_eq!(bench.ask_with("GET", "/api/patterns/harbour", &unchanged, None).status, 304);

    let outside = source.replace("Harbour bread basket\"", "Changed outside\"");
    std::fs::write(bench.folder().join("harbour.toml"), &outside).unwrap();
    assert_eq!(bench.ask_with("GET", "/api/patterns/harbour", &unchanged, None).status, 200);
    let mine = source.replace("Harbour bread basket\"", "Mine\"");
    let save = json!({ "source": mine, "base_hash": hash });
    let refused = bench.ask("PUT", "/api/patterns/harbour", Some(&save));
    refused.assert_refused(409);
    let present = refused.json()["present"].clone();
    assert_eq!(present["source"], json!(outside));
    assert_eq!(bench.file("harbour.toml"), outside);

    let save = json!({ "source": mine, "base_hash": present["hash"] });
    assert_eq!(bench.ask("PUT", "/api/patterns/harbour", Some(&save)).status, 200);
    assert_eq!(bench.file("harbour.toml"), mine);

    std::fs::remove_file(bench.folder().join("harbour.toml")).unwrap();
    bench.ask("PUT", "/api/patterns/harbour", Some(&save)).assert_refused(409);
    assert!(!bench.folder().join("harbour.toml").exists());
}

#[test]
fn of_two_windows_the_second_is_told() {
    let bench = Served::start();
    let (source, hash) = opened(&bench, "harbour");
    let save = |count: usize| {
        let source = source.replace("[weave]", &format!("# window {count}\n[weave]"));
        json!({ "source": source, "base_hash": hash })
    };
    let statuses: Vec<u16> = std::thread::scope(|scope| {
        let windows: Vec<_> = (0..8)
            .map(|window| {
                let (bench, body) = (&bench, save(window));
                scope.spawn(move || bench.ask("PUT", "/api/patterns/harbour", Some(&body)).status)
            })
            .collect();
        windows.into_iter().map(|window| window.join().unwrap()).collect()
    });
    assert_eq!(statuses.iter().filter(|status| **status == 200).count(), 1, "{statuses:?}");
    assert_eq!(statuses.iter().filter(|status| **status == 409).count(), 7, "{statuses:?}");
}

#[test]
fn a_pattern_with_mistakes_is_saved_as_it_is_and_they_are_told() {
    let bench = Served::start();
    let (source, hash) = opened(&bench, "harbour");
    let broken = source.replace("4 7/8", "4 7/8 inn");
    let save = json!({ "source": broken, "base_hash": hash });
    let saved = bench.ask("PUT", "/api/patterns/harbour", Some(&save));
    assert_eq!(saved.status, 200, "{}", saved.text());
    let problem = saved.json()["problems"][0].clone();
    assert_eq!(problem["path"], "base.diameter");
    assert_eq!(problem["help"], "did you mean `in`?");
    let at = source.lines().position(|line| line.starts_with("diameter")).unwrap() + 1;
    assert_eq!((&problem["line"], &problem["column"]), (&json!(at), &json!(19)));
    assert_eq!(bench.file("harbour.toml"), broken);
    assert_eq!(bench.get("/api/patterns").json()[0]["reads"], json!(false));

    let again = json!({ "source": source, "base_hash": saved.json()["hash"] });
    let saved = bench.ask("PUT", "/api/patterns/harbour", Some(&again));
    assert_eq!((saved.status, &saved.json()["problems"]), (200, &json!([])));
}

#[test]
fn names_that_some_systems_cannot_hold_are_refused_in_both_languages() {
    let bench = Served::start();
    for (language, said) in [("en", "some systems"), ("de", "Manche Systeme")] {
        let headers = [("Accept-Language", language)];
        let to = json!({ "to": "CON" });
        let refused = bench.ask_with("POST", "/api/patterns/harbour/rename", &headers, Some(&to));
        refused.assert_refused(422);
        assert!(refused.text().contains(said), "{}", refused.text());
        let save = json!({ "source": harbour(), "base_hash": null });
        let refused = bench.ask_with("PUT", "/api/patterns/nul", &headers, Some(&save));
        refused.assert_refused(422);
        assert!(refused.text().contains(said), "{}", refused.text());
    }
}

#[test]
fn refusals_speak_the_language_that_is_asked_for_first() {
    let bench = Served::start();
    let cases = [
        (None, "there is no such pattern"),
        (Some("en-GB,de;q=0.5"), "there is no such pattern"),
        (Some("de-AT, en;q=0.8"), "im Ordner liegt keine solche Vorlage"),
        (Some("fr"), "there is no such pattern"),
    ];
    for (language, said) in cases {
        let headers: Vec<_> = language.into_iter().map(|language| ("Accept-Language", language)).collect();
        let refused = bench.ask_with("GET", "/api/patterns/absent", &headers, None);
        refused.assert_refused(404);
        assert!(refused.text().contains(said), "{language:?}: {}", refused.text());
        assert_eq!(refused.json()["where"], "absent.toml");
        assert!(refused.head.contains("x-content-type-options: nosniff"), "{language:?}: {}", refused.head);
        assert!(refused.head.contains("cache-control: no-store"), "{language:?}: {}", refused.head);
    }
}

#[test]
fn files_get_new_names_without_harm() {
    let bench = Served::start();
    std::fs::write(bench.folder().join("taken.toml"), "title = \"Taken\"\n").unwrap();
    bench.ask("POST", "/api/patterns/harbour/rename", Some(&json!({ "to": "taken" }))).assert_refused(409);
    assert_eq!(bench.file("taken.toml"), "title = \"Taken\"\n");
    let new = json!({ "source": harbour(), "base_hash": null });
    bench.ask("PUT", "/api/patterns/taken", Some(&new)).assert_refused(409);
    assert_eq!(bench.ask("PUT", "/api/patterns/K%C3%B6rbchen%202", Some(&new)).status, 200);
    assert_eq!(bench.file("Körbchen 2.toml"), harbour());

    assert_eq!(bench.post("/api/patterns/harbour/rename", &json!({ "to": "bread" }))["name"], "bread");
    bench.ask("GET", "/api/patterns/harbour", None).assert_refused(404);
    let list = bench.get("/api/patterns").json();
    let names: Vec<&str> = list.as_array().unwrap().iter().map(|one| one["name"].as_str().unwrap()).collect();
    assert_eq!(names, ["Körbchen 2", "bread", "taken"]);
    assert_eq!(list[1]["title"], "Harbour bread basket");
    assert_eq!((&list[1]["reads"], &list[2]["reads"]), (&json!(true), &json!(false)));
}

#[test]
fn a_server_killed_while_it_saves_leaves_the_old_file_or_the_new_one() {
    let room = tempfile::tempdir().unwrap();
    let file = room.path().join("harbour.toml");
    // Large enough that writing takes a while.
    let text = |word: &str| harbour() + &format!("# {word}\n").repeat(40_000);
    let texts = [text("one"), text("two")];
    std::fs::write(&file, &texts[0]).unwrap();
    for delay in [3, 11, 19, 37, 61] {
        let mut bench = Served::over(room.path(), &[]);
        std::thread::scope(|scope| {
            let address = bench.address;
            let (texts, file) = (&texts, &file);
            scope.spawn(move || {
                let mut now = usize::from(std::fs::read_to_string(file).unwrap() == texts[1]);
                for _ in 0..200 {
                    let Ok(hash) = ask_hash(address) else { return };
                    now = 1 - now;
                    let body = json!({ "source": texts[now], "base_hash": hash }).to_string();
                    if put(address, &body).is_err() {
                        return;
                    }
                }
            });
            std::thread::sleep(std::time::Duration::from_millis(delay + 60));
            bench.kill();
        });
        let left = std::fs::read_to_string(&file).unwrap();
        assert!(texts.contains(&left), "after {delay} ms {} bytes", left.len());
    }
    let bench = Served::over(room.path(), &[]);
    assert_eq!(
        bench.get("/api/patterns").json().as_array().unwrap().len(),
        1,
        "temporary files are not listed"
    );
}

fn send(address: std::net::SocketAddr, head: &str, body: &str) -> std::io::Result<String> {
    use std::io::{Read, Write};
    let mut stream = std::net::TcpStream::connect(address)?;
    stream.write_all(
        format!(
            "{head} HTTP/1.1\r\nHost: {address}\r\nOrigin: http://{address}\r\nContent-Type: application/json\r\n\
             Content-Length: {}\r\nConnection: close\r\n\r\n{body}",
            body.len()
        )
        .as_bytes(),
    )?;
    let mut answer = String::new();
    stream.read_to_string(&mut answer)?;
    Ok(answer)
}

fn ask_hash(address: std::net::SocketAddr) -> std::io::Result<String> {
    let answer = send(address, "GET /api/patterns/harbour", "")?;
    let hash = answer.split("etag: \"").nth(1).and_then(|rest| rest.split('"').next());
    hash.map(str::to_owned).ok_or_else(|| std::io::Error::other("no hash"))
}

fn put(address: std::net::SocketAddr, body: &str) -> std::io::Result<()> {
    let answer = send(address, "PUT /api/patterns/harbour", body)?;
    if answer.contains(" 200 ") { Ok(()) } else { Err(std::io::Error::other(answer)) }
}
