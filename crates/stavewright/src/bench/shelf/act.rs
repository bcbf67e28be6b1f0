//! What is done with the shelf.

use basket::{Catalogue, Length};
use rust_decimal::Decimal;
use workshop::{Change, Item, Kind, Loan, Mould, Store, read_shelf};

use super::told::{refused, senseless};
use crate::bench::api::{ItemText, MovementKind, ShelfAct};
use crate::bench::refusal::Refusal;

/// Does one thing, whole or not at all.
pub(super) fn act(store: &mut Store, what: ShelfAct) -> Result<(), Refusal> {
    let done = match what {
        ShelfAct::Begin => Ok(()),
        ShelfAct::Put { item, new } => {
            let item = read(item)?;
            if new && store.item(&item.name).is_ok() {
                return Err(senseless("workshop-name-taken", &item.name));
            }
            store.put_items(&[item])
        }
        ShelfAct::Book { kind, note, items, changes } => {
            let items: Vec<Item> = items.into_iter().map(read).collect::<Result<_, _>>()?;
            let there = store.items().map_err(|fault| refused(&fault))?;
            let new: Vec<Item> =
                items.into_iter().filter(|item| there.iter().all(|own| own.name != item.name)).collect();
            store.put_items(&new).map_err(|fault| refused(&fault))?;
            let changes = changes.into_iter().map(|change| Change { item: change.item, count: change.count });
            store.book(kind.into(), &note, &changes.collect::<Vec<_>>()).map(drop)
        }
        ShelfAct::Count { item, count } => store.count(&item, count).map(drop),
        ShelfAct::Undo { movement } => store.undo(Some(movement)).map(drop),
        ShelfAct::Remove { item } => store.remove_item(&item).map(drop),
        ShelfAct::RemoveMould { mould } => store.remove_mould(&mould).map(drop),
        ShelfAct::Mould { name, place, patterns, note } => store.put_mould(&Mould {
            name: name.trim().to_owned(),
            place,
            patterns,
            note,
            ..Mould::default()
        }),
        ShelfAct::Lend { mould, to, due } => {
            let due = Some(due).filter(|due| !due.is_empty());
            store.lend(&mould, &Loan { to, due })
        }
        ShelfAct::Back { mould } => store.bring_back(&mould),
        ShelfAct::TakeIn { csv } => {
            read_shelf(csv.as_bytes()).and_then(|items| store.take_in_items(&items, "CSV")).map(drop)
        }
    };
    done.map_err(|fault| refused(&fault))
}

impl From<MovementKind> for Kind {
    fn from(kind: MovementKind) -> Self {
        match kind {
            MovementKind::Bought => Self::Bought,
            MovementKind::Cut => Self::Cut,
            MovementKind::Counted => Self::Counted,
            MovementKind::Removed => Self::Removed,
        }
    }
}

fn read(text: ItemText) -> Result<Item, Refusal> {
    let measure = |typed: &str| -> Result<Option<f64>, Refusal> {
        if typed.trim().is_empty() {
            return Ok(None);
        }
        let length = Length::parse(typed, None).ok().filter(|length| *length > Length::ZERO);
        // What was written in feet shall not end in a billionth of a millimetre.
        length
            .map(|length| Some((length.to_mm() * 1e6).round() / 1e6))
            .ok_or_else(|| senseless("workshop-no-length", typed))
    };
    if text.name.trim().is_empty() {
        return Err(senseless("workshop-no-name", &text.name));
    }
    if Catalogue::built_in().material(&text.material).is_none() {
        return Err(senseless("workshop-no-material", &text.material));
    }
    Ok(Item {
        length_mm: measure(&text.length)?,
        width_mm: measure(&text.width)?,
        thickness_mm: measure(&text.thickness)?,
        price: price(&text.price)?,
        name: text.name.trim().to_owned(),
        material: text.material,
        colour: Some(text.colour.trim().to_owned())
            .filter(|colour| !colour.is_empty())
            .unwrap_or("natural".to_owned()),
        count: text.count,
        unit: text.unit,
        holds: text.holds,
        bought_from: text.bought_from,
        reorder: text.reorder,
        note: text.note,
        gone: false,
    })
}

/// An amount, with a point or a comma before the cents.
fn price(typed: &str) -> Result<Option<Decimal>, Refusal> {
    let typed = typed.trim();
    if typed.is_empty() {
        return Ok(None);
    }
    let read = typed.replace(',', ".").parse().ok().filter(|amount: &Decimal| !amount.is_sign_negative());
    read.map(Some).ok_or_else(|| senseless("workshop-no-amount", typed))
}
