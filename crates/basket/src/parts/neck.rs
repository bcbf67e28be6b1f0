//! Where a wall is narrowest, and whether what stands there finds room.

use std::f64::consts::TAU;

use crate::form::{Form, Spot};
use crate::measure::Length;
use crate::rim::Rim;
use crate::uprights::Uprights;

/// A wall where it is narrowest between its foot and the top of its rim.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Neck {
    /// The place on the form.
    pub spot: Spot,
    /// Radius of the uprights' inner faces there.
    pub radius: Length,
    /// The radius that what stands there needs: the uprights side by side, each no wider than it is thick
    /// (shaved narrower it breaks; common practice), and the inner hoop inside them.
    pub needed: Length,
}

impl Neck {
    /// The neck of a wall with these uprights and this rim.
    pub fn of(form: &Form, uprights: &Uprights, rim: &Rim) -> Self {
        let spot = form.narrowest(rim.along + rim.height);
        let side_by_side = uprights.thickness * f64::from(uprights.count) / TAU;
        Self {
            spot,
            radius: spot.radius + uprights.standing.at(spot.along),
            needed: side_by_side.max(rim.inner.stock.thickness),
        }
    }

    /// Whether the wall closes: no basket comes of it.
    pub fn closes(&self) -> bool {
        self.radius < self.needed
    }
}
