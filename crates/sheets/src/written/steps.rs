//! The making, step by step, and the maker's own notes on it.

use basket::{pattern, steps};
use serde::Serialize;
use words::Words;

use super::vocabulary::{Of, Stage, StepKind};

/// One step of the making.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(crate) struct Step {
    /// Number, counted from 1.
    number: u32,
    /// Which step, as a word that is the same in every language.
    kind: StepKind,
    /// On which vessel.
    of: Of,
    /// Heading.
    title: String,
    /// What to do, a paragraph each.
    text: Vec<String>,
    /// Soaking beforehand, or `null`.
    soak_minutes: Option<f64>,
    /// Work of practised hands.
    work_minutes: f64,
    /// Work of a learner.
    learner_minutes: f64,
    /// Waiting afterwards.
    wait_minutes: f64,
    /// Names of the tools.
    tools: Vec<String>,
    /// Cautions.
    cautions: Vec<String>,
    /// The state reached.
    stage: Stage,
}

/// A note of the maker's own.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(crate) struct Note {
    /// Number of the step; `null` when the basket has no such step.
    step: Option<u32>,
    /// The words, or `null`.
    text: Option<String>,
    /// Path of the photograph, from the pattern's folder, or `null`.
    photo: Option<String>,
    /// What it shows, or `null`.
    caption: Option<String>,
}

impl Step {
    pub(super) fn of(step: &steps::Step, words: &Words) -> Self {
        let steps::Step {
            number,
            kind,
            of,
            text,
            soak_minutes,
            work_minutes,
            learner_minutes,
            wait_minutes,
            tools,
            cautions,
            stage,
        } = step;
        let terms = |ids: &[&'static str]| ids.iter().map(|id| words.term(id)).collect();
        Self {
            number: *number,
            kind: kind.into(),
            of: of.into(),
            title: words.step(*of, *kind),
            text: text.iter().map(|paragraph| words.say(paragraph)).collect(),
            soak_minutes: *soak_minutes,
            work_minutes: *work_minutes,
            learner_minutes: *learner_minutes,
            wait_minutes: *wait_minutes,
            tools: terms(tools),
            cautions: terms(cautions),
            stage: stage.into(),
        }
    }
}

impl Note {
    pub(super) fn of(note: &pattern::Note, steps: &[steps::Step]) -> Self {
        let pattern::Note { step: kind, text, photo } = note;
        let photo = photo.as_ref().map(|photo| {
            let pattern::Photo { path, caption, span: _ } = photo;
            (path.clone(), caption.clone())
        });
        let (photo, caption) = photo.unzip();
        let step = steps.iter().find(|step| step.kind == *kind).map(|step| step.number);
        Self { step, text: text.clone(), photo, caption }
    }
}
