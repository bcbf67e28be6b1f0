//! The search for the order that ends earliest.

use std::collections::HashMap;

use super::label::{Label, Rules};
use super::plan::Plan;
use super::problem::{Minute, Problem};
use super::replay::replay;

/// How far a search has come.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Progress {
    /// When the best plan so far ends.
    pub best: Option<Minute>,
    /// No plan ends earlier than this.
    pub bound: Minute,
    /// How many beginnings of plans were looked at.
    pub looked_at: u64,
}

/// What a search found.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Answer {
    /// The best plan, and a time that no plan undercuts: its own end where it is proven to be the best.
    Plan {
        /// The plan.
        plan: Plan,
        /// The time that no plan undercuts.
        bound: Minute,
    },
    /// There is none within the hours: proven.
    NoPlan,
    /// None was found before the search was stopped.
    Unknown,
}

/// How many beginnings are kept in a layer: more each time it was too few.
const WIDTHS: [usize; 6] = [1, 16, 256, 2048, 16_384, 100_000];
/// After how many beginnings the caller is asked.
const ASKED_EVERY: u64 = 64;

/// Plans a class so that its last work ends as early as can be. `go_on` is asked now and then; once it says
/// no, the best so far is the answer. The same problem gives the same answer as long as it is not stopped.
pub fn solve(problem: &Problem, go_on: &mut dyn FnMut(Progress) -> bool) -> Answer {
    let mut rules = Rules::of(problem);
    let Some(root) = rules.root() else { return Answer::NoPlan };
    let mut search = Search {
        progress: Progress { best: None, bound: root.bound, looked_at: 0 },
        best: None,
        nodes: Vec::new(),
        stopped: false,
    };
    let mut proven = false;
    for width in WIDTHS {
        search.nodes.truncate(0);
        proven = search.round(&mut rules, root.clone(), width, go_on);
        if proven || search.stopped {
            break;
        }
    }
    let plan = search.best.and_then(|turns| replay(problem, &rules, &turns));
    match plan {
        Some(plan) => {
            let bound = if proven { plan.end } else { search.progress.bound.min(plan.end) };
            Answer::Plan { plan, bound }
        }
        None if proven => Answer::NoPlan,
        None => Answer::Unknown,
    }
}

struct Search {
    progress: Progress,
    /// The turns of the best plan: students, each at its next contended step.
    best: Option<Vec<usize>>,
    /// Each decision with the one before it, counted from 1.
    nodes: Vec<(usize, usize)>,
    stopped: bool,
}

impl Search {
    /// Goes through all layers with so many beginnings in each at the most. Whether its best is proven.
    fn round(
        &mut self,
        rules: &mut Rules,
        root: Label,
        width: usize,
        go_on: &mut dyn FnMut(Progress) -> bool,
    ) -> bool {
        // The earliest end that a beginning promised which was let go.
        let mut let_go: Option<Minute> = None;
        let mut layer = vec![root];
        while !layer.is_empty() {
            let mut next: HashMap<Vec<u8>, Vec<Label>> = HashMap::new();
            for label in layer {
                let turns = rules.turns(&label);
                if turns.is_empty() {
                    self.finished(&label);
                    continue;
                }
                for student in turns {
                    self.progress.looked_at += 1;
                    if self.progress.looked_at.is_multiple_of(ASKED_EVERY) && !go_on(self.progress) {
                        self.stopped = true;
                        return false;
                    }
                    let Some(mut label_then) = rules.next(&label, student) else { continue };
                    if self.progress.best.is_some_and(|best| label_then.bound >= best) {
                        continue;
                    }
                    self.nodes.push((label.node, student));
                    label_then.node = self.nodes.len();
                    keep(next.entry(label_then.stages.clone()).or_default(), label_then);
                }
            }
            layer = next.into_values().flatten().collect();
            layer
                .sort_unstable_by(|a, b| (a.order(), &a.stages, a.node).cmp(&(b.order(), &b.stages, b.node)));
            if let Some(first) = layer.get(width) {
                let_go = Some(let_go.map_or(first.bound, |earlier| earlier.min(first.bound)));
                layer.truncate(width);
            }
        }
        let best = self.progress.best;
        match let_go {
            None => true,
            Some(promised) => {
                let bound = best.map_or(promised, |best| best.min(promised));
                self.progress.bound = self.progress.bound.max(bound);
                best.is_some_and(|best| self.progress.bound >= best)
            }
        }
    }

    fn finished(&mut self, label: &Label) {
        if self.progress.best.is_some_and(|best| label.bound >= best) {
            return;
        }
        self.progress.best = Some(label.bound);
        let mut turns = Vec::new();
        let mut node = label.node;
        while let Some((before, student)) = node.checked_sub(1).and_then(|index| self.nodes.get(index)) {
            turns.push(*student);
            node = *before;
        }
        turns.reverse();
        self.best = Some(turns);
    }
}

/// Keeps a label among those at the same steps, unless one of them is behind in nothing; and lets go those
/// that are not ahead of it in anything.
fn keep(kept: &mut Vec<Label>, label: Label) {
    if kept.iter().any(|other| other.covers(&label)) {
        return;
    }
    kept.retain(|other| !label.covers(other));
    kept.push(label);
}
