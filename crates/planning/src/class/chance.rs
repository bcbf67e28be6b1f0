//! Chance in a plan: how likely it ends in time, and which step decides it.

use basket::pattern::StepKind;
use rand_distr::{Distribution, Pert};
use rand_pcg::Pcg64Mcg;

use super::answer::Answer;
use super::network::{Activity, Link, Network, Run, ThreePoint};
use super::schedule::{Hours, Minute, Plan, Task, Window};

/// How many classes are tried.
const TRIED: u32 = 1000;
/// How much longer than planned one student takes than another (assumed: learners differ by about so much).
const STUDENT: ThreePoint = ThreePoint { least: 0.8, likely: 1.0, most: 1.4 };
/// How much longer than planned a step takes one time than another (assumed).
const STEP: ThreePoint = ThreePoint { least: 0.8, likely: 1.0, most: 1.5 };
/// By how much a kind of work is made longer to see whether it decides.
const LONGER: f64 = 1.25;

/// How a plan fares when times vary.
#[derive(Clone, Debug, PartialEq)]
pub struct Chance {
    /// How many of the classes that were tried ended in time.
    pub in_time: f64,
    /// The same by hand: the steps that decide the end of the plan, their mean and variance, and the time of class
    /// that is left (PERT). It takes no other student to be the last, and is the rosier figure for it.
    pub by_formula: f64,
    /// By how many minutes the class ends later where a step takes a quarter longer, the gravest first; none
    /// where it would not end in time. Steps that delay nothing are left out.
    pub decides: Vec<(StepKind, Option<Minute>)>,
}

/// A step of a student in the network.
#[derive(Clone, Copy)]
struct Node {
    student: usize,
    kind: StepKind,
    task: Task,
    from: Minute,
}

impl Answer {
    /// Tries a plan many times over, with the same order of turns and other times. The same seed gives the same
    /// answer.
    pub fn chance(&self, plan: &Plan, seed: u64) -> Option<Chance> {
        let (nodes, network) = self.network(plan)?;
        let planned = self.run(&nodes, &network, |_, _| 1.0)?;
        let mut dice = Pcg64Mcg::new(u128::from(seed) << 1 | 1);
        let mut in_time = 0;
        for _ in 0..TRIED {
            let students: Vec<f64> =
                plan.students.iter().map(|_| drawn(STUDENT, &mut dice)).collect::<Option<_>>()?;
            let steps: Vec<f64> = nodes.iter().map(|_| drawn(STEP, &mut dice)).collect::<Option<_>>()?;
            let factor = |number: usize, node: &Node| {
                students.get(node.student).unwrap_or(&1.0) * steps.get(number).unwrap_or(&1.0)
            };
            in_time += u32::from(self.run(&nodes, &network, factor).is_some());
        }
        Some(Chance {
            in_time: f64::from(in_time) / f64::from(TRIED),
            by_formula: self.by_formula(&nodes, &planned),
            decides: self.decides(&nodes, &network, planned.end()),
        })
    }

    /// All with the turns of the plan and times of their own; none where the hours do not hold it.
    fn run(&self, nodes: &[Node], network: &Network, factor: impl Fn(usize, &Node) -> f64) -> Option<Run> {
        let hours = Hours::of(&self.problem);
        network.run(|number, ready| {
            let node = nodes.get(number)?;
            let work = (node.task.work as f64 * factor(number, node)).round() as Minute;
            hours.place(&Task { work, ..node.task }, ready.max(node.from))
        })
    }

    /// The plan as a network: a student's steps in order, and whoever has the same mould, drill or hands next.
    fn network(&self, plan: &Plan) -> Option<(Vec<Node>, Network)> {
        let mut nodes = Vec::new();
        let mut activities = Vec::new();
        let (mut moulds, mut drills, mut tables, mut hands) =
            (Vec::new(), Vec::new(), Vec::new(), Vec::new());
        for (student, turn) in plan.students.iter().enumerate() {
            let from = self.problem.groups.get(turn.group)?.from;
            let mut held: Option<(usize, usize)> = None;
            let mut before: Option<Link> = None;
            for (lesson, placed) in self.steps(turn) {
                let (number, task) = (nodes.len(), lesson.task);
                nodes.push(Node { student, kind: lesson.kind, task, from });
                activities.push(Activity { after: Vec::from_iter(before) });
                before = Some(Link { activity: number, wait: task.wait });
                let busy = Busy { first: number, last: number, wait: 0, time: placed.span };
                drills.extend(task.drill.then_some(busy));
                tables.extend(task.table.then_some(busy));
                hands.extend(task.hands.then_some(busy));
                if task.mould {
                    held = Some((held.map_or(number, |(first, _)| first), number));
                }
            }
            if let (Some((from, to)), Some((_, time))) = (held, turn.mould) {
                let wait = nodes.get(to)?.task.wait;
                moulds.push(Busy { first: from, last: to, wait, time });
            }
        }
        for (busy, many) in [
            (moulds, self.problem.moulds),
            (drills, self.problem.drills),
            (tables, self.problem.tables),
            (hands, self.problem.hands),
        ] {
            in_turn(busy, many, &mut activities);
        }
        Some((nodes, Network::of(activities)?))
    }

    fn by_formula(&self, nodes: &[Node], planned: &Run) -> f64 {
        let last = self.problem.sessions.last().map_or(0, |session| session.to);
        let left = |session: &Window| (session.to - session.from.max(planned.end())).max(0);
        let left: Minute =
            if planned.end() > last { 0 } else { self.problem.sessions.iter().map(left).sum() };
        let path = planned.critical_path();
        let works = || path.iter().filter_map(|number| nodes.get(*number)).map(|node| node.task.work as f64);
        let mean: f64 = works().sum::<f64>() * (STUDENT.mean() * STEP.mean() - 1.0);
        // Steps vary each by itself, students with all of their steps together.
        let steps: f64 = works().map(|work| work * work * STEP.variance()).sum();
        let student = works().sum::<f64>().powi(2) * STUDENT.variance();
        normal_below((left as f64 - mean) / (steps + student).sqrt().max(1e-9))
    }

    fn decides(&self, nodes: &[Node], network: &Network, end: Minute) -> Vec<(StepKind, Option<Minute>)> {
        let mut kinds: Vec<StepKind> = Vec::new();
        for node in nodes {
            if !kinds.contains(&node.kind) {
                kinds.push(node.kind);
            }
        }
        let later = |kind: StepKind| {
            let run = self.run(nodes, network, |_, node| if node.kind == kind { LONGER } else { 1.0 });
            (kind, run.map(|run| run.end() - end))
        };
        let mut decides: Vec<(StepKind, Option<Minute>)> = kinds.into_iter().map(later).collect();
        decides.retain(|(_, later)| later.is_none_or(|later| later > 0));
        decides.sort_by_key(|(_, later)| std::cmp::Reverse(later.unwrap_or(Minute::MAX)));
        decides
    }
}

/// Something that is taken from one step to another, and free so long after.
#[derive(Clone, Copy)]
struct Busy {
    first: usize,
    last: usize,
    wait: Minute,
    time: Window,
}

/// Whoever takes something waits for who had it before: of those there are the one that was free first.
fn in_turn(mut busy: Vec<Busy>, many: u32, activities: &mut [Activity]) {
    busy.sort_by_key(|busy| (busy.time, busy.first));
    let mut had: Vec<Busy> = Vec::new();
    for next in busy {
        let free = had.iter().enumerate().min_by_key(|(_, busy)| busy.time.to).map(|(index, _)| index);
        if let Some(index) = free.filter(|_| had.len() >= many as usize) {
            let before = had.swap_remove(index);
            if let Some(activity) = activities.get_mut(next.first) {
                activity.after.push(Link { activity: before.last, wait: before.wait });
            }
        }
        had.push(next);
    }
}

fn drawn(points: ThreePoint, dice: &mut Pcg64Mcg) -> Option<f64> {
    let pert = Pert::new(points.least, points.most).with_mode(points.likely).ok()?;
    Some(pert.sample(dice))
}

/// The chance that a standard normal figure lies below.
pub(super) fn normal_below(z: f64) -> f64 {
    0.5 * libm::erfc(-z / std::f64::consts::SQRT_2)
}
