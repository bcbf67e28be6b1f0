//! Texts that somebody else wrote, and where they came from.

use std::fmt;
use std::path::{Path, PathBuf};

/// Where a text came from.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) enum Origin {
    /// Standard input.
    Standard,
    /// A file.
    File(PathBuf),
}

impl Origin {
    /// What an argument means: `-` is standard input.
    pub(crate) fn of(argument: &Path) -> Self {
        if argument.as_os_str() == "-" { Self::Standard } else { Self::File(argument.to_owned()) }
    }

    /// The folder in which the file lies; the present one for standard input.
    pub(crate) fn folder(&self) -> &Path {
        match self {
            Self::Standard => Path::new(""),
            Self::File(path) => path.parent().unwrap_or(Path::new("")),
        }
    }

    /// Name of the file without folder and ending.
    pub(crate) fn stem(&self) -> Option<&std::ffi::OsStr> {
        match self {
            Self::Standard => None,
            Self::File(path) => path.file_stem(),
        }
    }
}

impl fmt::Display for Origin {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Standard => f.write_str("standard input"),
            Self::File(path) => path.display().fmt(f),
        }
    }
}

/// A text and where it came from.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Text {
    /// Where it came from.
    pub(crate) origin: Origin,
    /// What it says.
    pub(crate) content: String,
}
