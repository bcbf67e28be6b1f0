//! Which parts exist at a stage of the making.

use basket::Basket;
use basket::steps::Stage;

/// Rows that make a start, where the first course is longer than a start (common practice).
const START: u32 = 4;

/// How many rows are woven.
pub(super) fn rows(basket: &Basket, stage: Stage) -> u32 {
    let all = basket.weave.rows;
    let first = basket.weave.courses.first().map_or(0, |course| course.rows);
    let start = if first <= START * 2 { first } else { START };
    match stage {
        Stage::Prepared | Stage::BaseOnMould | Stage::StavesSet => 0,
        Stage::FirstRows => start.min(all),
        Stage::HalfWoven => (all / 2).max(start).min(all),
        _ => all,
    }
}

/// Whether the basket is on its mould: until ears and hoops are set, for which there is no room beside
/// it.
pub(super) fn on_mould(stage: Stage) -> bool {
    stage > Stage::Prepared && stage < Stage::EarsSet
}

/// Whether a band still holds the staves.
pub(super) fn banded(stage: Stage) -> bool {
    (Stage::StavesSet..Stage::Woven).contains(&stage)
}

/// How far up the staves reach, along the mould: trimmed level with the hoops, or at full length.
pub(super) fn tips(basket: &Basket, stage: Stage) -> f32 {
    let parts = &basket.staves.length_parts;
    let whole = parts.total() - parts.groove - parts.turn;
    let trimmed = basket.rim.along + basket.rim.height;
    let tips = if stage >= Stage::Pinned { trimmed } else { whole };
    tips.max(basket::Length::mm(1.0)).to_mm() as f32
}
