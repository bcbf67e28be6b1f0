//! Many at the bench at once: nobody keeps others waiting, and what goes wrong for one goes wrong alone.

#[path = "common/server.rs"]
mod server;

use std::io::Write;
use std::net::TcpStream;
use std::sync::atomic::{AtomicUsize, Ordering};
use std::time::{Duration, Instant};

use serde_json::{Value, json};
use server::{Guest, Served, harbour, read, until};

fn look() -> Value {
    json!({ "source": harbour() })
}

/// As large as may be drawn: about 60,000 crossings.
const LARGE: &str = r#"
title = "Tower"
units = "mm"
[mould]
base = "900"
rim = "1000"
height = "900"
side = "cone"
[staves]
count = 301
[weave]
courses = [{ weave = "plain", weaver = "cane fine", rows = 190 }]
"#;

/// What takes longest: lines of a large basket, each tried against all that may hide it.
fn exploded() -> Value {
    json!({ "source": LARGE, "name": "stage-exploded" })
}

/// How long a small look takes a guest.
fn small_look(guest: &Guest) -> Duration {
    let begun = Instant::now();
    let answer = guest.ask("POST", "/api/look", Some(&look()));
    assert_eq!(answer.status, 200, "{}", answer.text());
    begun.elapsed()
}

#[test]
fn whoever_asks_and_never_reads_keeps_nobody_out() {
    let bench = Served::with(&["--studio"]);
    let (one, other) = (bench.guest(1), bench.guest(2));
    // More than any buffer between the two holds, asked for in one go: ten megabytes.
    let host = bench.address;
    let size = one.ask("GET", "/api/openapi.json", None).body.len();
    let ask = format!("GET /api/openapi.json HTTP/1.1\r\nHost: {host}\r\nCookie: {}\r\n\r\n", one.cookie);
    let many = ask.repeat(10_000_000 / size);
    let mut times = Vec::new();
    let mut unread: Vec<TcpStream> = Vec::new();
    for number in 0..500 {
        let mut stream = one.connect();
        stream.set_write_timeout(Some(Duration::from_millis(5))).unwrap();
        // It ends when the server takes no more, for it cannot get rid of its answers.
        let _ = stream.write_all(many.as_bytes());
        unread.push(stream);
        if number % 50 == 49 {
            times.push(small_look(&other));
        }
    }
    for _ in 0..300 {
        let mut stream = one.connect();
        stream.write_all(b"GET /api/health HTTP/1.1\r\nHost:").unwrap();
        unread.push(stream);
    }
    times.push(small_look(&other));
    times.push(small_look(&one));
    eprintln!("small looks beside {} connections that are not read: {times:?}", unread.len());
}

#[test]
fn an_answer_that_is_never_read_is_given_up() {
    let bench = Served::with(&["--studio"]);
    let guest = bench.guest(1);
    let large = json!({ "source": LARGE, "detail": "full" });
    // The whole share of the guest.
    let share = std::thread::available_parallelism().unwrap().get().clamp(2, 8);
    let unread: Vec<TcpStream> =
        (0..share).map(|_| guest.begin("POST", "/api/picture", Some(&large))).collect();
    // All are answered before anything else is asked.
    for stream in &unread {
        stream.set_read_timeout(Some(Duration::from_mins(1))).unwrap();
        assert_eq!(stream.peek(&mut [0]).unwrap(), 1);
    }
    assert_eq!(guest.ask("POST", "/api/picture", Some(&look())).status, 200);
    // The first of them made room; the others may be read from now on.
    let whole = |mut stream: TcpStream| {
        let answer = read(&mut stream);
        let length = answer.head.split("content-length: ").nth(1).and_then(|rest| rest.lines().next());
        let length: usize = length.unwrap_or_else(|| panic!("{}", answer.head)).parse().unwrap();
        // Linux keeps at most 4 MB of it on its way (`net.ipv4.tcp_wmem`), and the guest 64 kB.
        assert!(length > 6_000_000, "{length} bytes may fit between the two");
        answer.body.len() == length
    };
    assert!(!unread.into_iter().all(whole), "all were kept until they were read");
}

#[test]
fn the_largest_pictures_of_one_guest_keep_no_other_waiting() {
    let bench = Served::with(&["--studio"]);
    let (one, other) = (bench.guest(1), bench.guest(2));
    let large = json!({ "source": LARGE, "detail": "full" });
    let (begun, done) = (AtomicUsize::new(0), AtomicUsize::new(0));
    std::thread::scope(|scope| {
        for _ in 0..40 {
            scope.spawn(|| {
                let mut stream = one.begin("POST", "/api/picture", Some(&large));
                begun.fetch_add(1, Ordering::Relaxed);
                stream.set_read_timeout(Some(Duration::from_mins(5))).unwrap();
                let answer = read(&mut stream);
                assert!([200, 503].contains(&answer.status), "{}", answer.status);
                done.fetch_add(1, Ordering::Relaxed);
            });
        }
        until("all are asked for", || begun.load(Ordering::Relaxed) == 40);
        let time = small_look(&other);
        let picture = Instant::now();
        let thumbnail = json!({ "source": harbour(), "detail": "thumbnail" });
        assert_eq!(other.ask("POST", "/api/picture", Some(&thumbnail)).status, 200);
        let done = done.load(Ordering::Relaxed);
        eprintln!(
            "beside forty large pictures: look {time:?}, thumbnail {:?}, {done} of them done",
            picture.elapsed()
        );
        assert!(done < 20, "{done} large pictures came before another guest's small look");
    });
}

#[test]
fn stopped_packets_make_room_at_once() {
    let bench = Served::start();
    for _ in 0..6 {
        let begun = bench.post("/api/packets", &look());
        let path = format!("/api/packets/{}", begun["id"].as_str().unwrap());
        assert_eq!(bench.ask("DELETE", &path, None).json()["state"], "stopped");
    }
    bench.assert_lives();
}

#[cfg(target_os = "linux")]
#[test]
fn an_answer_given_up_ends_its_worker() {
    let bench = Served::with(&["--studio"]);
    let guest = bench.guest(1);
    until("workers are there", || bench.workers().len() == 2);
    let before = bench.workers();
    let given_up = [(); 2].map(|()| guest.begin("POST", "/api/drawing", Some(&exploded())));
    until("they work", || before.iter().all(|number| busy(*number)));
    drop(given_up);
    until("they have ended", || bench.workers().iter().all(|number| !before.contains(number)));
    assert_eq!(guest.ask("POST", "/api/picture", Some(&look())).status, 200);
}

/// Whether a process has computed for longer than it takes to start: in hundredths of a second, the
/// fields 14 and 15 of its line (proc(5), `/proc/pid/stat`).
#[cfg(target_os = "linux")]
fn busy(process: u32) -> bool {
    let line = std::fs::read_to_string(format!("/proc/{process}/stat")).unwrap_or_default();
    let after_name = line.rsplit_once(") ").map_or("", |(_, rest)| rest);
    let fields: Vec<u64> = after_name.split(' ').map(|field| field.parse().unwrap_or(0)).collect();
    fields.len() > 12 && fields[11] + fields[12] > 10
}

#[cfg(target_os = "linux")]
#[test]
fn a_worker_that_ends_takes_nothing_with_it() {
    let bench = Served::with(&["--studio"]);
    let guest = bench.guest(1);
    until("workers are there", || bench.workers().len() == 2);
    let workers = bench.workers();
    let limits = |worker: &u32| std::fs::read_to_string(format!("/proc/{worker}/limits")).unwrap();
    let limited = |limits: String| {
        limits.lines().any(|line| line.starts_with("Max data size") && line.contains(" 1073741824 "))
    };
    until("their memory is limited", || workers.iter().map(limits).all(limited));
    let mut stream = guest.begin("POST", "/api/drawing", Some(&exploded()));
    until("one works", || workers.iter().any(|number| busy(*number)));
    for worker in workers {
        // As the system ends a process that takes too much memory.
        assert!(
            std::process::Command::new("kill").args(["-9", &worker.to_string()]).status().unwrap().success()
        );
    }
    read(&mut stream).assert_refused(500);
    assert_eq!(guest.ask("POST", "/api/look", Some(&look())).status, 200);
    assert_eq!(guest.ask("POST", "/api/picture", Some(&look())).status, 200);
}

#[test]
fn a_mould_that_narrows_to_nothing_leaves_the_server_standing() {
    let bench = Served::start();
    let source = "title = \"Narrow\"\nunits = \"in\"\n[mould]\nbase = \"8\"\nrim = \"5\"\nheight = \"4\"\n[weave]\n\
         courses = [{ weave = \"plain\", weaver = \"cane fine\", rows = 100 }]\n";
    for name in ["base-plan", "section", "plan", "stage-finished"] {
        let answer = bench.ask("POST", "/api/drawing", Some(&json!({ "source": source, "name": name })));
        assert!([200, 422, 500, 503].contains(&answer.status), "{name}: {} {}", answer.status, answer.text());
        bench.assert_lives();
    }
}
