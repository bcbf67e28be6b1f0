//! Plans of classes: kits files and class files of the folder, and what they come to.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use super::{Edit, ItemText, PaperWord, Problem, ShelfChange, UnitsWord};

/// What kind of plan a file is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(rename_all = "lowercase")]
pub(crate) enum PlanKind {
    /// Who makes what, for kits, buying, cutting and prices.
    Kits,
    /// Who comes when, for the plan of a class.
    Class,
}

/// A plan in the folder.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct PlanName {
    /// Name of the file without `.toml`.
    pub(crate) name: String,
    /// Its title.
    pub(crate) title: String,
    /// What kind it is.
    pub(crate) kind: PlanKind,
}

/// A plan with changes to be made in it, in order, all or none.
#[derive(Clone, Debug, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub(crate) struct PlanRequest {
    /// What kind of plan it is.
    pub(crate) kind: PlanKind,
    /// Its text.
    pub(crate) source: String,
    /// The changes.
    pub(crate) edits: Vec<Edit>,
}

/// A plan as it stands.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct PlanText {
    /// Its text, with comments and layout kept.
    pub(crate) source: String,
    /// All that is written in it, by its keys.
    #[cfg_attr(test, ts(type = "unknown"))]
    #[schema(value_type = Object)]
    pub(crate) values: serde_json::Value,
    /// What keeps it from being planned.
    pub(crate) problems: Vec<Problem>,
}

/// A plan to be worked out.
#[derive(Clone, Debug, Serialize, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub(crate) struct PlanOrder {
    /// What kind of plan it is.
    pub(crate) kind: PlanKind,
    /// Its text.
    pub(crate) source: String,
    /// Whether its sheets are wanted, or what is shown of it.
    pub(crate) sheets: bool,
    /// Seconds after which the best that was found is taken.
    pub(crate) seconds: u32,
    /// Other kits files of the folder, by name without `.toml`, that are bought and cut for together with it.
    #[serde(default)]
    pub(crate) plans: Vec<String>,
    /// Orders that are bought and cut for together with it.
    #[serde(default)]
    pub(crate) orders: Vec<String>,
    /// Sheets of labels; those of 4 × 2 in on the paper if left out.
    #[cfg_attr(test, ts(optional = nullable))]
    pub(crate) labels: Option<LabelWord>,
    /// Paper of the sheets; letter for inches and A4 for millimetres if left out.
    #[cfg_attr(test, ts(optional = nullable))]
    pub(crate) paper: Option<PaperWord>,
    /// Language of the answer, such as `en`.
    #[cfg_attr(test, ts(optional = nullable))]
    pub(crate) language: Option<String>,
    /// Units that stand first; the first pattern's own if left out.
    #[cfg_attr(test, ts(optional = nullable))]
    pub(crate) units: Option<UnitsWord>,
}

/// Sheets of labels, by their paper and how many are on it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub(crate) enum LabelWord {
    /// Letter, ten of 4 × 2 in.
    #[serde(rename = "letter-10")]
    Letter10,
    /// Letter, six of 4 × 3 1/3 in.
    #[serde(rename = "letter-6")]
    Letter6,
    /// A4, ten of 4 × 2 in.
    #[serde(rename = "a4-4x2in")]
    A4FourByTwo,
    /// A4, ten of 105 × 57 mm.
    #[serde(rename = "a4-10")]
    A4Ten,
    /// A4, eight of 99.1 × 67.7 mm.
    #[serde(rename = "a4-8")]
    A4Eight,
    /// A4, twelve of 63.5 × 72 mm.
    #[serde(rename = "a4-12")]
    A4Twelve,
}

/// What a plan comes to.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct PlanShown {
    /// Its leaves, in the order in which they are worked with.
    pub(crate) leaves: Vec<PlanLeaf>,
    /// What is booked when all was bought; none where nothing is to be bought.
    pub(crate) bought: Option<PlanBooking>,
    /// What is booked when all was cut; none where not everything lies on the shelf.
    pub(crate) cut: Option<PlanBooking>,
    /// Drawings as SVG.
    pub(crate) pictures: Vec<String>,
}

/// What is booked by one movement.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct PlanBooking {
    /// What is new on the shelf by it.
    pub(crate) items: Vec<ItemText>,
    /// What changes.
    pub(crate) changes: Vec<ShelfChange>,
}

/// A leaf in sections.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct PlanLeaf {
    /// Which: `kits`, `shopping`, `cutting`, `price`, `class`.
    pub(crate) id: String,
    /// Its name, for the reader.
    pub(crate) name: String,
    /// Its sections.
    pub(crate) sections: Vec<LeafSection>,
}

/// A section of a leaf.
#[derive(Clone, Debug, Default, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct LeafSection {
    /// Its heading.
    pub(crate) heading: String,
    /// What is said first, a paragraph each.
    pub(crate) notes: Vec<String>,
    /// Its table.
    pub(crate) table: Option<LeafTable>,
    /// Strands, drawn to one scale.
    pub(crate) strips: Vec<LeafStrip>,
    /// What is said last.
    pub(crate) after: Vec<String>,
}

/// A table.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct LeafTable {
    /// The heads of its columns.
    pub(crate) head: Vec<String>,
    /// Which columns hold figures.
    pub(crate) figures: Vec<bool>,
    /// Its rows.
    pub(crate) rows: Vec<Vec<String>>,
}

/// A strand with the pieces that are cut from it.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct LeafStrip {
    /// How many are cut so, and from what.
    pub(crate) name: String,
    /// Its length in millimetres.
    pub(crate) length_mm: f64,
    /// The pieces in their order.
    pub(crate) pieces: Vec<LeafPiece>,
}

/// A piece on a strand.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct LeafPiece {
    /// Its length in millimetres.
    pub(crate) length_mm: f64,
    /// What stands on it.
    pub(crate) label: String,
}
