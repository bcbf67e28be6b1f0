//! What one weaver of a course takes: its length, its strands in order and where they are joined.

use crate::colour::Colour;
use crate::measure::Length;
use crate::stock::Material;

/// One weaver of a course.
#[derive(Clone, Debug, PartialEq)]
pub struct WeaverAmount {
    /// Its material.
    pub material: Material,
    /// Colours of its strands, in order and then again; never empty.
    pub colours: Vec<Colour>,
    /// Its rows: the first (from 0 within the course), how many rows on the next is, and past the last.
    pub rows: RowsOf,
    /// Length on the basket, take-up included, joins not.
    pub length: Length,
    /// Length to lay out, with the overlaps where a strand begins.
    pub cut: Length,
    /// How long one whole strand is.
    pub strand: Length,
    /// Its strands in the order in which they are used.
    pub strands: Vec<Strand>,
    /// Where one strand follows another, in weaving order.
    pub joins: Vec<Join>,
    /// The first strand that is too short to be joined; what is computed is for one that is not.
    pub too_short: Option<TooShort>,
}

/// A strand that is too short to be joined.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TooShort {
    /// How long it is.
    pub strand: Length,
    /// How long it would have to be.
    pub least: Length,
}

/// Which rows of its course a weaver lays.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct RowsOf {
    /// The first, from 0.
    pub first: u32,
    /// How many rows on the next one is.
    pub every: u32,
    /// All of them come before this one.
    pub before: u32,
}

impl RowsOf {
    /// The rows, each from 0 within the course.
    pub fn each(self) -> impl Iterator<Item = u32> {
        (self.first..self.before).step_by(self.every.max(1) as usize)
    }
}

/// A strand as it lies in the basket.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Strand {
    /// Which of its weaver's colours it has, from 0.
    pub colour: u32,
    /// Row of its course (from 0) in which it begins.
    pub row: u32,
    /// Place in that row (from 0 where the row begins) from which it is the one that is seen.
    pub place: u32,
    /// Length to cut, overlap included.
    pub cut: Length,
}

impl WeaverAmount {
    /// Whether it lies in a row of its course, from 0.
    pub fn lies_in(&self, row: u32) -> bool {
        let RowsOf { first, every, before } = self.rows;
        row >= first && row < before && (row - first).is_multiple_of(every.max(1))
    }

    /// Its colour at a row of its course and a place in the row, both from 0.
    pub fn colour_at(&self, row: u32, place: u32) -> Option<&Colour> {
        let begun = self.strands.partition_point(|strand| (strand.row, strand.place) <= (row, place));
        let strand = self.strands.get(begun.saturating_sub(1));
        let colour = strand.map_or(0, |strand| strand.colour as usize);
        self.colours.get(colour % self.colours.len().max(1))
    }
}

/// A change from a spent strand to a new one of the same weaver.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Join {
    /// Row in which the spent strand ends.
    pub row: u32,
    /// Stave over which the spent strand is cut.
    pub cut_over: u32,
    /// Stave behind which the new strand starts.
    pub start_behind: u32,
    /// Number of the weaver within its course, counted from 1.
    pub weaver: u32,
    /// Whether the new strand has another colour.
    pub recolour: bool,
}
