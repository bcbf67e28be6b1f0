//! Figures of a hand beside the usual ones.

use std::fmt::Write;

use basket::message::Value;
use basket::{Draft, Hand};
use planning::records::{Figure, Learned, Own};
use words::Words;

use super::heading;
use crate::screen;

/// What was learned, and what the basket would be with it.
pub(crate) fn render(learned: &Learned, (usual, own): (&Draft, &Draft), words: &Words) -> String {
    let mut text = String::new();
    for says in figures(learned, words) {
        say(&mut text, &says);
    }
    text.push_str(&heading(&words.term("hand-drafted")));
    for says in drafted((usual, own), words) {
        say(&mut text, &says);
    }
    text
}

/// Each figure beside the usual one, with the bounds within which it lies.
pub(crate) fn figures(learned: &Learned, words: &Words) -> Vec<String> {
    let times = learned.times.iter().map(|(figure, own)| {
        line(&figure_name(*figure, words), (1.0, own, |value| Value::Number(value, 2)), words)
    });
    let spoilt = learned
        .spoilt
        .iter()
        .map(|spoilt| line(&words.term("hand-spoilt"), (Hand::USUAL.spoilt, spoilt, Value::Percent), words));
    times.chain(spoilt).collect()
}

/// What a basket is with them, beside what it is without.
pub(crate) fn drafted((usual, own): (&Draft, &Draft), words: &Words) -> Vec<String> {
    let minutes = |draft: &Draft| draft.steps.iter().map(|step| step.work_minutes).sum::<f64>();
    let rows = |draft: &Draft| Value::Count(draft.basket.body.weave.rows.into());
    let weaver = |draft: &Draft| Value::Length(draft.basket.body.weave.length);
    let before_after = [
        ("hand-work", Value::Minutes(minutes(usual)), Value::Minutes(minutes(own))),
        ("hand-rows", rows(usual), rows(own)),
        ("hand-weaver", weaver(usual), weaver(own)),
    ];
    let said = before_after.into_iter();
    said.map(|(id, before, after)| words.with(id, &[("before", before), ("after", after)])).collect()
}

fn figure_name(figure: Figure, words: &Words) -> String {
    words.term(&format!("hand-{}", figure.word()))
}

fn line(name: &str, (usual, own, told): (f64, &Own, fn(f64) -> Value), words: &Words) -> String {
    let args = [
        ("figure", Value::Name(name.to_owned())),
        ("usual", told(usual)),
        ("value", told(own.value)),
        ("from", told(own.within.0)),
        ("to", told(own.within.1)),
        ("records", Value::Count(i64::try_from(own.records).unwrap_or(i64::MAX))),
    ];
    words.with("hand-figure", &args)
}

fn say(text: &mut String, says: &str) {
    let _ = writeln!(text, "{}", screen::wrap(says, "", "  "));
}
