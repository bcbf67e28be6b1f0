//! What every saved pattern was before: its history, of which the last ones are kept.

use rusqlite::{OptionalExtension, Row, Transaction};
use serde::{Deserialize, Serialize};

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

/// A version beside the name of its pattern's file, as a store writes it out.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PatternVersion {
    /// The file of the pattern, without `.toml`.
    pub pattern: String,
    /// Its number, among those of all patterns.
    pub id: i64,
    /// When it was saved, in UTC.
    pub at: String,
    /// The text.
    pub source: String,
}

/// Puts versions into a store that has none, under their own numbers.
pub(crate) fn put(work: &Transaction, versions: &[PatternVersion]) -> Result<(), Fault> {
    let mut insert =
        work.prepare_cached("INSERT INTO versions (pattern, id, at, source) VALUES (?1, ?2, ?3, ?4)")?;
    for PatternVersion { pattern, id, at, source } in versions {
        insert.execute((pattern, id, at, source))?;
    }
    Ok(())
}

impl Store {
    /// The versions of all patterns, oldest first.
    pub(crate) fn all_versions(&self) -> Result<Vec<PatternVersion>, Fault> {
        let mut query =
            self.connection.prepare_cached("SELECT pattern, id, at, source FROM versions ORDER BY id")?;
        let read = |row: &Row| {
            Ok(PatternVersion { pattern: row.get(0)?, id: row.get(1)?, at: row.get(2)?, source: row.get(3)? })
        };
        Ok(query.query_map([], read)?.collect::<Result<_, _>>()?)
    }

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
