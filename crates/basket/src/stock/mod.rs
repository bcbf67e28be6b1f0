//! The catalogue of materials: what reed, cane, splint, pins and rivets measure and how they are sold.

mod built_in;

use std::collections::BTreeMap;
use std::sync::Arc;

use serde::{Deserialize, Serialize, Serializer};

use crate::measure::Length;
use crate::term::Term;

/// What a material is; decides the shape of its section.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Kind {
    /// Round reed (rattan core).
    RoundReed,
    /// Flat reed.
    FlatReed,
    /// Flat oval reed: flat below, rounded above.
    FlatOvalReed,
    /// Half round reed: flat below, a half circle above.
    HalfRoundReed,
    /// Strand (chair) cane, glossy side out.
    ChairCane,
    /// Binder cane, wider than chair cane.
    BinderCane,
    /// Splint of ash, oak or hickory.
    Splint,
    /// Brass pin with a domed head.
    Pin,
    /// Copper rivet.
    Rivet,
    /// Burr or washer for a rivet.
    Burr,
}

impl Kind {
    /// All kinds, in the order of the catalogue.
    pub const ALL: [Self; 10] = [
        Self::RoundReed,
        Self::FlatReed,
        Self::FlatOvalReed,
        Self::HalfRoundReed,
        Self::ChairCane,
        Self::BinderCane,
        Self::Splint,
        Self::Pin,
        Self::Rivet,
        Self::Burr,
    ];

    /// Its name, fit for a file and a command line, such as `flat-oval-reed`.
    pub fn name(self) -> &'static str {
        self.term().trim_start_matches("kind-")
    }

    /// The words for it in a pattern or shelf file.
    pub const fn words(self) -> &'static str {
        match self {
            Self::RoundReed => "round reed",
            Self::FlatReed => "flat reed",
            Self::FlatOvalReed => "flat oval reed",
            Self::HalfRoundReed => "half round reed",
            Self::ChairCane => "chair cane",
            Self::BinderCane => "binder cane",
            Self::Splint => "splint",
            Self::Pin => "pin",
            Self::Rivet => "rivet",
            Self::Burr => "burr",
        }
    }
}

/// How much more strain reed and cane stand over an edge, damp and held down, than in a long bend (from
/// memory, low confidence: cane more than 0.3 against 0.15, soaked and thinned reed 0.2 to 0.25 and more
/// against 0.12; the maker's own test replaces the long bend's figure).
const OVER_AN_EDGE: f64 = 2.2;

/// Where a figure comes from that the maker measured on what lies on the shelf.
const MEASURED: &str = "measured on the shelf";

/// How a material is sold.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct PutUp {
    /// `coil`, `hank`, `half hank`, `box`, `piece`.
    pub unit: String,
    /// How much is in one unit.
    #[serde(rename = "length_mm")]
    pub length: Option<Length>,
    /// The length of one piece in it that a maker may count on.
    #[serde(rename = "strand_mm")]
    pub strand: Option<Length>,
}

/// One material of the catalogue or the maker's shelf.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Material {
    /// The name under which a pattern asks for it.
    pub name: String,
    /// Other names under which a pattern may ask for it.
    pub aliases: Vec<String>,
    /// What it is.
    pub kind: Kind,
    /// Width (diameter of round stock).
    #[serde(rename = "width_mm")]
    pub width: Length,
    /// Thickness (diameter of round stock).
    #[serde(rename = "thickness_mm")]
    pub thickness: Length,
    /// Length of a piece that is used whole (pins, rivets).
    #[serde(rename = "length_mm")]
    pub length: Option<Length>,
    /// How it is sold.
    pub put_up: PutUp,
    /// Shortest and longest usual soak, in minutes.
    pub soak_minutes: Option<(f64, f64)>,
    /// Largest strain `t/(2R)` at which soaked stock bends without breaking.
    pub bend_limit: Option<f64>,
    /// Share of its width that it loses from soaked to dry.
    pub shrink: f64,
    /// Where each figure comes from, by the name of the figure.
    #[serde(serialize_with = "shared")]
    pub sources: Arc<BTreeMap<String, String>>,
}

impl Material {
    /// A material of which no more is known than kind and size; sold by the piece.
    pub fn bare(name: impl Into<String>, kind: Kind, width: Length, thickness: Length) -> Self {
        Self {
            name: name.into(),
            aliases: Vec::new(),
            kind,
            width,
            thickness,
            length: None,
            put_up: PutUp { unit: "piece".to_owned(), length: None, strand: None },
            soak_minutes: None,
            bend_limit: None,
            shrink: 0.0,
            sources: Arc::default(),
        }
    }

    /// The same material as its maker measured it. Of round stock one figure is both.
    #[must_use]
    pub fn measured(&self, width: Option<Length>, thickness: Option<Length>) -> Self {
        let is_round = self.width == self.thickness;
        let [width, thickness] =
            [width.or(thickness.filter(|_| is_round)), thickness.or(width.filter(|_| is_round))];
        let mut sources = BTreeMap::clone(&self.sources);
        let figures = [("width", width), ("thickness", thickness)].into_iter();
        let known = figures.filter(|(_, length)| length.is_some());
        sources.extend(known.map(|(figure, _)| (figure.to_owned(), MEASURED.to_owned())));
        Self {
            width: width.unwrap_or(self.width),
            thickness: thickness.unwrap_or(self.thickness),
            sources: Arc::new(sources),
            ..self.clone()
        }
    }

    /// Whether width or thickness are what its maker measured.
    pub fn is_measured(&self) -> bool {
        ["width", "thickness"]
            .iter()
            .any(|figure| self.sources.get(*figure).is_some_and(|source| source == MEASURED))
    }

    /// Its name and its other names.
    pub fn names(&self) -> impl Iterator<Item = &str> {
        std::iter::once(&self.name).chain(&self.aliases).map(String::as_str)
    }

    /// Whether a maker may mean this material; capitals and doubled spaces do not matter.
    pub fn is_called(&self, name: &str) -> bool {
        self.names().any(|own| {
            let mut words = own.split_whitespace();
            name.split_whitespace().all(|word| words.next().is_some_and(|own| own.eq_ignore_ascii_case(word)))
                && words.next().is_none()
        })
    }

    /// Strain that it stands over an edge, soaked and held down: at the foot of a stave, where a weaver
    /// crosses. None where it is no reed or cane, or nothing is known of its bends.
    pub fn over_an_edge(&self) -> Option<f64> {
        let bends = matches!(
            self.kind,
            Kind::RoundReed
                | Kind::FlatReed
                | Kind::FlatOvalReed
                | Kind::HalfRoundReed
                | Kind::ChairCane
                | Kind::BinderCane
        );
        self.bend_limit.filter(|_| bends).map(|limit| limit * OVER_AN_EDGE)
    }

    /// Distance of the section's centroid from its flat face: `4R/3π` for half round stock
    /// (maths of the half disc), half the thickness for all others.
    pub fn centroid(&self) -> Length {
        match self.kind {
            Kind::HalfRoundReed => self.thickness * (4.0 / (3.0 * std::f64::consts::PI)),
            _ => self.thickness / 2.0,
        }
    }
}

/// A wood for bases: how far it moves across the grain.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Wood {
    /// Name, such as `cherry`.
    pub name: String,
    /// Tangential shrinkage from green to oven dry, as a share.
    pub tangential: f64,
    /// Radial shrinkage from green to oven dry, as a share.
    pub radial: f64,
    /// Where the figures come from.
    pub source: String,
}

/// All materials that a pattern may name.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
pub struct Catalogue {
    /// The materials, in the order of the catalogue.
    pub materials: Vec<Material>,
    /// The woods for bases.
    pub woods: Vec<Wood>,
}

impl Catalogue {
    /// The material of this name; its first name goes before another's second.
    pub fn material(&self, name: &str) -> Option<&Material> {
        let exact = self.materials.iter().find(|material| material.name == name);
        exact.or_else(|| self.materials.iter().find(|material| material.is_called(name)))
    }

    /// The materials of one kind, in the order of the catalogue.
    pub fn of_kind(&self, kind: Kind) -> impl Iterator<Item = &Material> {
        self.materials.iter().filter(move |material| material.kind == kind)
    }

    /// The wood of this name.
    pub fn wood(&self, name: &str) -> Option<&Wood> {
        self.woods.iter().find(|wood| wood.name.eq_ignore_ascii_case(name.trim()))
    }

    /// This catalogue with more materials, which stand first and replace those of the same name.
    #[must_use]
    pub fn with(&self, materials: &[Material]) -> Self {
        let replaced = |old: &&Material| !materials.iter().any(|new| new.name == old.name);
        let rest = self.materials.iter().filter(replaced);
        Self { materials: materials.iter().chain(rest).cloned().collect(), woods: self.woods.clone() }
    }
}

fn shared<T: Serialize, S: Serializer>(value: &Arc<T>, serializer: S) -> Result<S::Ok, S::Error> {
    value.serialize(serializer)
}

impl Term for Kind {
    fn term(self) -> &'static str {
        match self {
            Self::RoundReed => "kind-round-reed",
            Self::FlatReed => "kind-flat-reed",
            Self::FlatOvalReed => "kind-flat-oval-reed",
            Self::HalfRoundReed => "kind-half-round-reed",
            Self::ChairCane => "kind-chair-cane",
            Self::BinderCane => "kind-binder-cane",
            Self::Splint => "kind-splint",
            Self::Pin => "kind-pin",
            Self::Rivet => "kind-rivet",
            Self::Burr => "kind-burr",
        }
    }
}
