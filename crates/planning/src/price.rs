//! What a basket, a kit or a seat in a class must cost, worked openly line by line.
//!
//! Money is decimal. Every line is rounded to the cent, half away from zero, and the sums are sums of
//! rounded lines; the price that is asked is rounded up to the maker's own step.

use rust_decimal::{Decimal, RoundingStrategy};

/// What a maker reckons with. Shares are shares of one: 0.1 is ten in a hundred.
#[derive(Clone, Debug, PartialEq)]
pub struct Rates {
    /// What an hour of work is worth.
    pub wage: Decimal,
    /// Rent, light and insurance for one basket or kit.
    pub overhead: Decimal,
    /// Material that is spoilt or left over, as a share of it.
    pub waste: Decimal,
    /// Wear of the mould, or its rent.
    pub mould: Decimal,
    /// Packing and sending one.
    pub packing: Decimal,
    /// What is put on the cost, as a share of it.
    pub margin: Decimal,
    /// The price in the shop for each unit of the wholesale price.
    pub retail: Decimal,
    /// The price is rounded up to a multiple of this; none at zero.
    pub step: Decimal,
}

/// What goes into one basket or kit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Making {
    /// All materials at the price at which they are replaced, own gathering included.
    pub materials: Decimal,
    /// Minutes of work.
    pub minutes: f64,
    /// Minutes of letters, buying and accounts.
    pub office_minutes: f64,
}

/// What a line of the reckoning is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Line {
    /// Materials at replacement cost.
    Materials,
    /// Waste of material.
    Waste,
    /// Hours of work at the wage.
    Labour,
    /// Overhead.
    Overhead,
    /// Mould.
    Mould,
    /// Packing and sending.
    Packing,
    /// All of it.
    Cost,
    /// What is put on the cost.
    Margin,
    /// Price to a shop.
    Wholesale,
    /// Price in the shop.
    Retail,
    /// Teaching, for the whole class.
    Teaching,
    /// Travel, for the whole class.
    Travel,
    /// Room, for the whole class.
    Room,
    /// The share of each fee that the venue keeps.
    Venue,
    /// The kit of one student.
    Kit,
    /// The fee of one student.
    Fee,
}

/// A reckoning: each line with its amount.
#[derive(Clone, Debug, PartialEq)]
pub struct Reckoning(pub Vec<(Line, Decimal)>);

impl Reckoning {
    /// The amount of a line; nothing where there is none.
    pub fn amount(&self, line: Line) -> Decimal {
        self.0.iter().find(|(own, _)| *own == line).map_or(Decimal::ZERO, |(_, amount)| *amount)
    }
}

/// To the cent, half away from zero.
pub fn cents(amount: Decimal) -> Decimal {
    amount.round_dp_with_strategy(2, RoundingStrategy::MidpointAwayFromZero)
}

/// Up to a multiple of the step.
pub fn stepped(amount: Decimal, step: Decimal) -> Decimal {
    let steps = if step > Decimal::ZERO { amount.checked_div(step) } else { None };
    steps.and_then(|steps| steps.ceil().checked_mul(step)).unwrap_or_else(|| cents(amount))
}

/// What work of this many minutes is worth.
pub fn labour(minutes: f64, wage: Decimal) -> Decimal {
    let minutes = Decimal::from_f64_retain(minutes.clamp(0.0, 1e7)).unwrap_or_default();
    cents(wage.saturating_mul(minutes / Decimal::from(60)))
}

/// The price of one basket or kit: materials, labour and overhead, the margin on them, and the shop's price
/// (the rule of a folklife programme's worksheet: wholesale = materials + hours × wage + overhead, retail =
/// twice the wholesale price).
pub fn of_one(making: &Making, rates: &Rates) -> Reckoning {
    let mut lines = vec![
        (Line::Materials, cents(making.materials)),
        (Line::Waste, cents(making.materials.saturating_mul(rates.waste))),
        (Line::Labour, labour(making.minutes + making.office_minutes, rates.wage)),
        (Line::Overhead, cents(rates.overhead)),
        (Line::Mould, cents(rates.mould)),
        (Line::Packing, cents(rates.packing)),
    ];
    let cost = lines.iter().fold(Decimal::ZERO, |sum, (_, amount)| sum.saturating_add(*amount));
    let margin = cents(cost.saturating_mul(rates.margin));
    let wholesale = stepped(cost.saturating_add(margin), rates.step);
    let retail = stepped(wholesale.saturating_mul(rates.retail), rates.step);
    lines.extend([
        (Line::Cost, cost),
        (Line::Margin, margin),
        (Line::Wholesale, wholesale),
        (Line::Retail, retail),
    ]);
    Reckoning(lines)
}

/// The margin, as a share of the cost, at which a target price is reached; none where there is no cost.
pub fn margin_at(target: Decimal, cost: Decimal) -> Option<Decimal> {
    target.checked_sub(cost)?.checked_div(cost)
}

/// What a class costs whoever teaches it.
#[derive(Clone, Debug, PartialEq)]
pub struct Class {
    /// How many students.
    pub students: u32,
    /// Minutes of teaching and preparing.
    pub minutes: f64,
    /// The way there and back, nights away.
    pub travel: Decimal,
    /// Rent of the room.
    pub room: Decimal,
    /// Share of each fee that the venue keeps.
    pub venue: Decimal,
    /// What one kit costs.
    pub kit: Decimal,
}

impl Class {
    /// What is spent however many come.
    pub fn fixed(&self, wage: Decimal) -> Decimal {
        labour(self.minutes, wage).saturating_add(cents(self.travel)).saturating_add(cents(self.room))
    }

    /// The fee of one seat that covers everything, margin on top. None where the venue keeps all, or nobody
    /// comes.
    pub fn seat(&self, rates: &Rates) -> Option<Reckoning> {
        let shared = cents(self.fixed(rates.wage).checked_div(Decimal::from(self.students))?);
        let cost = shared.saturating_add(cents(self.kit));
        let margin = cents(cost.saturating_mul(rates.margin));
        let kept = Decimal::ONE.checked_sub(self.venue).filter(|kept| *kept > Decimal::ZERO)?;
        let fee = stepped(cost.saturating_add(margin).checked_div(kept)?, rates.step);
        Some(Reckoning(vec![
            (Line::Teaching, labour(self.minutes, rates.wage)),
            (Line::Travel, cents(self.travel)),
            (Line::Room, cents(self.room)),
            (Line::Kit, cents(self.kit)),
            (Line::Cost, cost),
            (Line::Margin, margin),
            (Line::Venue, cents(fee.saturating_mul(self.venue))),
            (Line::Fee, fee),
        ]))
    }

    /// The least number of students at which a fee covers what is spent; none where each costs more than
    /// the fee brings.
    pub fn least_students(&self, fee: Decimal, wage: Decimal) -> Option<u32> {
        let kept = Decimal::ONE.checked_sub(self.venue)?;
        let each =
            fee.checked_mul(kept)?.checked_sub(cents(self.kit)).filter(|each| *each > Decimal::ZERO)?;
        u32::try_from(self.fixed(wage).checked_div(each)?.ceil()).ok()
    }
}
