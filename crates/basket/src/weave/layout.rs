//! Where rows lie on the mould: courses one above the other, from the base upward.

use crate::measure::Length;
use crate::mould::Mould;
use crate::pattern::{CoursePattern, Until};

/// More rows than any basket has; a bound on the work for absurd patterns.
const MOST_ROWS: u32 = 5000;

/// A course set on the mould.
#[derive(Clone, Debug, PartialEq)]
pub struct Laid<'a> {
    pub(super) pattern: &'a CoursePattern,
    pub(super) first_row: u32,
    pub(super) rows: u32,
    pub(super) pitch: Length,
    pub(super) from: Length,
    pub(super) wanted_to: Option<Length>,
}

impl Laid<'_> {
    /// Top of the last row, along the mould.
    pub fn to(&self) -> Length {
        self.from + self.pitch * f64::from(self.rows)
    }
    /// Middle of the row with this index (from 0) within the course, along the mould.
    pub(super) fn middle(&self, index: u32) -> Length {
        self.from + self.pitch * (f64::from(index) + 0.5)
    }
}

/// Sets the courses on the mould, each where the one below ends.
pub fn lay_out<'a>(courses: &'a [CoursePattern], mould: &Mould) -> Vec<Laid<'a>> {
    let mut from = Length::ZERO;
    let mut first_row = 1;
    let mut laid = Vec::with_capacity(courses.len());
    for pattern in courses {
        let pitch = (pattern.weaver.width * pattern.packing.unwrap_or(1.0)).max(Length::mm(0.1));
        let wanted_to = match pattern.until {
            Until::Rows(_) => None,
            Until::Height(height) => Some(mould.profile.along_at_height(height)),
            Until::BelowTop(below) => Some(mould.profile.along_at_height(mould.height - below)),
        };
        let rows = match (pattern.until, wanted_to) {
            (Until::Rows(rows), _) => rows,
            (_, Some(to)) => ((to - from) / pitch + 1e-6).floor().max(0.0) as u32,
            (_, None) => 0,
        }
        .min(MOST_ROWS - (first_row - 1).min(MOST_ROWS));
        let course = Laid { pattern, first_row, rows, pitch, from, wanted_to };
        from = course.to();
        first_row += rows;
        laid.push(course);
    }
    laid
}
