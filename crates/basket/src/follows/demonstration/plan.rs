//! Backward planning of work on several samples for one pair of hands.

use super::span::{DAY, Span};
use crate::steps::{Stage, Step};

/// A step as the plan sees it, in minutes.
#[derive(Clone, Copy)]
pub(super) struct Chore {
    soak: f64,
    work: f64,
    wait: f64,
    /// Whether it puts the sample on a mould.
    mounts: bool,
    /// Whether the sample comes off its mould with this.
    frees: bool,
}

impl Chore {
    pub(super) fn of(step: &Step) -> Self {
        let sound = |minutes: f64| if minutes.is_finite() { minutes.max(0.0) } else { 0.0 };
        Self {
            soak: sound(step.soak_minutes.unwrap_or(0.0)),
            work: sound(step.work_minutes),
            wait: sound(step.wait_minutes),
            mounts: step.stage == Stage::BaseOnMould,
            frees: step.stage == Stage::OffMould,
        }
    }
    fn all(&self) -> f64 {
        self.soak + self.work + self.wait
    }
}

/// What is still to be placed of one sample, the last step first.
struct Chain<'a> {
    left: &'a [Chore],
    /// Moment by which the work of the last of them must be done.
    due: f64,
    placed: Vec<Span>,
}

impl Chain<'_> {
    /// When the last chore left must be done; when that takes a mould, not before one is free.
    fn due(&self, free: f64, moulds: &[f64]) -> Option<f64> {
        let chore = self.left.last()?;
        let mould = if chore.frees { moulds.last()? + chore.wait } else { 0.0 };
        Some(self.due.max(free).max(mould))
    }
}

/// When each chore of each chain is worked on, in minutes before the show, in the order of the chain.
///
/// At most so many moulds are taken at once, or as many as samples stand on at the show if those are
/// more. Going backward, a mould is taken where a sample comes off it dry, and is free again before
/// its base goes on.
pub(super) fn plan(chains: &[Vec<Chore>], work_a_day: f64, moulds: usize) -> Vec<Vec<Span>> {
    let standing = |chain: &&Vec<Chore>| {
        chain.iter().any(|chore| chore.mounts) && !chain.iter().any(|chore| chore.frees)
    };
    let standing = chains.iter().filter(standing).count();
    // From when on (backward) each free mould is free, the latest to be free first.
    let mut moulds = vec![0.0_f64; moulds.saturating_sub(standing).min(chains.len())];
    let mut chains: Vec<Chain> = chains
        .iter()
        .map(|chores| Chain {
            left: chores,
            due: chores.last().map_or(0.0, |last| last.wait),
            placed: Vec::new(),
        })
        .collect();
    // Before this moment the hands are free.
    let mut free = 0.0_f64;
    while let Some((chain, due)) = latest(&mut chains, free, &moulds) {
        let Some((chore, before)) = chain.left.split_last() else { break };
        let work = place(due, chore.work, work_a_day);
        if chore.frees {
            moulds.pop();
        }
        if chore.mounts {
            moulds.push(work.from);
            moulds.sort_by(|a, b| b.total_cmp(a));
        }
        chain.placed.push(work);
        chain.left = before;
        chain.due = work.from + chore.soak + before.last().map_or(0.0, |previous| previous.wait);
        if chore.work > 0.0 {
            free = work.from;
        }
    }
    chains.into_iter().map(|chain| chain.placed.into_iter().rev().collect()).collect()
}

/// The sample whose work may come last, and when it must be done; of several, the one with the most
/// still before it.
fn latest<'c, 'a>(
    chains: &'c mut [Chain<'a>],
    free: f64,
    moulds: &[f64],
) -> Option<(&'c mut Chain<'a>, f64)> {
    let rest = |chain: &Chain| chain.left.iter().map(Chore::all).sum::<f64>();
    let open = chains.iter_mut().filter_map(|chain| {
        let due = chain.due(free, moulds)?;
        Some((chain, due))
    });
    open.min_by(|(a, due_a), (b, due_b)| due_a.total_cmp(due_b).then(rest(b).total_cmp(&rest(a))))
}

/// The latest time of so much work that ends at or before `end`, within the working hours of each
/// day, which are its first ones. Work is not broken off for the night unless it takes longer than
/// a day.
pub(super) fn place(end: f64, work: f64, work_a_day: f64) -> Span {
    let night = DAY - work_a_day;
    let day = (end / DAY).floor();
    let to = day * DAY + (end - day * DAY).max(night);
    let room = (day + 1.0) * DAY - to;
    if work <= room {
        return Span { from: to + work, to };
    }
    let to = if work <= work_a_day { (day + 1.0) * DAY + night } else { to };
    let rest = if work <= work_a_day { work } else { work - room };
    let whole = (rest / work_a_day).ceil() - 1.0;
    Span { from: (day + 1.0 + whole) * DAY + night + (rest - whole * work_a_day), to }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn work_falls_into_the_first_hours_of_a_day() {
        // Six hours a day: 18 h to 24 h before the end of each day.
        let hours = |end: f64, work: f64| {
            let span = place(60.0 * end, 60.0 * work, 360.0);
            (span.from / 60.0, span.to / 60.0)
        };
        assert_eq!(hours(0.0, 2.0), (20.0, 18.0));
        assert_eq!(hours(20.0, 4.0), (24.0, 20.0));
        assert_eq!(hours(20.0, 5.0), (47.0, 42.0), "not broken off for the night");
        assert_eq!(hours(0.0, 12.0), (48.0, 18.0), "longer than a day");
        assert_eq!(hours(20.0, 7.0), (45.0, 20.0), "longer than a day");
        assert_eq!(hours(24.0, 1.0), (43.0, 42.0));
        assert_eq!(hours(10.0, 0.0), (18.0, 18.0));
    }
}
