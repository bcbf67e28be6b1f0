//! Which hand leads the weaver, where no pattern says it.

use basket::pattern::{Direction, Handed};
use clap::ValueEnum;

/// Which hand leads the weaver.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, ValueEnum)]
pub(super) enum HandArg {
    /// The right one.
    #[default]
    Right,
    /// The left one.
    Left,
}

impl HandArg {
    /// To which side the weaver runs.
    pub(super) fn direction(self) -> Direction {
        Direction::of(match self {
            Self::Right => Handed::Right,
            Self::Left => Handed::Left,
        })
    }
}
