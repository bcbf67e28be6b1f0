//! The cut list.

use basket::{Length, cuts};
use serde::Serialize;
use words::Words;

use super::vocabulary::Of;

/// One line of the cut list, with its texts and both systems of measure.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(crate) struct Cut {
    /// Name of the piece.
    pub(crate) piece: String,
    /// Name of the material.
    pub(crate) material: String,
    /// How many for the basket.
    pub(crate) count: u32,
    /// How many more to have ready.
    pub(crate) spares: u32,
    /// Length of one piece, in millimetres.
    length_mm: Option<f64>,
    /// The same in inches.
    length_in: Option<f64>,
    /// Width of one piece, in millimetres; diameter of a disc or rod.
    width_mm: Option<f64>,
    /// The same in inches.
    width_in: Option<f64>,
    /// How to shape it.
    shape: String,
    /// Length of all pieces with spares, in millimetres.
    total_mm: Option<f64>,
    /// The same in inches.
    total_in: Option<f64>,
    /// What it is for.
    pub(crate) purpose: String,
    /// What sort of piece it is cut for, such as `staves`, as a word that is the same in every language.
    kind: &'static str,
    /// The number of the course whose weaver it is; `null` for all else.
    number: Option<u32>,
    /// For which vessel.
    of: Of,
    /// Name of the colour it is dyed; `null` where it is left as it is.
    pub(crate) colour: Option<String>,
}

impl Cut {
    pub(super) fn of(cut: &cuts::Cut, words: &Words) -> Self {
        let cuts::Cut { piece, of, stock, colour, count, spares, length, width, shape, total, purpose } = cut;
        Self {
            piece: words.cut(*of, *piece),
            material: words.value(&stock.name()),
            count: *count,
            spares: *spares,
            length_mm: mm(*length),
            length_in: inches(*length),
            width_mm: mm(*width),
            width_in: inches(*width),
            shape: shape.as_ref().map(|shape| words.say(shape)).unwrap_or_default(),
            total_mm: mm(*total),
            total_in: inches(*total),
            purpose: words.say(purpose),
            kind: piece.kind(),
            number: piece.numbers().first().copied(),
            of: of.into(),
            colour: colour.as_ref().map(|colour| words.colour(&colour.name)),
        }
    }
}

/// To a hundredth of a millimetre: finer than any saw.
fn mm(length: Option<Length>) -> Option<f64> {
    length.map(|length| (length.to_mm() * 100.0).round() / 100.0)
}

/// To a thousandth of an inch.
fn inches(length: Option<Length>) -> Option<f64> {
    length.map(|length| (length.to_inches() * 1000.0).round() / 1000.0)
}
