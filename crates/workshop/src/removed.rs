//! Taking something off the shelf: what is said of it and its history stay, and it can be taken back.

use rusqlite::OptionalExtension;

use crate::fault::Fault;
use crate::moulds::is_out;
use crate::moves::Kind;
use crate::store::Store;

impl Store {
    /// Takes an item off the shelf with all there is of it; answers with the movement's number.
    ///
    /// # Errors
    /// [`Fault::Unknown`] for an item that is not there.
    pub fn remove_item(&mut self, item: &str) -> Result<i64, Fault> {
        let work = self.work()?;
        let there = "SELECT count FROM items WHERE name = ?1 AND gone = 0";
        let there: Option<i64> = work.query_row(there, [item], |row| row.get(0)).optional()?;
        let there = there.ok_or_else(|| Fault::Unknown { what: "item", name: item.to_owned() })?;
        work.execute("INSERT INTO movements (kind) VALUES (?1)", [Kind::Removed.word()])?;
        let id = work.last_insert_rowid();
        work.execute("UPDATE items SET gone = 1, count = 0 WHERE name = ?1", [item])?;
        work.execute("INSERT INTO changes VALUES (?1, ?2, ?3)", (id, item, -there))?;
        work.commit()?;
        Ok(id)
    }

    /// Takes a mould off the shelf; answers with the movement's number.
    ///
    /// # Errors
    /// [`Fault::Unknown`] for a mould that is not there, [`Fault::Refused`] where somebody has it.
    pub fn remove_mould(&mut self, mould: &str) -> Result<i64, Fault> {
        let work = self.work()?;
        let out = "SELECT to_whom FROM loans WHERE mould = ?1 AND back = 0";
        if let Some(to) = work.query_row(out, [mould], |row| row.get::<_, String>(0)).optional()? {
            return Err(is_out(mould, &to));
        }
        if work.execute("UPDATE moulds SET gone = 1 WHERE name = ?1 AND gone = 0", [mould])? == 0 {
            return Err(Fault::Unknown { what: "mould", name: mould.to_owned() });
        }
        work.execute("INSERT INTO movements (kind, mould) VALUES (?1, ?2)", (Kind::Removed.word(), mould))?;
        let id = work.last_insert_rowid();
        work.commit()?;
        Ok(id)
    }
}
