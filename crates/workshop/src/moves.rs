//! What came and went: every movement, and the way back.

use std::collections::HashMap;

use basket::message::Message;
use rusqlite::{OptionalExtension, Transaction};
use serde::{Deserialize, Serialize};

use crate::fault::Fault;
use crate::shelf::Item;
use crate::store::Store;

/// What kind of movement it was.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Kind {
    /// Bought, and put on the shelf.
    Bought,
    /// Cut up, with what goes back on the shelf.
    Cut,
    /// Counted anew.
    Counted,
    /// Taken off the shelf, with all that was said of it.
    Removed,
}

impl Kind {
    /// Its word.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Bought => "bought",
            Self::Cut => "cut",
            Self::Counted => "counted",
            Self::Removed => "removed",
        }
    }

    fn of(word: &str) -> Self {
        [Self::Bought, Self::Cut, Self::Removed]
            .into_iter()
            .find(|kind| kind.word() == word)
            .unwrap_or(Self::Counted)
    }
}

/// How many of an item came (above zero) or went.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Change {
    /// The item's name.
    pub item: String,
    /// How many.
    pub count: i64,
}

/// One movement.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Movement {
    /// Its number.
    pub id: i64,
    /// When, in UTC.
    pub at: String,
    /// What kind.
    pub kind: Kind,
    /// For what, in the maker's words.
    pub note: String,
    /// Whether it was taken back.
    pub undone: bool,
    /// The mould that was taken off the shelf.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mould: Option<String>,
    /// What changed.
    pub changes: Vec<Change>,
}

impl Store {
    /// Books a movement and answers with its number. Booked is what is on the disk.
    ///
    /// # Errors
    /// [`Fault::Unknown`] for an item that is not there, [`Fault::TooFew`] where more would go than there is.
    pub fn book(&mut self, kind: Kind, note: &str, changes: &[Change]) -> Result<i64, Fault> {
        let work = self.work()?;
        work.execute("INSERT INTO movements (kind, note) VALUES (?1, ?2)", (kind.word(), note))?;
        let id = work.last_insert_rowid();
        for change in changes.iter().filter(|change| change.count != 0) {
            shift(&work, change)?;
            work.execute(
                "INSERT INTO changes VALUES (?1, ?2, ?3) ON CONFLICT DO UPDATE SET count = count + ?3",
                (id, &change.item, change.count),
            )?;
        }
        work.commit()?;
        Ok(id)
    }

    /// Counts an item anew; answers with the movement's number.
    ///
    /// # Errors
    /// [`Fault::Unknown`] for an item that is not there.
    pub fn count(&mut self, item: &str, count: u32) -> Result<i64, Fault> {
        let there = self.item(item)?.count;
        let change = Change { item: item.to_owned(), count: i64::from(count) - i64::from(there) };
        self.book(Kind::Counted, "", &[change])
    }

    /// Takes a table in: new items as they are; what is said of the others, and where their count differs, a
    /// movement that counts them anew. Answers how many were counted.
    ///
    /// # Errors
    /// [`Fault::Refused`] for a name or a measure that cannot be.
    pub fn take_in_items(&mut self, items: &[Item], note: &str) -> Result<usize, Fault> {
        let before = self.items()?;
        let before: HashMap<&str, u32> = before.iter().map(|own| (own.name.as_str(), own.count)).collect();
        let changes = items.iter().filter_map(|item| {
            let count = i64::from(item.count) - i64::from(*before.get(item.name.as_str())?);
            (count != 0).then(|| Change { item: item.name.clone(), count })
        });
        let changes: Vec<Change> = changes.collect();
        self.put_items(items)?;
        if !changes.is_empty() {
            self.book(Kind::Counted, note, &changes)?;
        }
        Ok(changes.len())
    }

    /// Takes a movement back, or the last one that was not. Its changes go the other way.
    ///
    /// # Errors
    /// [`Fault::Unknown`] where there is none, [`Fault::Refused`] where it was taken back already,
    /// [`Fault::TooFew`] where what it brought is used up.
    pub fn undo(&mut self, id: Option<i64>) -> Result<Movement, Fault> {
        let last = "SELECT id FROM movements WHERE undone = 0 ORDER BY id DESC LIMIT 1";
        let id = match id {
            Some(id) => id,
            None => self
                .connection
                .query_row(last, [], |row| row.get(0))
                .optional()?
                .ok_or_else(|| Fault::cannot("workshop-cannot-undo-nothing"))?,
        };
        let work = self.work()?;
        let movement = movements(&work, "WHERE id = ?1", [id])?.pop();
        let mut movement =
            movement.ok_or_else(|| Fault::Unknown { what: "movement", name: id.to_string() })?;
        if movement.undone {
            let what = Message::new("workshop-cannot-undo-twice").with("number", id.to_string().as_str());
            return Err(Fault::Refused(what));
        }
        if movement.kind == Kind::Removed {
            put_back(&work, &movement)?;
        }
        for change in &movement.changes {
            shift(&work, &Change { item: change.item.clone(), count: -change.count })?;
        }
        work.execute("UPDATE movements SET undone = 1 WHERE id = ?1", [id])?;
        work.commit()?;
        movement.undone = true;
        Ok(movement)
    }

    /// The movements, the last first, at most so many.
    ///
    /// # Errors
    /// What the database says.
    pub fn history(&self, most: u32) -> Result<Vec<Movement>, Fault> {
        movements(&self.connection, "ORDER BY id DESC LIMIT ?1", [i64::from(most)])
    }
}

/// Puts what a movement took off the shelf back on it; how many there are is shifted by whoever undoes it.
fn put_back(work: &Transaction, movement: &Movement) -> Result<(), Fault> {
    let back = |table: &str, name: &str| -> Result<(), Fault> {
        let put = format!("UPDATE {table} SET gone = 0 WHERE name = ?1 AND gone = 1");
        match work.execute(&put, [name])? {
            0 => Err(Fault::cannot_of("workshop-cannot-undo-there", name)),
            _ => Ok(()),
        }
    };
    if let Some(mould) = &movement.mould {
        back("moulds", mould)?;
    }
    movement.changes.iter().try_for_each(|change| back("items", &change.item))
}

fn shift(work: &Transaction, change: &Change) -> Result<(), Fault> {
    let there: Option<i64> = work
        .query_row("SELECT count FROM items WHERE name = ?1 AND gone = 0", [&change.item], |row| row.get(0))
        .optional()?;
    let there = there.ok_or_else(|| Fault::Unknown { what: "item", name: change.item.clone() })?;
    let after = there.saturating_add(change.count);
    if after < 0 {
        return Err(Fault::TooFew { name: change.item.clone(), there, wanted: -change.count });
    }
    if after > i64::from(u32::MAX) {
        return Err(Fault::cannot_of("workshop-cannot-hold", &change.item));
    }
    work.execute("UPDATE items SET count = ?2 WHERE name = ?1", (&change.item, after))?;
    Ok(())
}

pub(crate) fn movements(
    connection: &rusqlite::Connection,
    which: &str,
    values: impl rusqlite::Params + Clone,
) -> Result<Vec<Movement>, Fault> {
    let mut query = connection
        .prepare_cached(&format!("SELECT id, at, kind, note, undone, mould FROM movements {which}"))?;
    let read = |row: &rusqlite::Row| {
        Ok(Movement {
            id: row.get(0)?,
            at: row.get(1)?,
            kind: Kind::of(&row.get::<_, String>(2)?),
            note: row.get(3)?,
            undone: row.get(4)?,
            mould: row.get(5)?,
            changes: Vec::new(),
        })
    };
    let mut movements: Vec<Movement> = query.query_map(values.clone(), read)?.collect::<Result<_, _>>()?;
    let mut lines = connection.prepare_cached(&format!(
        "SELECT movement, item, count FROM changes WHERE movement IN (SELECT id FROM movements {which}) \
         ORDER BY movement, item"
    ))?;
    let read = |row: &rusqlite::Row| Ok((row.get(0)?, Change { item: row.get(1)?, count: row.get(2)? }));
    let mut changes: HashMap<i64, Vec<Change>> = HashMap::new();
    for line in lines.query_map(values, read)? {
        let (movement, change) = line?;
        changes.entry(movement).or_default().push(change);
    }
    for movement in &mut movements {
        movement.changes = changes.remove(&movement.id).unwrap_or_default();
    }
    Ok(movements)
}
