//! The cut list as tables for machines: `cuts.csv` and `cuts.json`.

use basket::cuts::Cut;
use basket::{Basket, Length};
use serde::Serialize;
use words::Words;

use crate::error::SheetError;

/// One line of the cut list, with its texts and both systems of measure.
#[derive(Serialize)]
pub(crate) struct CutRow {
    piece: String,
    material: String,
    count: u32,
    spares: u32,
    length_mm: Option<f64>,
    length_in: Option<f64>,
    width_mm: Option<f64>,
    width_in: Option<f64>,
    shape: String,
    total_mm: Option<f64>,
    total_in: Option<f64>,
    purpose: String,
}

#[derive(Serialize)]
struct CutFile<'a> {
    format: &'static str,
    version: u32,
    title: &'a str,
    cuts: Vec<CutRow>,
}

pub(crate) fn rows(basket: &Basket, words: &Words) -> Vec<CutRow> {
    basket.cuts.iter().map(|cut| row(cut, words)).collect()
}

fn row(cut: &Cut, words: &Words) -> CutRow {
    let mm = |length: Option<Length>| length.map(|length| round(length.to_mm(), 100.0));
    let inches = |length: Option<Length>| length.map(|length| round(length.to_inches(), 1000.0));
    CutRow {
        piece: words.term(cut.piece),
        material: words.value(&cut.material),
        count: cut.count,
        spares: cut.spares,
        length_mm: mm(cut.length),
        length_in: inches(cut.length),
        width_mm: mm(cut.width),
        width_in: inches(cut.width),
        shape: cut.shape.as_ref().map(|shape| words.say(shape)).unwrap_or_default(),
        total_mm: mm(cut.total),
        total_in: inches(cut.total),
        purpose: words.say(&cut.purpose),
    }
}

fn round(number: f64, steps: f64) -> f64 {
    (number * steps).round() / steps
}

pub(crate) fn csv(basket: &Basket, words: &Words) -> Result<Vec<u8>, SheetError> {
    let mut writer = csv::Writer::from_writer(Vec::new());
    for row in rows(basket, words) {
        writer.serialize(row)?;
    }
    writer.into_inner().map_err(|error| SheetError::Csv(error.into_error().into()))
}

pub(crate) fn json(basket: &Basket, words: &Words) -> Result<Vec<u8>, SheetError> {
    let file =
        CutFile { format: "stavewright-cuts", version: 1, title: &basket.title, cuts: rows(basket, words) };
    Ok(serde_json::to_vec_pretty(&file)?)
}
