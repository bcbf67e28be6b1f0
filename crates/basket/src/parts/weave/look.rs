//! What the eye makes of a weave: columns, bands, checks, spirals, arrows.
//!
//! A weave repeats: moved by some staves and rows it covers itself. The eye follows the line along which
//! what looks alike lies nearest, so a look is read off the shortest move that leaves the weave as it is
//! (derived for this project). Cells that touch, be it at a corner, are followed before cells that only lie
//! near.

use serde::Serialize;

use crate::pattern::Lean;

/// Width of a stave and its gap in rows, where nothing better is known: a 1/4 in stave, a gap of
/// 1/16 in and rows of 3 mm (common practice on moulds).
pub const USUAL_PROPORTION: f64 = 2.6;
/// Rows within which a weave has to repeat for its lines to be seen.
pub(super) const REACH: u32 = 12;
/// Rows that a look is read off.
pub const ROWS_READ: u32 = 2 * REACH + 2;

/// How a weave is looked at.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Eye {
    /// Over how many rows.
    pub rows: u32,
    /// How many rows wide a stave with its gap is.
    pub proportion: f64,
}

impl Eye {
    /// Rows enough for every look, of usual proportion.
    pub const USUAL: Self = Self { rows: ROWS_READ, proportion: USUAL_PROPORTION };
}

/// A look.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum Look {
    /// All alike.
    Plain,
    /// Lines straight up.
    Columns,
    /// Lines straight round.
    Bands,
    /// No line stands out: it could lean either way.
    Checks,
    /// Lines that climb round the basket.
    Spiral,
    /// Lines that lean one way for some rows, then the other.
    Arrows,
    /// Nothing that repeats within sight.
    Mixed,
}

/// A look and its measures.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Sighting {
    /// The look.
    pub look: Look,
    /// Staves by which a line moves on from row to row, positive toward higher numbers; zero unless the
    /// look is a spiral (for arrows: by how much, without a sign).
    pub slope: f64,
    /// Rows from one row in which a line is seen to the next: one, unless weavers take turns or its cells
    /// only lie near each other.
    #[serde(skip)]
    pub every: u32,
    /// Staves after which a row repeats, none if it does not.
    pub repeat: Option<u32>,
}

impl Sighting {
    pub(super) const fn still(look: Look, repeat: Option<u32>) -> Self {
        Self { look, slope: 0.0, every: 1, repeat }
    }

    /// To which side a spiral climbs, seen from outside.
    ///
    /// On the mould, base up, staves are numbered to the right; so with the base down numbers rise to the
    /// left.
    pub fn lean(&self) -> Option<Lean> {
        (self.look == Look::Spiral).then_some(if self.slope > 0.0 { Lean::Left } else { Lean::Right })
    }

    /// How often a line goes round so many staves while it climbs so many rows, or as many of them as are
    /// its own.
    pub fn turns(&self, count: u32, rows: u32) -> f64 {
        let own = rows - rows % self.every.max(1);
        self.slope.abs() * f64::from(own) / f64::from(count.max(1))
    }
}
