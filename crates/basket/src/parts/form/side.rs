//! The side that a pattern gives to its mould.

use std::f64::consts::TAU;

use super::levels::Levels;
use super::outline::Outline as _;
use super::profile::Profile;
use super::shape::Shape;
use crate::measure::Length;
use crate::pattern::{MouldForm, MouldPattern, Side};

/// The side of the mould that a pattern describes, on a foot of this shape or a round one. Figures that
/// make no shape give a flat or pointed one; all results are finite.
pub(super) fn side(pattern: &MouldPattern, foot: Option<&Shape>, levels: &Levels) -> Profile {
    match &pattern.form {
        MouldForm::Girths(girths) => {
            let places: Vec<_> = girths.iter().map(|girth| (girth.height, girth.girth / TAU)).collect();
            Profile::through(&places)
        }
        MouldForm::Drawn { base, rim, height, side } => {
            let (base, rim) = (*base / 2.0, *rim / 2.0);
            let round = foot.map_or(base, |foot| Length::mm(foot.girth() / TAU));
            let rim = match (levels, foot) {
                (_, None) => rim,
                (Levels::Scaled, Some(_)) => round * (rim / base.max(Length::mm(1e-6))),
                // A wall that lies so far outside a foot that is not round lies as far outside the circle of
                // the foot's girth.
                (Levels::Even | Levels::Widths(_), Some(_)) => round + (rim - base),
            };
            let drawn = match side {
                Side::Straight => Profile::cone(round, round, *height),
                Side::Cone => Profile::cone(round, rim, *height),
                Side::Bowl => Profile::bowl(round, rim, *height),
                Side::Board => Profile::board(round, rim, *height),
            };
            levels.mean(drawn, round)
        }
    }
}
