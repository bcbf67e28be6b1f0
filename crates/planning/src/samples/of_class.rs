//! The samples of a class: which has to stand ready for which session, and when the teacher makes it.

use basket::pattern::StepKind;
use basket::steps::{Stage, Step};

use super::backward::{Past, whole};
use super::prepared::{Block, prepare};
use super::span::Span;
use crate::class::Answer;
use crate::class::schedule::{Minute, Window};

/// A sample of a class.
#[derive(Clone, Debug, PartialEq)]
pub struct ClassSample {
    /// The stage at which it is stopped.
    pub stage: Stage,
    /// Number of the last step done on it.
    pub last_step: u32,
    /// The beginning of the session in which the first student goes on from there.
    pub shown: Minute,
    /// Latest moment to begin it, with the first soaking if there is one.
    pub begin: Minute,
    /// The number of each step and the work on it, in making order.
    pub work: Vec<(u32, Vec<Window>)>,
    /// The number of its mould, from 0 and beside those of the students, and when it is held.
    pub mould: Option<(u32, Window)>,
}

/// The samples of a class.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct ClassSamples {
    /// Each, in making order; none where the teacher's hours of a year do not hold the work.
    pub each: Vec<ClassSample>,
    /// The step that is done for all together, and the work on it.
    pub together: Option<(u32, Vec<Window>)>,
    /// Stages that were asked for and that this basket never reaches.
    pub missing: Vec<Stage>,
}

/// So many days before the class are looked at.
const DAYS_BEFORE: i64 = 366;

impl Answer {
    /// The samples that the class asks for; none where it asks for none. `steps` are those of its basket.
    pub fn samples(&self, steps: &[Step]) -> Option<ClassSamples> {
        let asked = self.class.samples.as_ref()?;
        let first = self.problem.sessions.first()?.from;
        let shown: Vec<(Stage, Minute)> =
            asked.stages.iter().map(|stage| (*stage, self.shown(*stage, steps).unwrap_or(first))).collect();
        let last = shown.iter().map(|(_, at)| *at).max().unwrap_or(first);
        let wanted: Vec<(Stage, Minute)> = shown.iter().map(|(stage, at)| (*stage, last - at)).collect();
        let back = |window: &Window| Window { from: last - window.to, to: last - window.from };
        let hours = self.class.hours_before(&asked.hours, (DAYS_BEFORE, last));
        let hours = hours.iter().rev().map(back).collect();
        let Some(prepared) = prepare(steps, &wanted, Past { hours, moulds: asked.moulds }) else {
            return Some(ClassSamples::default());
        };
        let moment = |before: f64| last - whole(before);
        let window = |span: &Span| Window { from: moment(span.from), to: moment(span.to) };
        let work = |block: Block| (block.step, block.work.iter().map(window).collect());
        let each = prepared.samples.into_iter().map(|sample| ClassSample {
            stage: sample.stage,
            last_step: sample.last_step,
            shown: shown.iter().find(|(stage, _)| *stage == sample.stage).map_or(first, |(_, at)| *at),
            begin: moment(sample.begin),
            work: sample.blocks.into_iter().map(work).collect(),
            mould: sample.mould.map(|(number, held)| (number, window(&held))),
        });
        Some(ClassSamples {
            each: each.collect(),
            together: prepared.together.map(work),
            missing: prepared.missing,
        })
    }

    /// When the first student goes on from a stage: the beginning of that session. None where there is no plan, or
    /// nothing to go on with.
    fn shown(&self, stage: Stage, steps: &[Step]) -> Option<Minute> {
        let plan = &self.found()?.plan;
        let stop = steps.iter().position(|step| step.stage == stage)?;
        let after: Vec<StepKind> = steps.iter().skip(stop + 1).map(|step| step.kind).collect();
        let next = plan.students.iter().filter_map(|turn| {
            let mut later = self.steps(turn).filter(|(lesson, _)| after.contains(&lesson.kind));
            later.next().map(|(_, placed)| placed.span.from)
        });
        let next = next.min()?;
        let begun = self.problem.sessions.iter().rev().find(|session| session.from <= next);
        begun.map(|session| session.from)
    }
}
