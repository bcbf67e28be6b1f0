//! What a plan says to those who keep it: who waits for what, and which row is due when.

use super::answer::Answer;
use super::lesson::Lesson;
use super::schedule::{Hours, Minute, Placed, Plan, Problem, Task, Turn, Window};

/// What a student waits for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Lack {
    /// A mould that is free.
    Mould,
    /// A drill that is free.
    Drill,
    /// Room at a table.
    Table,
    /// The teacher.
    Teacher,
}

/// A student who could go on and has to wait for others.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Waiting {
    /// The number of the student, from 0.
    pub student: usize,
    /// The step that could begin.
    pub lesson: Lesson,
    /// From when to when.
    pub time: Window,
    /// How much of that is time of class.
    pub in_class: Minute,
    /// What is waited for.
    pub lack: Lack,
}

/// A row that has to be woven by a time.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Due {
    /// The time.
    pub at: Minute,
    /// The row.
    pub row: u32,
}

impl Answer {
    /// The steps of a student with their times.
    pub fn steps<'a>(&'a self, turn: &'a Turn) -> impl Iterator<Item = (&'a Lesson, &'a Placed)> {
        self.lessons.get(turn.group).into_iter().flatten().zip(&turn.steps)
    }

    /// Who waits for what.
    pub fn waiting(&self, plan: &Plan) -> Vec<Waiting> {
        let hours = Hours::of(&self.problem);
        let mut all = Vec::new();
        for (student, turn) in plan.students.iter().enumerate() {
            let mut ready = self.problem.groups.get(turn.group).map_or(0, |group| group.from);
            let mut had_mould = false;
            for (lesson, placed) in self.steps(turn) {
                let could = hours.place(&lesson.task, ready).unwrap_or(placed.span);
                let time = Window { from: could.from, to: placed.span.from };
                if time.minutes() > 0 {
                    let lack = self.lack(plan, (&lesson.task, had_mould), could);
                    let in_class = minutes_in(&self.problem, time);
                    all.push(Waiting { student, lesson: *lesson, time, in_class, lack });
                }
                had_mould |= lesson.task.mould;
                ready = placed.until;
            }
        }
        all
    }

    /// What a step lacks that could be done at a time: the first thing it needs of which others take all then.
    fn lack(&self, plan: &Plan, (task, had_mould): (&Task, bool), could: Window) -> Lack {
        let then = |time: &Window| time.from < could.to && could.from < time.to;
        let steps = || plan.students.iter().flat_map(|turn| self.steps(turn));
        let busy = |needs: fn(&Task) -> bool| {
            steps().filter(|(lesson, placed)| needs(&lesson.task) && then(&placed.span)).count()
        };
        let held = plan.students.iter().filter(|turn| turn.mould.is_some_and(|(_, held)| then(&held)));
        let Problem { moulds, drills, tables, hands, .. } = self.problem;
        let needed = [
            (Lack::Mould, task.mould && !had_mould, held.count(), moulds),
            (Lack::Drill, task.drill, busy(|task| task.drill), drills),
            (Lack::Table, task.table, busy(|task| task.table), tables),
            (Lack::Teacher, task.hands, busy(|task| task.hands), hands),
        ];
        let mut needed = needed.into_iter().filter(|(_, needs, ..)| *needs).peekable();
        // Where turns alone make somebody wait, it is for the first thing that the step needs.
        let first = needed.peek().map_or(Lack::Teacher, |(lack, ..)| *lack);
        needed.find(|(_, _, taken, there)| *taken >= *there as usize).map_or(first, |(lack, ..)| lack)
    }

    /// The rows a student is to have woven at each full hour of class while weaving goes on, and at the end of
    /// each session.
    pub fn rows_due(&self, turn: &Turn) -> Vec<Due> {
        let mut due: Vec<Due> = Vec::new();
        for session in &self.problem.sessions {
            let hours = (session.from + 60..session.to).step_by(60).chain([session.to]);
            for at in hours {
                let row = self.row_at(turn, at);
                if row > due.last().map_or(0, |last| last.row) {
                    due.push(Due { at, row });
                }
            }
        }
        due
    }

    /// The last row a student has woven at a moment.
    pub fn row_at(&self, turn: &Turn, at: Minute) -> u32 {
        let woven = |(lesson, placed): (&Lesson, &Placed)| {
            let (first, _) = lesson.rows?;
            let minutes = placed.work.iter().map(|stretch| (stretch.to.min(at) - stretch.from).max(0)).sum();
            lesson.task.pieces_in(minutes).checked_sub(1).map(|more| first + more)
        };
        self.steps(turn).filter_map(woven).max().unwrap_or(0)
    }
}

fn minutes_in(problem: &Problem, time: Window) -> Minute {
    let shared = |session: &Window| (session.to.min(time.to) - session.from.max(time.from)).max(0);
    problem.sessions.iter().map(shared).sum()
}
