//! Proposals of the search for a look, each with a small chart.

use std::fmt::Write;

use basket::message::Value;
use basket::pattern::Direction;
use basket::weave::find::{Proposal, Wanted};
use basket::weave::look::Look;
use words::Words;

use super::weaves::look;

/// Rows of a small chart.
const ROWS: u32 = 8;
/// Staves of a small chart.
const STAVES: u32 = 64;
/// Signs of the colours, the one that most is made of first.
const SIGNS: [char; 3] = ['.', '#', 'o'];

/// All proposals, best first.
pub(crate) fn render(found: &[Proposal], wanted: &Wanted, words: &Words, names: &[&str]) -> String {
    let mut text = String::new();
    for (proposal, number) in found.iter().zip(1_u32..) {
        text += &one(proposal, number, wanted, words, names);
    }
    let sides = match wanted.direction {
        Direction::Right => "proposal-sides",
        Direction::Left => "proposal-sides-left",
    };
    text += &super::entry("", anstyle::Style::new(), 0, &words.term(sides));
    text
}

fn one(proposal: &Proposal, number: u32, wanted: &Wanted, words: &Words, names: &[&str]) -> String {
    let args = [
        ("number", number.into()),
        ("count", proposal.count.into()),
        ("weave", Value::Name(proposal.weave().to_string())),
    ];
    let mut text = super::heading(&words.with("proposal-head", &args)).trim_start().to_owned();
    let mut seen = look(&proposal.sighting, proposal.lean(), words);
    if proposal.sighting.look == Look::Spiral {
        let turns = [("turns", Value::Number(proposal.turns, 1)), ("rows", wanted.rows.into())];
        seen = format!("{seen}; {}", words.with("proposal-turns", &turns));
        if let Some(wanted) = wanted.turns {
            let rows = wanted * f64::from(proposal.count) / proposal.sighting.slope.abs();
            let exact = [("turns", Value::Number(wanted, 2)), ("rows", (rows.round() as u32).into())];
            seen = format!("{seen} ({})", words.with("proposal-rows", &exact));
        }
    }
    text += &super::entry("", anstyle::Style::new(), 2, &seen);
    text += &super::entry("", anstyle::Style::new(), 2, &keys(proposal, names));
    text + &chart(proposal, words, names) + "\n"
}

/// The keys to write.
fn keys(proposal: &Proposal, names: &[&str]) -> String {
    let course = |keys: &[(&'static str, String)]| {
        let keys: Vec<String> = keys.iter().map(|(key, value)| format!("{key} = {value}")).collect();
        format!("{{ {} }}", keys.join(", "))
    };
    let keys = proposal.keys(names);
    let courses = match proposal.colouring.every {
        Some(_) => proposal
            .colouring
            .weavers
            .iter()
            .map(|colour| {
                let name = names.get(usize::from(*colour)).copied().unwrap_or_default();
                course(&[keys.as_slice(), &[("colours", format!("\"{name}\""))]].concat())
            })
            .collect::<Vec<_>>()
            .join(", "),
        None => course(&keys),
    };
    if proposal.colouring.staves.len() < 2 {
        return courses;
    }
    let staves = proposal.colouring.staves.iter();
    let staves: Vec<String> =
        staves.filter_map(|colour| Some(format!("\"{}\"", names.get(usize::from(*colour))?))).collect();
    format!("{courses} [staves] colours = [{}]", staves.join(", "))
}

/// Rows from the top down and staves from the left, as seen from outside, with a key of its signs.
fn chart(proposal: &Proposal, words: &Words, names: &[&str]) -> String {
    let sign = |colour: u8| SIGNS.get(usize::from(colour)).copied().unwrap_or('?');
    let mut text = String::new();
    let rows = ROWS.max(proposal.colouring.every.unwrap_or(0) * 2);
    for row in (0..rows).rev() {
        let signs = (0..proposal.count.min(STAVES)).map(|stave| sign(proposal.colour(row, stave)));
        let line: String = match proposal.direction {
            Direction::Right => signs.rev().collect(),
            Direction::Left => signs.collect(),
        };
        let _ = writeln!(text, "  {line}");
    }
    let key = if names.len() == 1 {
        vec![words.term("proposal-stave"), words.term("proposal-weaver")]
    } else {
        names.iter().map(|&name| name.to_owned()).collect()
    };
    let key: Vec<String> = SIGNS.iter().zip(key).map(|(sign, name)| format!("{sign} {name}")).collect();
    let _ = writeln!(text, "  {}", key.join("   "));
    text
}
