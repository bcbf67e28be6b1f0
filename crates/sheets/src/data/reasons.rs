//! What was chosen because the pattern left it open, and the next best staves.

use basket::Basket;
use basket::choice::Choice;
use basket::staves::Candidate;
use serde::Serialize;

use crate::scribe::Scribe;

/// The staves used and the next best two.
const CANDIDATES: usize = 3;

#[derive(Serialize)]
pub(crate) struct ChoiceLine {
    key: &'static str,
    value: String,
    reason: String,
}

#[derive(Serialize)]
pub(crate) struct CandidateLine {
    count: u32,
    stock: String,
    gap_rim: String,
    gap_range: String,
    reasons: Vec<String>,
}

pub(crate) fn choices(basket: &Basket, scribe: &Scribe<'_>) -> Vec<ChoiceLine> {
    let line = |choice: &Choice| ChoiceLine {
        key: choice.key,
        value: scribe.words.value(&choice.value),
        reason: scribe.words.say(&choice.reason),
    };
    basket.choices.iter().map(line).collect()
}

pub(crate) fn candidates(basket: &Basket, scribe: &Scribe<'_>) -> Vec<CandidateLine> {
    let line = |way: &Candidate| CandidateLine {
        count: way.count,
        stock: scribe.words.material(&way.stock.name),
        gap_rim: scribe.words.fine(way.gap_rim),
        gap_range: scribe.text("range", &[("from", way.gap_narrowest.into()), ("to", way.gap_widest.into())]),
        reasons: way.reasons.iter().map(|reason| scribe.words.say(reason)).collect(),
    };
    basket.body.staves().candidates.iter().take(CANDIDATES).map(line).collect()
}
