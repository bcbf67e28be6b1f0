//! The weaving: courses and rows.

use basket::weave;
use serde::Serialize;

use super::measure::Mm;
use super::strands::{Join, WeaverAmount};
use super::verdict::Verdict;
use super::vocabulary::{CaneFace, Direction, Way};

/// The weaving.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(crate) struct Weave {
    /// How many rows in all.
    rows: u32,
    /// Length of all weavers on the basket, the most take-up included, joins not.
    length_mm: Mm,
    /// Courses from the base upward.
    pub(crate) courses: Vec<Course>,
    /// Top of the last row, along the mould.
    top_along_mm: Mm,
    /// Top of the last row, as a height.
    top_height_mm: Mm,
    /// Share of its height that the weaving loses when it dries.
    shrink: f64,
    /// Height that opens at the top when the weaving has dried and is packed down.
    packing_gap_mm: Mm,
    /// Rows to add then.
    rows_to_add: u32,
    /// Each row from the base upward.
    each_row: Vec<Row>,
    /// To which side the weaver runs, with the outside facing the maker and the foot of the mould up.
    direction: Direction,
    /// Which face of the first weaver looks out in the first rows, or `null` where it has no two faces.
    first_face: Option<CaneFace>,
    /// Colours of the staves, in order round and then again.
    stave_colours: Vec<String>,
}

/// A run of rows in one weave.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(crate) struct Course {
    /// The weave, as a pattern names it.
    weave: String,
    /// Whether its rows run on or each begins anew.
    way: Way,
    /// The first weaver's material.
    weaver: String,
    /// Each weaver; where the first rows are doubled, the weaver that doubles them is the last.
    weavers: Vec<WeaverAmount>,
    /// Number of the first row, counted from 1 at the base.
    pub(crate) first_row: u32,
    /// How many rows.
    pub(crate) rows: u32,
    /// Height of one row along the mould, where it is not doubled; the mean where weavers differ.
    pitch_mm: Mm,
    /// Clear distance between rows, where they are spaced.
    space_mm: Mm,
    /// How many of the first rows are doubled.
    doubled: u32,
    /// Bottom of the first row, along the mould.
    from_mm: Mm,
    /// Top of the last row, along the mould.
    to_mm: Mm,
    /// Where the pattern wants the course to end, along the mould; `null` for a count of rows.
    wanted_to_mm: Option<Mm>,
    /// Length on the basket, the most take-up included, joins not.
    length_mm: Mm,
    /// Shares by which going over and under lengthens the weaver.
    take_up: TakeUp,
    /// Length to lay out, with the overlaps where a strand begins.
    cut_mm: Mm,
    /// How long one strand of the first weaver is.
    strand_mm: Mm,
    /// How many strands of all its weavers.
    strands: u32,
    /// Where strands are joined, in weaving order.
    pub(crate) joins: Vec<Join>,
    /// Whether it runs on this count of staves, and what would mend it.
    verdict: Verdict,
}

/// By what share of its straight way a weaver that goes over and under is longer.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
struct TakeUp {
    /// At least: round an ellipse as wide and thick as the staves.
    least: f64,
    /// At most, round the staves' own section; lengths are for this one.
    most: f64,
}

/// One round of the weaver.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
struct Row {
    /// Number, counted from 1 at the base.
    number: u32,
    /// Number of its course, counted from 1.
    course: u32,
    /// Stave, counted from 1, at which it begins.
    begin: u32,
    /// Middle of the row, along the mould.
    along_mm: Mm,
    /// Middle of the row, as a height.
    height_mm: Mm,
    /// Height of the row along the mould.
    pitch_mm: Mm,
    /// Length of all weavers in this row, the most take-up included.
    length_mm: Mm,
}

impl From<&weave::Weave> for Weave {
    fn from(weave: &weave::Weave) -> Self {
        let weave::Weave {
            rows,
            length,
            courses,
            top_along,
            top_height,
            shrink,
            packing_gap,
            rows_to_add,
            each_row,
            direction,
            first_face,
            stave_colours,
        } = weave;
        Self {
            rows: *rows,
            length_mm: length.into(),
            courses: courses.iter().map(Course::from).collect(),
            top_along_mm: top_along.into(),
            top_height_mm: top_height.into(),
            shrink: *shrink,
            packing_gap_mm: packing_gap.into(),
            rows_to_add: *rows_to_add,
            each_row: each_row.iter().map(Row::from).collect(),
            direction: direction.into(),
            first_face: first_face.as_ref().map(CaneFace::from),
            stave_colours: stave_colours.iter().map(|colour| colour.name.clone()).collect(),
        }
    }
}

impl From<&weave::Course> for Course {
    fn from(course: &weave::Course) -> Self {
        let weave::Course {
            weave,
            way,
            weaver,
            weavers,
            first_row,
            rows,
            pitch,
            space,
            doubled,
            from,
            to,
            wanted_to,
            length,
            take_up: weave::TakeUp { least, most },
            cut,
            strand,
            strands,
            joins,
            verdict,
            // Cell by cell; the drawings show it.
            fabric: _,
        } = course;
        Self {
            weave: weave.to_string(),
            way: way.into(),
            weaver: weaver.name.clone(),
            weavers: weavers.iter().map(WeaverAmount::from).collect(),
            first_row: *first_row,
            rows: *rows,
            pitch_mm: pitch.into(),
            space_mm: space.into(),
            doubled: *doubled,
            from_mm: from.into(),
            to_mm: to.into(),
            wanted_to_mm: wanted_to.map(Mm::from),
            length_mm: length.into(),
            take_up: TakeUp { least: *least, most: *most },
            cut_mm: cut.into(),
            strand_mm: strand.into(),
            strands: *strands,
            joins: joins.iter().map(Join::from).collect(),
            verdict: verdict.into(),
        }
    }
}

impl From<&weave::Row> for Row {
    fn from(row: &weave::Row) -> Self {
        let weave::Row { number, course, begin, along, height, pitch, length } = row;
        Self {
            number: *number,
            course: *course,
            begin: *begin,
            along_mm: along.into(),
            height_mm: height.into(),
            pitch_mm: pitch.into(),
            length_mm: length.into(),
        }
    }
}
