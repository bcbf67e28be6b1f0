//! What is bought of one offer.

use rust_decimal::Decimal;

use super::offers::Offer;

/// So many units of one offer: whole ones, or a run of them in the lengths that are ordered.
#[derive(Clone, Debug, PartialEq)]
pub struct Bought {
    /// What is bought.
    pub offer: Offer,
    /// How many units.
    pub count: u32,
    /// How many units long each strand is that is ordered by length, the shortest first; none where whole
    /// units are bought.
    pub lengths: Vec<u32>,
}

impl Bought {
    /// What it costs; none where the price is not known.
    pub fn cost(&self) -> Option<Decimal> {
        self.offer.cost(self.count)
    }

    /// Whether it is ordered in lengths.
    pub fn is_by_length(&self) -> bool {
        !self.lengths.is_empty()
    }

    /// Strands, or pieces used whole, that come.
    pub fn strands(&self) -> u32 {
        if self.is_by_length() {
            self.lengths.len() as u32
        } else {
            self.offer.holds.saturating_mul(self.count)
        }
    }

    /// How many strands of which length are ordered by length, in units, the shortest first.
    pub fn in_lengths(&self) -> Vec<(u32, u32)> {
        let alike = self.lengths.chunk_by(|one, other| one == other);
        alike.filter_map(|alike| Some((alike.len() as u32, *alike.first()?))).collect()
    }
}
