//! What can be wrong with a picture that is asked for.

use thiserror::Error;

/// Why a picture cannot be drawn.
#[derive(Clone, Debug, PartialEq, Error)]
pub enum PictureError {
    /// No view or stage has this name.
    #[error("there is no {what} called \u{201c}{name}\u{201d}; choose one of: {known}")]
    Unknown {
        /// What was asked for: `view` or `stage drawing`.
        what: &'static str,
        /// The name that was given.
        name: String,
        /// All names that there are.
        known: String,
    },
    /// A picture without width or height.
    #[error(
        "a picture {width} mm wide and {height} mm high cannot be drawn; give both a size from {least} to {most} mm"
    )]
    Size {
        /// Width that was asked for.
        width: f64,
        /// Height that was asked for.
        height: f64,
        /// Least side.
        least: f64,
        /// Largest side.
        most: f64,
    },
    /// A raster that is too coarse or too fine, or none.
    #[error("a raster of {density} pixels in a mm cannot be used; give {least} to {most}")]
    Density {
        /// Pixels in a mm that were asked for.
        density: f64,
        /// Fewest.
        least: f64,
        /// Most.
        most: f64,
    },
    /// A picture without pixels, or with too many.
    #[error("a picture of {width} by {height} pixels cannot be drawn; give both sides {least} to {most}")]
    Pixels {
        /// Pixels across that were asked for.
        width: usize,
        /// Pixels down that were asked for.
        height: usize,
        /// Fewest along a side.
        least: usize,
        /// Most along a side.
        most: usize,
    },
    /// A view that looks from nowhere.
    #[error("the view has no direction: {0}; give finite numbers, and a region or distance above 0")]
    View(&'static str),
    /// Nothing lies in the view.
    #[error("nothing of the basket lies in this view; look at another place or a larger region")]
    Empty,
    /// The picture could not be written.
    #[error("the picture cannot be written as PNG: {0}")]
    Writing(String),
}
