//! Lengths and angles as the file holds them.

use basket::{Angle, Length};
use serde::Serialize;

/// A length in millimetres, to the micrometre.
#[derive(Clone, Copy, Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema), schemars(inline))]
pub(crate) struct Mm(#[cfg_attr(test, schemars(with = "f64"))] Length);

/// An angle in degrees.
#[derive(Clone, Copy, Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema), schemars(inline))]
pub(crate) struct Degrees(#[cfg_attr(test, schemars(with = "f64"))] Angle);

impl From<&Length> for Mm {
    fn from(length: &Length) -> Self {
        Self(*length)
    }
}
impl From<Length> for Mm {
    fn from(length: Length) -> Self {
        Self(length)
    }
}
impl From<&Angle> for Degrees {
    fn from(angle: &Angle) -> Self {
        Self(*angle)
    }
}
