//! The shelf, its history and the moulds.

use basket::Length;
use basket::pattern::Units;
use words::{Language, Words};
use workshop::{Item, Mould, Movement, Order};

use super::table::{Set, table};

const ITEMS: [(&str, Set); 6] = [
    ("Name", Set::Words),
    ("Material", Set::Words),
    ("Colour", Set::Words),
    ("Length", Set::Figures),
    ("There", Set::Figures),
    ("", Set::Words),
];
const MOVEMENTS: [(&str, Set); 5] = [
    ("No.", Set::Figures),
    ("When", Set::Words),
    ("What", Set::Words),
    ("For", Set::Words),
    ("Changes", Set::Words),
];
const MOULDS: [(&str, Set); 5] = [
    ("Mould", Set::Words),
    ("Place", Set::Words),
    ("With", Set::Words),
    ("Due back", Set::Words),
    ("Fits", Set::Words),
];

const ORDERS: [(&str, Set); 8] = [
    ("Order", Set::Words),
    ("Pattern", Set::Words),
    ("Count", Set::Figures),
    ("Each", Set::Figures),
    ("Ahead", Set::Figures),
    ("Needed", Set::Words),
    ("Promised", Set::Words),
    ("State", Set::Words),
];

/// What lies on the shelf.
pub(crate) fn items(items: &[Item]) -> String {
    if items.is_empty() {
        return "The shelf is empty. `stavewright shelf put` puts something on it.\n".to_owned();
    }
    let words = Words::new(Language::English, Units::Inches);
    table(&ITEMS, items.iter().map(|own| item(own, &words)))
}

fn item(item: &Item, words: &Words) -> Vec<String> {
    let length = item.length_mm.map(|mm| words.run(Length::mm(mm)));
    vec![
        item.name.clone(),
        item.material.clone(),
        item.colour.clone(),
        length.unwrap_or_default(),
        item.count.to_string(),
        if item.is_low() { "buy".to_owned() } else { String::new() },
    ]
}

/// What came and went.
pub(crate) fn movements(movements: &[Movement]) -> String {
    if movements.is_empty() {
        return "Nothing was booked yet.\n".to_owned();
    }
    table(&MOVEMENTS, movements.iter().map(movement))
}

fn movement(movement: &Movement) -> Vec<String> {
    let mould = movement.mould.iter().map(|mould| format!("mould {mould}"));
    let changes = movement.changes.iter().map(|change| format!("{:+} {}", change.count, change.item));
    let undone = if movement.undone { ", taken back" } else { "" };
    vec![
        movement.id.to_string(),
        movement.at.clone(),
        format!("{}{undone}", movement.kind.word()),
        movement.note.clone(),
        mould.chain(changes).collect::<Vec<_>>().join("; "),
    ]
}

/// The moulds and who has them.
pub(crate) fn moulds(moulds: &[Mould]) -> String {
    if moulds.is_empty() {
        return "No mould is written down. `stavewright shelf mould` does so.\n".to_owned();
    }
    table(&MOULDS, moulds.iter().map(mould))
}

fn mould(mould: &Mould) -> Vec<String> {
    let loan = mould.loan.as_ref();
    vec![
        mould.name.clone(),
        mould.place.clone(),
        loan.map(|loan| loan.to.clone()).unwrap_or_default(),
        loan.and_then(|loan| loan.due.clone()).unwrap_or_default(),
        mould.patterns.clone(),
    ]
}

/// Quotes and orders.
pub(crate) fn orders(orders: &[Order]) -> String {
    if orders.is_empty() {
        return "There is no order. `stavewright order quote` begins one.\n".to_owned();
    }
    table(&ORDERS, orders.iter().map(order))
}

fn order(order: &Order) -> Vec<String> {
    let money = |amount: Option<rust_decimal::Decimal>| amount.map(|amount| format!("{amount:.2}"));
    vec![
        order.name.clone(),
        order.pattern.clone(),
        order.count.to_string(),
        money(order.price).unwrap_or_default(),
        money(order.deposit).unwrap_or_default(),
        order.needed.clone().unwrap_or_default(),
        order.promised.clone().unwrap_or_default(),
        order.state.word().to_owned(),
    ]
}
