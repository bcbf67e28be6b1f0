//! The drawings on the sheets.

use basket::Basket;
use serde::Serialize;
use words::Words;

use crate::paper::Paper;
use crate::scribe::Scribe;

/// A drawing as a template sees it.
#[derive(Serialize)]
pub(crate) struct Figure {
    pub(crate) name: String,
    pub(crate) file: String,
    pub(crate) width_mm: f64,
    pub(crate) height_mm: f64,
    pub(crate) alt: String,
    pub(crate) caption: String,
    #[serde(skip)]
    pub(crate) svg: String,
}

/// One piece on the sheet of templates: its drawings, by name, in the order of its parts.
#[derive(Serialize)]
pub(crate) struct Piece {
    name: String,
    note: String,
    parts: Vec<String>,
}

pub(crate) fn figures(basket: &Basket, scribe: &Scribe<'_>, paper: Paper) -> (Vec<Figure>, Vec<Piece>) {
    let _ = (basket, scribe, paper);
    (Vec::new(), Vec::new())
}
pub(crate) fn section_svg(_: &Basket, _: &Words) -> String {
    String::new()
}
pub(crate) fn base_svg(_: &Basket, _: &Words) -> String {
    String::new()
}
