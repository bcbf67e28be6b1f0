//! How often to cut each way, in whole strands.

use std::ops::ControlFlow;

use microlp::{
    ComparisonOp, Error, OptimizationDirection, Problem, ResumeOptions, SolutionStatus, SolveOptions,
    SolveOutcome, Variable,
};

use super::job::MOST_PIECES;
use super::task::Task;
use super::ways::Way;

/// What is asked for.
#[derive(Clone, Copy)]
pub enum Goal<'g> {
    /// The least cost, which must not be above this many steps.
    Cost(u64),
    /// Any plan that opens no more than these of each kind of strand.
    Within(&'g [u32]),
}

/// How a search over whole strands ended.
pub enum Whole {
    /// How often each way is cut, and whether nothing is better.
    Found { times: Vec<u32>, is_best: bool },
    /// No plan costs so little.
    Impossible,
    /// Stopped before anything was found.
    Stopped,
}

/// Branches between two looks at whether to go on.
const NODES: u64 = 100;
/// A gap at which the first plan found is taken.
const ANY: f64 = 1e9;

/// A plan over these ways that reaches the goal.
pub fn whole(task: &Task, ways: &[Way], goal: Goal, go_on: &mut dyn FnMut() -> ControlFlow<()>) -> Whole {
    let mut problem = Problem::new(OptimizationDirection::Minimize);
    let variables: Vec<Variable> = ways
        .iter()
        .map(|way| {
            let most = at_most(task, way.bin, goal).unwrap_or(MOST_PIECES).min(MOST_PIECES);
            problem.add_integer_var(cost(task, way), (0, most as i32))
        })
        .collect();
    for (item, of) in task.items.iter().enumerate() {
        let taken = |way: &Way| way.takes.get(item).copied().unwrap_or(0);
        let row = row(&variables, ways, |way| f64::from(taken(way)));
        problem.add_constraint(row.as_slice(), ComparisonOp::Ge, f64::from(of.demand));
    }
    for bin in 0..task.bins.len() {
        if let Some(count) = at_most(task, bin, goal) {
            let row = row(&variables, ways, |way| if way.bin == bin { 1.0 } else { 0.0 });
            problem.add_constraint(row.as_slice(), ComparisonOp::Le, f64::from(count));
        }
    }
    let gap = match goal {
        Goal::Cost(limit) => {
            let costs = row(&variables, ways, |way| cost(task, way));
            problem.add_constraint(costs.as_slice(), ComparisonOp::Le, limit as f64 + 0.5);
            // Costs come in whole steps: a gap below one is none.
            0.99 / (limit as f64 + 1.0)
        }
        Goal::Within(_) => ANY,
    };
    let mut options = SolveOptions::default();
    (options.node_limit, options.mip_gap) = (Some(NODES), gap);
    let mut more = ResumeOptions::default();
    (more.node_limit, more.mip_gap) = (Some(NODES), Some(gap));
    run(problem.solve_with(options), &more, &variables, go_on)
}

fn at_most(task: &Task, bin: usize, goal: Goal) -> Option<u32> {
    match goal {
        Goal::Cost(_) => task.bins.get(bin).and_then(|bin| bin.count),
        Goal::Within(counts) => counts.get(bin).copied(),
    }
}

fn run(
    mut outcome: Result<SolveOutcome, Error>,
    more: &ResumeOptions,
    variables: &[Variable],
    go_on: &mut dyn FnMut() -> ControlFlow<()>,
) -> Whole {
    loop {
        let reached = match outcome {
            Ok(reached) => reached,
            Err(Error::Infeasible) => return Whole::Impossible,
            Err(_) => return Whole::Stopped,
        };
        let is_limited = reached.termination_reason() == microlp::TerminationReason::NodeLimit;
        if is_limited && go_on().is_continue() {
            outcome = reached.resume_with(more.clone());
            continue;
        }
        let Some(solution) = reached.solution() else { return Whole::Stopped };
        let times = variables.iter().map(|way| solution.var_value(*way).round().max(0.0) as u32).collect();
        return Whole::Found { times, is_best: !is_limited || solution.status() == SolutionStatus::Optimal };
    }
}

fn cost(task: &Task, way: &Way) -> f64 {
    task.bins.get(way.bin).map_or(0.0, |bin| bin.cost as f64)
}

fn row(variables: &[Variable], ways: &[Way], factor: impl Fn(&Way) -> f64) -> Vec<(Variable, f64)> {
    let all = variables.iter().zip(ways).map(|(variable, way)| (*variable, factor(way)));
    all.filter(|(_, factor)| *factor != 0.0).collect()
}
