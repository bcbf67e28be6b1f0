//! What the search is asked for.

use std::ops::RangeInclusive;

use crate::pattern::{Direction, Lean};
use crate::weave::look::{Look, USUAL_PROPORTION};

/// Counts that are searched unless told otherwise.
pub const COUNTS: RangeInclusive<u32> = 21..=121;

/// What is wanted.
#[derive(Clone, Debug, PartialEq)]
pub struct Wanted {
    /// The look from outside.
    pub look: Look,
    /// To which side the weaver runs.
    pub direction: Direction,
    /// For spirals: to which side they climb; none if either will do.
    pub lean: Option<Lean>,
    /// For spirals: how often a line goes round; none if any will do.
    pub turns: Option<f64>,
    /// How many colours, 1 to [`MOST_COLOURS`](super::MOST_COLOURS); one colour shows its look by weaver and stave alone.
    pub colours: u8,
    /// The count of staves that would be best.
    pub near: u32,
    /// The counts that will do.
    pub counts: RangeInclusive<u32>,
    /// How many rows the look has to grow in.
    pub rows: u32,
    /// How many rows wide a stave with its gap is.
    pub proportion: f64,
}

impl Wanted {
    /// A look in so many colours near a count, woven to the right, in 80 rows of usual proportion on 21 to 121 staves.
    pub const fn new(look: Look, colours: u8, near: u32) -> Self {
        Self {
            look,
            direction: Direction::Right,
            lean: None,
            turns: None,
            colours,
            near,
            counts: COUNTS,
            rows: 80,
            proportion: USUAL_PROPORTION,
        }
    }
}
