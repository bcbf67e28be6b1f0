//! A plan in the making: where each student stands, and when things become free.

use std::collections::HashMap;

use super::chain::{Chain, Reached};
use super::hours::Hours;
use super::problem::{Minute, Problem};

/// Students in the order of their groups, and within a group in their turn.
#[derive(Clone, Debug)]
pub(super) struct Label {
    /// The decision that led here.
    pub(super) node: usize,
    /// The next contended step of each student.
    pub(super) stages: Vec<u8>,
    /// When each may begin it.
    ready: Vec<Minute>,
    /// When moulds become free, in order; those that are held and whose end is not known yet are not among them.
    moulds: Vec<Minute>,
    /// When each drill is free, in order.
    drills: Vec<Minute>,
    /// When each place at the tables is free, in order.
    tables: Vec<Minute>,
    /// When each of the teacher's hands is free, in order.
    hands: Vec<Minute>,
    /// The end of the last work so far.
    worked: Minute,
    /// No plan that goes on from here ends earlier.
    pub(super) bound: Minute,
}

impl Label {
    /// Whether it is behind in nothing, of two that stand at the same steps.
    pub(super) fn covers(&self, other: &Self) -> bool {
        let no_later = |mine: &[Minute], theirs: &[Minute]| mine.iter().zip(theirs).all(|(a, b)| a <= b);
        self.worked <= other.worked
            && no_later(&self.ready, &other.ready)
            && no_later(&self.moulds, &other.moulds)
            && no_later(&self.drills, &other.drills)
            && no_later(&self.tables, &other.tables)
            && no_later(&self.hands, &other.hands)
    }

    /// What is looked at first among like bounds.
    pub(super) fn order(&self) -> (Minute, Minute) {
        (self.bound, self.ready.iter().fold(0, |sum: Minute, ready| sum.saturating_add(*ready)))
    }
}

/// The rules by which labels go on.
pub(super) struct Rules<'p> {
    problem: &'p Problem,
    pub(super) hours: Hours,
    pub(super) chains: Vec<Chain<'p>>,
    /// The group of each student.
    pub(super) group_of: Vec<usize>,
    /// Ends of work and of the mould's time for a student who waits for nobody.
    alone: HashMap<(usize, u8, Minute), Option<Reached>>,
}

impl<'p> Rules<'p> {
    pub(super) fn of(problem: &'p Problem) -> Self {
        let chains: Vec<Chain> = problem.groups.iter().map(|group| Chain::of(group, problem)).collect();
        let of_group = |(group, students): (usize, u32)| std::iter::repeat_n(group, students as usize);
        let group_of =
            problem.groups.iter().map(|group| group.students).enumerate().flat_map(of_group).collect();
        Self { problem, hours: Hours::of(problem), chains, group_of, alone: HashMap::new() }
    }

    /// Nobody has begun anything that is scarce.
    pub(super) fn root(&mut self) -> Option<Label> {
        let free = |many: u32| vec![Minute::MIN; many.min(self.problem.students()) as usize];
        let mut label = Label {
            node: 0,
            stages: vec![0; self.group_of.len()],
            ready: Vec::with_capacity(self.group_of.len()),
            moulds: free(self.problem.moulds_free()),
            drills: free(self.problem.drills),
            tables: free(self.problem.tables),
            hands: free(self.problem.hands),
            worked: Minute::MIN,
            bound: Minute::MIN,
        };
        for group in &self.group_of {
            let chain = self.chains.get(*group)?;
            let until = chain.step(0).map_or(chain.group.tasks.len(), |(index, _)| index);
            let reached = chain.advance(&self.hours, (0, until), chain.group.from)?;
            label.ready.push(reached.ready);
            label.worked = label.worked.max(reached.worked);
            label.moulds.extend(reached.freed);
        }
        label.moulds.sort_unstable();
        label.bound = self.bound(&label)?;
        Some(label)
    }

    /// The students whose turn it may be: of each group the first one at each step.
    pub(super) fn turns(&self, label: &Label) -> Vec<usize> {
        let mut turns: Vec<usize> = Vec::new();
        for (student, (group, stage)) in self.group_of.iter().zip(&label.stages).enumerate() {
            let before = student.checked_sub(1);
            let same = before.is_some_and(|before| {
                self.group_of.get(before) == Some(group) && label.stages.get(before) == Some(stage)
            });
            let more = self.chains.get(*group).is_some_and(|chain| chain.step(*stage).is_some());
            if more && !same {
                turns.push(student);
            }
        }
        turns
    }

    /// The label after a student's turn; none where there is no mould for it, or the hours do not hold it.
    pub(super) fn next(&mut self, label: &Label, student: usize) -> Option<Label> {
        let chain = self.chains.get(*self.group_of.get(student)?)?;
        let stage = *label.stages.get(student)?;
        let (index, takes) = chain.step(stage)?;
        let mut ready = *label.ready.get(student)?;
        for free in [
            takes.mould.then_some(&label.moulds),
            takes.drill.then_some(&label.drills),
            takes.table.then_some(&label.tables),
            takes.hands.then_some(&label.hands),
        ]
        .into_iter()
        .flatten()
        {
            ready = ready.max(*free.first()?);
        }
        let done = self.hours.place(chain.group.tasks.get(index)?, ready)?;
        let mut reached = Reached { ready, worked: label.worked, freed: None };
        chain.pass(&mut reached, index, done);
        let more = chain.advance(&self.hours, chain.stretch(stage), reached.ready)?;
        let mut next = label.clone();
        *next.stages.get_mut(student)? = stage + 1;
        *next.ready.get_mut(student)? = more.ready;
        next.worked = label.worked.max(reached.worked).max(more.worked);
        if takes.mould {
            next.moulds.remove(0);
        }
        if let Some(freed) = reached.freed.or(more.freed) {
            let place = next.moulds.partition_point(|free| *free <= freed);
            next.moulds.insert(place, freed);
        }
        for free in [
            takes.drill.then_some(&mut next.drills),
            takes.table.then_some(&mut next.tables),
            takes.hands.then_some(&mut next.hands),
        ]
        .into_iter()
        .flatten()
        {
            free.remove(0);
            let place = free.partition_point(|free| *free <= done.to);
            free.insert(place, done.to);
        }
        next.bound = self.bound(&next)?;
        Some(next)
    }

    /// A time that no plan from here on undercuts: nobody waits for drills, tables or hands any more, and whoever
    /// still needs a mould takes the next one that becomes free and keeps it as short as anybody can. None
    /// where even that does not fit into the hours.
    fn bound(&mut self, label: &Label) -> Option<Minute> {
        let mut bound = label.worked;
        let mut moulds = label.moulds.clone();
        let mut waiting: Vec<(usize, u8, Minute)> = Vec::new();
        for student in 0..self.group_of.len() {
            let at = (*self.group_of.get(student)?, *label.stages.get(student)?, *label.ready.get(student)?);
            let chain = self.chains.get(at.0)?;
            if chain.step(at.1).is_none() {
                continue;
            }
            let alone = self.alone(at)?;
            bound = bound.max(alone.worked);
            match self.before_mould(at) {
                Some(at) => waiting.push(at),
                None => moulds.extend(alone.freed),
            }
        }
        moulds.sort_unstable();
        waiting.sort_unstable_by_key(|at| at.2);
        self.on_moulds(waiting, moulds, bound)
    }

    /// Those who wait for a mould take them as they become free. Of several groups each takes the time of the
    /// quickest that is left.
    fn on_moulds(
        &mut self,
        waiting: Vec<(usize, u8, Minute)>,
        mut moulds: Vec<Minute>,
        mut bound: Minute,
    ) -> Option<Minute> {
        let mut kinds: Vec<(usize, u8)> = waiting.iter().map(|at| (at.0, at.1)).collect();
        kinds.sort_unstable();
        kinds.dedup();
        for at in waiting {
            if moulds.is_empty() {
                return None;
            }
            let ready = moulds.remove(0).max(at.2);
            let mut freed = None;
            let mut worked: Option<Minute> = None;
            for kind in &kinds {
                if let Some(alone) = self.alone((kind.0, kind.1, ready)) {
                    freed = earlier(freed, alone.freed);
                    worked = earlier(worked, Some(alone.worked));
                }
            }
            bound = bound.max(worked?);
            if let Some(freed) = freed {
                let place = moulds.partition_point(|free| *free <= freed);
                moulds.insert(place, freed);
            }
        }
        Some(bound)
    }

    /// When a student who still needs a mould could take it at the earliest.
    fn before_mould(&self, (group, stage, ready): (usize, u8, Minute)) -> Option<(usize, u8, Minute)> {
        let chain = self.chains.get(group)?;
        let rest = chain.contended.get(usize::from(stage)..)?;
        let later = rest.iter().position(|(_, takes)| takes.mould)?;
        let (from, to) = (rest.first()?.0, rest.get(later)?.0);
        let reached = chain.advance(&self.hours, (from, to), ready)?;
        Some((group, stage + u8::try_from(later).ok()?, reached.ready))
    }

    /// Where a student ends who waits for nobody from a stage on.
    fn alone(&mut self, at: (usize, u8, Minute)) -> Option<Reached> {
        if let Some(known) = self.alone.get(&at) {
            return *known;
        }
        let chain = self.chains.get(at.0)?;
        let (index, _) = chain.step(at.1)?;
        let reached = chain.advance(&self.hours, (index, chain.group.tasks.len()), at.2);
        if self.alone.len() > MOST_KNOWN {
            self.alone.clear();
        }
        self.alone.insert(at, reached);
        reached
    }
}

/// Most ends that are kept to be asked again, some 100 bytes each.
const MOST_KNOWN: usize = 500_000;

fn earlier(a: Option<Minute>, b: Option<Minute>) -> Option<Minute> {
    a.into_iter().chain(b).min()
}
