//! Which pictures there are of a basket.

use basket::Basket;
use basket::steps::Stage;
use drawings::stages::{Plate, plates};
use words::Words;

use crate::bench::api::{DrawingName, DrawingView, Word};
use crate::bench::draw;

/// The stages that a basket passes through, from the bare mould on.
pub(crate) fn stages(basket: &Basket, words: &Words) -> Vec<Word> {
    let word = |stage: Stage| Word { word: stage.name().to_owned(), label: stage_name(stage, basket, words) };
    basket.stages().into_iter().map(word).collect()
}

/// What a stage is called, on the slider as on its drawing; without ears, the ends of a handle are set.
fn stage_name(stage: Stage, basket: &Basket, words: &Words) -> String {
    match stage {
        Stage::EarsSet if basket.ears.is_none() => words.term("form-plate-handle-set"),
        _ => words.name(stage),
    }
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
        .map(|plate| (format!("stage-{}", plate.name()), plate_name(plate, basket, words)));
    flat.chain(stages.map(named(DrawingView::Stage))).collect()
}

/// A short name for a drawing of the making; its caption comes with the drawing.
fn plate_name(plate: Plate, basket: &Basket, words: &Words) -> String {
    match Stage::named(plate.name()) {
        Some(stage) => stage_name(stage, basket, words),
        None => words.term(&format!("form-plate-{}", plate.name())),
    }
}
