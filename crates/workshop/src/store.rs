//! Opening the store.

use std::path::{Path, PathBuf};
use std::time::Duration;

use rusqlite::{Connection, Transaction, TransactionBehavior};

use crate::fault::Fault;
use crate::schema;

/// How long to wait for another program that writes.
const PATIENCE: Duration = Duration::from_secs(5);

/// An open store.
#[derive(Debug)]
pub struct Store {
    pub(crate) connection: Connection,
    path: PathBuf,
}

impl Store {
    /// Opens the store, or makes a new one.
    ///
    /// # Errors
    /// A file of a newer program, of another one, or a damaged one; one that may not be written.
    pub fn open(path: &Path) -> Result<Self, Fault> {
        // Who may do everything could write it all the same; that the maker protected it is what counts.
        if std::fs::metadata(path).is_ok_and(|file| file.permissions().readonly()) {
            return Err(Fault::ReadOnly);
        }
        let mut connection = Connection::open(path)?;
        connection.busy_timeout(PATIENCE)?;
        if connection.is_readonly("main")? {
            return Err(Fault::ReadOnly);
        }
        let sound: String = connection.query_row("PRAGMA quick_check(1)", [], |row| row.get(0))?;
        if sound != "ok" {
            return Err(Fault::Damaged(sound));
        }
        schema::bring_up(&mut connection, path)?;
        connection.pragma_update_and_check(None, "journal_mode", "WAL", |_| Ok(()))?;
        // What is acknowledged is on the disk, and not only on its way there.
        connection.pragma_update(None, "synchronous", "FULL")?;
        connection.pragma_update(None, "foreign_keys", true)?;
        Ok(Self { connection, path: path.to_owned() })
    }

    /// Where it lies.
    pub fn path(&self) -> &Path {
        &self.path
    }

    /// Writes the whole store into another file, which must not be there yet.
    ///
    /// # Errors
    /// Where the file cannot be written.
    pub fn copy_to(&self, path: &Path) -> Result<(), Fault> {
        self.connection.execute("VACUUM INTO ?1", [path.to_string_lossy()])?;
        Ok(())
    }

    /// Work that is done whole or not at all.
    pub(crate) fn work(&mut self) -> Result<Transaction<'_>, Fault> {
        Ok(self.connection.transaction_with_behavior(TransactionBehavior::Immediate)?)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Change, Item, Kind};

    fn item(name: &str) -> Item {
        Item { name: name.to_owned(), material: "cane fine".to_owned(), count: 50, ..Item::default() }
    }

    #[test]
    fn a_write_protected_store_is_left_alone() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("workshop.db");
        drop(Store::open(&path).unwrap());
        let mut rights = std::fs::metadata(&path).unwrap().permissions();
        rights.set_readonly(true);
        std::fs::set_permissions(&path, rights).unwrap();
        assert!(matches!(Store::open(&path), Err(Fault::ReadOnly)));
    }

    #[test]
    fn a_full_disk_loses_nothing_that_was_there() {
        let folder = tempfile::tempdir().unwrap();
        let mut store = Store::open(&folder.path().join("workshop.db")).unwrap();
        store.put_items(&[item("hank 1")]).unwrap();
        // The database says "full" by the same path when a limit of pages is reached.
        store.connection.pragma_update_and_check(None, "max_page_count", 30, |_| Ok(())).unwrap();
        let items: Vec<Item> = (0..5000).map(|at| item(&format!("hank {at}"))).collect();
        let fault = store.put_items(&items).unwrap_err();
        assert!(matches!(fault, Fault::Full), "{fault:?}");
        assert_eq!(store.items().unwrap(), [item("hank 1")]);
        store.book(Kind::Cut, "", &[Change { item: "hank 1".to_owned(), count: -1 }]).unwrap();
        assert_eq!(store.item("hank 1").unwrap().count, 49);
    }
}
