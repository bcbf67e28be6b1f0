//! Quotes and orders.

use rusqlite::named_params;
use rust_decimal::Decimal;
use serde::{Deserialize, Serialize};

use crate::fault::Fault;
use crate::store::Store;

/// How far an order has come.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum State {
    /// A price was named.
    #[default]
    Quoted,
    /// It was ordered.
    Ordered,
    /// It was handed over.
    Delivered,
}

impl State {
    /// Its word.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Quoted => "quoted",
            Self::Ordered => "ordered",
            Self::Delivered => "delivered",
        }
    }

    fn of(word: &str) -> Self {
        [Self::Ordered, Self::Delivered].into_iter().find(|state| state.word() == word).unwrap_or_default()
    }
}

/// A quote or an order.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Order {
    /// What the maker calls it.
    pub name: String,
    /// Pattern file.
    pub pattern: String,
    /// How many baskets.
    pub count: u32,
    /// Price of one.
    #[serde(default, with = "crate::money", skip_serializing_if = "Option::is_none")]
    pub price: Option<Decimal>,
    /// What the maker calls the currency.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub currency: String,
    /// For whom, in the maker's own words.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub buyer: String,
    /// What was paid ahead.
    #[serde(default, with = "crate::money", skip_serializing_if = "Option::is_none")]
    pub deposit: Option<Decimal>,
    /// The promised day, as `2026-11-20`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub promised: Option<String>,
    /// The day on which its material is needed, as `2026-11-02`.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub needed: Option<String>,
    /// How far it has come.
    #[serde(default)]
    pub state: State,
    /// The kits file whose prices it was reckoned with.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub price_plan: String,
    /// Anything else.
    #[serde(default)]
    pub note: String,
}

impl Store {
    /// All orders: those first that need their material first, and those that do not say when by name.
    ///
    /// # Errors
    /// What the database says.
    pub fn orders(&self) -> Result<Vec<Order>, Fault> {
        let mut query =
            self.connection.prepare_cached("SELECT * FROM orders ORDER BY needed IS NULL, needed, name")?;
        let money = |text: Option<String>| text.and_then(|text| text.parse().ok());
        let read = |row: &rusqlite::Row| {
            Ok(Order {
                name: row.get("name")?,
                pattern: row.get("pattern")?,
                count: row.get("count")?,
                price: money(row.get("price")?),
                deposit: money(row.get("deposit")?),
                promised: row.get("promised")?,
                needed: row.get("needed")?,
                state: State::of(&row.get::<_, String>("state")?),
                note: row.get("note")?,
                buyer: row.get("buyer")?,
                currency: row.get("currency")?,
                price_plan: row.get("price_plan")?,
            })
        };
        let orders = query.query_map([], read)?.collect::<Result<_, _>>()?;
        Ok(orders)
    }

    /// One order.
    ///
    /// # Errors
    /// [`Fault::Unknown`] where there is none of this name.
    pub fn order(&self, name: &str) -> Result<Order, Fault> {
        let found = self.orders()?.into_iter().find(|order| order.name == name);
        found.ok_or_else(|| Fault::Unknown { what: "order", name: name.to_owned() })
    }

    /// Writes an order down, or changes the one of this name.
    ///
    /// # Errors
    /// [`Fault::Refused`] for an empty name, no basket, or a day that is none.
    pub fn put_order(&mut self, order: &Order) -> Result<(), Fault> {
        if order.name.trim().is_empty() || order.count == 0 {
            return Err(Fault::cannot("workshop-cannot-unnamed-order"));
        }
        let days = [&order.promised, &order.needed].into_iter().flatten();
        if days.into_iter().any(|day| day.parse::<jiff::civil::Date>().is_err()) {
            return Err(Fault::cannot("workshop-cannot-promise"));
        }
        self.connection.execute(
            "INSERT INTO orders VALUES (:name, :pattern, :count, :price, :deposit, :promised, :state, :note, :buyer, \
             :currency, :price_plan, :needed) \
             ON CONFLICT (name) DO UPDATE SET pattern = :pattern, count = :count, price = :price, \
             deposit = :deposit, promised = :promised, state = :state, note = :note, buyer = :buyer, currency = :currency, \
             price_plan = :price_plan, needed = :needed",
            named_params! {
                ":name": order.name,
                ":pattern": order.pattern,
                ":count": order.count,
                ":price": order.price.map(|price| price.to_string()),
                ":deposit": order.deposit.map(|deposit| deposit.to_string()),
                ":promised": order.promised,
                ":needed": order.needed,
                ":state": order.state.word(),
                ":note": order.note,
                ":buyer": order.buyer,
                ":currency": order.currency,
                ":price_plan": order.price_plan,
            },
        )?;
        Ok(())
    }
}
