//! What the store holds, as the page shows it.

use std::collections::HashMap;
use std::hash::Hash;

use basket::Length;
use basket::measure::Printing;
use words::Words;
use workshop::{Item, Kind, Mould, Movement, Order, State};

use crate::bench::api::{
    ItemText, MovementKind, ShelfChange, ShelfItem, ShelfMould, ShelfMovement, ShelfOrder,
};

/// What is shown of the shelf. Most items say the same of material, colour and length, which is put into words once.
pub(super) fn items(items: Vec<Item>, words: &Words) -> Vec<ShelfItem> {
    let (mut materials, mut colours, mut units) = (Known::new(), Known::new(), Known::new());
    let (mut runs, mut measures) = (Known::new(), Known::new());
    let one = |item: Item| {
        let mut fine = |mm: Option<f64>| {
            mm.map(|mm| known(&mut measures, mm.to_bits(), || words.fine_both(Length::mm(mm))))
        };
        ShelfItem {
            material_label: known(&mut materials, item.material.clone(), || words.material(&item.material)),
            colour_label: known(&mut colours, item.colour.clone(), || words.colour(&item.colour)),
            unit_label: known(&mut units, item.unit.clone(), || words.put_up(&item.unit)),
            width_said: fine(item.width_mm),
            thickness_said: fine(item.thickness_mm),
            length_said: item
                .length_mm
                .map(|mm| known(&mut runs, mm.to_bits(), || words.run(Length::mm(mm)))),
            low: item.is_low(),
            text: text_of(item),
        }
    };
    items.into_iter().map(one).collect()
}

/// The items that hold all these words: in their names, in what the reader calls material and colour, in where they
/// were bought or in what else is said of them.
pub(super) fn with(find: &str, mut items: Vec<Item>, words: &Words) -> Vec<Item> {
    let find: Vec<String> = find.split_whitespace().map(str::to_lowercase).collect();
    let mut labels = Known::new();
    items.retain(|item| {
        let label = known(&mut labels, (item.material.clone(), item.colour.clone()), || {
            let (material, colour) = (words.material(&item.material), words.colour(&item.colour));
            format!("{} {material} {colour}", item.material).to_lowercase()
        });
        let own = format!("{} {} {}", item.name, item.bought_from, item.note).to_lowercase();
        find.iter().all(|word| own.contains(word) || label.contains(word))
    });
    items
}

/// What was said already.
type Known<K> = HashMap<K, String>;

fn known<K: Eq + Hash>(all: &mut Known<K>, key: K, say: impl FnOnce() -> String) -> String {
    all.entry(key).or_insert_with(say).clone()
}

/// A length that is read again as exactly this one: in feet, inches or millimetres, whichever it was
/// measured in.
fn written(length: Length) -> String {
    let feet = length.to_inches() / 12.0;
    if feet >= 3.0 && (feet - feet.round()).abs() < 1e-9 {
        return format!("{} ft", feet.round());
    }
    let marked = length.print(Printing::Inches { denominator: 64 });
    let is_same =
        |text: &str| Length::parse(text, None).is_ok_and(|read| (read - length).abs() < Length::mm(1e-6));
    if is_same(&marked) { marked } else { format!("{} mm", length.to_mm()) }
}

/// What is said of an item, as it is typed.
pub(crate) fn text_of(item: Item) -> ItemText {
    let measure = |mm: Option<f64>| mm.map(|mm| written(Length::mm(mm))).unwrap_or_default();
    ItemText {
        length: measure(item.length_mm),
        width: measure(item.width_mm),
        thickness: measure(item.thickness_mm),
        price: item.price.map(|price| price.to_string()).unwrap_or_default(),
        name: item.name,
        material: item.material,
        colour: item.colour,
        count: item.count,
        unit: item.unit,
        holds: item.holds,
        bought_from: item.bought_from,
        reorder: item.reorder,
        note: item.note,
    }
}

/// A mould.
pub(super) fn mould(mould: Mould) -> ShelfMould {
    let Mould { name, place, patterns, note, loan, profile: _, gone: _ } = mould;
    let (lent_to, due) = loan.map_or((None, None), |loan| (Some(loan.to), loan.due));
    ShelfMould { name, place, patterns, note, lent_to, due }
}

/// The orders that are still to be made.
pub(super) fn open_orders(orders: Vec<Order>) -> Vec<ShelfOrder> {
    let open = orders.into_iter().filter(|order| order.state != State::Delivered);
    open.map(|Order { name, pattern, count, needed, .. }| ShelfOrder { name, pattern, count, needed })
        .collect()
}

/// A movement.
pub(super) fn movement(movement: Movement) -> ShelfMovement {
    let Movement { id, at, kind, note, undone, mould, changes } = movement;
    let kind = match kind {
        Kind::Bought => MovementKind::Bought,
        Kind::Cut => MovementKind::Cut,
        Kind::Counted => MovementKind::Counted,
        Kind::Removed => MovementKind::Removed,
    };
    let changes = changes.into_iter().map(|change| ShelfChange { item: change.item, count: change.count });
    ShelfMovement { id, at, kind, note, undone, mould, changes: changes.collect() }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_written_is_read_as_the_same_length() {
        for (length, text) in [
            (Length::inches(144.0), "12 ft"),
            (Length::inches(7.25), "7 1/4 in"),
            (Length::mm(3600.0), "3600 mm"),
            (Length::mm(2.37), "2.37 mm"),
        ] {
            assert_eq!(written(length), text);
            assert!((Length::parse(text, None).unwrap() - length).abs() < Length::mm(1e-6), "{text}");
        }
    }
}
