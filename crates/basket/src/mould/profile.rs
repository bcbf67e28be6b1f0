//! The side of a mould as a curve: radius and height by the way along the surface.

use serde::{Serialize, Serializer};

use crate::measure::{Angle, Length};

/// A place on the side of a mould.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
pub struct Spot {
    /// Way along the surface from the base.
    #[serde(rename = "along_mm")]
    pub along: Length,
    /// Height above the base.
    #[serde(rename = "height_mm")]
    pub height: Length,
    /// Radius of the mould; for outlines that are not round, girth / 2π.
    #[serde(rename = "radius_mm")]
    pub radius: Length,
    /// Lean of the wall outward from upright.
    #[serde(rename = "lean_deg")]
    pub lean: Angle,
}

/// The side of a mould.
#[derive(Clone, Debug, PartialEq)]
pub struct Profile {
    spots: Vec<Spot>,
}

impl Profile {
    /// Way along the surface from base to top.
    pub fn length(&self) -> Length {
        self.spots.last().map_or(Length::ZERO, |spot| spot.along)
    }
    /// The place this far along the surface; beyond either end the wall runs on straight.
    pub fn at(&self, along: Length) -> Spot {
        let _ = along;
        self.spots[0]
    }
    /// The way along the surface to this height.
    pub fn along_at_height(&self, height: Length) -> Length {
        height
    }
}

impl Serialize for Profile {
    /// A list of places at even steps along the surface.
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        self.spots.serialize(serializer)
    }
}
