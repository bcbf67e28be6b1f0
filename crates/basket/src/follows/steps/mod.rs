//! The making, step by step.

mod body;
mod build;
mod finish;
mod prepare;
mod rim;
mod time;

use serde::Serialize;

use crate::assemble::Basket;
use crate::message::Message;
use crate::message::Term;

/// A state of the basket that a step reaches.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Stage {
    /// Material cut and shaped, nothing assembled.
    Prepared,
    /// The base is screwed on the mould.
    BaseOnMould,
    /// All staves stand in the groove under a band.
    StavesSet,
    /// The first rows are woven.
    FirstRows,
    /// The body is half woven.
    HalfWoven,
    /// The weaving is done, dried and packed.
    Woven,
    /// The ears are set.
    EarsSet,
    /// The hoops are scarfed and clamped.
    RimClamped,
    /// The tips are trimmed and the pins are in.
    Pinned,
    /// Filler and lashing are on.
    Lashed,
    /// The handle swings.
    Handled,
    /// Finished.
    Finished,
}

impl Stage {
    /// All of them, in making order.
    pub const ALL: [Self; 12] = [
        Self::Prepared,
        Self::BaseOnMould,
        Self::StavesSet,
        Self::FirstRows,
        Self::HalfWoven,
        Self::Woven,
        Self::EarsSet,
        Self::RimClamped,
        Self::Pinned,
        Self::Lashed,
        Self::Handled,
        Self::Finished,
    ];

    /// Its name, fit for a file and a command line, such as `half-woven`.
    pub fn name(self) -> &'static str {
        self.term().trim_start_matches("stage-")
    }

    /// The stage of this name.
    pub fn named(name: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|stage| stage.name() == name)
    }
}

/// One step of the making.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Step {
    /// Number, counted from 1.
    pub number: u32,
    /// Its heading.
    pub title: Message,
    /// What to do, a paragraph each.
    pub text: Vec<Message>,
    /// Minutes of soaking beforehand.
    pub soak_minutes: Option<f64>,
    /// Minutes of work.
    pub work_minutes: f64,
    /// Minutes of waiting afterwards.
    pub wait_minutes: f64,
    /// Tools: identifiers in the message files, such as `tool-knife`.
    pub tools: Vec<&'static str>,
    /// Cautions: identifiers in the message files, such as `caution-knife`.
    pub cautions: Vec<&'static str>,
    /// The state reached.
    pub stage: Stage,
}

/// The making in order. Working times are rough (see the rules beside them); waiting times are the
/// least usual ones.
///
/// ```text
/// cut, base, staves, first rows, half, rest, dry, ears, rim, pins, lashing, handle, off, finish
/// ```
pub fn list(basket: &Basket) -> Vec<Step> {
    let mut steps = vec![prepare::cut(basket), prepare::base(basket), prepare::staves(basket)];
    steps.extend(body::steps(basket));
    steps.extend(basket.ears.as_ref().map(|ears| rim::ears(basket, ears)));
    steps.extend([rim::hoops(basket), rim::pins(basket), rim::lashing(basket)]);
    steps.extend(basket.handle.as_ref().map(|handle| rim::handle(basket, handle)));
    steps.extend([finish::off_mould(basket), finish::finish(basket)]);
    for (step, number) in steps.iter_mut().zip(1..) {
        step.number = number;
    }
    steps
}

impl Term for Stage {
    fn term(self) -> &'static str {
        match self {
            Self::Prepared => "stage-prepared",
            Self::BaseOnMould => "stage-base-on-mould",
            Self::StavesSet => "stage-staves-set",
            Self::FirstRows => "stage-first-rows",
            Self::HalfWoven => "stage-half-woven",
            Self::Woven => "stage-woven",
            Self::EarsSet => "stage-ears-set",
            Self::RimClamped => "stage-rim-clamped",
            Self::Pinned => "stage-pinned",
            Self::Lashed => "stage-lashed",
            Self::Handled => "stage-handled",
            Self::Finished => "stage-finished",
        }
    }
}
