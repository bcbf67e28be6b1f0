//! How a lid sits on its basket; the lid itself is a vessel like any other.

use basket::Length;
use basket::form::Across;
use basket::lid::{Ledge, Lid};
use basket::message::Term;
use serde::Serialize;

use super::measure::Mm;

/// How a lid sits on its basket.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(crate) struct LidFit {
    /// How it sits, such as `drop-in`.
    fit: String,
    /// Room between its lashed rim and the basket's, all round.
    clearance_mm: Mm,
    /// The room that is wanted.
    wanted_mm: Mm,
    /// Length of the opening within the basket's lashed rim.
    mouth_length_mm: Mm,
    /// Its width.
    mouth_width_mm: Mm,
    /// Length of the lid over its lashed rim.
    length_mm: Mm,
    /// Its width.
    width_mm: Mm,
    /// How far its top lies above the top of the basket's rim.
    rises_mm: Mm,
    /// Lengths of the rings of its ledge, the outermost first.
    ledge_rings_mm: Vec<Mm>,
    /// Name of what they are bent from.
    ledge_stock: String,
    /// Lower edge of the ledge, along the basket's wall.
    ledge_along_mm: Mm,
    /// How far the lid lies on it, pushed to the other side.
    overlap_mm: Mm,
    /// What one lifts it by, such as `knob`.
    lift: String,
}

impl From<&Lid> for LidFit {
    fn from(lid: &Lid) -> Self {
        let Lid { vessel: _, mould: _, fit, clearance, wanted, mouth, across, rises, ledge, lift } = lid;
        let Ledge { stock, rings, lap: _, along, overlap, inside: _ } = ledge;
        let [mouth_length_mm, mouth_width_mm] = sides(mouth);
        let [length_mm, width_mm] = sides(across);
        Self {
            fit: word(fit.term(), "lid-fit-"),
            clearance_mm: clearance.into(),
            wanted_mm: wanted.into(),
            mouth_length_mm,
            mouth_width_mm,
            length_mm,
            width_mm,
            rises_mm: rises.into(),
            ledge_rings_mm: rings.iter().map(|ring: &Length| ring.into()).collect(),
            ledge_stock: stock.name.clone(),
            ledge_along_mm: along.into(),
            overlap_mm: overlap.into(),
            lift: word(lift.term(), "lid-lift-"),
        }
    }
}

fn sides(across: &Across) -> [Mm; 2] {
    [across.length.into(), across.width.into()]
}

fn word(term: &str, prefix: &str) -> String {
    term.trim_start_matches(prefix).to_owned()
}
