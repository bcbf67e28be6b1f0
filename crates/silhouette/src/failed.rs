//! Why a picture cannot be traced.

use thiserror::Error;

/// Why a picture cannot be traced.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Error)]
pub enum Failed {
    /// It has too few pixels.
    #[error("the picture is too small: it needs {least} pixels each way")]
    TooSmall {
        /// Pixels that its shorter side needs.
        least: usize,
    },
    /// The frame of the picture is not of one colour.
    #[error("the background is not plain: hang a sheet behind it all")]
    NotPlain,
    /// Mould and background can hardly be told apart.
    #[error("mould and background look alike: take another background")]
    LooksAlike,
    /// There is nothing before the background that could be a mould.
    #[error("no mould is seen: let it fill a third of the height")]
    Nothing,
    /// The mould reaches to the edge of the picture.
    #[error("the mould is cut off: leave background on all four sides")]
    CutOff,
    /// There are several large things.
    #[error("more than one thing is seen: take away what is not mould")]
    Several,
    /// The mould leans too far.
    #[error("the mould leans more than 12°, or much stands out on one side: hold the camera level")]
    Leans,
    /// Both sides are too different.
    #[error("both sides differ: is it a shadow, or not a round mould?")]
    Lopsided,
    /// A known size or distance is not one.
    #[error("girth, height and distance must be lengths, the last largest")]
    NoSize,
}
