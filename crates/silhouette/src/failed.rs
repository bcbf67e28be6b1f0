//! Why a picture cannot be traced.

use thiserror::Error;

/// Why a picture cannot be traced.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Error)]
pub enum Failed {
    /// It has too few pixels.
    #[error("the picture is too small: it needs {least} pixels along its shorter side at least")]
    TooSmall {
        /// Pixels that its shorter side needs.
        least: usize,
    },
    /// The frame of the picture is not of one colour.
    #[error("the background is not plain: hang a sheet behind the mould that fills the picture")]
    NotPlain,
    /// Mould and background can hardly be told apart.
    #[error("mould and background look alike: take a background of another colour, white or dark")]
    LooksAlike,
    /// There is nothing before the background that could be a mould.
    #[error("no mould is seen: it should fill at least a third of the picture's height")]
    Nothing,
    /// The mould reaches to the edge of the picture.
    #[error("the mould is cut off: leave background on all four sides, below it too")]
    CutOff,
    /// There are several large things.
    #[error("more than one thing is seen: take away what stands beside the mould")]
    Several,
    /// The mould leans too far.
    #[error("the mould leans more than 12°: hold the camera level")]
    Leans,
    /// Both sides are too different.
    #[error("both sides differ: a shadow, a handle, or a mould that is not round")]
    Lopsided,
    /// A known size or distance is not one.
    #[error("girth or height and distance must be lengths, and the camera stand outside the mould")]
    NoSize,
}
