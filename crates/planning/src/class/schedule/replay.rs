//! From the turns that were found to the plan.

use super::chain::Takes;
use super::label::Rules;
use super::plan::{Placed, Plan, Turn};
use super::problem::{Minute, Problem, Task, Window};

/// What is free when.
struct Free {
    moulds: Vec<Minute>,
    drills: Vec<Minute>,
    tables: Vec<Minute>,
    hands: Vec<Minute>,
}

impl Free {
    fn of(problem: &Problem) -> Self {
        let free = |many: u32| vec![Minute::MIN; many.min(problem.students()) as usize];
        Self {
            moulds: free(problem.moulds_free()),
            drills: free(problem.drills),
            tables: free(problem.tables),
            hands: free(problem.hands),
        }
    }

    /// When all that a step takes is free.
    fn from(&self, takes: Takes, ready: Minute) -> Option<Minute> {
        let mut from = ready;
        for (taken, free) in [
            (takes.mould, &self.moulds),
            (takes.drill, &self.drills),
            (takes.table, &self.tables),
            (takes.hands, &self.hands),
        ] {
            if taken {
                from = from.max(*free.iter().min()?);
            }
        }
        Some(from)
    }

    fn take(&mut self, takes: Takes, until: Minute) {
        if takes.mould {
            take(&mut self.moulds, None);
        }
        if takes.drill {
            take(&mut self.drills, Some(until));
        }
        if takes.table {
            take(&mut self.tables, Some(until));
        }
        if takes.hands {
            take(&mut self.hands, Some(until));
        }
    }
}

/// Takes the first that becomes free, until a moment or until it is given back.
fn take(free: &mut Vec<Minute>, until: Option<Minute>) {
    if let Some(first) = free.iter().enumerate().min_by_key(|(_, free)| **free).map(|(index, _)| index) {
        free.remove(first);
    }
    free.extend(until);
}

/// Places every step as the turns say.
pub(super) fn replay(problem: &Problem, rules: &Rules, turns: &[usize]) -> Option<Plan> {
    let mut free = Free::of(problem);
    let mut students: Vec<Turn> =
        rules.group_of.iter().map(|group| Turn { group: *group, steps: Vec::new(), mould: None }).collect();
    let mut stages = vec![0_u8; students.len()];
    for student in 0..students.len() {
        on(rules, students.get_mut(student)?, 0, &mut free)?;
    }
    for student in turns {
        let stage = stages.get_mut(*student)?;
        let turn = students.get_mut(*student)?;
        let chain = rules.chains.get(turn.group)?;
        let (index, takes) = chain.step(*stage)?;
        let from = free.from(takes, ready(turn, chain.group.from))?;
        place(rules, turn, chain.group.tasks.get(index)?, from)?;
        free.take(takes, turn.steps.last()?.span.to);
        give_back(turn, chain.group.tasks.as_slice(), &mut free);
        *stage += 1;
        on(rules, turn, *stage, &mut free)?;
    }
    let ends = students.iter().flat_map(|turn| &turn.steps).map(|placed| placed.span.to);
    let end = ends.max().unwrap_or(0);
    number_moulds(problem, &mut students);
    Some(Plan { students, end })
}

/// Does all up to the step of a stage.
fn on(rules: &Rules, turn: &mut Turn, stage: u8, free: &mut Free) -> Option<()> {
    let chain = rules.chains.get(turn.group)?;
    let until = chain.step(stage).map_or(chain.group.tasks.len(), |(index, _)| index);
    while turn.steps.len() < until {
        let from = ready(turn, chain.group.from);
        place(rules, turn, chain.group.tasks.get(turn.steps.len())?, from)?;
        give_back(turn, chain.group.tasks.as_slice(), free);
    }
    Some(())
}

fn ready(turn: &Turn, from: Minute) -> Minute {
    turn.steps.last().map_or(from, |placed| placed.until)
}

fn place(rules: &Rules, turn: &mut Turn, task: &Task, from: Minute) -> Option<()> {
    let mut work = Vec::new();
    let span = rules.hours.spread(task, from, |stretch| work.push(stretch))?;
    turn.steps.push(Placed { work, span, until: span.to.saturating_add(task.wait) });
    Some(())
}

/// The mould becomes free after the last step on it.
fn give_back(turn: &Turn, tasks: &[Task], free: &mut Free) {
    if tasks.iter().rposition(|task| task.mould).map(|last| last + 1) == Some(turn.steps.len()) {
        free.moulds.extend(turn.steps.last().map(|placed| placed.until));
    }
}

/// Gives each student the mould that has been free for the longest.
fn number_moulds(problem: &Problem, students: &mut [Turn]) {
    let mut held: Vec<(Window, usize)> = Vec::new();
    for (student, turn) in students.iter().enumerate() {
        let tasks = problem.groups.get(turn.group).map_or(&[][..], |group| &group.tasks);
        let on = |(task, placed): (&Task, &Placed)| task.mould.then_some((placed.span.from, placed.until));
        let mut spans = tasks.iter().zip(&turn.steps).filter_map(on);
        if let Some(first) = spans.next() {
            held.push((Window { from: first.0, to: spans.next_back().unwrap_or(first).1 }, student));
        }
    }
    held.sort_unstable();
    let mut free: Vec<Minute> = Vec::new();
    for (window, student) in held {
        let idle = free.iter().enumerate().filter(|(_, from)| **from <= window.from);
        let longest_idle = idle.min_by_key(|(_, from)| **from).map(|(number, _)| number);
        let number = longest_idle.unwrap_or(free.len());
        if longest_idle.is_none() {
            free.push(window.from);
        }
        if let Some(from) = free.get_mut(number) {
            *from = window.to;
        }
        if let Some(turn) = students.get_mut(student) {
            turn.mould = Some((u32::try_from(number).unwrap_or(u32::MAX), window));
        }
    }
}
