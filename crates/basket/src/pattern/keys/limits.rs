//! Within which limits the values of keys make sense.

use crate::limits;
use crate::measure::Length;

/// Which lengths a key takes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Lengths {
    /// The shortest.
    pub least: Length,
    /// The longest.
    pub most: Length,
    /// Whether it may be nothing at all.
    pub zero: bool,
    /// The limits in words, as they mend a length beyond them.
    pub help: &'static str,
    /// Between which lengths it usually lies (common practice); any other is read too.
    pub usually: Option<[Length; 2]>,
}

impl Lengths {
    /// The same, with the usual shortest and longest in inches.
    #[must_use]
    pub const fn usually(self, from: f64, to: f64) -> Self {
        Self { usually: Some([Length::inches(from), Length::inches(to)]), ..self }
    }

    /// Whether a length lies within the limits.
    pub fn hold(&self, length: Length) -> bool {
        self.least <= length && length <= self.most || self.zero && length == Length::ZERO
    }
}

/// A part of a basket or mould.
pub const PART: Lengths = Lengths {
    least: Length::mm(0.05),
    most: limits::PART,
    zero: false,
    help: "write a length from 0.05 mm to 5 m (16 ft)",
    usually: None,
};

/// A place on a mould, which may be its base.
pub const PLACE: Lengths =
    Lengths { zero: true, help: "write 0, or a length from 0.05 mm to 5 m (16 ft)", ..PART };

/// A run of material as it is sold.
pub const RUN: Lengths = Lengths {
    least: Length::mm(1.0),
    most: Length::mm(10_000_000.0),
    zero: false,
    help: "write a length from 1 mm to 10000 m",
    usually: None,
};

/// Which whole numbers a key takes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Counts {
    /// The least.
    pub least: u32,
    /// The most.
    pub most: u32,
    /// Between which it usually lies (common practice); any other is read too.
    pub usually: [u32; 2],
}

impl Counts {
    /// From the least to the most.
    pub const fn of(least: u32, most: u32) -> Self {
        Self { least, most, usually: [least, most] }
    }

    /// The same, with the usual least and most.
    #[must_use]
    pub const fn usually(self, from: u32, to: u32) -> Self {
        Self { usually: [from, to], ..self }
    }
}

/// Which shares of one a key takes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Shares {
    /// The least.
    pub least: f64,
    /// The most.
    pub most: f64,
}

impl Shares {
    /// From the least to the most.
    pub const fn of(least: f64, most: f64) -> Self {
        Self { least, most }
    }
}

/// Which texts a key takes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Texts {
    /// One line that is not empty and not endless.
    Line,
    /// Paragraphs of at most so many characters in all.
    Paragraphs(usize),
    /// The path of a photograph, from the pattern's own folder downward.
    Photo,
}

/// A list of values of one sort.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ListOf<T> {
    /// What each of them is.
    pub each: T,
    /// How many there may be.
    pub most: usize,
}

/// More strips than a base is glued up from.
pub const MOST_STRIPS: usize = 24;

/// More colours than anyone tells apart.
pub const MOST_COLOURS: usize = 100;
