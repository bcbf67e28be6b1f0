//! What is told by its look, for a weaver that runs to the other side.

use super::direction::Direction;
use super::weave::{CoursePattern, Lean};

impl Direction {
    /// The side to which something climbs that climbs to a side where the weaver runs to the right.
    #[must_use]
    pub fn seen(self, lean: Lean) -> Lean {
        match self {
            Self::Right => lean,
            Self::Left => lean.other(),
        }
    }

    /// A course as it is woven: what is told by its look is turned over where the weaver runs to the left.
    pub(crate) fn woven(self, course: &CoursePattern) -> CoursePattern {
        let mut course = course.clone();
        if self == Self::Left {
            course.lean = course.lean.map(Lean::other);
            course.chart = course.chart.map(|chart| chart.mirrored());
        }
        course
    }
}
