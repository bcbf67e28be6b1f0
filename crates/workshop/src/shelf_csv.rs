//! The shelf as a table that a spreadsheet opens, out and back in.

use std::collections::HashMap;

use basket::message::{Message, Value};
use planning::cells::{guarded, plain};

use crate::fault::Fault;
use crate::shelf::Item;

/// Columns, in their order.
const COLUMNS: [&str; 13] = [
    "name",
    "material",
    "colour",
    "length_mm",
    "count",
    "width_mm",
    "thickness_mm",
    "unit",
    "holds",
    "price",
    "bought_from",
    "reorder",
    "note",
];
/// What a cell must hold, by the message that says so where it does not.
const WHOLE: &str = "workshop-row-whole";
const LENGTH: &str = "workshop-row-length";
/// A shelf of a hundred thousand lines has a few megabytes.
const MOST_BYTES: usize = 16 * 1024 * 1024;

/// The shelf as CSV. A cell that a spreadsheet would take for a formula has an apostrophe before it.
///
/// # Errors
/// Never for what came from a store.
pub fn write_shelf(items: &[Item]) -> Result<Vec<u8>, Fault> {
    let other = |error: csv::Error| Fault::Other(error.to_string());
    let mut table = csv::Writer::from_writer(Vec::new());
    table.write_record(COLUMNS).map_err(other)?;
    for item in items {
        let number = |value: Option<f64>| value.map(|value| value.to_string()).unwrap_or_default();
        let cells = [
            item.name.clone(),
            item.material.clone(),
            item.colour.clone(),
            number(item.length_mm),
            item.count.to_string(),
            number(item.width_mm),
            number(item.thickness_mm),
            item.unit.clone(),
            item.holds.to_string(),
            item.price.map(|price| price.to_string()).unwrap_or_default(),
            item.bought_from.clone(),
            item.reorder.to_string(),
            item.note.clone(),
        ];
        table.write_record(cells.map(|cell| guarded(&cell).into_owned())).map_err(other)?;
    }
    table.into_inner().map_err(|error| Fault::Other(error.to_string()))
}

/// Reads a shelf: commas, semicolons or tabs, with or without a byte order mark, the columns in any order;
/// only name and material must be there.
///
/// # Errors
/// [`Fault::Row`] with the line and what is wrong in it.
pub fn read_shelf(bytes: &[u8]) -> Result<Vec<Item>, Fault> {
    if bytes.len() > MOST_BYTES {
        return Err(wrong(1, Message::new("workshop-row-large")));
    }
    let text = std::str::from_utf8(bytes).map_err(|error| {
        let line = bytes.iter().take(error.valid_up_to()).filter(|byte| **byte == b'\n').count() as u64 + 1;
        wrong(line, Message::new("workshop-row-encoding"))
    })?;
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    let head = text.lines().next().unwrap_or_default();
    let often = |sign: char| head.matches(sign).count();
    let sign = [',', ';', '\t'].into_iter().max_by_key(|sign| (often(*sign), *sign == ',')).unwrap_or(',');
    let mut table = csv::ReaderBuilder::new().delimiter(sign as u8).from_reader(text.as_bytes());
    let places = places(table.headers().map_err(|error| {
        wrong(1, Message::new("workshop-row-unread").with("said", error.to_string().as_str()))
    })?)?;
    let mut items: Vec<Item> = Vec::new();
    for record in table.records() {
        let record = record.map_err(|error| {
            let line = error.position().map_or(0, csv::Position::line);
            let sign = if sign == '\t' { "TAB".to_owned() } else { sign.to_string() };
            wrong(line, Message::new("workshop-row-cells").with("sign", sign.as_str()))
        })?;
        let row = Row { record: &record, places: &places };
        items.push(row.item()?);
    }
    Ok(items)
}

fn places(head: &csv::StringRecord) -> Result<HashMap<&'static str, usize>, Fault> {
    let mut places = HashMap::new();
    for (at, name) in head.iter().enumerate() {
        let name = name.trim();
        let Some(column) = COLUMNS.iter().find(|column| name.eq_ignore_ascii_case(column)) else {
            let shown: String = name.chars().take(60).collect();
            let known = COLUMNS.join(", ");
            let what = Message::new("workshop-row-no-column").with("name", shown.as_str());
            return Err(wrong(1, what.with("known", known.as_str())));
        };
        places.insert(*column, at);
    }
    for needed in ["name", "material"] {
        if !places.contains_key(needed) {
            return Err(wrong(1, Message::new("workshop-row-missing").with("name", needed)));
        }
    }
    Ok(places)
}

struct Row<'r> {
    record: &'r csv::StringRecord,
    places: &'r HashMap<&'static str, usize>,
}

impl Row<'_> {
    fn item(&self) -> Result<Item, Fault> {
        Ok(Item {
            name: self.needed("name")?,
            material: self.needed("material")?,
            colour: Some(self.text("colour"))
                .filter(|colour| !colour.is_empty())
                .unwrap_or("natural".to_owned()),
            length_mm: self.length("length_mm")?,
            count: self.number("count", WHOLE)?.unwrap_or(0),
            width_mm: self.length("width_mm")?,
            thickness_mm: self.length("thickness_mm")?,
            unit: self.text("unit"),
            holds: self.number("holds", WHOLE)?.unwrap_or(0),
            price: self.number("price", "workshop-row-amount")?,
            bought_from: self.text("bought_from"),
            reorder: self.number("reorder", WHOLE)?.unwrap_or(0),
            note: self.text("note"),
            gone: false,
        })
    }

    fn text(&self, column: &str) -> String {
        let cell = self.places.get(column).and_then(|at| self.record.get(*at)).unwrap_or_default();
        plain(cell).to_owned()
    }

    fn needed(&self, column: &str) -> Result<String, Fault> {
        let text = self.text(column);
        if text.trim().is_empty() { Err(self.wrong(column, "workshop-row-empty")) } else { Ok(text) }
    }

    fn length(&self, column: &'static str) -> Result<Option<f64>, Fault> {
        match self.number::<f64>(column, LENGTH)? {
            Some(mm) if !(mm.is_finite() && mm > 0.0) => Err(self.wrong(column, LENGTH)),
            found => Ok(found),
        }
    }

    fn number<T: std::str::FromStr>(&self, column: &str, what: &'static str) -> Result<Option<T>, Fault> {
        let text = self.text(column);
        let text = text.trim();
        if text.is_empty() {
            return Ok(None);
        }
        text.parse().map(Some).map_err(|_| self.wrong(column, what))
    }

    /// What a cell is, and what it should be.
    fn wrong(&self, column: &str, what: &'static str) -> Fault {
        let line = self.record.position().map_or(0, csv::Position::line);
        let text: String = self.text(column).chars().take(60).collect();
        wrong(line, Message::new(what).with("name", column).with("text", Value::Name(text)))
    }
}

fn wrong(line: u64, what: Message) -> Fault {
    Fault::Row { line, what }
}
