//! Staves that lean, and strips that would not lie flat.

use super::case::Case;
use super::finding::{Finding, Grade};
use super::write;
use crate::measure::Angle;
use crate::message::Value;
use crate::pattern::{LevelsKind, Spacing, Word as _, keys};
use crate::piece::Piece;
use crate::uprights::Path;

/// From this on an eye sees that a stave leans beside its neighbours' course (common practice: 1/16 in on 1 1/4 in).
const LEAN_SEEN: Angle = Angle::degrees(3.0);
/// Up to this strain of its edges a strip lies flat (an assumption; a stave of 14 mm may bend in its own plane round
/// 1.4 m).
const LIES_FLAT: f64 = 0.005;

pub(super) fn check(case: &Case<'_>) -> Vec<Finding> {
    [lean(case), strained(case)].into_iter().flatten().collect()
}

/// Staves that lean so that it is seen.
fn lean(case: &Case<'_>) -> Option<Finding> {
    let uprights = case.basket.body.uprights();
    let most = uprights.most_lean();
    (most > LEAN_SEEN).then(|| {
        let lean = |path: &Path| path.lean.to_radians().abs() > LEAN_SEEN.to_radians();
        let other = match case.basket.body.staves().spacing {
            Spacing::Rim => Spacing::Foot,
            Spacing::Foot => Spacing::Rim,
        };
        Finding::new(Grade::Care, "staves-lean", Piece::Uprights)
            .measured(Value::Angle(most), Value::Angle(LEAN_SEEN))
            .arg("staves", Value::runs(&uprights.numbers_of(lean)))
            .remedy(keys::staves::SPACING.path, format!("\"{}\"", other.word()))
    })
}

/// Staves that would be strained if they were held straight up.
fn strained(case: &Case<'_>) -> Option<Finding> {
    let uprights = case.basket.body.uprights();
    let most = uprights.paths.iter().fold(0.0, |most: f64, path| most.max(path.strain));
    (most > LIES_FLAT).then(|| {
        // The strain grows evenly with the width.
        let width = uprights.width * (LIES_FLAT / most);
        Finding::new(Grade::Care, "staves-strained", Piece::Uprights)
            .measured(Value::Percent(most), Value::Percent(LIES_FLAT))
            .arg("staves", Value::runs(&uprights.numbers_of(|path| path.strain > LIES_FLAT)))
            .remedy(keys::staves::WIDTH.path, write::at_most(width, case.units()))
            .remedy(keys::mould::LEVELS.path, format!("\"{}\"", LevelsKind::Even.word()))
    })
}
