//! What every saved pattern was before: its history, of which the last ones are kept.

use rusqlite::{OptionalExtension, Row};

use crate::fault::Fault;
use crate::store::Store;

/// So many versions of a pattern are kept; the oldest goes first.
const MOST: u32 = 100;

/// A text that a pattern had when it was saved.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Version {
    /// Its number.
    pub id: i64,
    /// When it was saved, in UTC, as `2026-10-18T14:05:00Z`.
    pub at: String,
    /// The text.
    pub source: String,
}

impl Store {
    /// Keeps the text of a pattern, unless it is the last one that is kept of it already.
    ///
    /// # Errors
    /// What the database says.
    pub fn keep_version(&mut self, pattern: &str, source: &str) -> Result<(), Fault> {
        let work = self.work()?;
        let last: Option<String> = work
            .query_row(
                "SELECT source FROM versions WHERE pattern = ?1 ORDER BY id DESC LIMIT 1",
                [pattern],
                |row| row.get(0),
            )
            .optional()?;
        if last.as_deref() != Some(source) {
            work.execute("INSERT INTO versions (pattern, source) VALUES (?1, ?2)", [pattern, source])?;
            work.execute(
                "DELETE FROM versions WHERE pattern = ?1 AND id NOT IN
                 (SELECT id FROM versions WHERE pattern = ?1 ORDER BY id DESC LIMIT ?2)",
                (pattern, MOST),
            )?;
        }
        Ok(work.commit()?)
    }

    /// The versions of a pattern, the last one first.
    ///
    /// # Errors
    /// What the database says.
    pub fn versions(&self, pattern: &str) -> Result<Vec<Version>, Fault> {
        let mut query = self
            .connection
            .prepare_cached("SELECT id, at, source FROM versions WHERE pattern = ?1 ORDER BY id DESC")?;
        let read = |row: &Row| Ok(Version { id: row.get(0)?, at: row.get(1)?, source: row.get(2)? });
        Ok(query.query_map([pattern], read)?.collect::<Result<_, _>>()?)
    }

    /// A pattern has another name from now on, and takes its history with it.
    ///
    /// # Errors
    /// What the database says.
    pub fn rename_versions(&mut self, pattern: &str, to: &str) -> Result<(), Fault> {
        self.connection.execute("UPDATE versions SET pattern = ?2 WHERE pattern = ?1", [pattern, to])?;
        Ok(())
    }
}
