//! The mould as the staves meet it: its girth at even steps, and the circle of the groove.

use super::Needs;
use super::length::LengthParts;
use crate::base::Base;
use crate::form::Form;
use crate::form::Spot;
use crate::measure::Length;

/// Steps from the base to the top of the rim.
const STEPS: u32 = 48;

/// Where staves must stand side by side, in mm along the mould; the foot is below its base.
pub(super) struct Wall {
    pub(super) spots: Vec<Spot>,
    /// Way along the mould and girth there.
    pub(super) girths: Vec<(f64, f64)>,
    pub(super) foot_along: f64,
    pub(super) edge_along: f64,
    pub(super) top_along: f64,
    pub(super) groove_radius: Length,
    pub(super) edge_radius: Length,
}

impl Wall {
    pub(super) fn of(form: &Form, base: &Base, needs: &Needs<'_>, parts: &LengthParts) -> Self {
        let top = (needs.wall + needs.rim).max(Length::ZERO);
        let spots: Vec<Spot> =
            (0..=STEPS).map(|step| form.profile.at(top * (f64::from(step) / f64::from(STEPS)))).collect();
        let girths = spots.iter().map(|spot| (spot.along.to_mm(), spot.girth().to_mm())).collect();
        Self {
            spots,
            girths,
            foot_along: parts.foot_along().to_mm(),
            edge_along: -parts.turn.to_mm(),
            top_along: top.to_mm(),
            groove_radius: base.groove_radius(),
            edge_radius: base.diameter / 2.0,
        }
    }

    pub(super) fn girth_rim(&self) -> Length {
        Length::mm(self.girths.last().map_or(0.0, |(_, girth)| *girth))
    }

    pub(super) fn girth_widest(&self) -> Length {
        Length::mm(self.girths.iter().fold(0.0, |widest, (_, girth)| girth.max(widest)))
    }
}
