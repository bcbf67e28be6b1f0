//! What a record says beside what was computed.

use basket::pattern::StepKind;
use basket::{Draft, Length};

use super::record::Record;

/// Work that a hand does at about one pace.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Work {
    /// Staves and base.
    Preparing,
    /// Weaving and packing.
    Weaving,
    /// Hoops and pins.
    Rim,
    /// Lashing.
    Lashing,
    /// Ears and handle.
    Fittings,
    /// Plug and finish.
    Finishing,
}

impl Work {
    /// All of them, in making order.
    pub const ALL: [Self; 6] =
        [Self::Preparing, Self::Weaving, Self::Rim, Self::Lashing, Self::Fittings, Self::Finishing];

    /// The work that a step is.
    pub fn of(kind: StepKind) -> Self {
        match kind {
            StepKind::Cut | StepKind::Seal | StepKind::Base | StepKind::Staves => Self::Preparing,
            StepKind::FirstRows | StepKind::Half | StepKind::Rest | StepKind::ToEars | StepKind::Dry => {
                Self::Weaving
            }
            StepKind::Rings | StepKind::OffMould | StepKind::Rim | StepKind::Pins => Self::Rim,
            StepKind::Lashing => Self::Lashing,
            StepKind::Bend | StepKind::Ears | StepKind::Handle | StepKind::Lid => Self::Fittings,
            StepKind::Plug | StepKind::Finish => Self::Finishing,
        }
    }
}

/// A figure of a hand, as many times the usual one.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Figure {
    /// By how much more weaver is taken than the taut path says.
    TakeUp,
    /// Height of a row.
    RowHeight,
    /// Share of its height that weaving loses as it dries.
    Shrink,
    /// Time for a kind of work.
    Pace(Work),
}

impl Figure {
    /// A word for it, under which it is kept; its name is the message `hand-` and this word.
    pub fn word(self) -> &'static str {
        match self {
            Self::TakeUp => "take-up",
            Self::RowHeight => "row-height",
            Self::Shrink => "shrink",
            Self::Pace(Work::Preparing) => "pace-preparing",
            Self::Pace(Work::Weaving) => "pace-weaving",
            Self::Pace(Work::Rim) => "pace-rim",
            Self::Pace(Work::Lashing) => "pace-lashing",
            Self::Pace(Work::Fittings) => "pace-fittings",
            Self::Pace(Work::Finishing) => "pace-finishing",
        }
    }

    /// What is measured for it, in English.
    fn what(self) -> &'static str {
        match self {
            Self::TakeUp => "the take-up of the weaver",
            Self::RowHeight => "the height of a row",
            Self::Shrink => "what the weaving lost in drying",
            Self::Pace(_) => "the time for a kind of work",
        }
    }
}

/// What a record says beside what was computed for the usual hand.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Compared {
    /// Figures, as many times the usual ones.
    pub times: Vec<(Figure, f64)>,
    /// Share of its height that the weaving was expected to lose.
    pub usual_shrink: f64,
    /// How many staves were made, and how many of them were spoilt.
    pub staves: Option<(u32, u32)>,
}

/// Why a record cannot be compared with a basket.
#[derive(Clone, Debug, PartialEq, thiserror::Error)]
pub enum Mismatch {
    /// It is the record of another pattern.
    #[error("record {number} is of “{of}”, and this is “{title}”")]
    OtherPattern {
        /// The number of the record.
        number: u32,
        /// The title in the record.
        of: String,
        /// The title of the basket.
        title: String,
    },
    /// A figure is so far from what was computed that something else was measured.
    #[error("record {number}: {} is {times} times what was computed", figure.what())]
    Unlikely {
        /// The number of the record.
        number: u32,
        /// What was measured.
        figure: Figure,
        /// How many times what was computed, rounded.
        times: String,
    },
}

/// More than this many times what was computed, or less than its share of it, is a mistake in a record and no
/// hand (assumed).
const MOST_TIMES: f64 = 8.0;

impl Compared {
    /// Compares a record with the draft of its pattern for the usual hand.
    ///
    /// # Errors
    /// [`Mismatch`] for a record of another pattern, or one that measured something else.
    pub fn of(record: &Record, draft: &Draft) -> Result<Self, Mismatch> {
        let title = &draft.basket.title;
        if record.pattern != *title {
            let (of, title) = (record.pattern.clone(), title.clone());
            return Err(Mismatch::OtherPattern { number: record.number, of, title });
        }
        let weave = &draft.basket.body.weave;
        // Who weaves higher rows weaves fewer of them.
        let share = record.rows.map_or(1.0, |rows| f64::from(rows) / f64::from(weave.rows.max(1)));
        let mut times = Vec::new();
        times.extend(record.weaver.map(|weaver| (Figure::TakeUp, take_up(draft, weaver, share))));
        let pitches: Length =
            weave.each_row.iter().map(|row| row.pitch).fold(Length::ZERO, |sum, row| sum + row);
        if let (Some(wet), Some(rows)) = (record.wet, record.rows.filter(|rows| *rows > 0)) {
            let each = pitches.to_mm() / f64::from(weave.rows.max(1));
            times.push((Figure::RowHeight, wet.to_mm() / f64::from(rows) / each));
        }
        if let (Some(wet), Some(dry)) = (record.wet, record.dry)
            && weave.shrink > 0.0
        {
            times.push((Figure::Shrink, (1.0 - dry.to_mm() / wet.to_mm()) / weave.shrink));
        }
        times.extend(paces(record, draft, share));
        times.retain(|(_, times)| times.is_finite());
        for (figure, times) in &times {
            check(record.number, *figure, *times)?;
        }
        Ok(Self { times, usual_shrink: weave.shrink, staves: record.staves })
    }
}

/// By how many times the usual share the weaver is longer than it would be running straight, for a share of the
/// rows that were computed.
fn take_up(draft: &Draft, weaver: Length, share: f64) -> f64 {
    let weave = &draft.basket.body.weave;
    let straight: f64 =
        weave.courses.iter().map(|course| course.length.to_mm() / (1.0 + course.take_up.most)).sum();
    (weaver.to_mm() / share - straight) / (weave.length.to_mm() - straight)
}

/// Minutes of each work beside those that were computed for the same steps.
fn paces<'r>(record: &'r Record, draft: &'r Draft, share: f64) -> impl Iterator<Item = (Figure, f64)> + 'r {
    let computed = |kind: StepKind| {
        let step = draft.steps.iter().find(|step| step.kind == kind);
        step.map_or(0.0, |step| if record.learner { step.learner_minutes } else { step.work_minutes })
    };
    Work::ALL.into_iter().filter_map(move |work| {
        let of_work =
            record.minutes.iter().filter(|(kind, _)| Work::of(*kind) == work && computed(*kind) > 0.0);
        let (took, usual) = of_work
            .fold((0.0, 0.0), |(took, usual), (kind, minutes)| (took + minutes, usual + computed(*kind)));
        let usual = if work == Work::Weaving { usual * share } else { usual };
        (took > 0.0 && usual > 0.0).then(|| (Figure::Pace(work), took / usual))
    })
}

fn check(number: u32, figure: Figure, times: f64) -> Result<(), Mismatch> {
    let range = match figure {
        Figure::TakeUp | Figure::Shrink => -1.0..=MOST_TIMES,
        Figure::RowHeight | Figure::Pace(_) => 1.0 / MOST_TIMES..=MOST_TIMES,
    };
    if range.contains(&times) {
        return Ok(());
    }
    Err(Mismatch::Unlikely { number, figure, times: format!("{times:.1}") })
}
