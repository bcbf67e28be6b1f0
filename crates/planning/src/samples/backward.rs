//! Backward planning of samples, by the planner of classes: time runs from the moment at which all stand ready
//! into the past. There each sample is a student who undoes the steps, the last one first, and whoever makes the
//! samples is the teacher's one pair of hands.

use basket::pattern::StepKind;
use basket::steps::{Stage, Step};

use super::span::Span;
use crate::class::schedule::{Answer, Group, Hours, Minute, Plan, Problem, Task, Turn, Window, solve};

/// Steps of one sample.
pub(super) struct Chain<'s> {
    /// The steps, the last one that at which the sample is stopped.
    pub(super) steps: &'s [Step],
    /// Minutes before the moment from which all is reckoned, by which it has to stand ready.
    pub(super) due: Minute,
}

/// The time before the moment from which all is reckoned, in minutes before it.
pub(super) struct Past {
    /// The hours of work, the latest first.
    pub(super) hours: Vec<Window>,
    /// How many moulds there are; none for enough. At least as many as samples are stopped on.
    pub(super) moulds: Option<u32>,
}

/// When a sample is worked on.
pub(super) struct Placed {
    /// When it is begun, with the first soaking if there is one.
    pub(super) begin: f64,
    /// The work of each step, in the order of the steps.
    pub(super) work: Vec<Vec<Span>>,
    /// The number of its mould, from 0, and when it is held.
    pub(super) mould: Option<(u32, Span)>,
}

/// How many beginnings of plans are looked at: some milliseconds, for every packet has such a plan.
const LOOKED_AT: u64 = 6000;

/// When each sample is worked on; none where the hours do not hold the work.
pub(super) fn plan(chains: &[Chain], past: Past) -> Option<Vec<Placed>> {
    let longest = past.hours.iter().map(Window::minutes).max().unwrap_or(0);
    let undone: Vec<Vec<Undone>> = chains.iter().map(|chain| undone(chain.steps, longest)).collect();
    let groups: Vec<Group> = chains
        .iter()
        .zip(&undone)
        .map(|(chain, undone)| Group {
            students: 1,
            from: chain.due,
            on_mould: is_stopped_on_mould(chain.steps),
            tasks: undone.iter().map(|undone| undone.task).collect(),
        })
        .collect();
    let standing = groups.iter().filter(|group| group.on_mould).count();
    let standing = u32::try_from(standing).unwrap_or(u32::MAX);
    let moulds = past.moulds.unwrap_or(u32::MAX).max(standing).max(1);
    let problem = Problem {
        groups,
        sessions: past.hours,
        home: Vec::new(),
        moulds,
        drills: u32::MAX,
        tables: u32::MAX,
        hands: 1,
    };
    let Answer::Plan { plan, .. } = solve(&problem, &mut |progress| progress.looked_at < LOOKED_AT) else {
        return None;
    };
    let Plan { students, .. } = plan;
    Some(
        students
            .iter()
            .zip(&undone)
            .zip(chains)
            .map(|((turn, undone), chain)| placed(turn, undone, chain))
            .collect(),
    )
}

/// The last hours before a moment that hold so much work; none where there are too few.
pub(super) fn place(hours: &[Window], work: Minute, due: Minute) -> Option<Vec<Span>> {
    let longest = hours.iter().map(Window::minutes).max().unwrap_or(0);
    let task = Task { mould: false, ..task(work, longest) };
    let mut stretches = Vec::new();
    Hours::over(hours.to_vec()).spread(&task, due, |stretch| stretches.push(span(stretch)))?;
    stretches.reverse();
    Some(stretches)
}

/// A piece of the time of a sample, backward.
struct Undone {
    task: Task,
    /// Whose work it is, as a place in the list of steps; none for soaking and drying.
    step: Option<usize>,
}

/// What is soaked, worked and dried, the last first.
fn undone(steps: &[Step], longest: Minute) -> Vec<Undone> {
    let mounts = steps.iter().position(mounts);
    let frees = steps.iter().position(frees);
    let on = |index: usize| {
        mounts.is_some_and(|mounts| mounts <= index) && frees.is_none_or(|frees| index <= frees)
    };
    let mut all = Vec::new();
    let rest =
        |wait: f64, mould: bool| Undone { task: Task { wait: whole(wait), mould, ..task(0, 0) }, step: None };
    for (index, step) in steps.iter().enumerate().rev() {
        // What dries on a mould takes it from then on, backward, even if nothing has to dry.
        all.push(rest(step.wait_minutes, on(index)));
        all.push(Undone {
            task: Task { mould: on(index), ..task(whole(step.work_minutes), longest) },
            step: Some(index),
        });
        all.push(rest(step.soak_minutes.unwrap_or(0.0), false));
    }
    all
}

/// Work that is not broken off for the night unless it takes longer than a day.
fn task(work: Minute, longest: Minute) -> Task {
    let pieces = if work > longest { u32::try_from(work).unwrap_or(u32::MAX).max(1) } else { 1 };
    Task { work, wait: 0, pieces, mould: false, drill: false, table: false, hands: work > 0, home: false }
}

fn placed(turn: &Turn, undone: &[Undone], chain: &Chain) -> Placed {
    let mut work = vec![Vec::new(); chain.steps.len()];
    for (undone, placed) in undone.iter().zip(&turn.steps) {
        if let Some(of) = undone.step.and_then(|step| work.get_mut(step)) {
            *of = placed.work.iter().rev().map(|stretch| span(*stretch)).collect();
        }
    }
    let begin = turn.steps.last().map_or(0, |placed| placed.until) as f64;
    Placed { begin, work, mould: turn.mould.map(|(number, held)| (number, span(held))) }
}

/// Backward, an end is a beginning.
fn span(window: Window) -> Span {
    Span { from: window.to as f64, to: window.from as f64 }
}

/// Whether a sample that is stopped after these steps stands on its mould: what dries off the mould warps (common
/// practice).
fn is_stopped_on_mould(steps: &[Step]) -> bool {
    steps.iter().any(mounts) && !steps.iter().any(frees)
}

fn mounts(step: &Step) -> bool {
    step.stage == Stage::BaseOnMould
}

fn frees(step: &Step) -> bool {
    step.stage == Stage::OffMould
}

/// The step that is done for all samples together: the first, if each of several has it and it is the cutting.
pub(super) fn shared<'s>(chains: &[&'s [Step]]) -> Option<&'s Step> {
    let first = chains.first()?.first()?;
    let alike = |chain: &&[Step]| chain.first().is_some_and(|step| step.kind == StepKind::Cut);
    (chains.len() > 1 && chains.iter().all(alike)).then_some(first)
}

pub(super) fn whole(minutes: f64) -> Minute {
    if minutes.is_finite() { minutes.round().clamp(0.0, 1e7) as Minute } else { 0 }
}
