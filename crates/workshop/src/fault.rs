//! What can be wrong with a store.

use rusqlite::ErrorCode;

/// Why the store did not do what was asked; nothing of it was done then.
#[derive(Debug, thiserror::Error)]
pub enum Fault {
    /// Written by a newer program.
    #[error("the store was written by a newer Stavewright (its version {found}, known up to {known})")]
    Newer {
        /// Version in the file.
        found: u32,
        /// Highest version that is known here.
        known: u32,
    },
    /// Some other program's file.
    #[error("this file is no store of a workshop")]
    NotAStore,
    /// The file is damaged.
    #[error("the store is damaged: {0}")]
    Damaged(String),
    /// It may not be written.
    #[error("the store may not be written")]
    ReadOnly,
    /// There is no room.
    #[error("there is no room left on the disk; nothing was changed")]
    Full,
    /// Another program writes for too long.
    #[error("another program is writing to the store; try again in a moment")]
    Busy,
    /// The file cannot be opened, or the folder is not there.
    #[error("the store cannot be opened: {0}")]
    Unopened(String),
    /// There is no such thing.
    #[error("there is no {what} called \u{201c}{name}\u{201d}")]
    Unknown {
        /// `item`, `mould`, `movement`, `order`.
        what: &'static str,
        /// The name that was asked for.
        name: String,
    },
    /// More would be taken than there is.
    #[error("of \u{201c}{name}\u{201d} there are {there}, and {wanted} would be taken")]
    TooFew {
        /// The item.
        name: String,
        /// How many there are.
        there: i64,
        /// How many were to be taken.
        wanted: i64,
    },
    /// What was asked cannot be: an empty name, a mould that is out already, a movement that was taken back.
    #[error("{0}")]
    Refused(String),
    /// A file to be read in is wrong in a row.
    #[error("{0}")]
    Row(RowFault),
    /// Anything else that the database says.
    #[error("the store did not do it: {0}")]
    Other(String),
}

/// What is wrong in which row of a table that was to be read in.
#[derive(Debug, PartialEq, Eq, thiserror::Error)]
#[error("line {line}: {what}")]
pub struct RowFault {
    /// Line of the file, counted from 1.
    pub line: u64,
    /// What is wrong there, and what would be right.
    pub what: String,
}

impl From<rusqlite::Error> for Fault {
    fn from(error: rusqlite::Error) -> Self {
        let said = error.to_string();
        match error.sqlite_error_code() {
            Some(ErrorCode::DatabaseCorrupt) => Self::Damaged(said),
            Some(ErrorCode::NotADatabase) => Self::NotAStore,
            Some(ErrorCode::ReadOnly) => Self::ReadOnly,
            Some(ErrorCode::DiskFull) => Self::Full,
            Some(ErrorCode::DatabaseBusy | ErrorCode::DatabaseLocked) => Self::Busy,
            Some(ErrorCode::CannotOpen | ErrorCode::PermissionDenied) => Self::Unopened(said),
            _ => Self::Other(said),
        }
    }
}
