//! The way of an upright up the wall, where it does not keep to its place in the round.

use crate::measure::{Angle, Length};

/// The path of one upright from its foot to the rim.
#[derive(Clone, Debug, PartialEq)]
pub struct Path {
    /// How far round it has come from the place of its foot, in shares of the way round: at even steps from foot
    /// to rim.
    pub(in crate::parts) aside: Vec<f64>,
    /// How far it leans from square to the foot on its way from foot to rim; positive toward higher numbers.
    pub lean: Angle,
    /// How much its edges would be strained if it were held straight up: `w·κ/2`, with the bend `κ` of that
    /// line in the wall's own plane (differential geometry). Nil where a flat strip lies so by itself.
    pub strain: f64,
    /// How much longer it is up to the rim than the way along the wall.
    pub longer: Length,
}

impl Path {
    /// How far round it has come at a share of the way to the rim; beyond that it runs on straight.
    pub(super) fn aside_at(&self, share: f64) -> f64 {
        let steps = self.aside.len().saturating_sub(1);
        let step = share.max(0.0) * steps as f64;
        let below = (step as usize).min(steps.saturating_sub(1));
        match self.aside.get(below..below + 2) {
            Some([from, to]) => from + (to - from) * (step - below as f64),
            _ => 0.0,
        }
    }
}
