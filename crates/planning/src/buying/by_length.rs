//! Which strands to buy by the running foot or metre, and which in whole units.

use basket::Length;
use rust_decimal::Decimal;

use super::bought::Bought;
use super::offers::Offer;
use super::units::Cheapest;
use crate::cutting::{Job, Plan, Stock, Strand};

/// A strand of the plan, with the units of length that it takes.
type Run = (usize, u32);

/// Strands that are bought by length, all from one offer.
pub struct Chosen<'o> {
    offer: &'o Offer,
    runs: Vec<Run>,
}

/// Of the strands of one stock those that are bought by length: the ones of which least is used, so many that
/// all together cost least. At the same price whole units are bought, of which more is left. Where a price is
/// not known, none is, unless there is no other way.
pub fn choose<'o>(
    (job, plan, stock): (&Job, &Plan, usize),
    units: &[&Offer],
    by_length: &[&'o Offer],
) -> Option<Chosen<'o>> {
    let strands: Vec<(usize, i64)> = plan
        .strands
        .iter()
        .enumerate()
        .filter(|(_, strand)| strand.stock == stock)
        .map(|(place, strand)| (place, used(job, strand)))
        .collect();
    let all = by_length.iter().copied().filter_map(|offer| {
        let unit = offer.length_unit()?.nanometres();
        let in_units = |used: i64| u32::try_from((used + unit - 1) / unit).unwrap_or(u32::MAX);
        let mut runs: Vec<Run> = strands.iter().map(|(place, used)| (*place, in_units(*used))).collect();
        runs.sort_by_key(|(_, units)| *units);
        Some(Chosen { offer, runs })
    });
    if units.is_empty() {
        let by_price = |chosen: &Chosen| {
            let cost = chosen.costs().last().flatten();
            (cost.is_none(), cost)
        };
        return all.filter(|chosen| !chosen.runs.is_empty()).min_by_key(by_price);
    }
    if units.iter().any(|offer| offer.price.is_none()) {
        return None;
    }
    let wanted = strands.len() as u32;
    let whole = Cheapest::up_to(wanted, units);
    let mut least = whole.price(wanted)?;
    let mut best = None;
    for mut chosen in all {
        let costs = chosen.costs().zip(1..=wanted);
        let together = costs.filter_map(|(cost, runs)| {
            Some((cost?.checked_add(whole.price(wanted - runs)?)?, runs as usize))
        });
        if let Some((cost, runs)) = together.min().filter(|(cost, _)| *cost < least) {
            least = cost;
            chosen.runs.truncate(runs);
            best = Some(chosen);
        }
    }
    best
}

/// What is used of a strand with the cuts between its pieces, in the whole nanometres in which pieces fit.
fn used(job: &Job, strand: &Strand) -> i64 {
    let whole = |length: Length| (length.to_mm() * 1e6).round() as i64;
    let pieces = strand.pieces.iter().filter_map(|piece| job.pieces.get(*piece));
    let pieces: i64 = pieces.map(|piece| whole(piece.length)).sum();
    pieces + whole(job.kerf) * (strand.pieces.len() as i64 - 1).max(0)
}

impl Chosen<'_> {
    /// How many strands are bought so.
    pub fn strands(&self) -> u32 {
        self.runs.len() as u32
    }

    /// What the first strand costs, the first two, and so on.
    fn costs(&self) -> impl Iterator<Item = Option<Decimal>> {
        self.runs.iter().scan(0_u32, |sum, (_, units)| {
            *sum = sum.saturating_add(*units);
            Some(self.offer.cost(*sum))
        })
    }

    /// Orders the strands in their lengths, and has the plan cut from strands of just these lengths.
    pub fn order(&self, job: &mut Job, plan: &mut Plan) -> Bought {
        let unit = self.offer.length_unit();
        let first = job.stocks.len();
        for (place, units) in &self.runs {
            let length = unit.map_or(Length::ZERO, |unit| unit.times(*units));
            let known = job.stocks.iter().skip(first).position(|stock| stock.length == length);
            let stock = first + known.unwrap_or(job.stocks.len() - first);
            if known.is_none() {
                job.stocks.push(Stock { length, count: Some(0), cost: 1 });
            }
            if let Some(Stock { count: Some(count), .. }) = job.stocks.get_mut(stock) {
                *count += 1;
            }
            let Some(strand) = plan.strands.get_mut(*place) else { continue };
            let left = length.to_mm() - used(job, strand) as f64 / 1e6 - job.kerf.to_mm();
            strand.stock = stock;
            strand.left = Length::mm(left.max(0.0));
        }
        // Other ways to share the pieces out could round to less; they were not looked for.
        plan.is_shortest = false;
        let lengths: Vec<u32> = self.runs.iter().map(|(_, units)| *units).collect();
        let count = lengths.iter().fold(0_u32, |sum, units| sum.saturating_add(*units));
        Bought { offer: self.offer.clone(), count, lengths }
    }
}
