//! Which pictures there are of a basket.

use basket::Basket;
use basket::steps::Stage;
use drawings::stages::{Plate, plates};
use words::Words;

use crate::bench::api::{DrawingName, DrawingView, Word};
use crate::bench::draw;

/// The stages by their names in requests, in making order.
const STAGES: [(&str, Stage); 12] = [
    ("prepared", Stage::Prepared),
    ("base-on-mould", Stage::BaseOnMould),
    ("staves-set", Stage::StavesSet),
    ("first-rows", Stage::FirstRows),
    ("half-woven", Stage::HalfWoven),
    ("woven", Stage::Woven),
    ("ears-set", Stage::EarsSet),
    ("rim-clamped", Stage::RimClamped),
    ("pinned", Stage::Pinned),
    ("lashed", Stage::Lashed),
    ("handled", Stage::Handled),
    ("finished", Stage::Finished),
];

/// The stage of this name.
pub(crate) fn stage_named(name: &str) -> Option<Stage> {
    STAGES.iter().find(|(known, _)| *known == name).map(|(_, stage)| *stage)
}

/// The stages that a basket passes through, from the bare mould on.
pub(crate) fn stages(basket: &Basket, words: &Words) -> Vec<Word> {
    let passed = |stage: Stage| match stage {
        Stage::EarsSet => basket.ears.is_some(),
        Stage::Handled => basket.handle.is_some(),
        _ => true,
    };
    let stages = STAGES.iter().filter(|(_, stage)| passed(*stage));
    let label = |stage| match stage {
        Stage::Prepared => words.term("form-stage-bare-mould"),
        _ => words.name(stage),
    };
    stages.map(|(name, stage)| Word { word: (*name).to_owned(), label: label(*stage) }).collect()
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
