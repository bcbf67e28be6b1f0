//! What is booked when all was bought, or when it was cut.

use std::collections::BTreeMap;

use basket::Length;
use planning::buying::{Bought, LengthUnit, Offer, Purchase};
use workshop::{Change, Item};

/// What is new on the shelf by a movement, and what changes.
#[derive(Debug, Default)]
pub(crate) struct Booking {
    pub(crate) items: Vec<Item>,
    pub(crate) changes: Vec<Change>,
}

/// All that is on the list comes to the shelf, beside what is there.
pub(crate) fn bought(there: &[Item], purchases: &[Purchase]) -> Booking {
    let mut items: Vec<Item> = Vec::new();
    let mut came: BTreeMap<String, i64> = BTreeMap::new();
    for Bought { offer, count, lengths } in purchases.iter().flat_map(|purchase| &purchase.buy) {
        let came_in: Vec<(Item, i64)> = match offer.length_unit() {
            Some(unit) => lengths.iter().map(|units| (run_of(offer, unit, *units), 1)).collect(),
            None => vec![(item_of(offer), i64::from(*count) * i64::from(offer.holds))],
        };
        for (item, count) in came_in {
            let own = there.iter().chain(&items).find(|own| is_same(own, &item));
            let own = own.map(|own| own.name.clone());
            let name = own.unwrap_or_else(|| {
                let taken = there.iter().chain(&items).any(|own| own.name == item.name);
                let name = if taken { format!("{} (2)", item.name) } else { item.name.clone() };
                items.push(Item { name: name.clone(), ..item });
                name
            });
            *came.entry(name).or_default() += count;
        }
    }
    Booking { items, changes: changes(came) }
}

/// The strands that are opened go, and the ends that are worth keeping come back. None where not everything
/// lies on the shelf that is to be cut.
pub(crate) fn cut(there: &[Item], purchases: &[Purchase]) -> Option<Booking> {
    if purchases.iter().any(|purchase| !purchase.buy.is_empty() || purchase.fault.is_some()) {
        return None;
    }
    let mut items: Vec<Item> = Vec::new();
    let mut moved: BTreeMap<String, i64> = BTreeMap::new();
    for purchase in purchases {
        for (lot, count) in purchase.taken() {
            *moved.entry(lot.name.clone()).or_default() -= i64::from(count);
        }
        for end in purchase.offcuts() {
            let item = offcut(purchase, end);
            *moved.entry(item.name.clone()).or_default() += 1;
            items.push(item);
        }
    }
    items.retain(|item| there.iter().all(|own| own.name != item.name));
    items.sort_by(|one, other| one.name.cmp(&other.name));
    items.dedup_by(|one, other| one.name == other.name);
    Some(Booking { items, changes: changes(moved) })
}

fn changes(moved: BTreeMap<String, i64>) -> Vec<Change> {
    moved.into_iter().map(|(item, count)| Change { item, count }).collect()
}

/// Whether both are bought in the same unit, or both not bought anew; and of one material and length.
fn is_same(one: &Item, other: &Item) -> bool {
    let unit = |item: &Item| (item.holds > 0).then(|| (item.unit.clone(), item.holds));
    (&one.material, &one.colour, one.length_mm, unit(one))
        == (&other.material, &other.colour, other.length_mm, unit(other))
}

/// An item for what is bought in whole units.
fn item_of(offer: &Offer) -> Item {
    Item {
        name: format!("{}, {}", named(offer), offer.unit),
        length_mm: offer.length.map(Length::to_mm),
        unit: offer.unit.clone(),
        holds: offer.holds,
        price: offer.price,
        ..of_material(offer)
    }
}

/// An item for strands that were ordered so many feet or metres long.
fn run_of(offer: &Offer, unit: LengthUnit, units: u32) -> Item {
    let sign = match unit {
        LengthUnit::Foot => "ft",
        LengthUnit::Metre => "m",
    };
    Item {
        name: format!("{}, {units} {sign}", named(offer)),
        length_mm: Some(unit.times(units).to_mm()),
        ..of_material(offer)
    }
}

fn named(offer: &Offer) -> String {
    let dyed = if offer.colour == "natural" { String::new() } else { format!(", {}", offer.colour) };
    format!("{}{dyed}", offer.material)
}

fn of_material(offer: &Offer) -> Item {
    Item {
        material: offer.material.clone(),
        colour: offer.colour.clone(),
        bought_from: offer.from.clone(),
        ..Item::default()
    }
}

/// Ends are kept by the centimetre, shorter than they are.
fn offcut(purchase: &Purchase, end: Length) -> Item {
    let centimetres = (end.to_mm() / 10.0).floor();
    let dyed = if purchase.need.is_dyed() { format!(", {}", purchase.need.colour) } else { String::new() };
    Item {
        name: format!("offcut of {}{dyed}, {centimetres} cm", purchase.need.material.name),
        material: purchase.need.material.name.clone(),
        colour: purchase.need.colour.clone(),
        length_mm: Some(centimetres * 10.0),
        ..Item::default()
    }
}
