//! Which pictures there are of a basket.

use basket::Basket;
use basket::steps::Stage;
use drawings::stages::{Plate, plates};
use words::Words;

use crate::bench::api::{DrawingName, DrawingView, Word};
use crate::bench::draw;

/// The stages that a basket passes through, from the bare mould on.
pub(crate) fn stages(basket: &Basket, words: &Words) -> Vec<Word> {
    let label = |stage| match stage {
        Stage::Prepared => words.term("form-stage-bare-mould"),
        Stage::EarsSet if basket.ears.is_none() => words.name(Stage::Handled),
        _ => words.name(stage),
    };
    let word = |stage: Stage| Word { word: stage.name().to_owned(), label: label(stage) };
    basket.stages().into_iter().map(word).collect()
}

/// The drawings that there are.
pub(super) fn drawings(basket: &Basket, words: &Words) -> Vec<DrawingName> {
    let named = |view| move |(name, label): (String, String)| DrawingName { name, label, view };
    let flat = draw::FLAT.iter().filter(|flat| flat.is_of(basket));
    let flat = flat.map(|flat| DrawingName {
        name: flat.name.to_owned(),
        label: words.term(flat.label),
        view: flat.view,
    });
    let stages = plates(basket)
        .into_iter()
        .filter(|plate| *plate != Plate::Cover)
        .map(|plate| (format!("stage-{}", plate.name()), stage_label(plate, words)));
    flat.chain(stages.map(named(DrawingView::Stage))).collect()
}

/// A short name for a stage drawing; its caption comes with the drawing.
fn stage_label(plate: Plate, words: &Words) -> String {
    words.term(&format!("form-plate-{}", plate.name()))
}
