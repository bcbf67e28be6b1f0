//! The bench in the studio: who gets in, what guests see, and what they do not.

#[path = "common/server.rs"]
mod server;

use serde_json::{Value, json};
use server::{Served, harbour, until};

#[test]
fn the_studio_opens_only_with_its_token() {
    let bench = Served::with(&["--studio"]);
    let token = bench.token();
    assert_eq!(token.len(), 32, "{}", bench.said);
    assert!(bench.said.contains('█') || bench.said.contains("in no network"), "{}", bench.said);

    for path in ["/", "/api/health", "/api/patterns/harbour", "/?token=0123456789abcdef0123456789abcdef"] {
        bench.ask("GET", path, None).assert_refused(401);
    }
    let entered = bench.ask("GET", &format!("/?token={token}"), None);
    assert_eq!(entered.status, 303, "{}", entered.text());
    assert!(entered.head.contains("max-age=43200; httponly; samesite=lax"), "{}", entered.head);
    assert!(entered.head.contains("location: /\r\n") && !entered.head.contains(&token), "{}", entered.head);
    let forged = format!("stavewright-studio={token}");
    bench.ask_with("GET", "/api/health", &[("Cookie", &forged)], None).assert_refused(401);

    let guest = bench.guest(1);
    let health = guest.ask("GET", "/api/health", None).json();
    assert_eq!((&health["studio"], &health["may_write"]), (&json!(true), &json!(false)));
    let hash = guest.ask("GET", "/api/patterns/harbour", None).json()["hash"].clone();
    let save = json!({ "source": harbour(), "base_hash": hash });
    guest.ask("PUT", "/api/patterns/harbour", Some(&save)).assert_refused(403);
    let name = json!({ "to": "other" });
    guest.ask("POST", "/api/patterns/harbour/rename", Some(&name)).assert_refused(403);

    let bench = Served::with(&["--studio-write"]);
    assert_eq!(bench.guest(1).ask("PUT", "/api/patterns/harbour", Some(&save)).status, 200);
}

#[test]
fn several_wrong_tokens_make_their_machine_wait() {
    let bench = Served::with(&["--studio"]);
    let wrong = format!("/?token={}", "0".repeat(32));
    let statuses: Vec<u16> = (0..8).map(|_| bench.ask("GET", &wrong, None).status).collect();
    assert_eq!(statuses[..5], [401; 5]);
    assert_eq!(statuses[5..], [429; 3]);
    let waits = bench.ask("GET", &format!("/?token={}", bench.token()), None);
    waits.assert_refused(429);
    assert!(waits.head.contains("retry-after: "), "{}", waits.head);
    // Another machine, and whoever is inside, do not notice.
    assert_eq!(bench.guest(2).ask("GET", "/api/health", None).status, 200);
}

/// The harbour basket with one course drawn in a file of this name.
fn drawn(name: &str) -> String {
    let courses = format!(
        "courses = [{{ weave = \"drawn\", weaver = \"cane fine\", rows = 4, chart-file = \"{name}\" }}]"
    );
    let text = harbour();
    let (before, rest) = text.split_once("courses = [").unwrap();
    format!("{before}{courses}{}", rest.split_once("\n]").unwrap().1)
}

/// The same with a note that shows a photograph.
fn with_photo(name: &str) -> String {
    format!("{}\n[[note]]\nstep = \"base\"\ntext = \"Like this\"\nphoto = \"{name}\"\n", harbour())
}

#[test]
fn guests_see_the_patterns_and_nothing_else_of_the_folder() {
    let room = tempfile::tempdir().unwrap();
    let put = |name: &str, text: &str| std::fs::write(room.path().join(name), text).unwrap();
    put("harbour.toml", &harbour());
    put("offered.toml", &drawn("offered.csv"));
    put("accounts.toml", "password = \"tide\"\n");
    put("offered.csv", "X.X\n.X.\n");
    put("private.csv", "X.X\n.X.\n");
    put("private.txt", "not a chart, a letter\n");
    put("private.png", "no picture");
    let bench = Served::over(room.path(), &["--studio"]);
    let guest = bench.guest(1);

    let list = guest.ask("GET", "/api/patterns", None).json();
    let names: Vec<&str> = list.as_array().unwrap().iter().map(|one| one["name"].as_str().unwrap()).collect();
    assert_eq!(names, ["harbour", "offered"]);
    guest.ask("GET", "/api/patterns/accounts", None).assert_refused(404);

    let look = |source: &str| guest.ask("POST", "/api/look", Some(&json!({ "source": source }))).json();
    assert!(look(&drawn("offered.csv"))["basket"].is_object());
    // Of a file that is there and of one that is not the same is said.
    let told = |name: &str| look(&drawn(name))["problems"].to_string().replace(name, "…");
    for name in ["private.csv", "private.txt", "private.png", "harbour.toml"] {
        assert_eq!(told(name), told("nothing.csv"), "{name}");
    }
    assert_eq!(told("../private.csv"), told("../nothing.csv"));
    let packet = |name: &str| {
        let answer = guest.ask("POST", "/api/packets", Some(&json!({ "source": with_photo(name) })));
        answer.assert_refused(422);
        answer.text().replace(name, "…")
    };
    assert_eq!(packet("private.png"), packet("nothing.png"));

    // Whoever may write sees them, and is told what is wrong with them.
    let bench = Served::over(room.path(), &["--studio-write"]);
    let look =
        |name: &str| bench.guest(1).ask("POST", "/api/look", Some(&json!({ "source": drawn(name) }))).json();
    assert!(look("private.csv")["basket"].is_object());
    assert_ne!(look("private.txt")["problems"][0]["message"], look("nothing.csv")["problems"][0]["message"]);
}

#[test]
fn nothing_tells_where_the_folder_is() {
    let room = tempfile::tempdir().unwrap();
    let put = |name: &str, text: &str| std::fs::write(room.path().join(name), text).unwrap();
    put("harbour.toml", &harbour());
    put("bad.csv", "X?X\n");
    put("bad.png", "no picture");
    let bench = Served::over(room.path(), &[]);
    let path = bench.folder().to_str().unwrap();
    let mut said = vec![bench.get("/api/health").text(), bench.get("/api/patterns").text()];
    let mut ask =
        |method: &str, path: &str, body: Value| said.push(bench.ask(method, path, Some(&body)).text());
    for name in ["bad.csv", "bad.png", "nothing.csv", "harbour.toml"] {
        ask("POST", "/api/look", json!({ "source": drawn(name) }));
        ask("POST", "/api/picture", json!({ "source": drawn(name) }));
        ask("POST", "/api/packets", json!({ "source": with_photo(name) }));
    }
    ask("PUT", "/api/patterns/nowhere", json!({ "source": "", "base_hash": "0" }));
    ask("POST", "/api/patterns/nowhere/rename", json!({ "to": "other" }));
    for said in said {
        assert!(!said.contains(path), "{said}");
    }
}

#[cfg(target_os = "linux")]
#[test]
fn the_browser_is_started_with_a_link_that_holds_once() {
    use std::os::unix::fs::PermissionsExt;
    // Browsers are started through `xdg-open` (freedesktop.org, xdg-utils); this one notes what it is told.
    let room = tempfile::tempdir().unwrap();
    let (opener, noted) = (room.path().join("xdg-open"), room.path().join("noted"));
    std::fs::write(&opener, format!("#!/bin/sh\necho \"$@\" > {0}.new && mv {0}.new {0}\n", noted.display()))
        .unwrap();
    std::fs::set_permissions(&opener, std::fs::Permissions::from_mode(0o755)).unwrap();
    let path = format!("{}:{}", room.path().display(), std::env::var("PATH").unwrap());
    let bench = Served::opening(room.path(), &path);
    until("the browser is started", || noted.exists());
    let told = std::fs::read_to_string(&noted).unwrap();
    assert!(!told.contains(&bench.token()), "{told}");
    let link = format!("/{}", told.trim().rsplit_once('/').unwrap().1);
    assert!(link.starts_with("/?token="), "{told}");
    assert_eq!(bench.ask("GET", &link, None).status, 303);
    bench.ask("GET", &link, None).assert_refused(401);
}
