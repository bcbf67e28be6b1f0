//! A weave drawn by hand.

use super::answers::{Answers, Cell, Moves};
use super::over_under;
use crate::message::{Message, Value};
use crate::pattern::WeaveKind;
use crate::pattern::drawn::Drawn;

/// Cells as drawn; they repeat round and upward.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Chart {
    /// Rows from the bottom upward, in the order of the staves; `true` where the weaver is seen outside.
    rows: Vec<Vec<bool>>,
}

impl Chart {
    /// From a drawing as it is seen from outside: staves are numbered to the left.
    pub fn of(drawn: &Drawn) -> Self {
        Self { rows: drawn.rows().iter().map(|row| row.iter().rev().copied().collect()).collect() }
    }
}

impl Answers for Chart {
    fn cell(&self, row: u32, place: u32, _count: u32) -> Cell {
        let drawn = self.rows.get(row as usize % self.rows.len().max(1));
        let over = drawn.and_then(|cells| cells.get(place as usize % cells.len().max(1)));
        Cell::of_one(0, over.copied().unwrap_or(false))
    }
    fn period(&self) -> u32 {
        self.rows.first().map_or(1, Vec::len).max(1) as u32
    }
    fn rows(&self, _count: u32) -> u32 {
        self.rows.len().max(1) as u32
    }
    fn rise(&self) -> u32 {
        0
    }
    fn outward(&self) -> f64 {
        let cells = || self.rows.iter().flatten();
        let over = cells().filter(|over| **over).count() as f64;
        over_under::share(over, cells().count() as f64 - over)
    }
    fn kind(&self) -> WeaveKind {
        WeaveKind::Drawn
    }
    fn moves(&self) -> Moves {
        Moves::Drawn
    }
    fn work(&self) -> f64 {
        8.0
    }
    fn closes(&self, count: u32) -> bool {
        count.is_multiple_of(self.period())
    }
}

/// How the staves of a row that begins at one (from 1) are passed, a side at each: its runs; where they repeat, the
/// part that does.
pub(crate) fn told(begin: u32, sides: &[bool]) -> Message {
    let runs: Vec<usize> = sides.chunk_by(|a, b| a == b).map(<[bool]>::len).collect();
    let over = sides.first().copied().unwrap_or(true);
    let told =
        |runs: &[usize]| Value::Name(runs.iter().map(ToString::to_string).collect::<Vec<_>>().join(" · "));
    let id = |over_id, under_id| Message::new(if over { over_id } else { under_id }).with("stave", begin);
    match repeating(&runs) {
        Some((lead, repeat)) => id("weave-row-drawn-over-again", "weave-row-drawn-under-again")
            .with("runs", told(runs.get(..lead + repeat).unwrap_or(&runs)))
            .with("repeat", repeat as u32),
        None => id("weave-row-drawn-over", "weave-row-drawn-under").with("runs", told(&runs)),
    }
}

/// Where runs repeat after at most one of them: how many lead in, and how many repeat. The last may be cut
/// short by the end of the row.
fn repeating(runs: &[usize]) -> Option<(usize, usize)> {
    let repeats = |lead: usize, repeat: usize| {
        let rest = runs.get(lead..).unwrap_or_default();
        let (Some(again), Some(last)) = (rest.get(repeat..), rest.len().checked_sub(repeat + 1)) else {
            return false;
        };
        rest.len() >= 2 * repeat
            && again.iter().zip(rest).enumerate().all(|(index, (a, b))| a == b || index == last && a < b)
    };
    (2..=runs.len() / 2)
        .step_by(2)
        .flat_map(|repeat| [(0, repeat), (1, repeat)])
        .find(|&(lead, repeat)| repeats(lead, repeat))
}

#[cfg(test)]
mod tests {
    use super::{Answers, Chart, over_under, repeating};

    #[test]
    fn a_drawn_weave_lies_out_as_much_as_its_cells_say() {
        let rows = vec![vec![true, true, true, false], vec![false, true, true, true]];
        assert!((Chart { rows }.outward() - over_under::share(6.0, 2.0)).abs() < 1e-12);
    }

    #[test]
    fn runs_that_repeat_are_told_once() {
        assert_eq!(repeating(&[3, 1, 3, 1, 3, 1]), Some((0, 2)));
        assert_eq!(repeating(&[1, 2, 2, 2, 2, 1]), Some((1, 2)));
        assert_eq!(repeating(&[1, 2, 1, 3, 1, 2, 1, 3, 1, 1]), Some((0, 4)));
        assert_eq!(repeating(&[1, 2, 3, 4, 5, 6]), None);
        assert_eq!(repeating(&[9]), None);
    }
}
