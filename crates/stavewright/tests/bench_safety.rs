//! The bench under attack: nothing crashes it, hangs it, or makes it read or write elsewhere.

#[path = "common/server.rs"]
mod server;

use std::io::{Read, Write};
use std::time::{Duration, Instant};

use serde_json::{Value, json};
use server::{Served, harbour, read};

fn look() -> Value {
    json!({ "source": harbour() })
}

#[test]
fn a_foreign_host_is_refused() {
    let bench = Served::start();
    let port = bench.address.port();
    for host in [
        format!("evil.example:{port}"),
        "127.0.0.1:1".to_owned(),
        format!("10.0.0.1:{port}"),
        "localhost".to_owned(),
    ] {
        let head = format!("GET /api/health HTTP/1.1\r\nHost: {host}\r\nConnection: close\r\n\r\n");
        bench.raw(&head, b"").assert_refused(403);
    }
    let own = bench.address;
    for hosts in [format!("Host: {own}\r\nHost: evil.example"), format!("Host: {own}\r\nHost: {own}")] {
        let head = format!("GET /api/health HTTP/1.1\r\n{hosts}\r\nConnection: close\r\n\r\n");
        bench.raw(&head, b"").assert_refused(400);
    }
    let two =
        format!("GET http://evil.example/api/health HTTP/1.1\r\nHost: {own}\r\nConnection: close\r\n\r\n");
    bench.raw(&two, b"").assert_refused(400);
    let none = bench.raw("GET /api/health HTTP/1.0\r\n\r\n", b"");
    none.assert_refused(403);
    let own = format!("GET /api/health HTTP/1.1\r\nHost: LocalHost:{port}\r\nConnection: close\r\n\r\n");
    assert_eq!(bench.raw(&own, b"").status, 200);
}

#[test]
fn another_sites_requests_are_refused() {
    let bench = Served::start();
    let host = bench.address;
    let body = look().to_string();
    let length = body.len();
    for origin in ["Origin: http://evil.example\r\n", "Origin: null\r\n", "Origin: https://127.0.0.1\r\n", ""]
    {
        for (method, path) in
            [("POST", "/api/look"), ("PUT", "/api/patterns/harbour"), ("DELETE", "/api/packets/x")]
        {
            let head = format!(
                "{method} {path} HTTP/1.1\r\nHost: {host}\r\n{origin}Content-Type: application/json\r\n\
                 Content-Length: {length}\r\nConnection: close\r\n\r\n"
            );
            bench.raw(&head, body.as_bytes()).assert_refused(403);
        }
    }
    let site = [("Sec-Fetch-Site", "cross-site")];
    bench.ask_with("GET", "/api/patterns/harbour", &site, None).assert_refused(403);
    bench.ask_with("POST", "/api/look", &site, Some(&look())).assert_refused(403);
    // A form of another site can send no JSON.
    let form = format!(
        "POST /api/look HTTP/1.1\r\nHost: {host}\r\nOrigin: http://{host}\r\nContent-Type: text/plain\r\n\
         Content-Length: {length}\r\nConnection: close\r\n\r\n"
    );
    bench.raw(&form, body.as_bytes()).assert_refused(415);
    assert_eq!(bench.file("harbour.toml"), harbour());
}

#[test]
fn every_answer_keeps_the_page_to_itself() {
    let bench = Served::start();
    for path in ["/", "/api/health", "/api/nothing", "/nothing.js"] {
        let head = bench.ask("GET", path, None).head;
        assert!(
            head.contains("content-security-policy: default-src 'none'; script-src 'self'; style-src 'self'")
        );
        assert!(!head.contains("unsafe"), "{head}");
        assert!(
            head.contains("x-content-type-options: nosniff") && head.contains("referrer-policy: no-referrer")
        );
        assert!(!head.contains("access-control-allow"), "{head}");
    }
}

#[test]
fn paths_stay_in_the_folder() {
    let bench = Served::start();
    let outside = bench.folder().parent().unwrap().join("secret.toml");
    std::fs::write(&outside, harbour()).unwrap();
    let source = json!({ "source": harbour(), "base_hash": null });
    for name in [
        "CON",
        "nul",
        "bread%E2%80%AElmot",
        "..%2Fsecret",
        "%2e%2e%2fsecret",
        "..%5Csecret",
        ".hidden",
        "%2Fetc%2Fpasswd",
        "a%00b",
        "..",
        "%20",
    ] {
        for (method, path, body) in [
            ("GET", format!("/api/patterns/{name}"), None),
            ("PUT", format!("/api/patterns/{name}"), Some(&source)),
        ] {
            let answer = bench.ask(method, &path, body);
            assert!((400..500).contains(&answer.status), "{path}: {} {}", answer.status, answer.text());
        }
        let name = name
            .replace("%2F", "/")
            .replace("%2f", "/")
            .replace("%2e", ".")
            .replace("%5C", "\\")
            .replace("%00", "\0")
            .replace("%20", " ")
            .replace("%E2%80%AE", "\u{202e}");
        let body = json!({ "to": name });
        let answer = bench.ask("POST", "/api/patterns/harbour/rename", Some(&body));
        assert!((400..500).contains(&answer.status), "{name:?}: {}", answer.status);
    }
    for path in
        ["/../../etc/passwd", "/%2e%2e/%2e%2e/etc/passwd", "/..%2f..%2fCargo.toml", "//etc/passwd", "/.git"]
    {
        let answer = bench.ask("GET", path, None);
        assert!((400..500).contains(&answer.status), "{path}: {}", answer.text());
    }
    let names: Vec<_> =
        std::fs::read_dir(bench.folder()).unwrap().map(|entry| entry.unwrap().file_name()).collect();
    assert_eq!(names, ["harbour.toml"]);
    assert_eq!(std::fs::read_to_string(&outside).unwrap(), harbour());
}

#[cfg(unix)]
#[test]
fn links_that_lead_out_are_refused() {
    let bench = Served::start();
    let outside = bench.folder().parent().unwrap().join("secret.toml");
    std::fs::write(&outside, "title = \"Secret\"\n").unwrap();
    std::os::unix::fs::symlink(&outside, bench.folder().join("link.toml")).unwrap();
    std::os::unix::fs::symlink("/nowhere", bench.folder().join("broken.toml")).unwrap();
    let listed = bench.get("/api/patterns").text();
    assert!(!listed.contains("link") && !listed.contains("Secret"), "{listed}");
    bench.ask("GET", "/api/patterns/link", None).assert_refused(403);
    bench.ask("GET", "/api/patterns/broken", None).assert_refused(404);
    for base in [json!(null), json!("0")] {
        let body = json!({ "source": harbour(), "base_hash": base });
        for name in ["link", "broken"] {
            let answer = bench.ask("PUT", &format!("/api/patterns/{name}"), Some(&body));
            assert!((400..500).contains(&answer.status), "{}", answer.text());
        }
    }
    assert_eq!(std::fs::read_to_string(&outside).unwrap(), "title = \"Secret\"\n");
}

#[test]
fn drawn_weaves_are_read_from_the_folder_alone() {
    let bench = Served::start();
    let outside = bench.folder().parent().unwrap().join("chart.txt");
    std::fs::write(&outside, "topsecret\n").unwrap();
    #[cfg(unix)]
    std::os::unix::fs::symlink(&outside, bench.folder().join("link.txt")).unwrap();
    std::fs::write(bench.folder().join("own.txt"), "X.X\n.X.\n").unwrap();
    let with = |name: &str| {
        let courses = format!(
            "courses = [{{ weave = \"drawn\", weaver = \"cane fine\", rows = 4, chart-file = \"{name}\" }}]"
        );
        let (before, rest) =
            harbour().split_once("courses = [").map(|(a, b)| (a.to_owned(), b.to_owned())).unwrap();
        let after = rest.split_once("\n]").unwrap().1;
        json!({ "source": format!("{before}{courses}{after}") })
    };
    for name in ["../chart.txt", "/etc/passwd", "link.txt", "nothing.txt"] {
        let look = bench.post("/api/look", &with(name));
        assert!(
            look["basket"].is_null() && look["problems"][0]["path"] == "weave.courses[1].chart-file",
            "{look}"
        );
        assert!(!look.to_string().contains("topsecret"), "{look}");
    }
    let look = bench.post("/api/look", &with("own.txt"));
    assert!(look["basket"].is_object(), "{look}");
}

#[test]
fn a_gigabyte_is_refused_at_once() {
    let bench = Served::start();
    let host = bench.address;
    let begun = Instant::now();
    let head = format!(
        "POST /api/look HTTP/1.1\r\nHost: {host}\r\nOrigin: http://{host}\r\nContent-Type: application/json\r\n\
         Content-Length: 1000000000\r\nConnection: close\r\n\r\n"
    );
    bench.raw(&head, b"{\"source\":\"").assert_refused(413);
    assert!(begun.elapsed() < Duration::from_secs(5), "{:?}", begun.elapsed());

    // The same without saying how much will come.
    let mut stream = bench.connect();
    let head = head.replace("Content-Length: 1000000000", "Transfer-Encoding: chunked");
    stream.write_all(head.as_bytes()).unwrap();
    let piece = format!("{:x}\r\n{}\r\n", 100_000, " ".repeat(100_000));
    let mut sent = 0;
    while sent < 1_000_000_000 && stream.write_all(piece.as_bytes()).is_ok() {
        sent += 100_000;
    }
    assert!(sent < 20_000_000, "{sent} bytes were taken");
    bench.assert_lives();

    // A head without end.
    let mut stream = bench.connect();
    let line = format!("X-Long: {}\r\n", "a".repeat(8000));
    let _ = stream.write_all(b"GET / HTTP/1.1\r\n");
    let mut sent = 0;
    while sent < 50_000_000 && stream.write_all(line.as_bytes()).is_ok() {
        sent += line.len();
    }
    assert!(sent < 20_000_000, "{sent} bytes of head were taken");
    bench.assert_lives();
}

#[test]
fn slow_clients_are_dropped_and_keep_nobody_waiting() {
    let bench = Served::start();
    let host = bench.address;
    let mut in_head: Vec<_> = (0..100).map(|_| bench.connect()).collect();
    for stream in &mut in_head {
        stream.write_all(b"GET /api/health HTTP/1.1\r\nHost:").unwrap();
    }
    let mut in_body = bench.connect();
    let head = format!(
        "POST /api/look HTTP/1.1\r\nHost: {host}\r\nOrigin: http://{host}\r\nContent-Type: application/json\r\n\
         Content-Length: 5000\r\nConnection: close\r\n\r\n{{"
    );
    in_body.write_all(head.as_bytes()).unwrap();
    let begun = Instant::now();
    bench.assert_lives();
    assert!(begun.elapsed() < Duration::from_secs(5), "{:?}", begun.elapsed());
    read(&mut in_body).assert_refused(408);
    let mut rest = Vec::new();
    for stream in &mut in_head {
        rest.clear();
        // Closed, with or without a word.
        let _ = stream.read_to_end(&mut rest);
    }
    assert!(begun.elapsed() < Duration::from_secs(35), "{:?}", begun.elapsed());
    bench.assert_lives();
}

#[test]
fn nonsense_is_answered_and_never_by_a_fault_of_ours() {
    let bench = Served::start();
    let host = bench.address;
    let deep = "[".repeat(50_000);
    let json: Vec<&[u8]> = vec![
        b"",
        b"{",
        b"null",
        b"[]",
        b"\"x\"",
        b"{\"source\": 5}",
        b"{\"source\": \"x\", \"more\": 1}",
        b"\xff\xfe",
        b"{\"source\": \"\\ud800\"}",
        deep.as_bytes(),
    ];
    for path in ["look", "edit", "picture", "drawing", "chart", "compare", "packets"] {
        for body in &json {
            let head = format!(
                "POST /api/{path} HTTP/1.1\r\nHost: {host}\r\nOrigin: http://{host}\r\n\
                 Content-Type: application/json\r\nContent-Length: {}\r\nConnection: close\r\n\r\n",
                body.len()
            );
            let answer = bench.raw(&head, body);
            assert!([400, 422].contains(&answer.status), "{path}: {}", answer.text());
            answer.assert_refused(answer.status);
        }
    }
    let nested = format!("a = {}", "[".repeat(20_000));
    let endless = "x = 1\n".repeat(100_000);
    for source in
        ["", "\u{0}", "a = ", "[[", "title = 5", "= = =", &nested, &endless, "\u{feff}", "a.b.c = {{"]
    {
        let look = bench.post("/api/look", &json!({ "source": source }));
        assert!(look["basket"].is_null() && !look["problems"].as_array().unwrap().is_empty(), "{source:?}");
        let edits =
            json!({ "source": source, "edits": [{ "do": "set", "path": "staves.count", "value": 5 }] });
        let edit = bench.ask("POST", "/api/edit", Some(&edits));
        assert!([200, 422].contains(&edit.status), "{source:?}: {}", edit.status);
        for path in ["picture", "chart", "packets"] {
            bench
                .ask("POST", &format!("/api/{path}"), Some(&json!({ "source": source })))
                .assert_refused(422);
        }
    }
    let garbage = bench.raw("\u{1}\u{2}\u{3} nonsense\r\n\r\n", b"");
    assert!(garbage.status == 0 || garbage.status == 400, "{}", garbage.status);
    bench.assert_lives();
}

#[test]
fn a_basket_of_absurd_size_is_refused_or_told_in_time() {
    let bench = Served::start();
    let courses = "{ weave = \"plain\", weaver = \"cane fine\", rows = 2000 },".repeat(40);
    let source = format!(
        "title = \"Tower\"\nunits = \"mm\"\n[mould]\nbase = \"4000\"\nrim = \"5000\"\nheight = \"5000\"\n\
         [staves]\ncount = 999\n[weave]\ncourses = [{courses}]\n[ears]\n[handle]\nkind = \"swing\"\n"
    );
    let begun = Instant::now();
    let look = bench.ask("POST", "/api/look", Some(&json!({ "source": source })));
    assert!([200, 503].contains(&look.status), "{}", look.status);
    for path in ["picture", "chart", "packets"] {
        let answer = bench.ask("POST", &format!("/api/{path}"), Some(&json!({ "source": source })));
        assert!([422, 503].contains(&answer.status), "{path}: {}", answer.status);
    }
    assert!(begun.elapsed() < Duration::from_mins(1), "{:?}", begun.elapsed());
    bench.assert_lives();
}

/// More crossings than are drawn one by one: pictures and drawings are plainer, only the chart is not there.
#[test]
fn a_very_large_basket_is_drawn_plainer() {
    let bench = Served::start();
    let source = "title = \"Silo\"\nunits = \"mm\"\n[mould]\nbase = \"1500\"\nrim = \"1700\"\nheight = \"1200\"\n\
                  [staves]\ncount = 601\n[weave]\ncourses = [{ weave = \"plain\", weaver = \"cane fine\", rows = 120 }]\n";
    let look = json!({ "source": source });
    assert_eq!(bench.ask("POST", "/api/picture", Some(&look)).status, 200);
    let section = json!({ "source": source, "name": "section" });
    assert_eq!(bench.ask("POST", "/api/drawing", Some(&section)).status, 200);
    bench.ask("POST", "/api/chart", Some(&look)).assert_refused(422);
}

#[test]
fn two_hundred_requests_at_once_are_all_answered() {
    let bench = Served::start();
    let body = look();
    let statuses: Vec<u16> = std::thread::scope(|scope| {
        let ask = |number: usize| {
            let (bench, body) = (&bench, &body);
            move || match number % 4 {
                0 => bench.ask("GET", "/api/patterns", None).status,
                1 => bench.ask("POST", "/api/picture", Some(body)).status,
                2 => bench.ask("POST", "/api/chart", Some(body)).status,
                _ => bench.ask("POST", "/api/look", Some(body)).status,
            }
        };
        let running: Vec<_> = (0..200).map(|number| scope.spawn(ask(number))).collect();
        running.into_iter().map(|thread| thread.join().unwrap()).collect()
    });
    assert!(statuses.iter().all(|status| *status == 200), "{statuses:?}");
    bench.assert_lives();
}
