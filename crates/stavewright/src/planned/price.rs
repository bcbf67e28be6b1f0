//! What a basket, a kit and a seat of a class must cost.

use basket::Draft;
use planning::buying::Purchase;
use planning::price::{Class, Line, Making, Rates, of_one};
use rust_decimal::Decimal;
use sheets::workshop::{Leaf, Priced, Prices, prices};
use words::Words;

use super::PlannedClass;

/// The prices of one class.
pub(crate) struct Worked {
    pub(crate) rates: Rates,
    pub(crate) basket: Priced,
    pub(crate) kit: Priced,
    pub(crate) seats: Class,
    /// Materials of which no price is known, each with its colour.
    pub(crate) unpriced: Vec<(String, String)>,
}

impl Worked {
    /// The prices of a class, from what it takes when all of it is bought anew.
    pub(crate) fn of(class: &PlannedClass, anew: &[Purchase]) -> Self {
        let (material, unpriced) = materials(class, anew);
        let (rates, price) = (rates(class), &class.file.price);
        let work = average(class, |draft| draft.steps.iter().map(|step| step.work_minutes).sum());
        let office_minutes = price.office_minutes;
        let basket = priced(Making { materials: material, minutes: work, office_minutes }, &rates);
        let of_kit = Rates { mould: Decimal::ZERO, ..rates.clone() };
        let kit = priced(Making { materials: material, minutes: price.kit_minutes, office_minutes }, &of_kit);
        let seats = Class {
            students: class.kits.bags.len() as u32,
            minutes: price.teaching_hours * 60.0,
            travel: price.travel,
            room: price.room,
            venue: price.venue,
            kit: kit.reckoning.amount(Line::Cost),
        };
        Self { rates, basket, kit, seats, unpriced }
    }

    /// The prices as a sheet.
    pub(crate) fn leaf(&self, class: &PlannedClass, words: &Words) -> Leaf {
        let price = &class.file.price;
        let all = Prices {
            rates: &self.rates,
            currency: &price.currency,
            basket: self.basket.clone(),
            kit: self.kit.clone(),
            class: &self.seats,
            target: price.target,
            fee: price.fee,
            unpriced: &self.unpriced,
        };
        prices(&class.file.title, &all, words)
    }
}

fn priced(making: Making, rates: &Rates) -> Priced {
    Priced { making, reckoning: of_one(&making, rates) }
}

/// What the material of one kit costs when it is bought anew, and what has no price.
fn materials(class: &PlannedClass, anew: &[Purchase]) -> (Decimal, Vec<(String, String)>) {
    let kits = class.kits.bags.len();
    let all: Decimal = anew.iter().filter_map(Purchase::replacement).sum();
    let unpriced = anew.iter().filter(|purchase| purchase.replacement().is_none());
    let unpriced =
        unpriced.map(|Purchase { need, .. }| (need.material.name.clone(), need.colour.clone())).collect();
    (all.checked_div(Decimal::from(kits)).unwrap_or_default(), unpriced)
}

fn rates(class: &PlannedClass) -> Rates {
    let price = &class.file.price;
    Rates {
        wage: price.wage,
        overhead: price.overhead,
        waste: price.waste,
        mould: price.mould,
        packing: price.packing,
        margin: price.margin,
        retail: price.retail.unwrap_or(Decimal::TWO),
        step: price.step,
    }
}

/// Over all students of the class.
fn average(class: &PlannedClass, of: impl Fn(&Draft) -> f64) -> f64 {
    let groups = class.file.students.iter().zip(&class.drafts);
    let (sum, count) = groups.fold((0.0, 0.0), |(sum, count), (group, draft)| {
        (sum + of(draft) * f64::from(group.count), count + f64::from(group.count))
    });
    if count > 0.0 { sum / count } else { 0.0 }
}
