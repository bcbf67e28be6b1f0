//! What is booked when all was bought, or when it was cut.

use std::collections::BTreeMap;

use basket::Length;
use planning::buying::{Offer, Purchase};
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
    for (offer, count) in purchases.iter().flat_map(|purchase| &purchase.buy) {
        let name = there.iter().chain(&items).find(|item| is_of(item, offer)).map(|item| item.name.clone());
        let name = name.unwrap_or_else(|| {
            let item = item_of(offer, there);
            items.push(item.clone());
            item.name
        });
        *came.entry(name).or_default() += i64::from(*count) * i64::from(offer.holds);
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

fn is_of(item: &Item, offer: &Offer) -> bool {
    item.offer().is_some_and(|own| {
        (&own.material, &own.colour, &own.unit, own.holds, own.length)
            == (&offer.material, &offer.colour, &offer.unit, offer.holds, offer.length)
    })
}

/// A new item for what the catalogue sells.
fn item_of(offer: &Offer, there: &[Item]) -> Item {
    let dyed = if offer.colour == "natural" { String::new() } else { format!(", {}", offer.colour) };
    let plain = format!("{}{dyed}, {}", offer.material, offer.unit);
    let name = if there.iter().any(|item| item.name == plain) { format!("{plain} (2)") } else { plain };
    Item {
        name,
        material: offer.material.clone(),
        colour: offer.colour.clone(),
        length_mm: offer.length.map(Length::to_mm),
        unit: offer.unit.clone(),
        holds: offer.holds,
        price: offer.price,
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
