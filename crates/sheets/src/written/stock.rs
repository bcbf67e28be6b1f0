//! Materials that were measured.

use basket::Material;
use serde::Serialize;

use super::measure::Mm;

/// A material as the maker measured it.
#[derive(Serialize)]
#[cfg_attr(test, derive(schemars::JsonSchema))]
pub(crate) struct OwnMeasure {
    /// Its name in the catalogue.
    material: String,
    /// Its width.
    width_mm: Mm,
    /// Its thickness.
    thickness_mm: Mm,
}

impl From<&Material> for OwnMeasure {
    fn from(material: &Material) -> Self {
        Self {
            material: material.name.clone(),
            width_mm: material.width.into(),
            thickness_mm: material.thickness.into(),
        }
    }
}
