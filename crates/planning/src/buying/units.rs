//! Which units to buy for a number of strands.

use rust_decimal::Decimal;

use super::offers::Offer;

/// Strands for which every choice is tried; beyond, the best buy alone is taken.
const MOST: u32 = 20_000;

/// The units that together hold at least what is wanted, at the least price; at the same price those that
/// leave less. Where a price is not known, as little as possible, in as few units as possible.
pub struct Cheapest<'o> {
    offers: Vec<&'o Offer>,
    /// For each number of strands the least worth, and the offer that is bought last.
    best: Vec<(Worth, Option<usize>)>,
}

impl<'o> Cheapest<'o> {
    /// For so many strands and fewer.
    pub fn up_to(most: u32, offers: &[&'o Offer]) -> Self {
        let offers: Vec<&Offer> = offers.iter().copied().filter(|offer| offer.holds > 0).collect();
        let mut best: Vec<(Worth, Option<usize>)> = vec![(Worth::default(), None)];
        for strands in 1..=most.min(MOST) {
            let ways = offers.iter().enumerate().filter_map(|(place, offer)| {
                let (before, _) = best.get(strands.saturating_sub(offer.holds) as usize)?;
                Some((before.plus(offer, &offers), Some(place)))
            });
            let least = ways.min_by(|(a, _), (b, _)| a.partial_cmp(b).unwrap_or(std::cmp::Ordering::Equal));
            let Some(least) = least else { break };
            best.push(least);
        }
        Self { offers, best }
    }

    /// The units for so many strands; none where there is nothing to buy.
    pub fn units(&self, wanted: u32) -> Vec<(&'o Offer, u32)> {
        if wanted as usize >= self.best.len() {
            return self.bulk(wanted).into_iter().collect();
        }
        let mut counts = vec![0_u32; self.offers.len()];
        let mut left = wanted;
        while let Some((_, Some(place))) = self.best.get(left as usize).filter(|_| left > 0) {
            counts.iter_mut().skip(*place).take(1).for_each(|count| *count += 1);
            left = left.saturating_sub(self.offers.get(*place).map_or(left, |offer| offer.holds));
        }
        self.offers.iter().copied().zip(counts).filter(|(_, count)| *count > 0).collect()
    }

    /// What they cost, where all prices are known.
    pub fn price(&self, wanted: u32) -> Option<Decimal> {
        match self.best.get(wanted as usize) {
            Some((worth, _)) => Some(worth.0),
            None => self.bulk(wanted).and_then(|(offer, count)| offer.cost(count)),
        }
    }

    fn bulk(&self, wanted: u32) -> Option<(&'o Offer, u32)> {
        let each =
            |offer: &Offer| offer.price.unwrap_or(Decimal::from(offer.holds)) / Decimal::from(offer.holds);
        let best = self.offers.iter().copied().min_by_key(|offer| each(offer));
        best.map(|offer| (offer, wanted.div_ceil(offer.holds)))
    }
}

/// Price, then what is held, then units.
#[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd)]
struct Worth(Decimal, u64, u32);

impl Worth {
    fn plus(&self, offer: &Offer, offers: &[&Offer]) -> Self {
        let priced = offers.iter().all(|offer| offer.price.is_some());
        let price = offer.price.filter(|_| priced).unwrap_or_default();
        Self(self.0.saturating_add(price), self.1 + u64::from(offer.holds), self.2 + 1)
    }
}
