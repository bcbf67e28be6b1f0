//! Where work fits into the hours there are.

use super::problem::{Minute, Problem, Task, Window};

/// The hours of class, and those of class and home together.
pub struct Hours {
    class: Vec<Window>,
    anywhere: Vec<Window>,
}

impl Hours {
    /// The hours of a class.
    pub fn of(problem: &Problem) -> Self {
        let mut anywhere: Vec<Window> = problem.sessions.iter().chain(&problem.home).copied().collect();
        anywhere.sort_unstable();
        Self { class: problem.sessions.clone(), anywhere }
    }

    /// Hours that are all alike.
    pub fn over(hours: Vec<Window>) -> Self {
        Self { class: hours.clone(), anywhere: hours }
    }

    /// The earliest that a step can be done from a moment on: beginning and end of its work. None when the
    /// hours do not hold it.
    ///
    /// A later moment never gives an earlier end: that is what makes one order have one earliest plan.
    pub fn place(&self, task: &Task, ready: Minute) -> Option<Window> {
        self.spread(task, ready, |_| ())
    }

    /// The same, and tells each stretch of the work.
    pub fn spread(&self, task: &Task, ready: Minute, mut tell: impl FnMut(Window)) -> Option<Window> {
        if task.work <= 0 {
            return Some(Window { from: ready, to: ready });
        }
        let windows = if task.home { &self.anywhere } else { &self.class };
        let first = windows.partition_point(|window| window.to <= ready);
        let mut begun = None;
        let mut done = 0;
        for window in windows.iter().skip(first) {
            let from = window.from.max(ready);
            let reached = task.reached(done, window.to.saturating_sub(from));
            if reached == done {
                continue;
            }
            let to = from + task.minutes_to(reached) - task.minutes_to(done);
            tell(Window { from, to });
            let start = *begun.get_or_insert(from);
            if reached == task.pieces.max(1) {
                return Some(Window { from: start, to });
            }
            done = reached;
        }
        None
    }
}

impl Task {
    /// How many pieces are done after so many minutes of work.
    pub fn pieces_in(&self, minutes: Minute) -> u32 {
        self.reached(0, minutes)
    }

    /// Minutes of work until so many pieces are done, the last begun minute full.
    fn minutes_to(&self, pieces: u32) -> Minute {
        let all = i128::from(self.pieces.max(1));
        let minutes = (i128::from(self.work) * i128::from(pieces) + all - 1) / all;
        Minute::try_from(minutes).unwrap_or(Minute::MAX)
    }

    /// How many pieces are done at the most after so many minutes more.
    fn reached(&self, done: u32, minutes: Minute) -> u32 {
        let all = self.pieces.max(1);
        let until = i128::from(self.minutes_to(done)) + i128::from(minutes.max(0));
        let most = until * i128::from(all) / i128::from(self.work.max(1));
        u32::try_from(most).unwrap_or(all).clamp(done, all)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn hours(sessions: &[(Minute, Minute)]) -> Hours {
        let class: Vec<Window> = sessions.iter().map(|(from, to)| Window { from: *from, to: *to }).collect();
        Hours::over(class)
    }

    fn task(work: Minute, pieces: u32) -> Task {
        Task { work, wait: 0, pieces, mould: false, drill: false, table: false, hands: false, home: false }
    }

    #[test]
    fn work_in_one_piece_waits_for_a_session_that_holds_it() {
        let hours = hours(&[(0, 60), (100, 200), (300, 500)]);
        assert_eq!(hours.place(&task(60, 1), 0), Some(Window { from: 0, to: 60 }));
        assert_eq!(hours.place(&task(60, 1), 1), Some(Window { from: 100, to: 160 }));
        assert_eq!(hours.place(&task(150, 1), 0), Some(Window { from: 300, to: 450 }));
        assert_eq!(hours.place(&task(201, 1), 0), None);
    }

    #[test]
    fn rows_fill_what_is_left_of_a_session() {
        // By hand: ten rows of 7.5 min; four end at 30, eight need 60.
        let hours = hours(&[(0, 35), (100, 200)]);
        let mut stretches = Vec::new();
        let placed = hours.spread(&task(75, 10), 0, |stretch| stretches.push((stretch.from, stretch.to)));
        assert_eq!(placed, Some(Window { from: 0, to: 145 }));
        assert_eq!(stretches, [(0, 30), (100, 145)]);
    }

    #[test]
    fn a_later_beginning_never_ends_earlier() {
        let hours = hours(&[(0, 17), (20, 31), (40, 55), (60, 200)]);
        for pieces in [1, 2, 3, 7, 40] {
            for work in [1, 5, 13, 40] {
                let ends: Vec<Minute> =
                    (0..60).map(|ready| hours.place(&task(work, pieces), ready).expect("room").to).collect();
                assert!(ends.is_sorted(), "{work} in {pieces}: {ends:?}");
            }
        }
    }
}
