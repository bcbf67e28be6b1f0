//! What lies on the shelf.

use basket::Length;
use planning::buying::{LengthUnit, Lot, Offer};
use rusqlite::{OptionalExtension, Row, named_params};
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};

use crate::fault::Fault;
use crate::store::Store;

/// Strands of one length and colour, or pieces used whole: a hank, the strands of a coil, a box, offcuts.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Item {
    /// What the maker calls it; each name once.
    pub name: String,
    /// Material by the name under which a pattern asks for it.
    pub material: String,
    /// Colour; `natural` where it is not dyed.
    pub colour: String,
    /// Length of one strand in millimetres; none for pieces used whole.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub length_mm: Option<f64>,
    /// Strands, or pieces, on hand.
    pub count: u32,
    /// Width as measured, in millimetres; it goes before the catalogue's.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub width_mm: Option<f64>,
    /// Thickness as measured, in millimetres; it goes before the catalogue's.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub thickness_mm: Option<f64>,
    /// What it is bought in, such as `hank`; `foot` or `metre` for what is sold by length.
    #[serde(default)]
    pub unit: String,
    /// Strands, or pieces, in one such unit; zero where it is not bought anew, one by the foot or metre.
    #[serde(default)]
    pub holds: u32,
    /// What one such unit costs.
    #[serde(default, with = "crate::money", skip_serializing_if = "Option::is_none")]
    pub price: Option<Decimal>,
    /// Where it is bought, in the maker's own words.
    #[serde(default)]
    pub bought_from: String,
    /// Below this many it is time to buy.
    #[serde(default)]
    pub reorder: u32,
    /// Anything else.
    #[serde(default)]
    pub note: String,
    /// Whether it was taken off the shelf.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub gone: bool,
}

const COLUMNS: &str = "name, material, colour, length_mm, count, width_mm, thickness_mm, unit, holds, price, \
                       bought_from, reorder, note, gone";

impl Item {
    /// The item as a lot to cut from.
    pub fn lot(&self) -> Lot {
        Lot {
            name: self.name.clone(),
            material: self.material.clone(),
            colour: self.colour.clone(),
            length: self.length_mm.map(Length::mm),
            count: self.count,
        }
    }

    /// The unit that it is bought in, if it is bought anew.
    pub fn offer(&self) -> Option<Offer> {
        (self.holds > 0).then(|| Offer {
            material: self.material.clone(),
            colour: self.colour.clone(),
            unit: self.unit.clone(),
            holds: self.holds,
            length: self.length_mm.map(Length::mm),
            price: self.price,
            from: self.bought_from.clone(),
        })
    }

    /// Whether it is time to buy.
    pub fn is_low(&self) -> bool {
        self.count < self.reorder
    }

    fn of(row: &Row) -> rusqlite::Result<Self> {
        let price: Option<String> = row.get("price")?;
        Ok(Self {
            name: row.get("name")?,
            material: row.get("material")?,
            colour: row.get("colour")?,
            length_mm: row.get("length_mm")?,
            count: row.get("count")?,
            width_mm: row.get("width_mm")?,
            thickness_mm: row.get("thickness_mm")?,
            unit: row.get("unit")?,
            holds: row.get("holds")?,
            price: price.and_then(|price| price.parse().ok()),
            bought_from: row.get("bought_from")?,
            reorder: row.get("reorder")?,
            note: row.get("note")?,
            gone: row.get("gone")?,
        })
    }
}

impl Store {
    /// All items, by material and name.
    ///
    /// # Errors
    /// What the database says.
    pub fn items(&self) -> Result<Vec<Item>, Fault> {
        self.items_where("gone = 0")
    }

    /// The first items, by material and name, at most so many, and how many there are in all.
    ///
    /// # Errors
    /// What the database says.
    pub fn first_items(&self, most: u32) -> Result<(Vec<Item>, u32), Fault> {
        let ask =
            format!("SELECT {COLUMNS} FROM items WHERE gone = 0 ORDER BY material, colour, name LIMIT ?1");
        let mut query = self.connection.prepare_cached(&ask)?;
        let items = query.query_map([most], Item::of)?.collect::<Result<_, _>>()?;
        let all = "SELECT count(*) FROM items WHERE gone = 0";
        Ok((items, self.connection.query_row(all, [], |row| row.get(0))?))
    }

    /// The colours of what lies there, each once.
    ///
    /// # Errors
    /// What the database says.
    pub fn colours(&self) -> Result<Vec<String>, Fault> {
        let ask = "SELECT DISTINCT colour FROM items WHERE gone = 0 ORDER BY colour";
        let mut query = self.connection.prepare_cached(ask)?;
        let colours = query.query_map([], |row| row.get(0))?.collect::<Result<_, _>>()?;
        Ok(colours)
    }

    pub(crate) fn items_where(&self, which: &str) -> Result<Vec<Item>, Fault> {
        let ask = format!("SELECT {COLUMNS} FROM items WHERE {which} ORDER BY material, colour, name");
        let mut query = self.connection.prepare_cached(&ask)?;
        let items = query.query_map([], Item::of)?.collect::<Result<_, _>>()?;
        Ok(items)
    }

    /// One item.
    ///
    /// # Errors
    /// [`Fault::Unknown`] where there is none of this name.
    pub fn item(&self, name: &str) -> Result<Item, Fault> {
        let mut query = self
            .connection
            .prepare_cached(&format!("SELECT {COLUMNS} FROM items WHERE name = ?1 AND gone = 0"))?;
        let found = query.query_row([name], Item::of).optional()?;
        found.ok_or_else(|| Fault::Unknown { what: "item", name: name.to_owned() })
    }

    /// Puts items on the shelf, or changes what is said of those of the same name; how many there are of
    /// these changes only by a movement. What was taken off the shelf is put there as something new.
    ///
    /// # Errors
    /// [`Fault::Refused`] for a name or a measure that cannot be.
    pub fn put_items(&mut self, items: &[Item]) -> Result<(), Fault> {
        let work = self.work()?;
        for item in items {
            check(item)?;
            let mut put = work.prepare_cached(
                "INSERT INTO items VALUES (:name, :material, :colour, :length_mm, :count, :width_mm, :thickness_mm, \
                 :unit, :holds, :price, :bought_from, :reorder, :note, :gone) ON CONFLICT (name) DO UPDATE SET \
                 count = CASE gone WHEN 0 THEN count ELSE :count END, gone = :gone, \
                 material = :material, colour = :colour, length_mm = :length_mm, width_mm = :width_mm, \
                 thickness_mm = :thickness_mm, unit = :unit, holds = :holds, price = :price, \
                 bought_from = :bought_from, reorder = :reorder, note = :note",
            )?;
            put.execute(named_params! {
                ":name": item.name,
                ":material": item.material,
                ":colour": item.colour,
                ":length_mm": item.length_mm,
                ":count": item.count,
                ":width_mm": item.width_mm,
                ":thickness_mm": item.thickness_mm,
                ":unit": item.unit,
                ":holds": item.holds,
                ":price": item.price.map(|price| price.to_string()),
                ":bought_from": item.bought_from,
                ":reorder": item.reorder,
                ":note": item.note,
                ":gone": item.gone,
            })?;
        }
        work.commit()?;
        Ok(())
    }
}

fn check(item: &Item) -> Result<(), Fault> {
    let measures = [item.length_mm, item.width_mm, item.thickness_mm];
    let is_measure = |mm: &f64| mm.is_finite() && *mm > 0.0;
    if item.name.trim().is_empty() || item.material.trim().is_empty() {
        return Err(Fault::cannot("workshop-cannot-unnamed-item"));
    }
    if !measures.iter().flatten().all(is_measure) {
        return Err(Fault::cannot_of("workshop-cannot-measure", &item.name));
    }
    let is_by_length = LengthUnit::called(&item.unit).is_some();
    if is_by_length && item.offer().is_some_and(|offer| !offer.is_by_length()) {
        return Err(Fault::cannot_of("workshop-cannot-length-unit", &item.name));
    }
    Ok(())
}
