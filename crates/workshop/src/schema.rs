//! The tables, and how an older store becomes one of today.

use std::path::{Path, PathBuf};

use rusqlite::{Connection, TransactionBehavior};

use crate::fault::Fault;

/// Says in the file's head that it is ours: `STVW`.
const OURS: i32 = 0x5354_5657;

/// What each version adds to the one before it. A version that was handed out is never changed.
const VERSIONS: [&str; 6] = [
    "CREATE TABLE items (
        name TEXT PRIMARY KEY NOT NULL CHECK (name <> ''),
        material TEXT NOT NULL,
        colour TEXT NOT NULL DEFAULT 'natural',
        length_mm REAL CHECK (length_mm > 0),
        count INTEGER NOT NULL DEFAULT 0 CHECK (count >= 0),
        width_mm REAL CHECK (width_mm > 0),
        thickness_mm REAL CHECK (thickness_mm > 0),
        unit TEXT NOT NULL DEFAULT '',
        holds INTEGER NOT NULL DEFAULT 0 CHECK (holds >= 0),
        price TEXT,
        bought_from TEXT NOT NULL DEFAULT '',
        reorder INTEGER NOT NULL DEFAULT 0 CHECK (reorder >= 0),
        note TEXT NOT NULL DEFAULT ''
    ) STRICT;
    CREATE INDEX items_by_material ON items (material, colour);
    CREATE TABLE movements (
        id INTEGER PRIMARY KEY AUTOINCREMENT,
        at TEXT NOT NULL DEFAULT (strftime('%Y-%m-%dT%H:%M:%SZ', 'now')),
        kind TEXT NOT NULL,
        note TEXT NOT NULL DEFAULT '',
        undone INTEGER NOT NULL DEFAULT 0
    ) STRICT;
    CREATE TABLE changes (
        movement INTEGER NOT NULL REFERENCES movements (id),
        item TEXT NOT NULL REFERENCES items (name) ON UPDATE CASCADE,
        count INTEGER NOT NULL,
        PRIMARY KEY (movement, item)
    ) STRICT, WITHOUT ROWID;
    CREATE INDEX changes_by_item ON changes (item);",
    "CREATE TABLE moulds (
        name TEXT PRIMARY KEY NOT NULL CHECK (name <> ''),
        place TEXT NOT NULL DEFAULT '',
        patterns TEXT NOT NULL DEFAULT '',
        note TEXT NOT NULL DEFAULT ''
    ) STRICT;
    CREATE TABLE loans (
        id INTEGER PRIMARY KEY AUTOINCREMENT,
        mould TEXT NOT NULL REFERENCES moulds (name) ON UPDATE CASCADE,
        to_whom TEXT NOT NULL CHECK (to_whom <> ''),
        due TEXT,
        back INTEGER NOT NULL DEFAULT 0
    ) STRICT;
    CREATE UNIQUE INDEX one_loan_at_a_time ON loans (mould) WHERE back = 0;
    CREATE TABLE orders (
        name TEXT PRIMARY KEY NOT NULL CHECK (name <> ''),
        pattern TEXT NOT NULL,
        count INTEGER NOT NULL CHECK (count > 0),
        price TEXT,
        deposit TEXT,
        promised TEXT,
        state TEXT NOT NULL,
        note TEXT NOT NULL DEFAULT ''
    ) STRICT;",
    "ALTER TABLE orders ADD COLUMN buyer TEXT NOT NULL DEFAULT '';
    ALTER TABLE orders ADD COLUMN currency TEXT NOT NULL DEFAULT '';
    CREATE TABLE mould_girths (
        mould TEXT NOT NULL REFERENCES moulds (name) ON UPDATE CASCADE,
        height_mm REAL NOT NULL CHECK (height_mm >= 0),
        girth_mm REAL NOT NULL CHECK (girth_mm > 0),
        PRIMARY KEY (mould, height_mm)
    ) STRICT, WITHOUT ROWID;
    CREATE TABLE records (
        number INTEGER PRIMARY KEY AUTOINCREMENT CHECK (number > 0),
        pattern TEXT NOT NULL CHECK (pattern <> ''),
        version TEXT,
        made TEXT,
        who TEXT,
        learner INTEGER NOT NULL,
        weaver_mm REAL CHECK (weaver_mm > 0),
        rows INTEGER CHECK (rows >= 0),
        wet_mm REAL CHECK (wet_mm > 0),
        dry_mm REAL CHECK (dry_mm > 0),
        girth_wet_mm REAL CHECK (girth_wet_mm > 0),
        girth_dry_mm REAL CHECK (girth_dry_mm > 0),
        staves INTEGER CHECK (staves >= 0),
        spoilt INTEGER NOT NULL DEFAULT 0 CHECK (spoilt >= 0),
        wood TEXT,
        went_wrong TEXT
    ) STRICT;
    CREATE TABLE record_minutes (
        record INTEGER NOT NULL REFERENCES records (number) ON DELETE CASCADE,
        step TEXT NOT NULL,
        minutes REAL NOT NULL CHECK (minutes > 0),
        PRIMARY KEY (record, step)
    ) STRICT, WITHOUT ROWID;
    CREATE TABLE record_photos (
        record INTEGER NOT NULL REFERENCES records (number) ON DELETE CASCADE,
        place INTEGER NOT NULL,
        file TEXT NOT NULL CHECK (file <> ''),
        PRIMARY KEY (record, place)
    ) STRICT, WITHOUT ROWID;",
    "ALTER TABLE items ADD COLUMN gone INTEGER NOT NULL DEFAULT 0;
    ALTER TABLE moulds ADD COLUMN gone INTEGER NOT NULL DEFAULT 0;
    ALTER TABLE movements ADD COLUMN mould TEXT REFERENCES moulds (name) ON UPDATE CASCADE;
    ALTER TABLE orders ADD COLUMN price_plan TEXT NOT NULL DEFAULT '';",
    "CREATE TABLE versions (
        id INTEGER PRIMARY KEY AUTOINCREMENT,
        pattern TEXT NOT NULL CHECK (pattern <> ''),
        at TEXT NOT NULL DEFAULT (strftime('%Y-%m-%dT%H:%M:%SZ', 'now')),
        source TEXT NOT NULL
    ) STRICT;
    CREATE INDEX versions_by_pattern ON versions (pattern, id);
    CREATE TABLE adopted (
        place INTEGER PRIMARY KEY CHECK (place = 1),
        figures TEXT NOT NULL
    ) STRICT;",
    "ALTER TABLE orders ADD COLUMN needed TEXT;",
];

/// The version of a store of today.
pub const KNOWN: u32 = VERSIONS.len() as u32;

/// Brings the tables to today's version. Before each step of a store that holds something, the whole of it
/// is written beside it, as `<name>.version-<n>`; each step is done whole or not at all.
pub fn bring_up(connection: &mut Connection, path: &Path) -> Result<(), Fault> {
    let found = version(connection)?;
    if found > KNOWN {
        return Err(Fault::Newer { found, known: KNOWN });
    }
    for (at, step) in VERSIONS.iter().enumerate().skip(found as usize) {
        if at > 0 && found > 0 {
            keep(connection, path, at as u32)?;
        }
        let work = connection.transaction_with_behavior(TransactionBehavior::Immediate)?;
        // Another process may have been quicker.
        if version(&work)? == at as u32 {
            work.execute_batch(step)?;
            work.pragma_update(None, "application_id", OURS)?;
            work.pragma_update(None, "user_version", at as u32 + 1)?;
        }
        work.commit()?;
    }
    Ok(())
}

fn version(connection: &Connection) -> Result<u32, Fault> {
    let version: u32 = connection.query_row("PRAGMA user_version", [], |row| row.get(0))?;
    let ours: i32 = connection.query_row("PRAGMA application_id", [], |row| row.get(0))?;
    let tables: u32 = connection.query_row("SELECT count(*) FROM sqlite_schema", [], |row| row.get(0))?;
    if (version > 0 || tables > 0) && ours != OURS {
        return Err(Fault::NotAStore);
    }
    Ok(version)
}

fn keep(connection: &Connection, path: &Path, version: u32) -> Result<(), Fault> {
    let mut name = path.file_name().unwrap_or_default().to_owned();
    name.push(format!(".version-{version}"));
    let beside: PathBuf = path.with_file_name(name);
    if !beside.exists() {
        connection.execute("VACUUM INTO ?1", [beside.to_string_lossy()])?;
    }
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_older_store_is_kept_beside_and_brought_up() {
        let folder = tempfile::tempdir().unwrap();
        let path = folder.path().join("workshop.db");
        let old = Connection::open(&path).unwrap();
        old.execute_batch(VERSIONS[0]).unwrap();
        old.pragma_update(None, "application_id", OURS).unwrap();
        old.pragma_update(None, "user_version", 1).unwrap();
        old.execute("INSERT INTO items (name, material, count) VALUES ('a hank', 'cane fine', 7)", [])
            .unwrap();
        drop(old);

        let mut connection = Connection::open(&path).unwrap();
        bring_up(&mut connection, &path).unwrap();
        assert_eq!(version(&connection).unwrap(), KNOWN);
        let count = |connection: &Connection| -> u32 {
            connection
                .query_row("SELECT count FROM items WHERE name = 'a hank'", [], |row| row.get(0))
                .unwrap()
        };
        assert_eq!(count(&connection), 7);
        let kept = Connection::open(folder.path().join("workshop.db.version-1")).unwrap();
        assert_eq!((version(&kept).unwrap(), count(&kept)), (1, 7));
    }
}
