//! One basket in several sizes, each in the next.

use serde::{Deserialize, Serialize};
use utoipa::ToSchema;

use super::{PlanLeaf, UnitsWord};

/// Which sizes.
#[derive(Clone, Debug, Deserialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub(crate) struct NestRequest {
    /// The pattern.
    pub(crate) source: String,
    /// How far across the moulds are at the top, parted by commas or semicolons; bare numbers are in the
    /// pattern's units.
    pub(crate) sizes: String,
    /// Room that is wanted all round between one basket and the next.
    pub(crate) clearance: String,
    /// Language of the answer, such as `en`.
    #[cfg_attr(test, ts(optional = nullable))]
    pub(crate) language: Option<String>,
    /// Units that stand first; the pattern's own if left out.
    #[cfg_attr(test, ts(optional = nullable))]
    pub(crate) units: Option<UnitsWord>,
}

/// The set.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct NestShown {
    /// The baskets cut through along their length, the smallest first, standing in each other.
    pub(crate) baskets: Vec<NestBasket>,
    /// How each stands in the next.
    pub(crate) rooms: Vec<NestRoom>,
    /// The set as a sheet: its sizes, one cut list for all, what was changed.
    pub(crate) leaf: PlanLeaf,
}

/// A basket of the set.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct NestBasket {
    /// What it is called, such as `5 in`.
    pub(crate) name: String,
    /// Its wall cut through on the right, once round: to the right of the middle, and above the floor of the
    /// largest basket, in mm.
    pub(crate) wall: Vec<[f64; 2]>,
    /// Its rim.
    pub(crate) rim: Vec<[f64; 2]>,
    /// Half of its base.
    pub(crate) base: Vec<[f64; 2]>,
}

/// How one basket stands in the next.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct NestRoom {
    /// Which in which.
    pub(crate) name: String,
    /// Whether there is as much room as is wanted.
    pub(crate) fits: bool,
    /// How much room there is, and where, in a sentence.
    pub(crate) said: String,
    /// Where it is least: above the floor of the largest basket, in mm.
    pub(crate) at_mm: f64,
}
