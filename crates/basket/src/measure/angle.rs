//! An angle in radians.

use serde::{Serialize, Serializer};

/// An angle, kept in radians.
#[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd)]
pub struct Angle(f64);

impl Angle {
    /// An angle in radians.
    pub const fn radians(radians: f64) -> Self {
        Self(radians)
    }
    /// An angle in degrees.
    pub const fn degrees(degrees: f64) -> Self {
        Self(degrees.to_radians())
    }
    /// In radians.
    pub const fn to_radians(self) -> f64 {
        self.0
    }
    /// In degrees.
    pub const fn to_degrees(self) -> f64 {
        self.0.to_degrees()
    }
}

impl Serialize for Angle {
    /// Degrees, to the ten-thousandth.
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.serialize_f64((self.to_degrees() * 10_000.0).round() / 10_000.0)
    }
}
