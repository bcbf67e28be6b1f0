//! The weaving: rows, take-up, lengths, strands and joins.

mod amounts;
mod bands;
mod begin;
mod course;
pub mod defaults;
mod diagonal;
pub mod fabric;
pub mod find;
pub mod joins;
pub mod layout;
mod line;
pub mod look;
mod mends;
mod overlaps;
mod passing;
pub mod runs;
mod seen;
mod sight;
pub mod sights;
mod strands;
pub mod taut;
mod verdict;
mod weaves;

use crate::colour::Colour;
use crate::measure::Length;
use crate::pattern::{CaneFace, Direction, Way, WeaveKind};
use crate::stock::Material;
pub use bands::{Band, Thread};
pub use diagonal::Diagonal;
pub use fabric::Fabric;
pub use mends::Mend;
pub use passing::{BAND, Passing};
pub use seen::{Face, Seen};
pub use sight::CourseLook;
pub use strands::{Join, RowsOf, Strand, TooShort, WeaverAmount};
pub use taut::{Crossing, TakeUp};
pub use verdict::{FLOAT_ROWS, FLOAT_STAVES, Running, Verdict};
pub use weaves::{Cell, Chart, Chase, Level, Reversed, SkipOne, Spiral, Twined};

/// The weaving as computed.
#[derive(Clone, Debug, PartialEq)]
pub struct Weave {
    /// How many rows in all.
    pub rows: u32,
    /// Length of all weavers on the basket, the most take-up included, joins not.
    pub length: Length,
    /// Courses from the base upward.
    pub courses: Vec<Course>,
    /// Top of the last row, along the mould.
    pub top_along: Length,
    /// Top of the last row, as a height.
    pub top_height: Length,
    /// Share of its height that the weaving loses when it dries.
    pub shrink: f64,
    /// Height that opens at the top when the weaving has dried and is packed down.
    pub packing_gap: Length,
    /// Rows to add then.
    pub rows_to_add: u32,
    /// Each row from the base upward.
    pub each_row: Vec<Row>,
    /// To which side the weaver runs.
    pub direction: Direction,
    /// Which face of the first weaver looks out in the first rows; none where it has no two faces.
    pub first_face: Option<CaneFace>,
    /// Colours of the staves, in order round and then again; never empty.
    pub stave_colours: Vec<Colour>,
}

/// A run of rows in one weave.
#[derive(Clone, Debug, PartialEq)]
pub struct Course {
    /// The weave.
    pub weave: WeaveKind,
    /// Whether its rows run on or each begins anew.
    pub way: Way,
    /// The first weaver's material.
    pub weaver: Material,
    /// Each weaver with its material, colours, length, strands and joins; where the first rows are
    /// doubled, the weaver that doubles them is the last.
    pub weavers: Vec<WeaverAmount>,
    /// Number of the first row, counted from 1 at the base.
    pub first_row: u32,
    /// How many rows.
    pub rows: u32,
    /// Height of one row along the mould, where it is not doubled; the mean where weavers differ.
    pub pitch: Length,
    /// Clear distance between rows, where they are spaced.
    pub space: Length,
    /// How many of the first rows are doubled.
    pub doubled: u32,
    /// Bottom of the first row, along the mould.
    pub from: Length,
    /// Top of the last row, along the mould.
    pub to: Length,
    /// Where the pattern wants the course to end, along the mould; none for a count of rows.
    pub wanted_to: Option<Length>,
    /// Length of all its weavers on the basket, the most take-up included, joins not.
    pub length: Length,
    /// Shares by which going over and under lengthens the weaver.
    pub take_up: TakeUp,
    /// Length of all its weavers to lay out, with the overlaps where a strand begins.
    pub cut: Length,
    /// How long one strand of the first weaver is.
    pub strand: Length,
    /// How many strands of all its weavers.
    pub strands: u32,
    /// Where strands are joined, in weaving order.
    pub joins: Vec<Join>,
    /// Whether it runs on this count, and what would mend it.
    pub verdict: Verdict,
    /// What is seen at each of its crossings.
    pub fabric: Fabric,
}

/// One round of the weaver.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Row {
    /// Number, counted from 1 at the base.
    pub number: u32,
    /// Number of its course, counted from 1.
    pub course: u32,
    /// Stave, counted from 1, at which it begins.
    pub begin: u32,
    /// Middle of the row, along the mould.
    pub along: Length,
    /// Middle of the row, as a height.
    pub height: Length,
    /// Height of the row along the mould.
    pub pitch: Length,
    /// Length of all weavers in this row, the most take-up included.
    pub length: Length,
}
