//! What is seen of a weave, cell by cell, and what the eye makes of it.

use crate::weave::line::{Line, moves, nearest, touching};
use crate::weave::look::{Look, Sighting};

/// What is seen at the crossings of some rows and staves, from one side: equal numbers look alike.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Sights {
    staves: u32,
    cells: Vec<u8>,
}

impl Sights {
    /// What is seen, told by row and stave (both from 0).
    pub fn of(rows: u32, staves: u32, mut seen: impl FnMut(u32, u32) -> u8) -> Self {
        let staves = staves.max(1);
        let cells = (0..rows).flat_map(|row| (0..staves).map(move |stave| (row, stave)));
        Self { staves, cells: cells.map(|(row, stave)| seen(row, stave)).collect() }
    }

    /// The same with each number replaced.
    #[must_use]
    pub fn map(&self, mut change: impl FnMut(u32, u32, u8) -> u8) -> Self {
        let staves = self.staves;
        let change = |(index, &cell): (usize, &u8)| {
            let index = index as u32;
            change(index / staves, index % staves, cell)
        };
        Self { staves, cells: self.cells.iter().enumerate().map(change).collect() }
    }

    /// What the eye makes of it, where a stave with its gap is so many rows wide.
    pub fn read(&self, proportion: f64) -> Sighting {
        let Some(first) = self.cells.first() else { return Sighting::still(Look::Plain, None) };
        if self.cells.iter().all(|cell| cell == first) {
            return Sighting::still(Look::Plain, Some(1));
        }
        let Some(repeat) = (1..=self.staves / 2).find(|&staves| self.covers(i64::from(staves), 0)) else {
            return Sighting::still(if self.stands() { Look::Columns } else { Look::Mixed }, None);
        };
        if repeat == 1 {
            return Sighting::still(Look::Bands, Some(1));
        }
        if self.covers(0, 1) {
            return Sighting::still(Look::Columns, Some(repeat));
        }
        let moves = self.moves(repeat);
        if let Some(followed) = touching(&moves, self.shortest_run(), repeat) {
            return followed.sighting(repeat);
        }
        if moves.iter().all(|line| line.rows > 1)
            && let Some(step) = self.turning(repeat)
        {
            return Sighting { look: Look::Arrows, slope: f64::from(step), every: 1, repeat: Some(repeat) };
        }
        nearest(&moves, repeat, proportion).sighting(repeat)
    }

    /// Whether all rows are alike.
    fn stands(&self) -> bool {
        self.covers(0, 1)
    }

    fn row(&self, row: u32) -> &[u8] {
        let from = (row * self.staves) as usize;
        self.cells.get(from..from + self.staves as usize).unwrap_or_default()
    }

    fn rows(&self) -> u32 {
        self.cells.len() as u32 / self.staves
    }

    /// Whether the weave, moved up by so many rows and along by so many staves, covers itself.
    fn covers(&self, staves: i64, rows: u32) -> bool {
        (0..self.rows().saturating_sub(rows)).all(|row| self.row_covers(row, row + rows, staves))
    }

    /// Whether a row, moved along, covers another as far as they lie over each other.
    fn row_covers(&self, low: u32, high: u32, staves: i64) -> bool {
        let (low, high) = (self.row(low), self.row(high));
        let by = staves.unsigned_abs() as usize;
        let (kept, met) = if staves < 0 { (high, low) } else { (low, high) };
        met.get(by..).unwrap_or_default().iter().zip(kept).all(|(a, b)| a == b)
    }

    /// The moves over at most [`REACH`] rows that leave the weave as it is, shortest way round.
    fn moves(&self, repeat: u32) -> Vec<Line> {
        let half = i64::from(repeat / 2);
        let steps = -(i64::from(repeat) - 1) / 2..=half;
        moves(self.rows(), repeat, |rows| steps.clone().find(|&staves| self.covers(staves, rows)))
    }

    /// Staves in the shortest run of like cells.
    fn shortest_run(&self) -> u64 {
        let runs: Vec<usize> = self.row(0).chunk_by(|a, b| a == b).map(<[u8]>::len).collect();
        // The first and last run may be cut off by the edge.
        let whole = runs.get(1..runs.len().saturating_sub(1)).unwrap_or_default();
        whole.iter().min().map_or(0, |&run| run as u64)
    }

    /// By how many staves each row moves on, if lines lean one way for two rows or more, then the other.
    fn turning(&self, repeat: u32) -> Option<u32> {
        let half = i64::from(repeat) / 2;
        let step =
            |row: u32| (1..=half).flat_map(|by| [by, -by]).find(|&by| self.row_covers(row, row + 1, by));
        let steps: Vec<i64> = (0..self.rows().saturating_sub(1)).map(step).collect::<Option<_>>()?;
        let long =
            |run: &&[i64]| run.len() >= 2 && run.first().is_some_and(|by| by.abs() * 2 < i64::from(repeat));
        let runs: Vec<i64> =
            steps.chunk_by(|a, b| a == b).filter(long).filter_map(|run| run.first().copied()).collect();
        let size = runs.first()?.unsigned_abs();
        let both = runs.iter().any(|&by| by > 0) && runs.iter().any(|&by| by < 0);
        both.then_some(size as u32)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::weave::look::{ROWS_READ, USUAL_PROPORTION};

    /// Reads rows written bottom first, repeated up to what a look needs.
    fn look(rows: &[&str]) -> Sighting {
        let rows: Vec<&[u8]> = rows.iter().map(|row| row.as_bytes()).collect();
        let staves = rows[0].len();
        let cell = |row: u32, stave: u32| rows[row as usize % rows.len()][stave as usize % staves];
        Sights::of(ROWS_READ, staves as u32 * 6, cell).read(USUAL_PROPORTION)
    }

    fn spiral(slope: f64, every: u32, repeat: u32) -> Sighting {
        Sighting { look: Look::Spiral, slope, every, repeat: Some(repeat) }
    }

    #[test]
    fn still_looks() {
        assert_eq!(look(&["A"]).look, Look::Plain);
        assert_eq!(look(&["A", "B"]).look, Look::Bands);
        assert_eq!(look(&["AB"]).look, Look::Columns);
        assert_eq!(look(&["ABC", "ABC"]).look, Look::Columns);
        assert_eq!(look(&["AB", "BA"]).look, Look::Checks);
        assert_eq!(look(&["AABB", "AABB", "BBAA", "BBAA"]).look, Look::Checks);
        assert_eq!(look(&["AABB", "BBAA"]).look, Look::Checks);
        assert_eq!(
            look(&["AA", "AA", "AA", "AA", "AA", "AA", "AB", "BA", "AB", "BA", "AB", "BA"]).look,
            Look::Bands
        );
    }

    #[test]
    fn a_dotted_line_up_is_a_column() {
        assert_eq!(look(&["AA", "AB"]).look, Look::Columns);
    }

    #[test]
    fn lines_that_move_on_are_spirals() {
        assert_eq!(look(&["AABB", "BAAB", "BBAA", "ABBA"]), spiral(1.0, 1, 4));
        assert_eq!(look(&["AABB", "ABBA", "BBAA", "BAAB"]), spiral(-1.0, 1, 4));
        assert_eq!(look(&["AAB", "ABA", "BAA"]), spiral(-1.0, 1, 3));
        assert_eq!(look(&["AAABBB", "BBAAAB", "ABBBAA"]), spiral(2.0, 1, 6));
    }

    #[test]
    fn single_cells_are_followed_where_they_lie_nearest() {
        // Moved on by two in five, each lies nearer to the cell two rows up and one stave back.
        assert_eq!(look(&["ABBBB", "BBABB", "BBBBA", "BABBB", "BBBAB"]), spiral(-0.5, 2, 5));
        // Every third row is another weaver's.
        assert_eq!(
            look(&[
                "AABB", "BBBB", "BBBB", "ABBA", "BBBB", "BBBB", "BBAA", "BBBB", "BBBB", "BAAB", "BBBB",
                "BBBB"
            ]),
            spiral(-1.0 / 3.0, 3, 4)
        );
    }

    /// Over two, under four on two more than a multiple of six: blocks that meet at their corners and fill
    /// every column alike.
    #[test]
    fn stepped_blocks_climb() {
        assert_eq!(look(&["AABBBB", "BBBBAA", "BBAABB"]), spiral(-2.0, 1, 6));
        assert_eq!(look(&["AABBBB", "BBAABB", "BBBBAA"]), spiral(2.0, 1, 6));
    }

    #[test]
    fn lines_that_turn_back_are_arrows() {
        let up = look(&["AABB", "BAAB", "BBAA", "ABBA", "BBAA", "BAAB"]);
        assert_eq!((up.look, up.slope, up.repeat), (Look::Arrows, 1.0, Some(4)));
    }

    #[test]
    fn what_never_repeats_is_mixed() {
        let mut state = 7_u32;
        let mut random = |_, _| {
            state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
            (state >> 30) as u8
        };
        assert_eq!(Sights::of(ROWS_READ, 40, &mut random).read(USUAL_PROPORTION).look, Look::Mixed);
    }

    #[test]
    fn turns_follow_from_slope_rows_and_staves() {
        assert!((spiral(-2.0, 1, 6).turns(80, 80) - 2.0).abs() < 1e-12);
        // The line of one of three weavers is seen in every third row: in 81 rows it climbs 78.
        assert!((spiral(-1.0, 3, 4).turns(78, 80) - 1.0).abs() < 1e-12);
    }
}
