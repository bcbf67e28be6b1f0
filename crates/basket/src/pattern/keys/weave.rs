//! Keys of `[weave]`.

use super::course;
use super::declared::{Declared, Usual};
use super::key::{Key, keys};
use super::limits::{Counts, ListOf, Shares};
use super::values::Sections;
use crate::pattern::{CaneFace, Direction};

keys! {
    /// The courses from the base upward.
    pub const COURSES: Key<Sections> = Key::new(
        "weave.courses",
        ListOf { each: course::CONTENTS, most: 40 },
        Usual::Computed("usual-chosen"),
        r#"[{ weaver = "cane fine", rows = 4 }]"#,
    );
    /// To which side the weaver runs.
    pub const DIRECTION: Key<Direction> =
        Key::new("weave.direction", (), Usual::Computed("usual-weave-direction"), r#""left""#);
    /// Which face of the cane looks out in the first rows; the usual one is common practice.
    pub const FIRST_FACE: Key<CaneFace> =
        Key::new("weave.first-face", (), Usual::Constant(CaneFace::Dull), r#""shiny""#);
    /// Share of its height that fresh weaving loses in drying.
    pub const SHRINK: Key<f64> =
        Key::new("weave.shrink", Shares::of(0.0, 0.3), Usual::Computed("usual-weave-shrink"), r#""4 %""#);
    /// Staves that a weaver may pass without changing sides; the usual count is common practice.
    pub const FLOAT_STAVES: Key<u32> =
        Key::new("weave.float-staves", Counts::of(1, 99).usually(1, 12), Usual::Constant(4), "5");
    /// Rows that a stave may lie bare, or hidden; the usual count is common practice.
    pub const FLOAT_ROWS: Key<u32> =
        Key::new("weave.float-rows", Counts::of(1, 99).usually(1, 12), Usual::Constant(4), "5");
}

/// The way to a course, counted from 1: `weave.courses[2]`.
pub fn course(number: u32) -> String {
    format!("{}[{number}]", COURSES.path)
}

/// The way to a value of a course: `weave.courses[2].rows`.
pub fn in_course(number: u32, key: &dyn Declared) -> String {
    format!("{}.{}", course(number), key.name())
}
