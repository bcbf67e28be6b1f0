//! What the maker measured, in the place of the catalogue's figures.

use basket::{Catalogue, Length, Material};
use serde::{Deserialize, Serialize};

use crate::fault::Fault;
use crate::store::Store;

/// What was measured of a material on the shelf.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Measure {
    /// Material by the name under which a pattern asks for it.
    pub material: String,
    /// Its width in millimetres.
    pub width_mm: Option<f64>,
    /// Its thickness in millimetres.
    pub thickness_mm: Option<f64>,
}

impl Measure {
    /// The catalogue's material with these measures; none where the catalogue has none of this name.
    pub fn of(&self, catalogue: &Catalogue) -> Option<Material> {
        let known = catalogue.material(&self.material)?;
        Some(known.measured(self.width_mm.map(Length::mm), self.thickness_mm.map(Length::mm)))
    }
}

impl Store {
    /// What was measured, a measure for each material: of several items that of which most is there.
    ///
    /// # Errors
    /// What the database says.
    pub fn measures(&self) -> Result<Vec<Measure>, Fault> {
        let mut query = self.connection.prepare_cached(
            "SELECT material, width_mm, thickness_mm FROM items \
             WHERE gone = 0 AND (width_mm IS NOT NULL OR thickness_mm IS NOT NULL) \
             ORDER BY material, count DESC, name",
        )?;
        let read = |row: &rusqlite::Row| {
            Ok(Measure { material: row.get(0)?, width_mm: row.get(1)?, thickness_mm: row.get(2)? })
        };
        let mut measures: Vec<Measure> = query.query_map([], read)?.collect::<Result<_, _>>()?;
        measures.dedup_by(|later, first| later.material == first.material);
        Ok(measures)
    }
}

/// A catalogue with these measures in the place of its own.
pub fn measured(catalogue: &Catalogue, measures: &[Measure]) -> Catalogue {
    let mut own: Vec<Material> = Vec::new();
    for material in measures.iter().filter_map(|measure| measure.of(catalogue)) {
        // Two names of one material are one material.
        if own.iter().all(|there| there.name != material.name) {
            own.push(material);
        }
    }
    catalogue.with(&own)
}
