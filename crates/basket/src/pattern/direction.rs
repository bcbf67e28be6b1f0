//! Which way round a basket is woven.

use super::weave::{CoursePattern, Lean};
use super::word::words;

/// Which hand leads the weaver.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Handed {
    /// The right one.
    #[default]
    Right,
    /// The left one.
    Left,
}

words! { Handed:
    Right = "right", "handed-right";
    Left = "left", "handed-left";
}

/// To which side the weaver runs, seen with the outside facing the maker and the foot of the mould up. Staves are
/// numbered that way; on a basket that stands on its base it is the other side.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Direction {
    /// To the right, as most right-handed people weave.
    #[default]
    Right,
    /// To the left.
    Left,
}

words! { Direction:
    Right = "right", "direction-right";
    Left = "left", "direction-left";
}

impl Direction {
    /// As most people weave with this hand (common practice).
    pub const fn of(hand: Handed) -> Self {
        match hand {
            Handed::Right => Self::Right,
            Handed::Left => Self::Left,
        }
    }

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
