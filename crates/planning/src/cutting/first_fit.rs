//! Plans found at once: the longest piece first, into the first strand that has room.

use super::task::{Bin, Task};
use super::ways::Way;

/// First fit, longest first; a new strand is the one that costs least for its length. Always a plan.
pub fn first_fit(task: &Task, wanted: &[u32], taken: &[u32]) -> Vec<Way> {
    let mut left: Vec<Option<u32>> = task
        .bins
        .iter()
        .zip(taken)
        .map(|(bin, taken)| bin.count.map(|count| count.saturating_sub(*taken)))
        .collect();
    let mut open: Vec<(i64, Way)> = Vec::new();
    for (place, (item, wanted)) in task.items.iter().zip(wanted).enumerate() {
        let mut from = 0;
        for _ in 0..*wanted {
            let found = open.iter().skip(from).position(|(room, _)| *room >= item.size);
            from += found.unwrap_or(open.len() - from);
            if found.is_none() {
                let fitting = task
                    .bins
                    .iter()
                    .enumerate()
                    .filter(|(bin, of)| of.room >= item.size && left.get(*bin) != Some(&Some(0)));
                let Some((bin, of)) = fitting.min_by(|(_, a), (_, b)| by_worth(a, b)) else { break };
                if let Some(Some(count)) = left.get_mut(bin) {
                    *count -= 1;
                }
                open.push((of.room, Way { bin, takes: vec![0; task.items.len()] }));
            }
            if let Some((room, way)) = open.get_mut(from) {
                *room -= item.size;
                way.takes.iter_mut().skip(place).take(1).for_each(|take| *take += 1);
            }
        }
    }
    open.into_iter().map(|(_, way)| way).collect()
}

/// By cost for the length; of free ones the shortest, that long ones remain.
fn by_worth(a: &Bin, b: &Bin) -> std::cmp::Ordering {
    let (left, right) = (
        u128::from(a.cost) * u128::from(b.room.unsigned_abs()),
        u128::from(b.cost) * u128::from(a.room.unsigned_abs()),
    );
    left.cmp(&right).then(a.room.cmp(&b.room))
}

/// Strands of one length that first fit takes, the longest piece first.
pub fn strands_by_first_fit(sizes: &[i64], room: i64) -> u32 {
    let mut sizes = sizes.to_vec();
    sizes.sort_unstable_by(|a, b| b.cmp(a));
    let mut open: Vec<i64> = Vec::new();
    for size in sizes {
        match open.iter_mut().find(|left| **left >= size) {
            Some(left) => *left -= size,
            None => open.push(room - size),
        }
    }
    open.len() as u32
}
