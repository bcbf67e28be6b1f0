//! What to buy for kits and orders: first what lies on the shelf, then the coils, hanks and boxes that cost
//! least, or lengths by the running foot where those cost less, and when to order them.

mod bought;
mod by_length;
mod due;
mod need;
mod offers;
mod timing;
mod units;

use std::ops::ControlFlow;

use basket::Length;
use jiff::civil::Date;
use rust_decimal::Decimal;

use crate::cutting::{CuttingError, Job, Plan, Progress, Stock, solve};

pub use bought::Bought;
pub use due::Due;
pub use need::{Need, needs};
pub use offers::{LengthUnit, Offer, usual_offers};
pub use timing::Timing;

use units::Cheapest;

/// Ends that are shorter are waste (common practice: a hand's length).
const WORTH_KEEPING: Length = Length::mm(150.0);

/// Strands, or pieces used whole, that lie on the shelf.
#[derive(Clone, Debug, PartialEq)]
pub struct Lot {
    /// What it is called on the shelf; what is cut from it is booked under this.
    pub name: String,
    /// Material by the name under which a pattern asks for it.
    pub material: String,
    /// Colour; `natural` where it is not dyed.
    pub colour: String,
    /// Length of one strand; none for pieces that are used whole.
    pub length: Option<Length>,
    /// How many there are.
    pub count: u32,
}

/// What is reckoned with.
pub struct Terms<'t> {
    /// What lies on the shelf.
    pub shelf: &'t [Lot],
    /// What can be bought; materials that none offers are bought as the catalogue has them, without price.
    pub offers: &'t [Offer],
    /// What is lost at each cut.
    pub kerf: Length,
}

/// What one material in one colour takes.
#[derive(Clone, Debug, PartialEq)]
pub struct Purchase {
    /// What is needed.
    pub need: Need,
    /// What it is cut from: lots of the shelf, then what is bought, strands that are ordered by length last.
    /// Empty for pieces used whole.
    pub job: Job,
    /// The lots that the first stocks of the job are.
    pub lots: Vec<Lot>,
    /// Which pieces come from which strand; none for pieces used whole.
    pub plan: Option<Plan>,
    /// How many pieces used whole are taken from the shelf.
    pub whole_from_shelf: u32,
    /// What to buy.
    pub buy: Vec<Bought>,
    /// What they cost; none where a price is not known.
    pub cost: Option<Decimal>,
    /// Strands, or pieces used whole, of what is bought that stay whole.
    pub spare: u32,
    /// Last day to order, for the first class or order that needs it.
    pub order_by: Option<Date>,
    /// Why it cannot be bought, where it cannot.
    pub fault: Option<CuttingError>,
}

/// What all needs take, in their order. `watch` may break a search off; its plan is then not proven best.
pub fn buy(
    needs: &[Need],
    terms: &Terms,
    watch: &mut dyn FnMut(Progress) -> ControlFlow<()>,
) -> Vec<Purchase> {
    needs.iter().map(|need| purchase(need, terms, watch)).collect()
}

fn purchase(need: &Need, terms: &Terms, watch: &mut dyn FnMut(Progress) -> ControlFlow<()>) -> Purchase {
    let is_meant = |material: &str, colour: &str| need.material.is_called(material) && need.colour == colour;
    let lots: Vec<Lot> = terms
        .shelf
        .iter()
        .filter(|lot| {
            is_meant(&lot.material, &lot.colour) && lot.length.is_some() == need.is_cut() && lot.count > 0
        })
        .cloned()
        .collect();
    let is_offered =
        |offer: &&Offer| is_meant(&offer.material, &offer.colour) && (need.is_cut() || !offer.is_by_length());
    let own: Vec<Offer> = terms.offers.iter().filter(is_offered).cloned().collect();
    let offers = if own.is_empty() { usual_offers(&need.material, &need.colour) } else { own };
    let mut purchase = Purchase {
        need: need.clone(),
        job: Job { stocks: Vec::new(), pieces: need.pieces.clone(), kerf: terms.kerf },
        lots,
        plan: None,
        whole_from_shelf: 0,
        buy: Vec::new(),
        cost: Some(Decimal::ZERO),
        spare: 0,
        order_by: None,
        fault: None,
    };
    if need.is_cut() {
        purchase.cut(&offers, watch);
    } else {
        purchase.take_whole(&offers);
    }
    if purchase.fault.is_some() {
        purchase.cost = None;
    } else if !purchase.buy.is_empty() {
        purchase.cost = purchase.buy.iter().map(Bought::cost).sum();
        purchase.order_by = need.timings.iter().filter_map(|timing| timing.order_by(need.is_dyed())).min();
    }
    purchase
}

impl Purchase {
    /// From lots of the shelf, which cost nothing, and as few bought strands as can be.
    fn cut(&mut self, offers: &[Offer], watch: &mut dyn FnMut(Progress) -> ControlFlow<()>) {
        let on_shelf = |lot: &Lot| Some(Stock { length: lot.length?, count: Some(lot.count), cost: 0 });
        self.job.stocks = self.lots.iter().filter_map(on_shelf).collect();
        let (by_length, units): (Vec<&Offer>, Vec<&Offer>) =
            offers.iter().partition(|offer| offer.is_by_length());
        let mut lengths: Vec<Length> = units.iter().filter_map(|offer| offer.length).collect();
        if units.is_empty() {
            lengths.extend(self.strand_by_length());
        }
        lengths.sort_by(|a, b| b.to_mm().total_cmp(&a.to_mm()));
        lengths.dedup();
        self.job.stocks.extend(lengths.iter().map(|length| Stock { length: *length, count: None, cost: 1 }));
        match solve(&self.job, watch) {
            Ok(mut plan) => {
                for (place, length) in lengths.iter().enumerate() {
                    let stock = self.lots.len() + place;
                    let of_length: Vec<&Offer> =
                        units.iter().copied().filter(|offer| offer.length == Some(*length)).collect();
                    let runs = by_length::choose((&self.job, &plan, stock), &of_length, &by_length);
                    let wanted = plan.opened(stock);
                    self.order(wanted - runs.as_ref().map_or(0, by_length::Chosen::strands), &of_length);
                    self.buy.extend(runs.map(|runs| runs.order(&mut self.job, &mut plan)));
                }
                plan.sort();
                self.plan = Some(plan);
            }
            Err(fault) => self.fault = Some(fault),
        }
    }

    /// The longest strand that is looked for where material is sold by length alone: the catalogue's, or the
    /// longest piece.
    fn strand_by_length(&self) -> Option<Length> {
        let pieces = self.need.pieces.iter().map(|piece| piece.length);
        pieces.chain(self.need.material.put_up.strand).reduce(Length::max)
    }

    fn take_whole(&mut self, offers: &[Offer]) {
        let wanted = self.need.whole;
        let there = self.lots.iter().fold(0_u32, |sum, lot| sum.saturating_add(lot.count));
        self.whole_from_shelf = there.min(wanted);
        self.order(wanted - self.whole_from_shelf, &offers.iter().collect::<Vec<_>>());
    }

    fn order(&mut self, wanted: u32, offers: &[&Offer]) {
        let units = Cheapest::up_to(wanted, offers).units(wanted);
        let whole =
            |(offer, count): (&Offer, u32)| Bought { offer: offer.clone(), count, lengths: Vec::new() };
        let bought: Vec<Bought> = units.into_iter().map(whole).collect();
        let got: u32 = bought.iter().map(Bought::strands).sum();
        self.spare = self.spare.saturating_add(got.saturating_sub(wanted));
        self.buy.extend(bought);
    }

    /// The lots of the shelf from which something is taken, and how much.
    pub fn taken(&self) -> Vec<(&Lot, u32)> {
        let mut whole = self.whole_from_shelf;
        let taken = self.lots.iter().enumerate().map(|(place, lot)| {
            let taken = self.plan.as_ref().map_or_else(|| whole.min(lot.count), |plan| plan.opened(place));
            whole -= if self.plan.is_some() { 0 } else { taken };
            (lot, taken)
        });
        taken.filter(|(_, taken)| *taken > 0).collect()
    }

    /// What the material that is used costs when it is bought anew: of what is bought the share that does
    /// not stay whole. None where a price is not known.
    pub fn replacement(&self) -> Option<Decimal> {
        let (by_length, units): (Vec<&Bought>, Vec<&Bought>) =
            self.buy.iter().partition(|bought| bought.is_by_length());
        let got: u32 = units.iter().map(|bought| bought.strands()).sum();
        if got == 0 {
            return self.cost;
        }
        let of_units: Decimal = units.into_iter().map(Bought::cost).sum::<Option<Decimal>>()?;
        let of_lengths: Decimal = by_length.into_iter().map(Bought::cost).sum::<Option<Decimal>>()?;
        let used = Decimal::from(got.saturating_sub(self.spare));
        of_units.checked_mul(used)?.checked_div(Decimal::from(got))?.checked_add(of_lengths)
    }

    /// Ends that are worth keeping, longest first: what goes back on the shelf after the cutting.
    pub fn offcuts(&self) -> Vec<Length> {
        let ends = self.plan.iter().flat_map(|plan| &plan.strands).map(|strand| strand.left);
        let mut ends: Vec<Length> = ends.filter(|left| *left >= WORTH_KEEPING).collect();
        ends.sort_by(|a, b| b.to_mm().total_cmp(&a.to_mm()));
        ends
    }
}
