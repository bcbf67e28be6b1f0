//! The pattern files of one folder: nothing outside it is read or written.

use std::fs;
use std::hash::{DefaultHasher, Hash, Hasher};
use std::io::{self, Write};
use std::path::{Path, PathBuf};
use std::sync::{Mutex, PoisonError};
use std::time::UNIX_EPOCH;

use axum::http::StatusCode;
use basket::Catalogue;

use super::api::{PatternName, PatternText, Saved};
use super::look::problems;
use super::refusal::Refusal;
use super::text::Written;
use crate::bench::api::EditValue;
use crate::packet;

/// What pattern files end in.
const ENDING: &str = ".toml";
/// No name of a file is longer, in bytes.
const LONGEST_NAME: usize = 120;
/// More files are not listed.
const MOST_FILES: usize = 1000;

/// A folder with patterns.
pub(crate) struct Folder {
    path: PathBuf,
    /// Held while a file is compared and replaced, so that two windows do not do it at once.
    saving: Mutex<()>,
}

impl Folder {
    /// The folder at a path, which exists.
    pub(crate) fn at(path: &Path) -> io::Result<Self> {
        let path = path.canonicalize()?;
        if path.is_dir() {
            Ok(Self { path, saving: Mutex::default() })
        } else {
            Err(io::Error::from(io::ErrorKind::NotADirectory))
        }
    }

    /// Where it is.
    pub(crate) fn path(&self) -> &Path {
        &self.path
    }

    /// Its pattern files by name; links that lead out of the folder are left out.
    pub(crate) fn list(&self) -> Result<Vec<PatternName>, Refusal> {
        let entries = fs::read_dir(&self.path).map_err(|error| unreadable("the folder", &error))?;
        let mut names: Vec<String> = entries
            .flatten()
            .filter_map(|entry| entry.file_name().to_str()?.strip_suffix(ENDING).map(str::to_owned))
            .filter(|name| is_plain(name))
            .collect();
        names.sort();
        names.truncate(MOST_FILES);
        Ok(names.iter().filter_map(|name| self.about(name)).collect())
    }

    fn about(&self, name: &str) -> Option<PatternName> {
        let text = self.read(name).ok()?;
        let modified = fs::metadata(self.file(name).ok()?).and_then(|about| about.modified()).ok();
        let since = modified.and_then(|time| time.duration_since(UNIX_EPOCH).ok());
        let title = match Written::of(&text.source).get("title") {
            Some(EditValue::Text(title)) if !title.is_empty() => title,
            _ => name.to_owned(),
        };
        Some(PatternName {
            name: name.to_owned(),
            title,
            hash: text.hash,
            modified: since.map_or(0, |since| since.as_secs()),
            reads: basket::pattern::read(&text.source, Catalogue::built_in()).is_ok(),
        })
    }

    /// A pattern file with its text.
    pub(crate) fn read(&self, name: &str) -> Result<PatternText, Refusal> {
        let file = self.file(name)?;
        let about = fs::metadata(&file).map_err(|error| cannot_read(name, &error))?;
        if about.len() > basket::limits::PATTERN_BYTES as u64 {
            return Err(Refusal::senseless(
                "the file is larger than 1 MB, far too large for a pattern",
                format!("{name}{ENDING}"),
                "Is this the right file?",
            ));
        }
        let bytes = fs::read(&file).map_err(|error| cannot_read(name, &error))?;
        let source = String::from_utf8(bytes).map_err(|_| {
            Refusal::senseless(
                "the file is not UTF-8 text",
                format!("{name}{ENDING}"),
                "Save it again as UTF-8.",
            )
        })?;
        Ok(PatternText { name: name.to_owned(), hash: hash(&source), source })
    }

    /// Saves a text, whole or not at all. `base` is the hash of the file that it grew from, or none for
    /// a file that must not exist yet.
    pub(crate) fn save(&self, name: &str, source: &str, base: Option<&str>) -> Result<Saved, Refusal> {
        plain(name)?;
        if let Err(found) = basket::pattern::read(source, Catalogue::built_in()) {
            return Err(Refusal::misread(problems::of(source, &found)));
        }
        let _saving = self.saving.lock().unwrap_or_else(PoisonError::into_inner);
        let Some(base) = base else { return self.create(name, source) };
        let present = match self.read(name) {
            Ok(present) => present,
            Err(_) if !self.is_there(name) => return Err(gone(name)),
            Err(refusal) => return Err(refusal),
        };
        if present.hash != base {
            return Err(changed(name).with_present(Some(present)));
        }
        let file = self.file(name)?;
        let written = self.beside(source).and_then(|fresh| fresh.persist(&file).map_err(|error| error.error));
        written.and_then(|_| self.flush()).map_err(|error| cannot_write(name, &error))?;
        Ok(Saved { name: name.to_owned(), hash: hash(source) })
    }

    /// Gives a file another name that is free.
    pub(crate) fn rename(&self, name: &str, to: &str) -> Result<Saved, Refusal> {
        plain(to)?;
        let _saving = self.saving.lock().unwrap_or_else(PoisonError::into_inner);
        let text = self.read(name)?;
        // The new file is there before the old one goes: a crash between leaves both, and loses nothing.
        let saved = self.create(to, &text.source)?;
        let removed = fs::remove_file(self.path.join(format!("{name}{ENDING}")));
        removed.and_then(|()| self.flush()).map_err(|error| cannot_write(name, &error))?;
        Ok(saved)
    }

    /// Copies a file to another name that is free.
    pub(crate) fn duplicate(&self, name: &str, to: &str) -> Result<Saved, Refusal> {
        plain(to)?;
        let _saving = self.saving.lock().unwrap_or_else(PoisonError::into_inner);
        let text = self.read(name)?;
        self.create(to, &text.source)
    }

    fn create(&self, name: &str, source: &str) -> Result<Saved, Refusal> {
        let file = self.path.join(format!("{name}{ENDING}"));
        if self.is_there(name) {
            return Err(taken(name).with_present(self.read(name).ok()));
        }
        let fresh = self.beside(source).map_err(|error| cannot_write(name, &error))?;
        match fresh.persist_noclobber(&file) {
            Ok(_) => {}
            Err(error) if error.error.kind() == io::ErrorKind::AlreadyExists => {
                return Err(taken(name).with_present(self.read(name).ok()));
            }
            Err(error) => return Err(cannot_write(name, &error.error)),
        }
        self.flush().map_err(|error| cannot_write(name, &error))?;
        Ok(Saved { name: name.to_owned(), hash: hash(source) })
    }

    fn is_there(&self, name: &str) -> bool {
        self.path.join(format!("{name}{ENDING}")).symlink_metadata().is_ok()
    }

    /// The file itself: links are followed and have to stay in the folder.
    fn file(&self, name: &str) -> Result<PathBuf, Refusal> {
        plain(name)?;
        let file = self.path.join(format!("{name}{ENDING}"));
        let real = file.canonicalize().map_err(|error| cannot_read(name, &error))?;
        if real.parent() != Some(self.path.as_path()) {
            return Err(Refusal::new(
                StatusCode::FORBIDDEN,
                "this file is a link that leads out of the bench's folder",
                format!("{name}{ENDING}"),
                "Copy the file itself into the folder.",
            ));
        }
        if !real.is_file() {
            return Err(missing(name));
        }
        Ok(real)
    }

    /// A text in a temporary file of the folder, flushed to the disk.
    fn beside(&self, source: &str) -> io::Result<tempfile::NamedTempFile> {
        let mut file = packet::builder(0o666).tempfile_in(&self.path)?;
        file.write_all(source.as_bytes())?;
        file.as_file().sync_all()?;
        Ok(file)
    }

    fn flush(&self) -> io::Result<()> {
        packet::flush_folder(&self.path)
    }
}

/// What a text amounts to. It tells changes from each other; it is no defence against forgery.
pub(crate) fn hash(text: &str) -> String {
    let mut hasher = DefaultHasher::new();
    text.hash(&mut hasher);
    format!("{:016x}{:08x}", hasher.finish(), text.len())
}

/// Whether a name is that of a file in the folder and of nothing else.
fn is_plain(name: &str) -> bool {
    let odd = |sign: char| sign.is_control() || "/\\:*?\"<>|".contains(sign);
    let edge = |sign: char| sign == '.' || sign.is_whitespace();
    !name.is_empty()
        && name.len() <= LONGEST_NAME
        && !name.chars().any(odd)
        && !name.starts_with(edge)
        && !name.ends_with(edge)
}

fn plain(name: &str) -> Result<(), Refusal> {
    if is_plain(name) {
        return Ok(());
    }
    let shown: String = name.chars().filter(|sign| !sign.is_control()).take(60).collect();
    Err(Refusal::senseless(
        format!("`{shown}` cannot be the name of a pattern"),
        "name",
        "Use letters, digits, spaces and hyphens, and leave .toml out.",
    ))
}

fn missing(name: &str) -> Refusal {
    Refusal::new(
        StatusCode::NOT_FOUND,
        "there is no such pattern in the folder",
        format!("{name}{ENDING}"),
        "Look through the list again; it may have been renamed or moved.",
    )
}

fn gone(name: &str) -> Refusal {
    Refusal::new(
        StatusCode::CONFLICT,
        "this file is no longer in the folder",
        format!("{name}{ENDING}"),
        "Save it as a new file.",
    )
}

fn changed(name: &str) -> Refusal {
    Refusal::new(
        StatusCode::CONFLICT,
        "this file was changed since it was opened, and is left as it is",
        format!("{name}{ENDING}"),
        "Compare the two; save again over it, or under another name.",
    )
}

fn taken(name: &str) -> Refusal {
    Refusal::new(
        StatusCode::CONFLICT,
        "there is a file of this name already, and it is left as it is",
        format!("{name}{ENDING}"),
        "Choose another name.",
    )
}

fn cannot_read(name: &str, error: &io::Error) -> Refusal {
    match error.kind() {
        io::ErrorKind::NotFound => missing(name),
        _ => unreadable(&format!("{name}{ENDING}"), error),
    }
}

fn unreadable(place: &str, error: &io::Error) -> Refusal {
    Refusal::new(
        StatusCode::INTERNAL_SERVER_ERROR,
        format!("it cannot be read: {error}"),
        place,
        "Check whose it is and whether it may be read.",
    )
}

fn cannot_write(name: &str, error: &io::Error) -> Refusal {
    Refusal::new(
        StatusCode::INTERNAL_SERVER_ERROR,
        format!("it cannot be written: {error}; what was there before still is"),
        format!("{name}{ENDING}"),
        "Check that the folder may be written to and that the disk has room, then save again.",
    )
}
