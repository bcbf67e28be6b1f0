//! How a picture is drawn.

use basket::Piece;

use crate::drawing::{Line, Tone};
use crate::lines::{PictureError, hue};
use crate::solid::Part;

/// Least side of a picture, in mm.
const LEAST: f64 = 5.0;
/// Largest side of a picture, in mm.
const MOST: f64 = 1000.0;
/// Fewest pixels of the raster in a mm of paper.
const COARSEST: f64 = 4.0;
/// Most pixels of the raster in a mm of paper.
const FINEST: f64 = 100.0;

/// What is done with a part.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct PartStyle {
    /// Weight of its edges; none draws only its outline.
    pub edge: Option<Line>,
    /// Tone where light falls on it.
    pub lit: Option<Tone>,
    /// Tone where it is turned from the light.
    pub shaded: Option<Tone>,
}

/// Size, weights and tones of a picture.
#[derive(Clone, Copy)]
pub struct Style<'a> {
    /// Most width on paper, in mm.
    pub width: f64,
    /// Most height on paper, in mm.
    pub height: f64,
    /// Least distance between two lines that run side by side, in mm of paper; of closer ones only
    /// the first is drawn.
    pub clear: f64,
    /// Pixels of the raster of depths in a mm of paper: more find finer gaps and take longer.
    pub density: f64,
    /// Weight of the outline of the whole.
    pub outline: Line,
    /// How each part is drawn.
    pub look: &'a dyn Fn(&Part) -> PartStyle,
}

impl Style<'_> {
    /// Lines and true colours, to fit into this many mm of paper.
    pub const fn print(width: f64, height: f64) -> Self {
        Self { width, height, clear: 0.2, density: 14.0, outline: Line::Outline, look: &print }
    }

    /// Lines alone.
    pub const fn plain(width: f64, height: f64) -> Self {
        Self { look: &plain, ..Self::print(width, height) }
    }

    pub(crate) fn check(&self) -> Result<(), PictureError> {
        let fits = |side: f64| side.is_finite() && (LEAST..=MOST).contains(&side);
        if !fits(self.width) || !fits(self.height) {
            return Err(PictureError::Size {
                width: self.width,
                height: self.height,
                least: LEAST,
                most: MOST,
            });
        }
        if !(COARSEST..=FINEST).contains(&self.density) {
            return Err(PictureError::Density { density: self.density, least: COARSEST, most: FINEST });
        }
        Ok(())
    }
}

/// Weaving, lashing and small metal in fine lines, all else in the weight of edges.
fn plain(part: &Part) -> PartStyle {
    let edge = match part.piece.sort() {
        Piece::Weaving | Piece::Lashing | Piece::Uprights | Piece::Pins | Piece::Washers => Line::Fine,
        _ => Line::Edge,
    };
    PartStyle { edge: Some(edge), lit: None, shaded: None }
}

/// The same in the parts' true colours.
fn print(part: &Part) -> PartStyle {
    let [lit, shaded] = hue::own(part).map(Some);
    PartStyle { lit, shaded, ..plain(part) }
}
