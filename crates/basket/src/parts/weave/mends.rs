//! What would make a course run on a count of staves on which it does not, and what each does to the look.

use serde::Serialize;

use crate::pattern::{CoursePattern, Way, WeaveKind};
use crate::term::Term;
use crate::weave::diagonal::Diagonal;
use crate::weave::look::Eye;

/// A way to make a weave run as wanted on a count on which it does not.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Mend {
    /// A second weaver that chases the first: rows of the two alternate, and two ends show at the top.
    SecondWeaver,
    /// One weaver in place of those that chase each other.
    OneWeaver,
    /// One weaver that runs on in place of rows that begin level.
    RunOn,
    /// A step up at the end of each round: a slanting line of longer floats.
    StepUp,
    /// Each row by itself: no spiral, and overlaps where rows begin and end.
    StartStop,
    /// Over two once a round: the longer floats climb in a spiral.
    SkipOne,
    /// One stave split in two from the foot up: two narrow staves stand close together.
    SplitStave,
    /// A half stave put in beside another: one narrow stave more.
    HalfStave,
}

impl Mend {
    const ALL: [Self; 8] = [
        Self::SecondWeaver,
        Self::OneWeaver,
        Self::RunOn,
        Self::StepUp,
        Self::StartStop,
        Self::SkipOne,
        Self::SplitStave,
        Self::HalfStave,
    ];

    /// How many staves more there are.
    const fn staves(self) -> u32 {
        if matches!(self, Self::SplitStave | Self::HalfStave) { 1 } else { 0 }
    }
}

impl CoursePattern {
    /// The mends that make the course run as wanted; none where it does already.
    ///
    /// A second weaver is named for a twill that does not hold even where it makes blocks and no diagonal.
    pub(super) fn mends(&self, count: u32) -> Vec<Mend> {
        if self.runs_on(count) {
            return Vec::new();
        }
        let leans = self.fabric(count).holds() && self.weave.has_diagonal();
        let helps = |mend: &Mend| {
            let Some(course) = self.mended(*mend) else { return false };
            let as_wanted = *mend != Mend::SecondWeaver
                || !leans
                || self.leans_as_asked(course.fabric(count).diagonal(Eye::USUAL));
            as_wanted && course.runs_on(count + mend.staves())
        };
        Mend::ALL.into_iter().filter(helps).collect()
    }

    /// The course as a mend changes it; none where the mend does not apply.
    fn mended(&self, mend: Mend) -> Option<Self> {
        let same = self.clone();
        let level = self.step_up || self.rows_follow() == Way::RowByRow;
        let could_level = self.weave.has_way() && self.weave.steps_up();
        match mend {
            Mend::SecondWeaver => {
                Some(Self { weave: self.weave.chased()?, way: None, step_up: false, ..same })
            }
            Mend::OneWeaver => Some(Self { weave: self.weave.of_one()?, ..same }),
            Mend::RunOn => (could_level && level).then_some(Self { way: None, step_up: false, ..same }),
            Mend::StepUp => (could_level && !level).then_some(Self { step_up: true, ..same }),
            Mend::StartStop => (could_level && !level).then_some(Self { way: Some(Way::RowByRow), ..same }),
            Mend::SkipOne => {
                (self.weave == WeaveKind::Plain).then_some(Self { weave: WeaveKind::SkipOne, ..same })
            }
            Mend::SplitStave | Mend::HalfStave => Some(same),
        }
    }

    /// The change to the course that makes a mend, as a key and a TOML value; none where a stave is
    /// changed instead.
    pub fn change(&self, mend: Mend) -> Option<(&'static str, String)> {
        let weave = |kind: WeaveKind| ("weave", format!("\"{kind}\""));
        match mend {
            Mend::SecondWeaver => self.weave.chased().map(weave),
            Mend::OneWeaver => self.weave.of_one().map(weave),
            Mend::RunOn if self.step_up => Some(("step-up", "false".to_owned())),
            Mend::RunOn => Some(("way", "\"continuous\"".to_owned())),
            Mend::StepUp => Some(("step-up", "true".to_owned())),
            Mend::StartStop => Some(("way", "\"row by row\"".to_owned())),
            Mend::SkipOne => Some(weave(WeaveKind::SkipOne)),
            Mend::SplitStave | Mend::HalfStave => None,
        }
    }

    /// What a mend does to the look on a count: identifier of the sentence in the message files.
    pub fn mended_look(&self, mend: Mend, count: u32) -> &'static str {
        let blocks = |course: Self| {
            self.weave.has_diagonal() && course.fabric(count).diagonal(Eye::USUAL) == Diagonal::Alternates
        };
        match mend {
            Mend::SecondWeaver if self.mended(mend).is_some_and(blocks) => {
                "weave-mend-look-second-weaver-blocks"
            }
            Mend::SecondWeaver => "weave-mend-look-second-weaver",
            Mend::OneWeaver => "weave-mend-look-one-weaver",
            Mend::RunOn => "weave-mend-look-run-on",
            Mend::StepUp => "weave-mend-look-step-up",
            Mend::StartStop => "weave-mend-look-start-stop",
            Mend::SkipOne => "weave-mend-look-skip-one",
            Mend::SplitStave => "weave-mend-look-split-stave",
            Mend::HalfStave => "weave-mend-look-half-stave",
        }
    }
}

impl Term for Mend {
    fn term(self) -> &'static str {
        match self {
            Self::SecondWeaver => "weave-mend-second-weaver",
            Self::OneWeaver => "weave-mend-one-weaver",
            Self::RunOn => "weave-mend-run-on",
            Self::StepUp => "weave-mend-step-up",
            Self::StartStop => "weave-mend-start-stop",
            Self::SkipOne => "weave-mend-skip-one",
            Self::SplitStave => "weave-mend-split-stave",
            Self::HalfStave => "weave-mend-half-stave",
        }
    }
}
