//! The steps of a group, told by those at which students may have to wait for one another.

use super::hours::Hours;
use super::problem::{Group, Minute, Problem, Task, Window};

/// What a step takes of which there is too little for all.
#[expect(clippy::struct_excessive_bools, reason = "each is a thing of its own that is scarce or not")]
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) struct Takes {
    pub(super) mould: bool,
    pub(super) drill: bool,
    pub(super) table: bool,
    pub(super) hands: bool,
}

impl Takes {
    fn any(self) -> bool {
        self.mould || self.drill || self.table || self.hands
    }
}

/// A group's steps.
pub(super) struct Chain<'p> {
    pub(super) group: &'p Group,
    /// The steps that take something scarce, with what they take.
    pub(super) contended: Vec<(usize, Takes)>,
    /// The step whose drying frees the mould, where moulds are scarce.
    last_on_mould: Option<usize>,
}

/// Where a student stands after doing all that needs nothing scarce.
#[derive(Clone, Copy, Debug)]
pub(super) struct Reached {
    /// When the next step may begin.
    pub(super) ready: Minute,
    /// When the last step that was done ended.
    pub(super) worked: Minute,
    /// When the mould became free, if it did.
    pub(super) freed: Option<Minute>,
}

impl<'p> Chain<'p> {
    pub(super) fn of(group: &'p Group, problem: &Problem) -> Self {
        let students = problem.students();
        let first_on_mould = group.tasks.iter().position(|task| task.mould);
        let scarce = problem.moulds < students;
        let takes = |(index, task): (usize, &Task)| {
            let takes = Takes {
                mould: scarce && !group.on_mould && first_on_mould == Some(index),
                drill: task.drill && problem.drills < students,
                table: task.table && problem.tables < students,
                hands: task.hands && problem.hands < students,
            };
            takes.any().then_some((index, takes))
        };
        let contended = group.tasks.iter().enumerate().filter_map(takes).collect();
        let last_on_mould = group.tasks.iter().rposition(|task| task.mould).filter(|_| scarce);
        Self { group, contended, last_on_mould }
    }

    /// The step at a stage: the contended one of that number.
    pub(super) fn step(&self, stage: u8) -> Option<(usize, Takes)> {
        self.contended.get(usize::from(stage)).copied()
    }

    /// Does all from a step on up to another.
    pub(super) fn advance(
        &self,
        hours: &Hours,
        (from, to): (usize, usize),
        ready: Minute,
    ) -> Option<Reached> {
        let mut reached = Reached { ready, worked: Minute::MIN, freed: None };
        for (index, task) in self.group.tasks.iter().enumerate().take(to).skip(from) {
            let done = hours.place(task, reached.ready)?;
            self.pass(&mut reached, index, done);
        }
        Some(reached)
    }

    /// Notes a step as done.
    pub(super) fn pass(&self, reached: &mut Reached, index: usize, done: Window) {
        let wait = self.group.tasks.get(index).map_or(0, |task| task.wait);
        reached.worked = reached.worked.max(done.to);
        reached.ready = done.to.saturating_add(wait);
        if self.last_on_mould == Some(index) {
            reached.freed = Some(reached.ready);
        }
    }

    /// Where the step after a stage's own lies, and where the next stage's does (or the end).
    pub(super) fn stretch(&self, stage: u8) -> (usize, usize) {
        let after = self.step(stage).map_or(self.group.tasks.len(), |(index, _)| index + 1);
        let next = self.step(stage.saturating_add(1)).map_or(self.group.tasks.len(), |(index, _)| index);
        (after, next)
    }
}
