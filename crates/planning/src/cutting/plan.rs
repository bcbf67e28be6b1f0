//! What a plan says.

use basket::Length;

use super::job::Job;
use super::offcuts::Opened;
use super::task::Task;

/// One strand of stock, cut.
#[derive(Clone, Debug, PartialEq)]
pub struct Strand {
    /// Which stock of the job.
    pub stock: usize,
    /// The pieces, as places in the job, longest first: in this order they are cut.
    pub pieces: Vec<usize>,
    /// What is left at its end.
    pub left: Length,
}

/// Which pieces come from which strands.
#[derive(Clone, Debug, PartialEq)]
pub struct Plan {
    /// The strands that are opened, by stock, the same ones together.
    pub strands: Vec<Strand>,
    /// What they cost.
    pub cost: u64,
    /// No plan costs less than this; the plan is proven best where it is the cost.
    pub bound: u64,
    /// Whether no plan of this cost opens less stock.
    pub is_shortest: bool,
}

/// How far the search has come.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Progress {
    /// What the best plan so far costs.
    pub cost: u64,
    /// No plan costs less than this.
    pub bound: u64,
}

impl Plan {
    pub(super) fn of(job: &Job, task: &Task, opened: &[Opened], bound: u64) -> Self {
        let mut waiting: Vec<Vec<usize>> = task
            .items
            .iter()
            .map(|item| {
                let many = |place: &usize| {
                    let count = job.pieces.get(*place).map_or(0, |piece| piece.count);
                    std::iter::repeat_n(*place, count as usize)
                };
                item.pieces.iter().rev().flat_map(many).collect()
            })
            .collect();
        let kerf = job.kerf.to_mm();
        let mut strands: Vec<Strand> = Vec::new();
        for one in opened {
            let Some(stock) = task.bins.get(one.bin).and_then(|bin| bin.stock) else { continue };
            let pieces = one
                .takes
                .iter()
                .zip(&mut waiting)
                .flat_map(|(take, waiting)| waiting.split_off(waiting.len().saturating_sub(*take as usize)))
                .collect();
            let left = Length::mm((one.rest as f64 / 1e6 - kerf).max(0.0));
            strands.push(Strand { stock, pieces, left });
        }
        let cost =
            opened.iter().filter_map(|one| task.bins.get(one.bin)).map(|bin| bin.cost * task.step).sum();
        let mut plan = Self { strands, cost, bound, is_shortest: true };
        plan.sort();
        plan
    }

    /// By stock, strands that are cut alike together.
    pub(crate) fn sort(&mut self) {
        self.strands.sort_by(|a, b| a.stock.cmp(&b.stock).then_with(|| a.pieces.cmp(&b.pieces)));
    }

    /// Whether no plan costs less.
    pub fn is_proven(&self) -> bool {
        self.bound >= self.cost
    }

    /// Strands that are cut alike, each with how often.
    pub fn alike(&self) -> Vec<(u32, &Strand)> {
        let mut alike: Vec<(u32, &Strand)> = Vec::new();
        for strand in &self.strands {
            match alike.last_mut() {
                Some((count, last)) if *last == strand => *count += 1,
                _ => alike.push((1, strand)),
            }
        }
        alike
    }

    /// How many strands of a stock are opened.
    pub fn opened(&self, stock: usize) -> u32 {
        self.strands.iter().filter(|strand| strand.stock == stock).count() as u32
    }
}
