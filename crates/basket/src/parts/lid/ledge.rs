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

/// Where a ledge of some stock lies.
struct Place {
    /// Its lower edge, along the wall.
    along: Length,
    /// Girth over 2π of the wall there.
    wall: Length,
    /// How far out the lid reaches at least, pushed to the other side.
    reach: Length,
    /// Thickness of a ring.
    thickness: Length,
}

impl Place {
    fn of(body: &Vessel, stock: &Material, edge: Length, clearance: Length) -> Self {
        let along = (body.rim().along - stock.width).max(Length::ZERO);
        Self {
            along,
            // Weavers touch the form, and the outermost ring lies against them.
            wall: body.form.girth(along + stock.width / 2.0, Length::ZERO) / TAU,
            reach: edge - clearance.max(Length::ZERO),
            thickness: stock.thickness.max(Length::mm(0.1)),
        }
    }
}

/// Of some stocks the one of which the fewest rings serve, and of those the thinnest.
pub(crate) fn ledge_stock<'a>(
    stocks: impl Iterator<Item = &'a Material>,
    body: &Vessel,
    (edge, clearance): (Length, Length),
) -> Option<&'a Material> {
    let rings = |stock: &Material| {
        let Place { wall, reach, thickness, .. } = Place::of(body, stock, edge, clearance);
        (((wall - reach + LEAST_OVERLAP) / thickness).ceil().max(1.0), stock.thickness.to_mm())
    };
    stocks.min_by(|a, b| {
        let ((few, thin), (other, thick)) = (rings(a), rings(b));
        few.total_cmp(&other).then(thin.total_cmp(&thick))
    })
}

impl Ledge {
    /// The ledge below the inner hoop for a lid that reaches so far out.
    pub(crate) fn of(body: &Vessel, stock: Material, edge: Length, clearance: Length) -> Self {
        let Place { along, wall, reach, thickness } = Place::of(body, &stock, edge, clearance);
        let wanted = ((wall - reach + LEAST_OVERLAP) / thickness).ceil().clamp(1.0, f64::from(MOST_RINGS));
        let count = wanted as u32;
        let lap = body.rim().inner.scarf.lap;
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
            inside: body.rim_level(inner.max(Length::ZERO)).across(),
            stock,
        }
    }
}
