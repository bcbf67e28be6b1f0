//! Where a spent strand ends and a new one begins.
//!
//! The spent strand is cut where it lies over a stave. The new strand starts behind the fourth stave
//! back and runs with it, over it, so that neither end shows from outside.

use crate::measure::Length;
use crate::weave::Join;
use crate::weave::rule::Rule;

/// Staves over which old and new strand lie together (common practice: four to six).
pub const OVERLAP_STAVES: u32 = 4;

/// The run of one weaver through its rows.
pub(super) struct Run<'a> {
    pub(super) rule: Rule,
    pub(super) staves: u32,
    pub(super) first_row: u32,
    /// Length of the weaver in each row.
    pub(super) rows: &'a [Length],
    pub(super) strand: Length,
}

impl Run<'_> {
    /// The joins, in weaving order.
    pub(super) fn joins(&self) -> Vec<Join> {
        let ends = self.row_ends();
        let total = ends.last().copied().unwrap_or(Length::ZERO);
        let mut joins = Vec::new();
        let mut reach = self.strand;
        while reach < total {
            let row = ends.partition_point(|&end| end <= reach);
            let Some(&length) = self.rows.get(row) else { break };
            let step = length / f64::from(self.staves);
            let row_start = ends.get(row).map_or(Length::ZERO, |&end| end - length);
            let crossings = ((reach - row_start) / step).floor().max(0.0) as u32;
            let place = self.last_over(row as u32, crossings.min(self.staves - 1));
            joins.push(self.join(place));
            let cut_at = step * f64::from(place.1)
                + ends.get(place.0 as usize).map_or(Length::ZERO, |&end| end)
                - self.rows.get(place.0 as usize).copied().unwrap_or(Length::ZERO);
            let overlap = step * f64::from(OVERLAP_STAVES);
            let next = cut_at + (self.strand - overlap).max(step * f64::from(self.rule.repeat() + 1));
            if next <= reach {
                break;
            }
            reach = next;
        }
        joins
    }

    fn row_ends(&self) -> Vec<Length> {
        self.rows
            .iter()
            .scan(Length::ZERO, |end, &row| {
                *end += row;
                Some(*end)
            })
            .collect()
    }

    /// The last place at or before this one (row and stave, from 0) where the weaver lies over a stave.
    fn last_over(&self, row: u32, stave: u32) -> (u32, u32) {
        let (mut row, mut stave) = (row, stave);
        for _ in 0..self.rule.repeat() {
            if self.rule.is_over(stave, row, self.staves) {
                break;
            }
            (row, stave) = match (row, stave) {
                (0, 0) => break,
                (row, 0) => (row - 1, self.staves - 1),
                (row, stave) => (row, stave - 1),
            };
        }
        (row, stave)
    }

    fn join(&self, (row, stave): (u32, u32)) -> Join {
        let back = (stave + self.staves - OVERLAP_STAVES % self.staves) % self.staves;
        Join { row: self.first_row + row, cut_over: stave + 1, start_behind: back + 1 }
    }
}
