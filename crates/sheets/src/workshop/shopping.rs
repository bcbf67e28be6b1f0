//! The shopping list: what to buy and until when, what comes from the shelf, what will be left.

use basket::Length;
use basket::message::Value;
use planning::buying::{Bought, Due, LengthUnit, Purchase};
use planning::cutting::CuttingError;
use rust_decimal::Decimal;
use words::Words;

use super::amount::Clerk;
use super::leaf::{Leaf, Section, Table};
use crate::error::SheetError;
use crate::scribe::name;
use crate::tables::guarded_csv;

/// What is bought, and until when.
#[derive(Clone, Copy, Debug)]
pub struct Shopping<'s> {
    /// What the materials take.
    pub purchases: &'s [Purchase],
    /// Until when each class and order wants it ordered.
    pub due: &'s [Due],
    /// What the maker calls the currency.
    pub currency: &'s str,
}

/// The shopping list as a sheet.
pub fn shopping_list(title: &str, list: &Shopping, words: &Words) -> Leaf {
    let clerk = Clerk::new(words);
    let Shopping { purchases, due, currency } = *list;
    let bought = to_buy(purchases, currency, &clerk);
    let until = when(due.iter().filter(|_| bought.table.is_some()), &clerk);
    let sections = [bought, until, from_shelf(purchases, &clerk), left(purchases, &clerk)];
    let filled = sections.into_iter().filter(|section| section.table.is_some() || !section.notes.is_empty());
    Leaf { title: title.to_owned(), name: clerk.label("shopping"), sections: filled.collect() }
}

fn to_buy(purchases: &[Purchase], currency: &str, clerk: &Clerk) -> Section {
    let mut table = Table::new(clerk.head(&["buy", "material", "#order-by", "#price-each", "#cost"]));
    table.ticks = true;
    let mut faults = Vec::new();
    for purchase in first_first(purchases) {
        let material = clerk.material(&purchase.need.material.name, &purchase.need.colour);
        for bought in &purchase.buy {
            let offer = &bought.offer;
            let money =
                |amount: Option<Decimal>| amount.map_or("–".to_owned(), |sum| clerk.money(sum, currency));
            table.rows.push(vec![
                amount(bought, clerk),
                if offer.from.is_empty() {
                    material.clone()
                } else {
                    format!("{material} – {}", offer.from)
                },
                purchase.order_by.map(|day| day.to_string()).unwrap_or_default(),
                money(offer.price),
                money(bought.cost()),
            ]);
        }
        faults.extend(fault(purchase, clerk).map(|fault| format!("{material}: {fault}")));
    }
    let nothing = table.rows.is_empty() && faults.is_empty();
    let mut after = faults;
    after.extend((!table.rows.is_empty()).then(|| sum(purchases, currency, clerk)));
    Section {
        heading: clerk.label("buy"),
        notes: nothing.then(|| clerk.label("nothing-to-buy")).into_iter().collect(),
        table: (!table.rows.is_empty()).then_some(table),
        after,
        ..Section::default()
    }
}

/// `2 × hank`, or `37 ft, in lengths of 2 × 12 ft, 13 ft`: a run that comes in other lengths helps nobody.
fn amount(bought: &Bought, clerk: &Clerk) -> String {
    let Some(unit) = bought.offer.length_unit() else {
        let unit = name(clerk.words.put_up(&bought.offer.unit));
        return clerk.text("units", &[("count", bought.count.into()), ("unit", unit)]);
    };
    let id = match unit {
        LengthUnit::Foot => "feet",
        LengthUnit::Metre => "metres",
    };
    let run = |units: u32| clerk.text(id, &[("count", units.into())]);
    let lengths = bought.in_lengths().into_iter().map(|(count, units)| (run(units), count));
    let args = [("run", name(run(bought.count))), ("lengths", name(listed(lengths, clerk)))];
    clerk.text("in-lengths", &args)
}

/// What is ordered first stands first.
fn first_first(purchases: &[Purchase]) -> Vec<&Purchase> {
    let mut all: Vec<&Purchase> = purchases.iter().collect();
    all.sort_by_key(|purchase| (purchase.order_by.is_none(), purchase.order_by));
    all
}

/// When each class and order needs its material, and until when it is ordered.
fn when<'d>(due: impl Iterator<Item = &'d Due>, clerk: &Clerk) -> Section {
    let mut table = Table::new(clerk.head(&["for", "#needed", "#order-by", "#order-dyed-by"]));
    let row = |due: &Due| {
        let [plain, dyed] =
            [due.order_by, due.order_dyed_by].map(|day| day.map_or("–".to_owned(), |day| day.to_string()));
        vec![due.name.clone(), due.needed.to_string(), plain, dyed]
    };
    table.rows.extend(due.map(row));
    let table = (!table.rows.is_empty()).then_some(table);
    Section { heading: clerk.label("when-to-order"), table, ..Section::default() }
}

fn fault(purchase: &Purchase, clerk: &Clerk) -> Option<String> {
    let Some(CuttingError::NotEnough(short)) = &purchase.fault else {
        return purchase.fault.as_ref().map(|_| clerk.label("not-planned"));
    };
    let said =
        short.iter().filter_map(|(place, count)| {
            let length = purchase.job.pieces.get(*place)?.length;
            Some(clerk.text(
                "too-long",
                &[("count", (*count).into()), ("length", name(clerk.length(Some(length))))],
            ))
        });
    Some(said.collect::<Vec<_>>().join("; "))
}

fn sum(purchases: &[Purchase], currency: &str, clerk: &Clerk) -> String {
    let known: Decimal = purchases.iter().filter_map(|purchase| purchase.cost).sum();
    let unknown: Vec<String> = purchases
        .iter()
        .filter(|purchase| purchase.cost.is_none())
        .map(|purchase| clerk.material(&purchase.need.material.name, &purchase.need.colour))
        .collect();
    let sum = ("sum", name(clerk.money(known, currency)));
    if unknown.is_empty() {
        return clerk.text("sum", &[sum]);
    }
    clerk.text("sum-unknown", &[("what", name(unknown.join("; "))), sum])
}

fn from_shelf(purchases: &[Purchase], clerk: &Clerk) -> Section {
    let mut table = Table::new(clerk.head(&["lot", "material", "#takes", "#stays"]));
    table.ticks = true;
    for purchase in purchases {
        let material = clerk.material(&purchase.need.material.name, &purchase.need.colour);
        for (lot, taken) in purchase.taken() {
            let row =
                vec![lot.name.clone(), material.clone(), taken.to_string(), (lot.count - taken).to_string()];
            table.rows.push(row);
        }
    }
    let table = (!table.rows.is_empty()).then_some(table);
    Section { heading: clerk.label("from-shelf"), table, ..Section::default() }
}

fn left(purchases: &[Purchase], clerk: &Clerk) -> Section {
    let said = purchases.iter().filter_map(|purchase| {
        let whole =
            (purchase.spare > 0).then(|| clerk.text("left-whole", &[("count", purchase.spare.into())]));
        let ends = purchase.offcuts();
        let ends =
            (!ends.is_empty()).then(|| clerk.text("left-ends", &[("ends", name(grouped(&ends, clerk)))]));
        let said: Vec<String> = whole.into_iter().chain(ends).collect();
        let material = clerk.material(&purchase.need.material.name, &purchase.need.colour);
        (!said.is_empty()).then(|| format!("{material}: {}", said.join("; ")))
    });
    Section { heading: clerk.label("left"), notes: said.collect(), ..Section::default() }
}

/// `3 × 12 in, 9 1/2 in`.
pub(super) fn grouped(lengths: &[Length], clerk: &Clerk) -> String {
    let mut groups: Vec<(String, u32)> = Vec::new();
    for length in lengths {
        let text = clerk.whole(*length);
        match groups.last_mut() {
            Some((last, count)) if *last == text => *count += 1,
            _ => groups.push((text, 1)),
        }
    }
    listed(groups.into_iter(), clerk)
}

fn listed(groups: impl Iterator<Item = (String, u32)>, clerk: &Clerk) -> String {
    let said = groups.map(|(text, count)| {
        let args: [(&str, Value); 2] = [("count", count.into()), ("length", name(text.as_str()))];
        if count == 1 { text.clone() } else { clerk.text("pieces-of", &args) }
    });
    said.collect::<Vec<_>>().join(", ")
}

/// The shopping list as a table for machines; no cell is taken for a formula. `lengths` are those in which a run
/// is ordered, in its own unit: `12; 12; 13`.
///
/// # Errors
/// [`SheetError::Csv`] where it does not fit into memory.
pub fn shopping_csv(purchases: &[Purchase]) -> Result<Vec<u8>, SheetError> {
    let head = ["material", "colour", "count", "unit", "price", "cost", "order_by", "from", "lengths"];
    let mut rows = vec![head.map(str::to_owned).to_vec()];
    let money = |amount: Option<Decimal>| amount.map(|amount| format!("{amount:.2}")).unwrap_or_default();
    for purchase in first_first(purchases) {
        rows.extend(purchase.buy.iter().map(|bought| {
            let lengths: Vec<String> = bought.lengths.iter().map(u32::to_string).collect();
            let offer = &bought.offer;
            vec![
                purchase.need.material.name.clone(),
                purchase.need.colour.clone(),
                bought.count.to_string(),
                offer.unit.clone(),
                money(offer.price),
                money(bought.cost()),
                purchase.order_by.map(|day| day.to_string()).unwrap_or_default(),
                offer.from.clone(),
                lengths.join("; "),
            ]
        }));
    }
    guarded_csv(&rows)
}
