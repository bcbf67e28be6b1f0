//! The wall as the staves meet it: their girth at even steps, and the circle of the groove.

use super::foot::Bend;
use super::length::LengthParts;
use super::needs::Needs;
use crate::base::Base;
use crate::form::{Form, Spot};
use crate::measure::Length;
use crate::uprights::Standing;

/// Steps from the base to the top of the rim.
const STEPS: u32 = 48;
/// Places below the touch at which the bend's distance off the mould is asked.
const BEND_STEPS: u32 = 8;

/// Where staves must stand side by side, in mm along the mould; the foot is below its base.
pub(super) struct StandingRoom {
    pub(super) spots: Vec<Spot>,
    /// How far the staves' inner faces stand off the mould.
    pub(super) standing: Standing,
    /// Way along the mould and girth on the middle of the staves there.
    pub(super) girths: Vec<(f64, f64)>,
    /// Girth of the mould itself at the top of the rim.
    pub(super) rim: f64,
    /// How much longer the girth on the staves is there.
    pub(super) rim_more: f64,
    pub(super) foot_along: f64,
    pub(super) edge_along: f64,
    pub(super) top_along: f64,
    pub(super) groove_radius: Length,
    pub(super) edge_radius: Length,
}

impl StandingRoom {
    pub(super) fn of(base: &Base, needs: &Needs<'_>, bend: &Bend, parts: &LengthParts) -> Self {
        let form = needs.form;
        let top = (needs.wall + needs.rim).max(Length::ZERO);
        let spots: Vec<Spot> =
            (0..=STEPS).map(|step| form.profile.at(top * (f64::from(step) / f64::from(STEPS)))).collect();
        let standing = standing(form, needs.behind, bend);
        let middle = |along: Length| standing.at(along) + bend.thickness() / 2.0;
        let girth = |spot: &Spot| form.girth(spot.along, middle(spot.along)).to_mm();
        let girths = spots.iter().map(|spot| (spot.along.to_mm(), girth(spot))).collect();
        let (rim, on_staves) = (form.girth(top, Length::ZERO), form.girth(top, middle(top)));
        Self {
            spots,
            girths,
            rim: rim.to_mm(),
            rim_more: (on_staves - rim).to_mm(),
            standing,
            foot_along: parts.foot_along().to_mm(),
            edge_along: -parts.turn.to_mm(),
            top_along: top.to_mm(),
            groove_radius: base.crowded_radius(),
            edge_radius: base.diameter / 2.0,
        }
    }

    pub(super) fn girth_rim(&self) -> Length {
        Length::mm(self.rim)
    }

    pub(super) fn girth_widest(&self) -> Length {
        Length::mm(self.spots.iter().fold(0.0, |widest, spot| spot.girth().to_mm().max(widest)))
    }
}

/// The rows behind the staves, or the bend at the foot where it stands off further.
fn standing(form: &Form, behind: &Standing, bend: &Bend) -> Standing {
    let below = (0..BEND_STEPS).map(|step| bend.touch * (f64::from(step) / f64::from(BEND_STEPS)));
    let mut places: Vec<Length> = behind.places().chain(below).chain([bend.touch]).collect();
    places.sort_by(|a, b| a.to_mm().total_cmp(&b.to_mm()));
    let off = |along: Length| {
        let spot = form.profile.at(along);
        let square = bend.stand_off_at(spot) - bend.thickness() / 2.0;
        behind.at(along).max(square * libm::cos(spot.lean.to_radians()))
    };
    Standing::new(places.into_iter().map(|along| (along, off(along))).collect())
}
