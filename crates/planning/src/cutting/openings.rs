//! How many of each kind of strand may be opened for a given cost.

use super::task::Task;

/// Choices that are looked at; with more the least stock is not proven.
const MOST_OPENINGS: usize = 2_000;
/// Choices that are counted through to find them.
const MOST_STEPS: u32 = 1_000_000;

/// All choices that cost no more than `cost`, are shorter than `below` together and long enough for all
/// pieces; shortest first. None where there are too many to look at.
pub fn openings(task: &Task, cost: u64, below: i64) -> Option<Vec<Vec<u32>>> {
    let needed: i64 = task.items.iter().map(|item| item.size * i64::from(item.demand)).sum();
    let mut found = Vec::new();
    let mut counts = vec![0; task.bins.len()];
    let mut steps = 0;
    descend(task, 0, (cost, below - 1, needed), &mut counts, &mut |room, counts| {
        steps += 1;
        if room <= 0 {
            found.push((-room, counts.to_vec()));
        }
        found.len() <= MOST_OPENINGS && steps <= MOST_STEPS
    })
    .then(|| {
        found.sort();
        found.into_iter().map(|(_, counts)| counts).collect()
    })
}

/// What is left of cost and length, and the length that is still needed.
fn descend(
    task: &Task,
    bin: usize,
    (cost, length, needed): (u64, i64, i64),
    counts: &mut Vec<u32>,
    tell: &mut dyn FnMut(i64, &[u32]) -> bool,
) -> bool {
    let Some(of) = task.bins.get(bin) else {
        return tell(needed, counts);
    };
    let by_cost = cost.checked_div(of.cost).unwrap_or(u64::MAX);
    let by_length = (length.max(0) / of.room) as u64;
    let most = u64::from(of.count.unwrap_or(u32::MAX)).min(by_cost).min(by_length);
    for count in 0..=most {
        counts.iter_mut().skip(bin).take(1).for_each(|own| *own = count as u32);
        let room = of.room * count as i64;
        let left = (cost - of.cost * count, length - room, needed - room);
        if !descend(task, bin + 1, left, counts, tell) {
            return false;
        }
    }
    counts.iter_mut().skip(bin).take(1).for_each(|own| *own = 0);
    true
}
