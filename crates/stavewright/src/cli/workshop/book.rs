//! Booking what was bought or cut.

use std::collections::BTreeMap;

use basket::Length;
use planning::buying::{Offer, Purchase};
use workshop::{Change, Fault, Item, Kind, Store};

use super::{StoreArgs, failure};
use crate::failure::Failure;
use crate::screen;

/// Puts all that is on the list on the shelf.
pub(super) fn bought(args: &StoreArgs, note: &str, purchases: &[Purchase]) -> Result<(), Failure> {
    let mut store = args.open()?;
    let faulty = |fault: Fault| failure(&args.store, &fault);
    let there = store.items().map_err(faulty)?;
    let mut items: Vec<Item> = Vec::new();
    let mut came: BTreeMap<String, i64> = BTreeMap::new();
    for (offer, count) in purchases.iter().flat_map(|purchase| &purchase.buy) {
        let name = there.iter().chain(&items).find(|item| is_of(item, offer)).map(|item| item.name.clone());
        let name = name.unwrap_or_else(|| {
            let item = item_of(offer, &there);
            items.push(item.clone());
            item.name
        });
        *came.entry(name).or_default() += i64::from(*count) * i64::from(offer.holds);
    }
    store.put_items(&items).map_err(faulty)?;
    say(&mut store, Kind::Bought, note, came).map_err(faulty)?
}

/// Takes the strands that were opened from the shelf, and puts back the ends that are worth keeping.
pub(super) fn cut(args: &StoreArgs, note: &str, purchases: &[Purchase]) -> Result<(), Failure> {
    if purchases.iter().any(|purchase| !purchase.buy.is_empty() || purchase.fault.is_some()) {
        return Err(Failure::plain(
            "not everything lies on the shelf that is to be cut, so nothing was booked",
            "Buy first, and book it with `stavewright buy FILE --bought`.",
        ));
    }
    let mut store = args.open()?;
    let faulty = |fault: Fault| failure(&args.store, &fault);
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
    let there = store.items().map_err(faulty)?;
    items.retain(|item| there.iter().all(|own| own.name != item.name));
    store.put_items(&items).map_err(faulty)?;
    say(&mut store, Kind::Cut, note, moved).map_err(faulty)?
}

fn say(
    store: &mut Store,
    kind: Kind,
    note: &str,
    moved: BTreeMap<String, i64>,
) -> Result<Result<(), Failure>, Fault> {
    let changes: Vec<Change> = moved.into_iter().map(|(item, count)| Change { item, count }).collect();
    let id = store.book(kind, note, &changes)?;
    let said = format!("Booked as movement {id}; `stavewright shelf undo` takes it back.\n");
    Ok(screen::print(&said).map_err(Failure::from))
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
