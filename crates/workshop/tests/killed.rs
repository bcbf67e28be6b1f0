//! Killed while it writes, a store loses nothing that it acknowledged; two that write at once do not lose
//! each other's.

use std::io::{BufRead, BufReader};
use std::path::Path;
use std::process::{Child, Command, Stdio};
use std::time::Duration;

use workshop::{Change, Item, Kind, Store};

const WHERE: &str = "STAVEWRIGHT_TEST_STORE";
const HOW_MANY: &str = "STAVEWRIGHT_TEST_BOOKINGS";

/// The process that is killed: books one strand after the other, and says so after each. Run by itself it
/// has nothing to do.
#[test]
fn writer() {
    let Ok(path) = std::env::var(WHERE) else { return };
    let bookings: u32 = std::env::var(HOW_MANY).unwrap().parse().unwrap();
    let mut store = Store::open(Path::new(&path)).unwrap();
    for _ in 0..bookings {
        store.book(Kind::Bought, "one more", &[Change { item: "hank".to_owned(), count: 1 }]).unwrap();
        println!("booked");
    }
}

fn start(path: &Path, bookings: u32) -> Child {
    Command::new(std::env::current_exe().unwrap())
        .args(["writer", "--exact", "--nocapture"])
        .env(WHERE, path)
        .env(HOW_MANY, bookings.to_string())
        .stdout(Stdio::piped())
        .stderr(Stdio::null())
        .spawn()
        .unwrap()
}

fn made(path: &Path) {
    let item = Item { name: "hank".to_owned(), material: "cane fine".to_owned(), ..Item::default() };
    Store::open(path).unwrap().put_items(&[item]).unwrap();
}

/// How many times it said that it booked.
fn acknowledged(child: Child) -> u32 {
    let said = BufReader::new(child.stdout.unwrap()).lines();
    said.map_while(Result::ok).filter(|line| line.ends_with("booked")).count() as u32
}

/// The store is sound (it says so when it is opened), and shelf and history agree.
fn booked(path: &Path) -> u32 {
    let store = Store::open(path).unwrap();
    let count = store.item("hank").unwrap().count;
    assert_eq!(store.history(u32::MAX).unwrap().len(), count as usize);
    count
}

/// Thirty kills; as many as the environment asks for in the long tests.
#[test]
fn nothing_acknowledged_is_lost() {
    let kills = std::env::var("STAVEWRIGHT_KILLS").map_or(30, |kills| kills.parse().unwrap());
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("workshop.db");
    made(&path);
    let mut wrote = 0;
    let (mut before, mut all) = (0, 0);
    for _ in 0..kills {
        let mut child = start(&path, 100_000);
        // The moment is left to chance: no assertion hangs on it.
        std::thread::sleep(Duration::from_micros(fastrand::u64(2_000..40_000)));
        child.kill().unwrap();
        child.wait().unwrap();
        let said = acknowledged(child);
        let after = booked(&path);
        assert!(after >= before + said, "{said} acknowledged, {before} before, {after} after");
        // At most the one that was just being said.
        assert!(after <= before + said + 1, "{said} acknowledged, {before} before, {after} after");
        wrote += u32::from(said > 0);
        all += said;
        before = after;
    }
    assert!(wrote > 0, "no process came to write before it was killed");
    println!("{kills} kills, {wrote} while writing, {all} bookings acknowledged");
}

#[test]
fn two_processes_write_at_once() {
    let folder = tempfile::tempdir().unwrap();
    let path = folder.path().join("workshop.db");
    made(&path);
    let (one, other) = (start(&path, 100), start(&path, 100));
    assert_eq!((acknowledged(one), acknowledged(other)), (100, 100));
    assert_eq!(booked(&path), 200);
}
