//! What can be wrong with a store.

use std::fmt;

use basket::message::{Message, Value};
use rusqlite::ErrorCode;

/// Why the store did not do what was asked; nothing of it was done then.
#[derive(Debug)]
pub enum Fault {
    /// Written by a newer program.
    Newer {
        /// Version in the file.
        found: u32,
        /// Highest version that is known here.
        known: u32,
    },
    /// Some other program's file.
    NotAStore,
    /// The file is damaged.
    Damaged(String),
    /// It may not be written.
    ReadOnly,
    /// There is no room.
    Full,
    /// Another program writes for too long.
    Busy,
    /// The file cannot be opened, or the folder is not there.
    Unopened(String),
    /// There is no such thing.
    Unknown {
        /// `item`, `mould`, `movement`, `order`, `record`.
        what: &'static str,
        /// The name that was asked for.
        name: String,
    },
    /// More would be taken than there is.
    TooFew {
        /// The item.
        name: String,
        /// How many there are.
        there: i64,
        /// How many were to be taken.
        wanted: i64,
    },
    /// What was asked cannot be: an empty name, a mould that is out already, a movement that was taken back.
    Refused(Message),
    /// A table to be read in is wrong in a row.
    Row {
        /// Line of the file, counted from 1.
        line: u64,
        /// What is wrong there, and what would be right.
        what: Message,
    },
    /// Anything else that the database says.
    Other(String),
}

impl Fault {
    /// What cannot be, by a message without values.
    pub(crate) fn cannot(id: &'static str) -> Self {
        Self::Refused(Message::new(id))
    }

    /// The same of something that has a name.
    pub(crate) fn cannot_of(id: &'static str, name: &str) -> Self {
        Self::Refused(Message::new(id).with("name", name))
    }

    /// What is wrong, as a message and its values.
    pub fn message(&self) -> Message {
        let said = |id, text: &str| Message::new(id).with("said", Value::Name(text.to_owned()));
        match self {
            Self::Newer { found, known } => {
                Message::new("workshop-fault-newer").with("found", *found).with("known", *known)
            }
            Self::NotAStore => Message::new("workshop-fault-no-store"),
            Self::Damaged(text) => said("workshop-fault-damaged", text),
            Self::ReadOnly => Message::new("workshop-fault-read-only"),
            Self::Full => Message::new("workshop-fault-full"),
            Self::Busy => Message::new("workshop-fault-busy"),
            Self::Unopened(text) => said("workshop-fault-unopened", text),
            Self::Unknown { name, .. } => {
                Message::new("workshop-fault-unknown").with("name", Value::Name(name.clone()))
            }
            Self::TooFew { name, there, wanted } => Message::new("workshop-fault-too-few")
                .with("name", Value::Name(name.clone()))
                .with("there", Value::Count(*there))
                .with("wanted", Value::Count(*wanted)),
            Self::Refused(what) => Message::new("workshop-fault-refused").with("said", what.clone()),
            Self::Row { line, what } => Message::new("workshop-fault-row")
                .with("line", Value::Count(i64::try_from(*line).unwrap_or(i64::MAX)))
                .with("said", what.clone()),
            Self::Other(text) => said("workshop-fault-other", text),
        }
    }
}

/// For whoever looks into a log; readers are told the message in their language.
impl fmt::Display for Fault {
    fn fmt(&self, to: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(to, "{:?}", self.message())
    }
}

impl std::error::Error for Fault {}

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
