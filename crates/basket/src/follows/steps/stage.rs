//! States of the basket in the making, and the order in which a basket reaches them.

use crate::basket::Basket;
use crate::pattern::{EarWay, HoopWay, Ready};
use crate::term::Term;

/// Rows that make a start, where the first course is longer than a start (common practice).
const START: u32 = 4;

/// A state of the basket that a step reaches. Which comes before which is asked of the basket.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
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
    /// The ears are set.
    EarsSet,
    /// The weaving is done, dried and packed.
    Woven,
    /// The hoops lie ready as rings.
    RingsMade,
    /// The basket is off its mould.
    OffMould,
    /// The hoops are on and clamped.
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
    /// All of them, as baskets usually reach them.
    pub const ALL: [Self; 14] = [
        Self::Prepared,
        Self::BaseOnMould,
        Self::StavesSet,
        Self::FirstRows,
        Self::HalfWoven,
        Self::EarsSet,
        Self::Woven,
        Self::RingsMade,
        Self::OffMould,
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

impl Basket {
    /// The stages that it passes, in making order.
    pub fn stages(&self) -> Vec<Stage> {
        let passed = |stage: &Stage| match stage {
            Stage::EarsSet => self.in_rim().is_some(),
            Stage::RingsMade => self.rings_are_made(),
            Stage::Lashed => self.body.lashing().is_some(),
            Stage::Handled => self.rivets().is_some(),
            _ => true,
        };
        self.order().into_iter().filter(passed).collect()
    }

    /// Whether its hoops are made as rings on the way, and do not lie ready.
    pub fn rings_are_made(&self) -> bool {
        self.body.rim().hoops == HoopWay::Rings && !self.ready.has(Ready::Rings)
    }

    /// Whether it has come to a stage, or past it, when it stands at another. A stage that it never comes to
    /// lies where other baskets have it.
    pub fn has_reached(&self, stage: Stage, at: Stage) -> bool {
        self.place_of(stage) <= self.place_of(at)
    }

    /// How many stages come before one.
    pub fn place_of(&self, stage: Stage) -> usize {
        self.order().into_iter().take_while(|other| *other != stage).count()
    }

    /// How many rows are woven by a stage: at first the first course if it is short, else a few rows of it.
    /// Ears that are woven in go on at half the height at the earliest.
    pub fn rows_at(&self, stage: Stage) -> u32 {
        let weave = &self.body.weave;
        let woven_in = self.ears.as_ref().and_then(|ears| ears.woven_in);
        let before_ears = woven_in.map_or(weave.rows, |ears| ears.on_row);
        let first = weave.courses.first().map_or(0, |course| course.rows);
        let start = if first <= START * 2 { first } else { START }.min(before_ears);
        let half = (weave.rows / 2).max(start).min(before_ears);
        match stage {
            Stage::Prepared | Stage::BaseOnMould | Stage::StavesSet => 0,
            Stage::FirstRows => start,
            Stage::HalfWoven => half,
            Stage::EarsSet if self.has_reached(Stage::EarsSet, Stage::StavesSet) => 0,
            Stage::EarsSet => before_ears,
            _ => weave.rows,
        }
    }

    /// All stages: ears that run down as staves come before the other staves, woven in before the weaving is
    /// done, and others when the basket is off its mould.
    fn order(&self) -> Vec<Stage> {
        let before = match self.ears.as_ref().map(|ears| ears.way) {
            Some(EarWay::AsStave) => Stage::StavesSet,
            Some(EarWay::WovenIn) => Stage::Woven,
            Some(EarWay::PushedDown) | None => Stage::RimClamped,
        };
        let others = Stage::ALL.into_iter().filter(|stage| *stage != Stage::EarsSet);
        others
            .flat_map(|stage| (stage == before).then_some(Stage::EarsSet).into_iter().chain([stage]))
            .collect()
    }
}

impl Term for Stage {
    fn term(self) -> &'static str {
        match self {
            Self::Prepared => "stage-prepared",
            Self::BaseOnMould => "stage-base-on-mould",
            Self::StavesSet => "stage-staves-set",
            Self::FirstRows => "stage-first-rows",
            Self::HalfWoven => "stage-half-woven",
            Self::EarsSet => "stage-ears-set",
            Self::Woven => "stage-woven",
            Self::RingsMade => "stage-rings-made",
            Self::OffMould => "stage-off-mould",
            Self::RimClamped => "stage-rim-clamped",
            Self::Pinned => "stage-pinned",
            Self::Lashed => "stage-lashed",
            Self::Handled => "stage-handled",
            Self::Finished => "stage-finished",
        }
    }
}
