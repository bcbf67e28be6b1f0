//! What every check looks at, and how it looks for better stock.

use super::write;
use crate::basket::Basket;
use crate::measure::Length;
use crate::pattern::{Pattern, Units};
use crate::steps::Step;
use crate::stock::{Catalogue, Material};

/// Differences smaller than this come from arithmetic, not from the maker.
const HAIR: Length = Length::mm(1e-6);

/// Comparing a measured length with its limit; a length on its limit is within it.
pub(super) trait Measured {
    /// Larger than the limit.
    fn exceeds(self, limit: Length) -> bool;
    /// Smaller than the limit.
    fn falls_short_of(self, limit: Length) -> bool;
}

impl Measured for Length {
    fn exceeds(self, limit: Length) -> bool {
        self > limit + HAIR
    }
    fn falls_short_of(self, limit: Length) -> bool {
        self < limit - HAIR
    }
}

/// The pattern, the basket it gave, and the stock there is.
pub(super) struct Case<'a> {
    pub(super) pattern: &'a Pattern,
    pub(super) catalogue: &'a Catalogue,
    pub(super) basket: &'a Basket,
    pub(super) steps: &'a [Step],
}

impl Case<'_> {
    pub(super) fn units(&self) -> Units {
        self.pattern.units
    }

    /// The materials of the same kind that serve, written for a pattern: the one nearest in width to
    /// what is used now.
    pub(super) fn stock_like(&self, now: &Material, serves: impl Fn(&Material) -> bool) -> Option<String> {
        self.catalogue
            .materials
            .iter()
            .filter(|other| other.kind == now.kind && other.name != now.name && serves(other))
            .min_by(|a, b| {
                let distance = |material: &Material| (material.width - now.width).abs().to_mm();
                distance(a).total_cmp(&distance(b))
            })
            .map(|material| write::name(&material.name))
    }

    /// Width of the stock that makes the rim.
    pub(super) fn rim_width(&self) -> Length {
        self.basket.body.rim().outer.stock.width.max(self.basket.body.rim().inner.stock.width)
    }

    /// Width of a stave at the middle of the rim.
    pub(super) fn stave_width_at_rim(&self) -> Length {
        self.basket.body.uprights().width_at(self.basket.body.rim().along + self.rim_width() / 2.0)
    }
}
