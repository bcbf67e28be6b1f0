//! The basket that `docs/worked-example.md` works by hand, against the program.

mod common;

use common::{room, run, stavewright};
use serde_json::Value;

const PAGE: &str = include_str!("../../../docs/worked-example.md");
/// What four figures at each step may add up to.
const PENCIL: f64 = 0.001;

/// The pattern on the page.
fn pattern() -> &'static str {
    let (_, rest) = PAGE.split_once("```toml\n").expect("a pattern on the page");
    rest.split_once("```").expect("its end").0
}

/// Key, figure by hand, figure by program.
fn rows() -> impl Iterator<Item = (&'static str, &'static str, &'static str)> {
    PAGE.lines().filter_map(|line| {
        let cells: Vec<_> = line.strip_prefix("| `")?.strip_suffix(" |")?.split(" | ").collect();
        let [key, by_hand, program] = cells[..] else { panic!("not three cells: {line}") };
        Some((key.trim_end_matches('`'), by_hand, program))
    })
}

#[test]
fn pencil_and_program_agree() {
    let room = room();
    let mut draft = stavewright(room.path());
    let said = run(draft.args(["draft", "-", "--no-sheets", "--format", "json"]).write_stdin(pattern()));
    assert!(said.code < 2, "{}", said.err);
    let basket: Value = serde_json::from_str(&said.out).unwrap();
    let mut wrong = Vec::new();
    for (key, by_hand, program) in rows() {
        let pointer = format!("/{}", key.replace('.', "/"));
        let computed = basket.pointer(&pointer).and_then(Value::as_f64);
        let computed = computed.unwrap_or_else(|| panic!("{key} is no number of basket.json"));
        let pencil: f64 = by_hand.parse().unwrap();
        if (pencil - computed).abs() > PENCIL * computed.abs() {
            wrong.push(format!("{key}: by hand {by_hand}, computed {computed}"));
        }
        let decimals = program.split_once('.').map_or(0, |(_, decimals)| decimals.len());
        if program != format!("{computed:.decimals$}") {
            wrong.push(format!("{key}: the page says {program}, the program {computed}"));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
    assert!(rows().count() >= 45, "the table on the page is read whole");
}
