//! Opening what somebody else named: a file and nothing else, without waiting for anybody.

use std::fmt;
use std::fs::{File, FileType, OpenOptions};
use std::io;
use std::path::{Component, Path, PathBuf};

/// Why a file was not opened.
#[derive(Debug)]
pub(crate) enum Unopened {
    /// It is something else, such as a folder.
    Odd(&'static str),
    /// It lies outside the folder in which it has to lie.
    Outside,
    /// The system refused.
    Refused(io::Error),
}

impl fmt::Display for Unopened {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Odd(what) => write!(f, "this is {what}, not a file"),
            Self::Outside => f.write_str("this lies outside the pattern's folder"),
            Self::Refused(error) => write!(f, "cannot be read: {error}"),
        }
    }
}

impl From<io::Error> for Unopened {
    fn from(error: io::Error) -> Self {
        Self::Refused(error)
    }
}

/// Opens a file to read it. A pipe would wait for its writer and a device may do anything when it is
/// opened, so both are looked at first; what took the file's place meanwhile is noticed afterwards.
pub(crate) fn open(path: &Path) -> Result<File, Unopened> {
    only_a_file(path.metadata()?.file_type())?;
    let mut options = OpenOptions::new();
    options.read(true);
    #[cfg(unix)]
    {
        use rustix::fs::OFlags;
        let flags = (OFlags::NONBLOCK | OFlags::NOCTTY).bits();
        std::os::unix::fs::OpenOptionsExt::custom_flags(&mut options, flags.cast_signed());
    }
    let file = options.open(path)?;
    only_a_file(file.metadata()?.file_type())?;
    Ok(file)
}

/// The file of this name in a folder or below it: a link that leads out of the folder is not followed.
pub(crate) fn inside(folder: &Path, name: &str) -> Result<PathBuf, Unopened> {
    let downward = Path::new(name).components().all(|part| matches!(part, Component::Normal(_)));
    if !downward {
        return Err(Unopened::Outside);
    }
    let folder = if folder.as_os_str().is_empty() { Path::new(".") } else { folder };
    let path = folder.join(name).canonicalize()?;
    if path.starts_with(folder.canonicalize()?) { Ok(path) } else { Err(Unopened::Outside) }
}

fn only_a_file(kind: FileType) -> Result<(), Unopened> {
    if kind.is_file() { Ok(()) } else { Err(Unopened::Odd(what(kind))) }
}

#[cfg(unix)]
fn what(kind: FileType) -> &'static str {
    use std::os::unix::fs::FileTypeExt;
    if kind.is_dir() {
        "a folder"
    } else if kind.is_fifo() {
        "a pipe"
    } else if kind.is_socket() {
        "a socket"
    } else {
        "a device"
    }
}

#[cfg(not(unix))]
fn what(kind: FileType) -> &'static str {
    if kind.is_dir() { "a folder" } else { "a device" }
}
