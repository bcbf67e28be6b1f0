//! Ways to cut one strand, searched by what the pieces are worth.

use super::task::Task;

/// One way to cut one strand.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct Way {
    /// Which strand, as its place in the task.
    pub bin: usize,
    /// How many of each item.
    pub takes: Vec<u32>,
}

/// Steps of one search; a search that would take more is given up, and what follows from it is not proven.
const MOST_STEPS: u64 = 20_000_000;
/// Ways that an integer program is made of; with more it would not end.
pub const MOST_WAYS: usize = 30_000;
/// Prices are good to this.
pub const TOLERANCE: f64 = 1e-6;

/// One item as the search takes it.
struct Choice {
    item: usize,
    size: i64,
    most: u32,
    price: f64,
    /// The least that any of this and the following ones takes.
    smallest: i64,
    /// The most that any of this and the following ones is worth for its size.
    worth: f64,
}

/// A search over the ways to cut one strand, dearest for their size first.
pub struct Search {
    choices: Vec<Choice>,
    items: usize,
    steps: u64,
}

impl Search {
    pub fn new(task: &Task, prices: &[f64]) -> Self {
        let mut choices: Vec<Choice> = task
            .items
            .iter()
            .zip(prices)
            .enumerate()
            .map(|(item, (of, price))| Choice {
                item,
                size: of.size,
                most: of.demand,
                price: price.max(0.0),
                smallest: of.size,
                worth: price.max(0.0) / of.size as f64,
            })
            .collect();
        choices.sort_by(|a, b| b.worth.total_cmp(&a.worth).then(b.size.cmp(&a.size)));
        let mut smallest = i64::MAX;
        for choice in choices.iter_mut().rev() {
            smallest = smallest.min(choice.size);
            choice.smallest = smallest;
        }
        Self { choices, items: task.items.len(), steps: 0 }
    }

    /// The dearest way to cut a strand with this room, and what it is worth; none where the search is given
    /// up.
    pub fn dearest(&mut self, room: i64) -> Option<(f64, Vec<u32>)> {
        self.steps = 0;
        let mut best = (0.0, vec![0; self.items]);
        let mut takes = vec![0; self.items];
        let whole = descend(&self.choices, room, 0.0, &mut takes, &mut self.steps, &mut |worth, takes| {
            if worth > best.0 + 1e-12 {
                best = (worth, takes.to_vec());
            }
            best.0 + 1e-12
        });
        whole.then_some(best)
    }

    /// All ways to cut a strand with this room that are worth at least `worth` and have no room for a
    /// further piece; none where there are more than `most`.
    pub fn all_worth(&mut self, room: i64, worth: f64, most: usize) -> Option<Vec<Vec<u32>>> {
        self.steps = 0;
        let mut found: Vec<Vec<u32>> = Vec::new();
        let mut takes = vec![0; self.items];
        let choices = &self.choices;
        let whole = descend(choices, room, 0.0, &mut takes, &mut self.steps, &mut |value, takes| {
            if value >= worth && is_full(choices, room, takes) {
                found.push(takes.to_vec());
            }
            if found.len() > most { f64::INFINITY } else { worth }
        });
        (whole && found.len() <= most).then_some(found)
    }
}

/// Whether no further piece fits.
fn is_full(choices: &[Choice], room: i64, takes: &[u32]) -> bool {
    let taken = |choice: &Choice| takes.get(choice.item).copied().unwrap_or(0);
    let left = room - choices.iter().map(|choice| choice.size * i64::from(taken(choice))).sum::<i64>();
    choices.iter().all(|choice| choice.size > left || taken(choice) >= choice.most)
}

/// Tries all ways that may be worth as much as the last that was told. False where it is given up.
fn descend(
    choices: &[Choice],
    room: i64,
    worth: f64,
    takes: &mut Vec<u32>,
    steps: &mut u64,
    tell: &mut dyn FnMut(f64, &[u32]) -> f64,
) -> bool {
    *steps += 1;
    if *steps > MOST_STEPS {
        return false;
    }
    let Some((choice, rest)) = choices.split_first().filter(|(choice, _)| choice.smallest <= room) else {
        tell(worth, takes);
        return true;
    };
    let most = u32::try_from(room / choice.size).unwrap_or(u32::MAX).min(choice.most);
    for take in (0..=most).rev() {
        let left = room - choice.size * i64::from(take);
        let so_far = worth + choice.price * f64::from(take);
        let hope = so_far + rest.first().map_or(0.0, |next| next.worth * left as f64);
        takes.iter_mut().skip(choice.item).take(1).for_each(|own| *own = take);
        if hope >= tell(f64::NEG_INFINITY, takes) && !descend(rest, left, so_far, takes, steps, tell) {
            return false;
        }
    }
    takes.iter_mut().skip(choice.item).take(1).for_each(|own| *own = 0);
    true
}
