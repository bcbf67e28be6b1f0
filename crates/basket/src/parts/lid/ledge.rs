//! The ledge inside a basket's wall, on which a lid that drops in lies.

use std::f64::consts::TAU;

use crate::form::Across;
use crate::measure::Length;
use crate::parts::vessel::Vessel;
use crate::stock::Material;

/// How far the lid's rim lies on the ledge at least, pushed to the other side (common practice: 1/8 in).
pub const LEAST_OVERLAP: Length = Length::inches(0.125);
/// More rings side by side than a ledge is made of.
const MOST_RINGS: u32 = 3;

/// A ring, or some within each other, inside the wall below the inner hoop.
#[derive(Clone, Debug, PartialEq)]
pub struct Ledge {
    /// What it is bent from.
    pub stock: Material,
    /// Lengths to cut, the outermost ring first, with the lap.
    pub rings: Vec<Length>,
    /// The lap.
    pub lap: Length,
    /// Its lower edge, along the wall.
    pub along: Length,
    /// How far the lid's rim lies on it, where the lid is pushed to the other side.
    pub overlap: Length,
    /// From edge to edge within it.
    pub inside: Across,
}

impl Ledge {
    /// The ledge below the inner hoop for a lid that reaches so far out.
    pub(crate) fn of(body: &Vessel, stock: Material, edge: Length, clearance: Length) -> Self {
        let rim = body.rim();
        let along = (rim.along - stock.width).max(Length::ZERO);
        // Weavers touch the form, and the outermost ring lies against them.
        let wall = body.form.girth(along + stock.width / 2.0, Length::ZERO) / TAU;
        let reach = edge - clearance.max(Length::ZERO);
        let thickness = stock.thickness.max(Length::mm(0.1));
        let wanted = ((wall - reach + LEAST_OVERLAP) / thickness).ceil().clamp(1.0, f64::from(MOST_RINGS));
        let count = wanted as u32;
        let lap = rim.inner.scarf.lap;
        let ring = |number: u32| {
            // Flat sides outward and inward by turns, so that two rings lie flat on each other.
            let outside = wall - thickness * f64::from(number);
            let centroid =
                if number.is_multiple_of(2) { stock.centroid() } else { thickness - stock.centroid() };
            ((outside - centroid) * TAU).max(Length::ZERO) + lap
        };
        let inner = wall - thickness * f64::from(count);
        Self {
            rings: (0..count).map(ring).collect(),
            lap,
            along,
            overlap: reach - inner,
            inside: body.form.across_of_girth(inner.max(Length::ZERO) * TAU),
            stock,
        }
    }
}
