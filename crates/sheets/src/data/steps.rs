//! The steps of the making.

use basket::Basket;
use basket::message::Value;
use basket::steps::Step;
use drawings::stages::Plate;
use serde::Serialize;

use crate::scribe::Scribe;

#[derive(Serialize)]
pub(crate) struct StepLine {
    number: u32,
    title: String,
    times: Vec<String>,
    text: Vec<String>,
    cautions: Vec<String>,
    /// Names of its drawings.
    plates: Vec<String>,
}

pub(crate) fn steps(basket: &Basket, scribe: &Scribe<'_>) -> Vec<StepLine> {
    basket.steps.iter().map(|step| line(basket, step, scribe)).collect()
}

fn line(basket: &Basket, step: &Step, scribe: &Scribe<'_>) -> StepLine {
    StepLine {
        number: step.number,
        title: scribe.words.say(&step.title),
        times: times(step, scribe),
        text: step.text.iter().map(|paragraph| scribe.words.say(paragraph)).collect(),
        cautions: step.cautions.iter().map(|id| scribe.words.term(id)).collect(),
        plates: Plate::of_step(step)
            .iter()
            .filter(|plate| plate.is_of(basket))
            .map(|plate| plate.figure())
            .collect(),
    }
}

fn times(step: &Step, scribe: &Scribe<'_>) -> Vec<String> {
    let time = |id: &str, minutes: f64| {
        (minutes > 0.0).then(|| scribe.text(id, &[("time", Value::Minutes(minutes))]))
    };
    [
        time("time-soak", step.soak_minutes.unwrap_or(0.0)),
        time("time-work", step.work_minutes),
        time("time-wait", step.wait_minutes),
    ]
    .into_iter()
    .flatten()
    .collect()
}

/// All tools, in the order in which they are first taken up.
pub(crate) fn tools(basket: &Basket, scribe: &Scribe<'_>) -> Vec<String> {
    let mut ids: Vec<&str> = Vec::new();
    for id in basket.steps.iter().flat_map(|step| &step.tools) {
        if !ids.contains(id) {
            ids.push(id);
        }
    }
    ids.into_iter().map(|id| scribe.words.term(id)).collect()
}
