//! Which units to buy for a number of strands.

use rust_decimal::Decimal;

use super::offers::Offer;

/// Strands for which every choice is tried; beyond, the best buy alone is taken.
const MOST: usize = 20_000;

/// The units that together hold at least `wanted`, at the least price; at the same price those that leave
/// less. Where a price is not known, as little as possible, in as few units as possible.
pub fn cheapest<'o>(wanted: u32, offers: &[&'o Offer]) -> Vec<(&'o Offer, u32)> {
    let offers: Vec<&Offer> = offers.iter().copied().filter(|offer| offer.holds > 0).collect();
    if wanted == 0 || offers.is_empty() {
        return Vec::new();
    }
    if wanted as usize > MOST {
        return bulk(wanted, &offers);
    }
    // For each number of strands the least worth, and the offer that is bought last.
    let mut best: Vec<(Worth, Option<usize>)> = vec![(Worth::default(), None)];
    for strands in 1..=wanted {
        let ways = offers.iter().enumerate().filter_map(|(place, offer)| {
            let (before, _) = best.get(strands.saturating_sub(offer.holds) as usize)?;
            Some((before.plus(offer, &offers), Some(place)))
        });
        let Some(least) = ways.min_by(|(a, _), (b, _)| a.partial_cmp(b).unwrap_or(std::cmp::Ordering::Equal))
        else {
            return Vec::new();
        };
        best.push(least);
    }
    let mut counts = vec![0_u32; offers.len()];
    let mut left = wanted;
    while let Some((_, Some(place))) = best.get(left as usize).filter(|_| left > 0) {
        counts.iter_mut().skip(*place).take(1).for_each(|count| *count += 1);
        left = left.saturating_sub(offers.get(*place).map_or(left, |offer| offer.holds));
    }
    offers.into_iter().zip(counts).filter(|(_, count)| *count > 0).collect()
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

fn bulk<'o>(wanted: u32, offers: &[&'o Offer]) -> Vec<(&'o Offer, u32)> {
    let each = |offer: &Offer| offer.price.unwrap_or(Decimal::from(offer.holds)) / Decimal::from(offer.holds);
    let best = offers.iter().min_by_key(|offer| each(offer));
    best.map(|offer| (*offer, wanted.div_ceil(offer.holds))).into_iter().collect()
}
