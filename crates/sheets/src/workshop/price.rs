//! The price sheet: what a basket, a kit and a seat in a class must cost, line by line.

use basket::message::Value;
use planning::price::{Class, Line, Making, Rates, Reckoning, margin_at, of_one};
use rust_decimal::Decimal;
use words::Words;

use super::amount::Clerk;
use super::leaf::{Leaf, Section, Table};
use crate::scribe::name;

/// One thing that has a price of its own.
#[derive(Clone, Debug, PartialEq)]
pub struct Priced {
    /// What goes into it.
    pub making: Making,
    /// How it is reckoned.
    pub reckoning: Reckoning,
}

/// All prices of a class.
#[derive(Clone, Debug)]
pub struct Prices<'p> {
    /// What is reckoned with.
    pub rates: &'p Rates,
    /// What the maker calls the currency.
    pub currency: &'p str,
    /// The finished basket.
    pub basket: Priced,
    /// The kit.
    pub kit: Priced,
    /// The class, with the fee of a seat where one is reckoned.
    pub class: &'p Class,
    /// A price of the basket that the maker has in mind.
    pub target: Option<Decimal>,
    /// A fee of a seat that the maker has in mind.
    pub fee: Option<Decimal>,
    /// Materials of which no price is known, each with its colour.
    pub unpriced: &'p [(String, String)],
}

/// The prices as a sheet.
pub fn prices(title: &str, prices: &Prices, words: &Words) -> Leaf {
    let clerk = Clerk::new(words);
    let mut sections = vec![
        one("price-basket", &prices.basket, prices, &clerk),
        one("price-kit", &prices.kit, prices, &clerk),
    ];
    sections.extend(prices.class.seat(prices.rates).map(|seat| class(&seat, prices, &clerk)));
    if let Some(first) = sections.first_mut() {
        first.after.extend(ten_minutes_less(prices, &clerk));
        first.after.extend(target(prices, &clerk));
    }
    if let Some(last) = sections.last_mut() {
        last.after.push(clerk.label("rounding"));
        let step = [("step", name(clerk.money(prices.rates.step, prices.currency)))];
        last.after.extend((prices.rates.step > Decimal::ZERO).then(|| clerk.text("rounding-step", &step)));
    }
    Leaf { title: title.to_owned(), name: clerk.label("price"), sections }
}

fn one(heading: &str, priced: &Priced, prices: &Prices, clerk: &Clerk) -> Section {
    let minutes = priced.making.minutes + priced.making.office_minutes;
    let unpriced: Vec<String> =
        prices.unpriced.iter().map(|(name, colour)| clerk.material(name, colour)).collect();
    let told = || clerk.text("unpriced", &[("what", name(unpriced.join("; ")))]);
    Section {
        heading: clerk.label(heading),
        notes: (!unpriced.is_empty()).then(told).into_iter().collect(),
        table: Some(table(&priced.reckoning, minutes, prices, clerk)),
        ..Section::default()
    }
}

fn class(seat: &Reckoning, prices: &Prices, clerk: &Clerk) -> Section {
    let fee = prices.fee.unwrap_or_else(|| seat.amount(Line::Fee));
    let said = ("fee", name(clerk.money(fee, prices.currency)));
    let least = match prices.class.least_students(fee, prices.rates.wage) {
        Some(least) => clerk.text("least", &[said, ("least", least.into())]),
        None => clerk.text("never", &[said]),
    };
    Section {
        heading: clerk.label("price-seat"),
        table: Some(table(seat, prices.class.minutes, prices, clerk)),
        after: vec![least],
        ..Section::default()
    }
}

fn table(reckoning: &Reckoning, minutes: f64, prices: &Prices, clerk: &Clerk) -> Table {
    let is_seat = reckoning.0.iter().any(|(line, _)| *line == Line::Fee);
    let mut table = Table::new(clerk.head(&["line", "#amount"]));
    let told =
        reckoning.0.iter().filter(|(line, amount)| *amount != Decimal::ZERO || *line == Line::Materials);
    table.rows.extend(told.map(|(line, amount)| {
        let text = if is_seat && *line == Line::Cost {
            clerk.text("seat-cost", &[("students", prices.class.students.into())])
        } else {
            clerk.text(id(*line), &values(*line, minutes, prices, clerk))
        };
        vec![text, clerk.money(*amount, prices.currency)]
    }));
    table
}

fn id(line: Line) -> &'static str {
    match line {
        Line::Materials => "line-materials",
        Line::Waste => "line-waste",
        Line::Labour => "line-labour",
        Line::Overhead => "line-overhead",
        Line::Mould => "line-mould",
        Line::Packing => "line-packing",
        Line::Cost => "line-cost",
        Line::Margin => "line-margin",
        Line::Wholesale => "line-wholesale",
        Line::Retail => "line-retail",
        Line::Teaching => "line-teaching",
        Line::Travel => "line-travel",
        Line::Room => "line-room",
        Line::Venue => "line-venue",
        Line::Kit => "line-kit",
        Line::Fee => "line-fee",
    }
}

fn values(line: Line, minutes: f64, prices: &Prices, clerk: &Clerk) -> Vec<(&'static str, Value)> {
    let share = |share: Decimal| vec![("share", percent(share))];
    match line {
        Line::Waste => share(prices.rates.waste),
        Line::Margin => share(prices.rates.margin),
        Line::Venue => share(prices.class.venue),
        Line::Labour | Line::Teaching => vec![
            ("time", name(clerk.scribe.minutes(minutes))),
            ("wage", name(clerk.money(prices.rates.wage, prices.currency))),
        ],
        _ => Vec::new(),
    }
}

fn percent(share: Decimal) -> Value {
    Value::Percent(share.try_into().unwrap_or(0.0))
}

fn ten_minutes_less(prices: &Prices, clerk: &Clerk) -> Option<String> {
    let Priced { making, reckoning } = &prices.basket;
    let quicker = Making { minutes: making.minutes - 10.0, ..*making };
    let price = of_one(&quicker, prices.rates).amount(Line::Wholesale);
    let less = reckoning.amount(Line::Wholesale) - price;
    let money = |amount| name(clerk.money(amount, prices.currency));
    (quicker.minutes > 0.0)
        .then(|| clerk.text("ten-minutes", &[("price", money(price)), ("less", money(less))]))
}

fn target(prices: &Prices, clerk: &Clerk) -> Option<String> {
    let target = prices.target?;
    let margin = margin_at(target, prices.basket.reckoning.amount(Line::Cost))?;
    let said = [("target", name(clerk.money(target, prices.currency))), ("share", percent(margin))];
    (margin > Decimal::ZERO).then(|| clerk.text("target", &said))
}
