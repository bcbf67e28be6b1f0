//! The steps of the making, and the tools that they take up.

use basket::Of;
use basket::message::Value;
use basket::pattern::StepKind;
use basket::steps::Step;
use drawings::stages::Plate;

use super::cautions::{self, Cautions};
use super::lines::StepLine;
use super::{Block, Source};
use crate::scribe::{Scribe, name};
use crate::written;

impl<'a> Source<'a> {
    pub(super) fn steps(&self) -> Vec<Block<'a>> {
        let cautions = cautions::told(&self.draft.steps);
        let steps = self.written.steps.iter().zip(&self.draft.steps).zip(cautions);
        let line = |((told, step), cautions): ((&'a written::Step, &Step), Cautions)| StepLine {
            step: told,
            times: times(step, self.scribe),
            mind: cautions.new.iter().map(|id| self.scribe.words.term(id)).collect(),
            mind_again: again(&cautions, self.scribe),
            plates: self.plates(step),
            notes: self.notes(step),
        };
        vec![self.note("times-note"), Block::Steps { steps: steps.map(line).collect() }]
    }

    fn plates(&self, step: &Step) -> Vec<String> {
        let basket = &self.draft.basket;
        let plates = Plate::of_step(step.kind).iter();
        if step.of == Of::Body || step.kind == StepKind::Lid {
            return plates.filter(|plate| plate.is_of(basket)).map(|plate| plate.figure()).collect();
        }
        let lid = basket.lid_alone();
        plates
            .filter(|plate| lid.as_ref().is_some_and(|lid| plate.is_of_lid(lid)))
            .map(|plate| plate.lid_figure())
            .collect()
    }

    /// All tools, in the order in which they are first taken up.
    pub(super) fn tools(&self) -> Vec<Block<'a>> {
        vec![Block::List { items: tools(&self.draft.steps, self.scribe) }]
    }
}

/// The tools of these steps, each once, in the order in which they are first taken up.
pub(crate) fn tools<'a>(steps: impl IntoIterator<Item = &'a Step>, scribe: &Scribe<'_>) -> Vec<String> {
    let mut ids: Vec<&str> = Vec::new();
    for id in steps.into_iter().flat_map(|step| &step.tools) {
        if !ids.contains(id) {
            ids.push(id);
        }
    }
    ids.into_iter().map(|id| scribe.words.term(id)).collect()
}

/// Where the cautions that hold here too were given.
fn again(cautions: &Cautions, scribe: &Scribe<'_>) -> String {
    match cautions.steps.as_slice() {
        [] => String::new(),
        steps => {
            let numbers: Vec<String> = steps.iter().map(u32::to_string).collect();
            let args = [("count", Value::Count(steps.len() as i64)), ("steps", name(numbers.join(", ")))];
            scribe.text("mind-again", &args)
        }
    }
}

/// Work of practised hands and of a learner.
fn work(step: &Step, scribe: &Scribe<'_>) -> Option<String> {
    let args =
        [("time", Value::Minutes(step.work_minutes)), ("learner", Value::Minutes(step.learner_minutes))];
    (step.work_minutes > 0.0).then(|| scribe.text("time-work", &args))
}

fn times(step: &Step, scribe: &Scribe<'_>) -> Vec<String> {
    let time = |id: &str, minutes: f64| {
        (minutes > 0.0).then(|| scribe.text(id, &[("time", Value::Minutes(minutes))]))
    };
    [
        time("time-soak", step.soak_minutes.unwrap_or(0.0)),
        work(step, scribe),
        time("time-wait", step.wait_minutes),
    ]
    .into_iter()
    .flatten()
    .collect()
}
