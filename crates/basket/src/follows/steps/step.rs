//! A step of the making, and how it is put together.

use crate::message::{Message, Value};
use crate::pattern::StepKind;
use crate::piece::Of;
use crate::stock::Material;

use super::stage::Stage;

/// One step of the making.
#[derive(Clone, Debug, PartialEq)]
pub struct Step {
    /// Number, counted from 1.
    pub number: u32,
    /// Which step; its term is its heading.
    pub kind: StepKind,
    /// On which vessel.
    pub of: Of,
    /// What to do, a paragraph each.
    pub text: Vec<Message>,
    /// Minutes of soaking beforehand.
    pub soak_minutes: Option<f64>,
    /// Minutes of work for practised hands.
    pub work_minutes: f64,
    /// Minutes of work for a learner.
    pub learner_minutes: f64,
    /// Minutes of waiting afterwards.
    pub wait_minutes: f64,
    /// Tools: identifiers in the message files, such as `tool-knife`.
    pub tools: Vec<&'static str>,
    /// Cautions: identifiers in the message files, such as `caution-knife`.
    pub cautions: Vec<&'static str>,
    /// The state reached.
    pub stage: Stage,
}

impl Step {
    pub(in crate::follows) fn new(kind: StepKind, stage: Stage) -> Self {
        Self {
            number: 0,
            kind,
            of: Of::Body,
            text: Vec::new(),
            soak_minutes: None,
            work_minutes: 0.0,
            learner_minutes: 0.0,
            wait_minutes: 0.0,
            tools: Vec::new(),
            cautions: Vec::new(),
            stage,
        }
    }
    pub(super) fn say(mut self, text: Message) -> Self {
        self.text.push(text);
        self
    }
    pub(super) fn say_if(self, condition: bool, text: impl FnOnce() -> Message) -> Self {
        if condition { self.say(text()) } else { self }
    }
    pub(super) fn say_all(mut self, texts: impl IntoIterator<Item = Message>) -> Self {
        self.text.extend(texts);
        self
    }
    /// The longest usual soak of any of these materials.
    pub(super) fn soak<'a>(mut self, materials: impl IntoIterator<Item = &'a Material>) -> Self {
        let longest =
            materials.into_iter().filter_map(|material| material.soak_minutes).map(|(_, most)| most);
        self.soak_minutes = longest.reduce(f64::max);
        self
    }
    /// Minutes of work, rounded to five, for nothing finer is known.
    pub(super) fn work(mut self, minutes: f64) -> Self {
        self.work_minutes = (minutes / 5.0).ceil() * 5.0;
        self
    }
    pub(super) fn wait(mut self, minutes: f64) -> Self {
        self.wait_minutes = minutes;
        self
    }
    pub(super) fn tools(mut self, tools: &[&'static str]) -> Self {
        self.tools.extend(tools);
        self
    }
    pub(super) fn cautions(mut self, cautions: &[&'static str]) -> Self {
        self.cautions.extend(cautions);
        self
    }
    pub(super) fn caution_if(self, condition: bool, caution: &'static str) -> Self {
        if condition { self.cautions(&[caution]) } else { self }
    }
}

/// Numbers in a row: `1, 8, 15`.
pub(super) fn numbers(numbers: impl IntoIterator<Item = u32>) -> Value {
    let written: Vec<String> = numbers.into_iter().map(|number| number.to_string()).collect();
    Value::Name(written.join(", "))
}

/// How many of something.
pub(super) fn count(things: usize) -> Value {
    Value::Count(i64::try_from(things).unwrap_or(i64::MAX))
}
