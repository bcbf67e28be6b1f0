//! The search for the best plan.

use std::ops::ControlFlow;

use super::bounds::by_halves;
use super::first_fit::{first_fit, strands_by_first_fit};
use super::job::{CuttingError, Job};
use super::offcuts::{Opened, lengthen, opened};
use super::openings::openings;
use super::plan::{Plan, Progress};
use super::relaxed::{Relaxed, relax};
use super::task::Task;
use super::ways::{MOST_WAYS, Search, TOLERANCE, Way};
use super::whole::{Goal, Whole, whole};

/// What is asked from time to time, and may say that it is enough.
pub type Watch<'w> = dyn FnMut(Progress) -> ControlFlow<()> + 'w;

/// The best plan and what there is to show that it is: at least cost, then from the least stock, then with
/// long offcuts. Where `watch` breaks off, the best plan so far, with the bound that was reached.
///
/// # Errors
///
/// Lengths that cannot be cut, too many of them, and pieces for which the stock does not suffice.
pub fn solve(job: &Job, watch: &mut Watch) -> Result<Plan, CuttingError> {
    let task = Task::of(job)?;
    if task.is_idle() {
        return Ok(Plan::of(job, &task, &[], 0));
    }
    let wanted: Vec<u32> = task.items.iter().map(|item| item.demand).collect();
    let quick = first_fit(&task, &wanted, &vec![0; task.bins.len()]);
    let mut state = State { task: &task, bound: simple_bound(&task), best: quick, is_shortest: false, watch };
    state.is_shortest = task.bins.len() == 1;
    if state.bound < state.cost() || !state.is_shortest {
        state.search(&wanted);
    }
    let (bound, is_shortest) = (state.bound * task.step, state.is_shortest);
    let mut strands = opened(&task, &state.best);
    lengthen(&task, &mut strands);
    missing(&task, &strands)?;
    Ok(Plan { is_shortest, ..Plan::of(job, &task, &strands, bound) })
}

struct State<'s, 'w> {
    task: &'s Task,
    bound: u64,
    /// A way for each strand.
    best: Vec<Way>,
    is_shortest: bool,
    watch: &'s mut Watch<'w>,
}

impl State<'_, '_> {
    fn cost(&self) -> u64 {
        cost(self.task, &self.best)
    }

    fn search(&mut self, wanted: &[u32]) {
        let progress = self.progress();
        let watch = &mut *self.watch;
        let Some(relaxed) = relax(self.task, beginnings(self.task, &self.best), &mut || watch(progress))
        else {
            return;
        };
        self.bound =
            self.bound.max((relaxed.bound - TOLERANCE * (1.0 + relaxed.bound.abs())).ceil().max(0.0) as u64);
        self.round(&relaxed, wanted);
        self.prove(&relaxed);
        if !self.is_shortest && self.bound >= self.cost() {
            self.shorten(&relaxed);
        }
    }

    /// A plan from the whole part of the relaxed one, the rest by first fit.
    fn round(&mut self, relaxed: &Relaxed, wanted: &[u32]) {
        let limit = self.cost().saturating_sub(1);
        if self.bound > limit {
            return;
        }
        let Some(times) = super::relaxed::times(self.task, &relaxed.ways) else { return };
        let mut left = wanted.to_vec();
        let mut taken = vec![0; self.task.bins.len()];
        let mut plan = Vec::new();
        for (way, times) in relaxed.ways.iter().zip(times) {
            let many = (times + TOLERANCE).floor().clamp(0.0, 1e6) as u32;
            plan.extend(std::iter::repeat_n(way.clone(), many as usize));
            taken.iter_mut().skip(way.bin).take(1).for_each(|taken| *taken += many);
            for (left, take) in left.iter_mut().zip(&way.takes) {
                *left = left.saturating_sub(take.saturating_mul(many));
            }
        }
        plan.extend(first_fit(self.task, &left, &taken));
        self.take(plan);
    }

    /// Closes the gap between plan and bound from below: looks for a plan that costs no more than the bound,
    /// and where there is none, raises it.
    fn prove(&mut self, relaxed: &Relaxed) {
        let mut step = 0;
        while self.bound < self.cost() {
            let limit = (self.bound + step).min(self.cost() - 1);
            let Some(ways) = self.ways(relaxed, limit) else {
                self.improve(relaxed);
                return;
            };
            match self.whole(&ways, Goal::Cost(limit)) {
                Whole::Found { times, is_best } => {
                    self.take(repeated(&ways, &times));
                    if is_best {
                        self.bound = self.cost();
                    }
                    return;
                }
                Whole::Impossible => {
                    self.bound = limit + 1;
                    step = step * 2 + 1;
                }
                Whole::Stopped => return,
            }
        }
    }

    /// Where there are too many ways for a proof: a better plan of those that the relaxation took.
    fn improve(&mut self, relaxed: &Relaxed) {
        let limit = self.cost().saturating_sub(1);
        if let Whole::Found { times, .. } = self.whole(&relaxed.ways, Goal::Cost(limit)) {
            self.take(repeated(&relaxed.ways, &times));
        }
    }

    /// The least stock at the same cost: tries how many of each kind of strand to open, shortest first.
    fn shorten(&mut self, relaxed: &Relaxed) {
        let cost = self.cost();
        let Some(openings) = openings(self.task, cost, room(self.task, &self.best)) else { return };
        let Some(ways) = self.ways(relaxed, cost) else { return };
        for counts in openings {
            match self.whole(&ways, Goal::Within(&counts)) {
                Whole::Found { times, .. } => {
                    self.best = repeated(&ways, &times);
                    self.is_shortest = true;
                    return;
                }
                Whole::Impossible => {}
                Whole::Stopped => return,
            }
        }
        self.is_shortest = true;
    }

    /// All ways that a plan of this cost may take: any other makes it dearer by its reduced cost.
    fn ways(&self, relaxed: &Relaxed, limit: u64) -> Option<Vec<Way>> {
        let gap = limit as f64 - relaxed.bound + TOLERANCE * (1.0 + relaxed.bound.abs());
        let mut search = Search::new(self.task, &relaxed.prices);
        let mut ways = Vec::new();
        for (bin, (of, scarce)) in self.task.bins.iter().zip(&relaxed.scarcity).enumerate() {
            let worth = of.cost as f64 + scarce - gap - TOLERANCE;
            let found = search.all_worth(of.room, worth, MOST_WAYS.saturating_sub(ways.len()))?;
            ways.extend(found.into_iter().map(|takes| Way { bin, takes }));
        }
        Some(ways)
    }

    fn whole(&mut self, ways: &[Way], goal: Goal) -> Whole {
        let progress = self.progress();
        let watch = &mut *self.watch;
        whole(self.task, ways, goal, &mut || watch(progress))
    }

    fn progress(&self) -> Progress {
        Progress { cost: self.cost() * self.task.step, bound: self.bound * self.task.step }
    }

    /// Takes a plan over that costs less, and gives all pieces.
    fn take(&mut self, plan: Vec<Way>) {
        if cost(self.task, &plan) < self.cost() && suffices(self.task, &plan) {
            self.best = plan;
        }
    }
}

fn cost(task: &Task, plan: &[Way]) -> u64 {
    plan.iter().filter_map(|way| task.bins.get(way.bin)).map(|bin| bin.cost).sum()
}

fn room(task: &Task, plan: &[Way]) -> i64 {
    plan.iter().filter_map(|way| task.bins.get(way.bin)).map(|bin| bin.room).sum()
}

fn suffices(task: &Task, plan: &[Way]) -> bool {
    let made = |item: usize| plan.iter().filter_map(|way| way.takes.get(item)).sum::<u32>();
    let used = |bin: usize| plan.iter().filter(|way| way.bin == bin).count();
    task.items.iter().enumerate().all(|(item, of)| made(item) >= of.demand)
        && task
            .bins
            .iter()
            .enumerate()
            .all(|(bin, of)| of.count.is_none_or(|count| used(bin) <= count as usize))
}

fn repeated(ways: &[Way], times: &[u32]) -> Vec<Way> {
    ways.iter()
        .zip(times)
        .flat_map(|(way, times)| std::iter::repeat_n(way.clone(), *times as usize))
        .collect()
}

/// For stock of one length, what its pieces say at once.
fn simple_bound(task: &Task) -> u64 {
    let [bin] = task.bins.as_slice() else { return 0 };
    let sizes: Vec<i64> =
        task.items.iter().flat_map(|item| std::iter::repeat_n(item.size, item.demand as usize)).collect();
    debug_assert!(by_halves(&sizes, bin.room) <= strands_by_first_fit(&sizes, bin.room));
    u64::from(by_halves(&sizes, bin.room)) * bin.cost
}

/// Ways to begin with: each strand full of one piece, and those of a plan.
fn beginnings(task: &Task, plan: &[Way]) -> Vec<Way> {
    let mut ways = Vec::new();
    for (bin, of) in task.bins.iter().enumerate() {
        for (place, item) in task.items.iter().enumerate().filter(|(_, item)| item.size <= of.room) {
            let many = u32::try_from(of.room / item.size).unwrap_or(u32::MAX).min(item.demand);
            let takes = (0..task.items.len()).map(|own| if own == place { many } else { 0 }).collect();
            ways.push(Way { bin, takes });
        }
    }
    let mut seen: std::collections::HashSet<Way> = ways.iter().cloned().collect();
    ways.extend(plan.iter().filter(|way| seen.insert((*way).clone())).cloned());
    ways
}

/// Says which pieces are missing where what stands in for stock was taken.
fn missing(task: &Task, strands: &[Opened]) -> Result<(), CuttingError> {
    let stands_in = |one: &&Opened| task.bins.get(one.bin).is_none_or(|bin| bin.stock.is_none());
    let mut short: Vec<(usize, u32)> = Vec::new();
    for (item, of) in task.items.iter().enumerate() {
        let count: u32 = strands.iter().filter(stands_in).filter_map(|one| one.takes.get(item)).sum();
        short.extend(of.pieces.first().filter(|_| count > 0).map(|place| (*place, count)));
    }
    if short.is_empty() { Ok(()) } else { Err(CuttingError::NotEnough(short)) }
}
