//! The catalogue that comes with Stavewright: `catalogue.toml`, read once.

use std::collections::BTreeMap;
use std::sync::Arc;
use std::sync::LazyLock;

use serde::Deserialize;

use super::{Catalogue, Kind, Material, PutUp, Wood};
use crate::measure::{Length, LengthError};

const TEXT: &str = include_str!("catalogue.toml");

static CATALOGUE: LazyLock<Catalogue> = LazyLock::new(|| read(TEXT).unwrap_or_default());

pub(super) fn catalogue() -> &'static Catalogue {
    &CATALOGUE
}

fn read(text: &str) -> Result<Catalogue, toml::de::Error> {
    let book: Book = toml::from_str(text)?;
    Ok(Catalogue {
        materials: book.family.into_iter().flat_map(Family::materials).collect(),
        woods: book.wood,
    })
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Book {
    family: Vec<Family>,
    wood: Vec<Wood>,
}

/// Materials that share how they are soaked, bent and sold.
#[derive(Deserialize)]
#[serde(deny_unknown_fields, rename_all = "kebab-case")]
struct Family {
    kind: Kind,
    put_up: String,
    strand: Option<Written>,
    soak: Option<(f64, f64)>,
    bend: Option<f64>,
    shrink: f64,
    sources: BTreeMap<String, String>,
    sizes: Vec<Size>,
}

/// One size; what it does not say, its family says.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Size {
    name: String,
    #[serde(default)]
    aliases: Vec<String>,
    width: Written,
    /// Left out for round stock.
    thickness: Option<Written>,
    length: Option<Written>,
    holds: Option<Written>,
    strand: Option<Written>,
    soak: Option<(f64, f64)>,
    #[serde(default)]
    sources: BTreeMap<String, String>,
}

impl Family {
    fn materials(self) -> Vec<Material> {
        let Self { kind, put_up, strand, soak, bend, shrink, sources, sizes } = self;
        let material = |size: Size| Material {
            name: size.name,
            aliases: size.aliases,
            kind,
            width: size.width.0,
            thickness: size.thickness.unwrap_or(size.width).0,
            length: size.length.map(|length| length.0),
            put_up: PutUp {
                unit: put_up.clone(),
                length: size.holds.map(|holds| holds.0),
                strand: size.strand.or(strand).map(|strand| strand.0),
            },
            soak_minutes: size.soak.or(soak),
            bend_limit: bend,
            shrink,
            sources: Arc::new(sources.clone().into_iter().chain(size.sources).collect()),
        };
        sizes.into_iter().map(material).collect()
    }
}

/// A length as makers write it.
#[derive(Clone, Copy, Deserialize)]
#[serde(try_from = "String")]
struct Written(Length);

impl TryFrom<String> for Written {
    type Error = LengthError;
    fn try_from(text: String) -> Result<Self, LengthError> {
        Length::parse(&text, None).map(Self)
    }
}

impl Catalogue {
    /// The catalogue that comes with Stavewright. Each figure has its source beside it.
    pub fn built_in() -> &'static Self {
        catalogue()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_built_in_catalogue_reads() {
        let catalogue = read(TEXT).map_err(|error| error.to_string());
        assert_eq!(catalogue.as_ref(), Ok(super::catalogue()));
        assert_eq!(super::catalogue().materials.len(), TEXT.matches("{ name = ").count());
        assert!(super::catalogue().materials.len() > 60);
    }
}
