//! A short run of each target, and all cases that were ever found. `make fuzz` runs for longer.

use std::time::Duration;

use fuzz::runner::{self, Until};
use fuzz::targets;

/// So many cases, the same each time, after those that were found before.
fn tried(name: &str, cases: u64) {
    let program = targets::program().unwrap();
    assert!(program.exists(), "{} is not there: `cargo build --bins` makes it", program.display());
    let mut target = targets::named(name, &program).unwrap();
    runner::again(target.as_mut()).unwrap();
    let until = Until { time: Duration::from_mins(5), cases };
    let tally = runner::run(target.as_mut(), until, 7).unwrap();
    assert!(tally.wrong.is_none(), "{:?}", tally.wrong);
    assert!(tally.cases > 0);
}

#[test]
fn texts() {
    tried("text", 400);
}

#[test]
fn patterns_through_every_drawing_and_solid() {
    tried("drawn", 12);
}

#[test]
fn whole_packets() {
    tried("drafts", 1);
}

#[test]
fn charts() {
    tried("charts", 60);
}

#[test]
fn photos() {
    tried("photos", 60);
}

#[test]
fn bodies_sent_to_the_bench() {
    tried("bodies", 120);
}

#[test]
fn templates() {
    tried("templates", 12);
}
