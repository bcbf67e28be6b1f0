//! The steps of a drafted basket as a class goes through them.

use basket::pattern::{AllReady, Pattern, Ready, StepKind};
use basket::{Basket, Catalogue, Hand, Of, assemble, steps};

use super::schedule::{Minute, Task};
use super::written::{Class, Students};

/// What the steps are taken from.
#[derive(Clone, Copy, Debug)]
pub struct Source<'s> {
    /// The pattern that all make.
    pub pattern: &'s Pattern,
    /// The materials there are.
    pub catalogue: &'s Catalogue,
    /// The figures by which times are reckoned.
    pub hand: &'s Hand,
}

/// A step of the class.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Lesson {
    /// Which step.
    pub kind: StepKind,
    /// The first and the last row that are woven in it.
    pub rows: Option<(u32, u32)>,
    /// The step as it is planned.
    pub task: Task,
}

impl Source<'_> {
    /// The steps of some students: by the pattern, with what lies ready for them, at their pace.
    pub fn lessons(&self, students: &Students, class: &Class) -> Vec<Lesson> {
        let mut pattern = self.pattern.clone();
        let ready: Vec<Ready> = pattern.ready.each().iter().chain(&students.ready).copied().collect();
        pattern.ready = AllReady::of(ready);
        let basket = assemble(&pattern, self.catalogue, self.hand);
        let steps = steps::list(&basket);
        let place = |kind| steps.iter().position(|step| step.kind == kind);
        // Held from the base that is screwed on until the wall is dry.
        let on_mould = place(StepKind::Base).unwrap_or(usize::MAX)..=place(StepKind::Dry).unwrap_or(0);
        let mut woven = 0;
        let mut lessons: Vec<Lesson> = Vec::new();
        for (index, step) in steps.iter().enumerate() {
            let minutes = if students.learners { step.learner_minutes } else { step.work_minutes };
            let (work, wait) = (whole(minutes), whole(step.wait_minutes));
            let to = rows_by(&basket, step.kind).filter(|to| step.of == Of::Body && *to > woven);
            let rows = to.map(|to| (woven + 1, to));
            woven = to.unwrap_or(woven);
            // Work of no time is no step of a class; what has to dry after it dries all the same.
            if work == 0 {
                if let Some(before) = lessons.last_mut() {
                    before.task.wait += wait;
                }
                continue;
            }
            let drill = step.tools.contains(&"tool-drill");
            let by = class.teacher.as_ref().is_some_and(|teacher| teacher.steps.contains(&step.kind));
            let pieces = if drill || by || step.of == Of::Lid { 1 } else { pieces(&basket, step.kind, rows) };
            let home = class.home.as_ref().is_some_and(|home| home.steps.contains(&step.kind));
            let mould = on_mould.contains(&index);
            let table = class.tables.as_ref().is_some_and(|tables| tables.steps.contains(&step.kind));
            let task = Task { work, wait, pieces, mould, drill, table, hands: by, home };
            lessons.push(Lesson { kind: step.kind, rows, task });
        }
        lessons
    }
}

/// How many rows are woven when a step is done; none where nothing is woven in it.
fn rows_by(basket: &Basket, kind: StepKind) -> Option<u32> {
    use basket::steps::Stage;
    match kind {
        StepKind::FirstRows => Some(basket.rows_at(Stage::FirstRows)),
        StepKind::Half => Some(basket.rows_at(Stage::HalfWoven)),
        StepKind::ToEars => basket.ears.as_ref()?.woven_in.map(|woven_in| woven_in.on_row),
        StepKind::Rest => Some(basket.body.weave.rows),
        _ => None,
    }
}

/// Into how many like pieces a step can be broken: rows, staves, wraps, hoops.
fn pieces(basket: &Basket, kind: StepKind, rows: Option<(u32, u32)>) -> u32 {
    let pieces = match kind {
        StepKind::Cut => basket.staves_to_cut(),
        StepKind::Staves => basket.body.uprights().count,
        StepKind::Lashing => basket.body.lashing().map_or(1, |lashing| lashing.wraps),
        StepKind::Rings => 2,
        _ => rows.map_or(1, |(from, to)| to - from + 1),
    };
    pieces.max(1)
}

fn whole(minutes: f64) -> Minute {
    if minutes.is_finite() { minutes.round().clamp(0.0, 1e7) as Minute } else { 0 }
}
