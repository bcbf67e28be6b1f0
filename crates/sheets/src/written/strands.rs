//! The weavers of a course: their strands, and where one follows another.

use basket::weave;
use serde::Serialize;

use super::measure::Mm;

/// One weaver of a course.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(super) struct WeaverAmount {
    /// Its material.
    material: String,
    /// Colours of its strands, in order and then again.
    colours: Vec<String>,
    /// Which rows of its course it lays.
    rows: RowsOf,
    /// Length on the basket, the most take-up included, joins not.
    length_mm: Mm,
    /// Length to lay out, with the overlaps where a strand begins.
    cut_mm: Mm,
    /// How long one whole strand is.
    strand_mm: Mm,
    /// Its strands in the order in which they are used.
    strands: Vec<Strand>,
    /// Where one strand follows another, in weaving order.
    joins: Vec<Join>,
    /// The first strand that is too short to be joined; `null` where all are long enough.
    too_short: Option<TooShort>,
}

/// Which rows of its course a weaver lays.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
struct RowsOf {
    /// The first, from 0 within the course.
    first: u32,
    /// How many rows on the next one is.
    every: u32,
    /// All of them come before this one.
    before: u32,
}

/// A strand as it lies in the basket.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
struct Strand {
    /// Which of its weaver's colours it has, from 0.
    colour: u32,
    /// Row of its course (from 0) in which it begins.
    row: u32,
    /// Place in that row (from 0 where the row begins) from which it is the one that is seen.
    place: u32,
    /// Length to cut, overlap included.
    cut_mm: Mm,
}

/// A strand that is too short to be joined.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
struct TooShort {
    /// How long it is.
    strand_mm: Mm,
    /// How long it would have to be.
    least_mm: Mm,
}

/// A change from a spent strand to a new one of the same weaver.
#[derive(Clone, Copy, Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(crate) struct Join {
    /// Row in which the spent strand ends.
    pub(crate) row: u32,
    /// Stave over which the spent strand is cut.
    pub(crate) cut_over: u32,
    /// Stave behind which the new strand starts.
    pub(crate) start_behind: u32,
    /// Number of the weaver within its course, counted from 1.
    weaver: u32,
    /// Whether the new strand has another colour.
    pub(crate) recolour: bool,
}

impl From<&weave::WeaverAmount> for WeaverAmount {
    fn from(weaver: &weave::WeaverAmount) -> Self {
        let weave::WeaverAmount {
            material,
            colours,
            rows: weave::RowsOf { first, every, before },
            length,
            cut,
            strand,
            strands,
            joins,
            too_short,
        } = weaver;
        Self {
            material: material.name.clone(),
            colours: colours.iter().map(|colour| colour.name.clone()).collect(),
            rows: RowsOf { first: *first, every: *every, before: *before },
            length_mm: length.into(),
            cut_mm: cut.into(),
            strand_mm: strand.into(),
            strands: strands.iter().map(Strand::from).collect(),
            joins: joins.iter().map(Join::from).collect(),
            too_short: too_short.as_ref().map(TooShort::from),
        }
    }
}

impl From<&weave::Strand> for Strand {
    fn from(strand: &weave::Strand) -> Self {
        let weave::Strand { colour, row, place, cut } = strand;
        Self { colour: *colour, row: *row, place: *place, cut_mm: cut.into() }
    }
}

impl From<&weave::TooShort> for TooShort {
    fn from(short: &weave::TooShort) -> Self {
        let weave::TooShort { strand, least } = short;
        Self { strand_mm: strand.into(), least_mm: least.into() }
    }
}

impl From<&weave::Join> for Join {
    fn from(join: &weave::Join) -> Self {
        let weave::Join { row, cut_over, start_behind, weaver, recolour } = join;
        Self {
            row: *row,
            cut_over: *cut_over,
            start_behind: *start_behind,
            weaver: *weaver,
            recolour: *recolour,
        }
    }
}
