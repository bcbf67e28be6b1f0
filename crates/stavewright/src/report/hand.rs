//! Figures of a hand beside the usual ones.

use std::fmt::Write;

use basket::message::Value;
use basket::{Draft, Hand};
use planning::records::{Figure, Learned, Own, Work};
use words::Words;

use super::heading;
use crate::screen;

/// What was learned, and what the basket would be with it.
pub(crate) fn render(learned: &Learned, (usual, own): (&Draft, &Draft), words: &Words) -> String {
    let mut text = String::new();
    for (figure, own) in &learned.times {
        line(&mut text, &figure_name(*figure, words), (1.0, own, |value| Value::Number(value, 2)), words);
    }
    if let Some(spoilt) = &learned.spoilt {
        line(&mut text, &words.term("hand-spoilt"), (Hand::USUAL.spoilt, spoilt, Value::Percent), words);
    }
    text.push_str(&heading(&words.term("hand-drafted")));
    let minutes = |draft: &Draft| draft.steps.iter().map(|step| step.work_minutes).sum::<f64>();
    let rows = |draft: &Draft| Value::Count(draft.basket.body.weave.rows.into());
    let weaver = |draft: &Draft| Value::Length(draft.basket.body.weave.length);
    let before_after = [
        ("hand-work", Value::Minutes(minutes(usual)), Value::Minutes(minutes(own))),
        ("hand-rows", rows(usual), rows(own)),
        ("hand-weaver", weaver(usual), weaver(own)),
    ];
    for (id, before, after) in before_after {
        say(&mut text, &words.with(id, &[("before", before), ("after", after)]));
    }
    text
}

fn figure_name(figure: Figure, words: &Words) -> String {
    words.term(match figure {
        Figure::TakeUp => "hand-take-up",
        Figure::RowHeight => "hand-row-height",
        Figure::Shrink => "hand-shrink",
        Figure::Pace(Work::Preparing) => "hand-pace-preparing",
        Figure::Pace(Work::Weaving) => "hand-pace-weaving",
        Figure::Pace(Work::Rim) => "hand-pace-rim",
        Figure::Pace(Work::Lashing) => "hand-pace-lashing",
        Figure::Pace(Work::Fittings) => "hand-pace-fittings",
        Figure::Pace(Work::Finishing) => "hand-pace-finishing",
    })
}

fn line(text: &mut String, name: &str, (usual, own, told): (f64, &Own, fn(f64) -> Value), words: &Words) {
    let args = [
        ("figure", Value::Name(name.to_owned())),
        ("usual", told(usual)),
        ("value", told(own.value)),
        ("from", told(own.within.0)),
        ("to", told(own.within.1)),
        ("records", Value::Count(i64::try_from(own.records).unwrap_or(i64::MAX))),
    ];
    say(text, &words.with("hand-figure", &args));
}

fn say(text: &mut String, says: &str) {
    let _ = writeln!(text, "{}", screen::wrap(says, "", "  "));
}
