//! The whole store as plain text, out and back in without loss.

use basket::message::Message;
use planning::records::{Adopted, Record};
use serde::{Deserialize, Serialize};

use crate::fault::Fault;
use crate::moulds::Mould;
use crate::moves::{Movement, movements};
use crate::orders::Order;
use crate::records;
use crate::shelf::Item;
use crate::store::Store;
use crate::versions::{self, PatternVersion};

/// All that a store holds.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Everything {
    /// The shelf.
    #[serde(default)]
    pub items: Vec<Item>,
    /// The movements, oldest first.
    #[serde(default)]
    pub movements: Vec<Movement>,
    /// The moulds.
    #[serde(default)]
    pub moulds: Vec<Mould>,
    /// The orders.
    #[serde(default)]
    pub orders: Vec<Order>,
    /// The makings that were written down, by number.
    #[serde(default)]
    pub records: Vec<Record>,
    /// The highest number that a making was given; it may have been forgotten since.
    #[serde(default)]
    pub last_record: u32,
    /// What every saved pattern was before, oldest first.
    #[serde(default)]
    pub versions: Vec<PatternVersion>,
    /// The hand that was taken up; none for the usual one.
    #[serde(default)]
    pub adopted: Option<Adopted>,
}

impl Everything {
    /// As TOML.
    ///
    /// # Errors
    /// Never for what came from a store.
    pub fn to_toml(&self) -> Result<String, Fault> {
        toml::to_string_pretty(self).map_err(|error| Fault::Other(error.to_string()))
    }

    /// From TOML.
    ///
    /// # Errors
    /// [`Fault::Refused`] with line and column of what is wrong.
    pub fn from_toml(text: &str) -> Result<Self, Fault> {
        let wrong = |error: toml::de::Error| {
            Fault::Refused(Message::new("workshop-cannot-read").with("said", error.to_string().trim_end()))
        };
        toml::from_str(text).map_err(wrong)
    }
}

impl Store {
    /// All of it.
    ///
    /// # Errors
    /// What the database says.
    pub fn everything(&self) -> Result<Everything, Fault> {
        Ok(Everything {
            items: self.items_where("true")?,
            movements: movements(&self.connection, "ORDER BY id", [])?,
            moulds: self.moulds_where("true")?,
            orders: self.orders()?,
            records: self.records()?,
            last_record: self.last_record()?,
            versions: self.all_versions()?,
            adopted: self.adopted()?,
        })
    }

    /// Takes all of it into a store that is empty.
    ///
    /// # Errors
    /// [`Fault::Refused`] where the store holds something already, or the text what cannot be.
    pub fn take_in(&mut self, all: &Everything) -> Result<(), Fault> {
        if self.everything()? != Everything::default() {
            return Err(Fault::cannot("workshop-cannot-pour-over"));
        }
        self.put_items(&all.items)?;
        for mould in &all.moulds {
            self.put_mould(mould)?;
            if let Some(loan) = &mould.loan {
                self.lend(&mould.name, loan)?;
            }
        }
        let work = self.work()?;
        for movement in &all.movements {
            work.execute(
                "INSERT INTO movements VALUES (?1, ?2, ?3, ?4, ?5, ?6)",
                (
                    movement.id,
                    &movement.at,
                    movement.kind.word(),
                    &movement.note,
                    movement.undone,
                    &movement.mould,
                ),
            )?;
            for change in &movement.changes {
                work.execute(
                    "INSERT INTO changes VALUES (?1, ?2, ?3)",
                    (movement.id, &change.item, change.count),
                )?;
            }
        }
        for record in &all.records {
            records::put(&work, record, Some(record.number).filter(|number| *number > 0))?;
        }
        records::go_on_after(&work, all.last_record)?;
        versions::put(&work, &all.versions)?;
        work.commit()?;
        self.adopt(all.adopted.as_ref())?;
        all.orders.iter().try_for_each(|order| self.put_order(order))
    }
}
