//! The relaxation: what each piece is worth, and below which cost no plan lies.

use std::ops::ControlFlow;

use microlp::{ComparisonOp, OptimizationDirection, Problem, Solution, Variable};

use super::task::Task;
use super::ways::{Search, TOLERANCE, Way};

/// Prices of the pieces under which no way to cut a strand is worth more than the strand costs.
pub struct Relaxed {
    /// Price of each item.
    pub prices: Vec<f64>,
    /// What each kind of strand is dearer by because there are few of it.
    pub scarcity: Vec<f64>,
    /// Cost below which no plan lies, in steps.
    pub bound: f64,
    /// The ways that came up.
    pub ways: Vec<Way>,
}

/// The program of prices, in which every way to cut a strand is a constraint.
struct Prices {
    items: Vec<Variable>,
    /// For the kinds of strand of which there are few.
    bins: Vec<Option<Variable>>,
}

/// Solves the program of prices, a violated constraint at a time. None where the solver gives up, a search
/// is given up, or `go_on` says so.
pub fn relax(task: &Task, known: Vec<Way>, go_on: &mut dyn FnMut() -> ControlFlow<()>) -> Option<Relaxed> {
    let mut ways = known;
    let (mut solution, prices) = program(task, &ways)?;
    loop {
        if go_on().is_break() {
            return None;
        }
        let values: Vec<f64> = prices.items.iter().map(|item| solution.var_value(*item)).collect();
        let scarcity: Vec<f64> =
            prices.bins.iter().map(|bin| bin.map_or(0.0, |bin| solution.var_value(bin).max(0.0))).collect();
        let better = too_dear(task, &values, &scarcity)?;
        if better.is_empty() {
            let bound = solution.objective();
            return Some(Relaxed { prices: values, scarcity, bound, ways });
        }
        for way in better {
            let (row, cost) = prices.row(task, &way);
            let edited = solution.add_constraint(row.as_slice(), ComparisonOp::Le, cost);
            ways.push(way);
            solution = match edited.ok().and_then(|outcome| outcome.into_solution().ok()) {
                Some(solution) => solution,
                None => program(task, &ways)?.0,
            };
        }
    }
}

/// For each kind of strand the way to cut it that is worth more than it costs, if there is one.
fn too_dear(task: &Task, prices: &[f64], scarcity: &[f64]) -> Option<Vec<Way>> {
    let mut search = Search::new(task, prices);
    let mut better = Vec::new();
    for (bin, (of, scarce)) in task.bins.iter().zip(scarcity).enumerate() {
        let (worth, takes) = search.dearest(of.room)?;
        if worth > of.cost as f64 + scarce + TOLERANCE {
            better.push(Way { bin, takes });
        }
    }
    Some(better)
}

fn program(task: &Task, ways: &[Way]) -> Option<(Solution, Prices)> {
    let mut problem = Problem::new(OptimizationDirection::Maximize);
    let endless = (0.0, f64::INFINITY);
    let items = task.items.iter().map(|item| problem.add_var(f64::from(item.demand), endless)).collect();
    let bins = task
        .bins
        .iter()
        .map(|bin| bin.count.map(|count| problem.add_var(-f64::from(count), endless)))
        .collect();
    let prices = Prices { items, bins };
    for way in ways {
        let (row, cost) = prices.row(task, way);
        problem.add_constraint(row.as_slice(), ComparisonOp::Le, cost);
    }
    Some((problem.solve().ok()?.into_solution().ok()?, prices))
}

impl Prices {
    fn row(&self, task: &Task, way: &Way) -> (Vec<(Variable, f64)>, f64) {
        let taken = self.items.iter().zip(&way.takes).filter(|(_, take)| **take > 0);
        let mut row: Vec<(Variable, f64)> = taken.map(|(item, take)| (*item, f64::from(*take))).collect();
        row.extend(self.bins.get(way.bin).copied().flatten().map(|bin| (bin, -1.0)));
        (row, task.bins.get(way.bin).map_or(0.0, |bin| bin.cost as f64))
    }
}

/// How often the relaxed plan of least cost cuts each of these ways.
pub fn times(task: &Task, ways: &[Way]) -> Option<Vec<f64>> {
    let mut problem = Problem::new(OptimizationDirection::Minimize);
    let cost = |way: &Way| task.bins.get(way.bin).map_or(0.0, |bin| bin.cost as f64);
    let variables: Vec<Variable> =
        ways.iter().map(|way| problem.add_var(cost(way), (0.0, f64::INFINITY))).collect();
    let row = |factor: &dyn Fn(&Way) -> f64| -> Vec<(Variable, f64)> {
        let all = variables.iter().zip(ways).map(|(variable, way)| (*variable, factor(way)));
        all.filter(|(_, factor)| *factor != 0.0).collect()
    };
    for (item, of) in task.items.iter().enumerate() {
        let taken = row(&|way| way.takes.get(item).map_or(0.0, |take| f64::from(*take)));
        problem.add_constraint(taken.as_slice(), ComparisonOp::Ge, f64::from(of.demand));
    }
    for (bin, of) in task.bins.iter().enumerate() {
        if let Some(count) = of.count {
            let used = row(&|way| if way.bin == bin { 1.0 } else { 0.0 });
            problem.add_constraint(used.as_slice(), ComparisonOp::Le, f64::from(count));
        }
    }
    let solution = problem.solve().ok()?.into_solution().ok()?;
    Some(variables.iter().map(|way| solution.var_value(*way)).collect())
}

#[cfg(test)]
mod tests {
    use basket::Length;

    use super::super::first_fit::first_fit;
    use super::super::job::{Job, Piece, Stock};
    use super::*;

    /// Paper rolls of 5600, an example that many a text on linear programming prints; the relaxation by column
    /// generation (Gilmore and Gomory 1961) has the value 72.9167, worked out by an independent solver.
    #[test]
    fn paper_rolls_are_relaxed_to_the_known_value() {
        const ROLLS: [(f64, u32); 13] = [
            (1380.0, 22),
            (1520.0, 25),
            (1560.0, 12),
            (1710.0, 14),
            (1820.0, 18),
            (1880.0, 18),
            (1930.0, 20),
            (2000.0, 10),
            (2050.0, 12),
            (2100.0, 14),
            (2140.0, 16),
            (2150.0, 18),
            (2200.0, 20),
        ];
        let piece = |(mm, count)| Piece { length: Length::mm(mm), count };
        let stocks = vec![Stock { length: Length::mm(5600.0), count: None, cost: 1 }];
        let job = Job { stocks, pieces: ROLLS.map(piece).to_vec(), kerf: Length::ZERO };
        let task = Task::of(&job).unwrap();
        let wanted: Vec<u32> = task.items.iter().map(|item| item.demand).collect();
        let known = first_fit(&task, &wanted, &vec![0; task.bins.len()]);
        let relaxed = relax(&task, known, &mut || ControlFlow::Continue(())).unwrap();
        assert!((relaxed.bound - 72.9167).abs() < 5e-5, "{}", relaxed.bound);
        // As a program of ways it has the same value.
        let times = times(&task, &relaxed.ways).unwrap();
        assert!((times.iter().sum::<f64>() - relaxed.bound).abs() < 1e-6);
    }
}
