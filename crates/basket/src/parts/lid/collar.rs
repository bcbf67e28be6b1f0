//! What holds a lid in its place that lies flush on the rim: a ring in its own rim that reaches into the basket's.

use std::f64::consts::TAU;

use super::rims::{edge, mouth};
use crate::form::Across;
use crate::measure::Length;
use crate::parts::vessel::Vessel;
use crate::stock::Material;

/// By how much two rims may differ that a hand feels as flush (common practice: 1/32 in).
pub const FLUSH: Length = Length::inches(1.0 / 32.0);

/// A ring within the rim of the lid.
#[derive(Clone, Debug, PartialEq)]
pub struct Collar {
    /// What it is bent from.
    pub stock: Material,
    /// Length to cut, with the lap.
    pub length: Length,
    /// The lap.
    pub lap: Length,
    /// From edge to edge over it.
    pub outside: Across,
    /// How far it reaches into the basket.
    pub down: Length,
    /// How far the lid's lashed rim stands out over the basket's; negative where it stands back.
    pub proud: Length,
}

impl Collar {
    /// A collar with so much room in the basket's opening, as far as the lid's own lets it, and its girth over 2π.
    pub(crate) fn of(body: &Vessel, lid: &Vessel, stock: Material, room: Length) -> (Self, Length) {
        let outside = (mouth(body) - room).min(mouth(lid)).max(Length::ZERO);
        let lap = lid.rim().inner.scarf.lap;
        // Its flat side lies outward, against the rim.
        let middle = (outside - stock.centroid()).max(Length::ZERO);
        let collar = Self {
            length: middle * TAU + lap,
            lap,
            outside: body.rim_level(outside).across(),
            down: stock.width / 2.0,
            proud: edge(lid) - edge(body),
            stock,
        };
        (collar, outside)
    }
}
