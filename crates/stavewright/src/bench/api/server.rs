//! The server itself, and what does not depend on a pattern.

use serde::Serialize;
use utoipa::ToSchema;

use super::{ColourName, MaterialName, Word};

/// That the server lives, and what it may do.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct Health {
    /// Version of the program.
    pub(crate) version: String,
    /// Changes each time the server starts.
    pub(crate) started: String,
    /// Stands for the folder with the patterns, the same from start to start; it does not tell where it is.
    pub(crate) folder: String,
    /// Whether the page may save.
    pub(crate) may_write: bool,
    /// Whether it is open to the local network.
    pub(crate) studio: bool,
    /// Name of the pattern to open first, if the server was started for one.
    pub(crate) open: Option<String>,
    /// The languages that there are.
    pub(crate) languages: Vec<LanguageName>,
}

/// A language.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct LanguageName {
    /// Its tag, such as `en`.
    pub(crate) tag: String,
    /// Its own name for itself.
    pub(crate) name: String,
}

/// What a pattern may name.
#[derive(Clone, Debug, Serialize, ToSchema)]
#[cfg_attr(test, derive(ts_rs::TS))]
pub(crate) struct Stock {
    /// The catalogue's materials, in its order.
    pub(crate) materials: Vec<MaterialName>,
    /// The woods for bases.
    pub(crate) woods: Vec<Word>,
    /// The built-in colours.
    pub(crate) colours: Vec<ColourName>,
}
