//! The same pieces from the same strands, put so that what is left is in long ends rather than short ones.

use super::task::Task;
use super::ways::Way;

/// A strand that is opened, with what is cut from it.
#[derive(Clone, Debug, PartialEq)]
pub struct Opened {
    pub bin: usize,
    pub takes: Vec<u32>,
    /// Room that is left, with the kerf before it.
    pub rest: i64,
}

/// Exchanges that are tried at most.
const MOST_TRIED: u64 = 60_000_000;

/// The strands of these ways without the pieces that nobody wants.
pub fn opened(task: &Task, ways: &[Way]) -> Vec<Opened> {
    let mut wanted: Vec<u32> = task.items.iter().map(|item| item.demand).collect();
    let mut all: Vec<Opened> = ways
        .iter()
        .map(|way| {
            let takes: Vec<u32> =
                way.takes.iter().zip(&wanted).map(|(take, wanted)| *take.min(wanted)).collect();
            for (wanted, take) in wanted.iter_mut().zip(&takes) {
                *wanted -= take;
            }
            let used: i64 =
                takes.iter().zip(&task.items).map(|(take, item)| i64::from(*take) * item.size).sum();
            let room = task.bins.get(way.bin).map_or(0, |bin| bin.room);
            Opened { bin: way.bin, takes, rest: room - used }
        })
        .collect();
    all.retain(|one| one.takes.iter().any(|take| *take > 0));
    all
}

/// Moves pieces, or exchanges a longer for a shorter one, while an end becomes longer than the longer of the
/// two was. Good, and not proven to be the best there is.
pub fn lengthen(task: &Task, opened: &mut [Opened]) {
    let mut tried = 0;
    let mut again = true;
    while again {
        again = false;
        for giver in 0..opened.len() {
            for taker in 0..opened.len() {
                while giver != taker
                    && tried < MOST_TRIED
                    && exchange(task, opened, (giver, taker), &mut tried)
                {
                    again = true;
                }
            }
        }
    }
}

/// One exchange between two strands, if one is worth making: the sum of the squares of the ends grows.
fn exchange(task: &Task, opened: &mut [Opened], (giver, taker): (usize, usize), tried: &mut u64) -> bool {
    let Ok([from, to]) = opened.get_disjoint_mut([giver, taker]) else { return false };
    *tried += 1;
    for (item, of) in task.items.iter().enumerate() {
        if from.takes.get(item).is_none_or(|take| *take == 0) {
            continue;
        }
        for back in (item + 1..=task.items.len()).rev() {
            *tried += 1;
            let size = task.items.get(back).map_or(0, |back| back.size);
            let has = back == task.items.len() || to.takes.get(back).is_some_and(|take| *take > 0);
            let gain = of.size - size;
            if has && gain > 0 && gain <= to.rest && from.rest + gain > to.rest {
                shift(from, to, (item, gain));
                if back < task.items.len() {
                    shift(to, from, (back, 0));
                }
                return true;
            }
        }
    }
    false
}

/// One piece from one strand to the other, and the room that changes hands.
fn shift(from: &mut Opened, to: &mut Opened, (item, gain): (usize, i64)) {
    from.takes.iter_mut().skip(item).take(1).for_each(|take| *take -= 1);
    to.takes.iter_mut().skip(item).take(1).for_each(|take| *take += 1);
    from.rest += gain;
    to.rest -= gain;
}
