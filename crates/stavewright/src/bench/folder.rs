//! The pattern files of one folder: nothing outside it is read or written.

use std::fs;
use std::hash::{DefaultHasher, Hash, Hasher};
use std::io;
use std::path::{Path, PathBuf};
use std::sync::{Mutex, PoisonError};
use std::time::UNIX_EPOCH;

use axum::http::StatusCode;
use basket::Catalogue;
use basket::message::{Message, Value};

use super::api::{PatternName, PatternText, PlanName, Saved};
use super::kind::kind_of;
use super::look::problems;
use super::name::{is_plain, plain};
use super::refusal::Refusal;
use super::text::Written;
use crate::bench::api::{EditValue, NameRequest, SaveRequest};
use crate::disk::{fault, flush_folder};
use crate::single::{self, Unwritten};

/// What pattern files end in.
const ENDING: &str = ".toml";
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

    /// Stands for the folder where its path would tell guests too much.
    pub(crate) fn mark(&self) -> String {
        hash(&self.path.to_string_lossy())
    }

    /// Its pattern files by name; links that lead out of the folder are left out.
    pub(crate) fn list(&self, catalogue: &Catalogue) -> Result<Vec<PatternName>, Refusal> {
        let names = self.names().map_err(|error| unreadable("the folder", &error))?;
        Ok(names.iter().filter_map(|name| self.about(name, catalogue)).collect())
    }

    /// Its plans of classes by name.
    pub(crate) fn plans(&self) -> Result<Vec<PlanName>, Refusal> {
        let names = self.names().map_err(|error| unreadable("the folder", &error))?;
        let plan = |name: &String| {
            let text = self.read(name).ok()?;
            let kind = kind_of(&text.source)?;
            Some(PlanName { name: name.clone(), title: title(&text), kind })
        };
        Ok(names.iter().filter_map(plan).collect())
    }

    fn names(&self) -> io::Result<Vec<String>> {
        let mut names: Vec<String> = fs::read_dir(&self.path)?
            .flatten()
            .filter_map(|entry| entry.file_name().to_str()?.strip_suffix(ENDING).map(str::to_owned))
            .filter(|name| is_plain(name))
            .collect();
        names.sort();
        names.truncate(MOST_FILES);
        Ok(names)
    }

    /// Whether a pattern of the folder names this file as a drawn weave or a photograph.
    pub(crate) fn has_pattern_with(&self, file: &str, catalogue: &Catalogue) -> bool {
        let names = self.names().unwrap_or_default();
        let texts = names.iter().filter_map(|name| self.read(name).ok());
        let mut read = texts.filter(|text| text.source.contains(file)).filter_map(|text| {
            let pattern = basket::pattern::read(&text.source, catalogue);
            pattern.ok()
        });
        read.any(|pattern| {
            let drawn = pattern.weave.courses.iter().filter_map(|course| course.chart_file.as_deref());
            let photos = pattern.notes.iter().filter_map(|note| Some(note.photo.as_ref()?.path.as_str()));
            drawn.chain(photos).any(|named| named == file)
        })
    }

    fn about(&self, name: &str, catalogue: &Catalogue) -> Option<PatternName> {
        let text = self.read(name).ok().filter(|text| kind_of(&text.source).is_none())?;
        let modified = fs::metadata(self.file(name).ok()?).and_then(|about| about.modified()).ok();
        let since = modified.and_then(|time| time.duration_since(UNIX_EPOCH).ok());
        Some(PatternName {
            name: name.to_owned(),
            title: title(&text),
            hash: text.hash,
            modified: since.map_or(0, |since| since.as_secs()),
            reads: basket::pattern::read(&text.source, catalogue).is_ok(),
            photo: self.has_photo(name),
        })
    }

    /// A pattern file with its text.
    pub(crate) fn read(&self, name: &str) -> Result<PatternText, Refusal> {
        let file = self.file(name)?;
        let about = fs::metadata(&file).map_err(|error| cannot_read(name, &error))?;
        if about.len() > basket::limits::PATTERN_BYTES as u64 {
            return Err(Refusal::said(
                StatusCode::UNPROCESSABLE_ENTITY,
                Message::new("refused-large-file"),
                format!("{name}{ENDING}"),
            ));
        }
        let bytes = fs::read(&file).map_err(|error| cannot_read(name, &error))?;
        let source = String::from_utf8(bytes).map_err(|_| {
            Refusal::said(
                StatusCode::UNPROCESSABLE_ENTITY,
                Message::new("refused-no-text"),
                format!("{name}{ENDING}"),
            )
        })?;
        Ok(PatternText { name: name.to_owned(), hash: hash(&source), source })
    }

    /// A pattern file as it is offered to whoever may write, or to a guest: to guests only what is a pattern,
    /// for other files of the folder may end in `.toml` too.
    pub(crate) fn offered(
        &self,
        name: &str,
        may_write: bool,
        catalogue: &Catalogue,
    ) -> Result<PatternText, Refusal> {
        let text = self.read(name)?;
        if may_write || basket::pattern::read(&text.source, catalogue).is_ok() {
            return Ok(text);
        }
        Err(missing(name))
    }

    /// Saves a text, whole or not at all; a pattern with mistakes as it is, with what is wrong in it said.
    pub(crate) fn save(
        &self,
        name: &str,
        request: &SaveRequest,
        catalogue: &Catalogue,
    ) -> Result<Saved, Refusal> {
        plain(name)?;
        let saved = self.put(name, &request.source, request.base_hash.as_deref())?;
        let found = basket::pattern::read(&request.source, catalogue).err().unwrap_or_default();
        Ok(Saved { problems: problems::of(&request.source, &found), ..saved })
    }

    fn put(&self, name: &str, source: &str, base: Option<&str>) -> Result<Saved, Refusal> {
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
        single::replace(&self.file(name)?, present.source.as_bytes(), source.as_bytes())
            .map_err(|unwritten| self.unwritten(name, unwritten))?;
        Ok(saved(name, source))
    }

    fn unwritten(&self, name: &str, unwritten: Unwritten) -> Refusal {
        match unwritten {
            Unwritten::Changed => changed(name).with_present(self.read(name).ok()),
            Unwritten::Protected => left(name, Message::new("refused-protected")),
            Unwritten::Owner => left(name, Message::new("refused-foreign")),
            Unwritten::Refused(error) => cannot_write(name, &error),
            Unwritten::Unsure(error) => Refusal::said(
                StatusCode::INTERNAL_SERVER_ERROR,
                Message::new("refused-unsure").with("said", Value::Name(fault::reason(&error))),
                format!("{name}{ENDING}"),
            ),
        }
    }

    /// Gives a file another name that is free.
    pub(crate) fn rename(&self, name: &str, request: &NameRequest) -> Result<Saved, Refusal> {
        let to = &request.to;
        plain(to)?;
        let _saving = self.saving.lock().unwrap_or_else(PoisonError::into_inner);
        let text = self.read(name)?;
        // The new file is there before the old one goes: a crash between leaves both, and loses nothing.
        let saved = self.create(to, &text.source)?;
        let removed = fs::remove_file(self.path.join(format!("{name}{ENDING}")));
        removed.and_then(|()| flush_folder(&self.path)).map_err(|error| cannot_write(name, &error))?;
        self.rename_photo(name, to);
        Ok(saved)
    }

    fn create(&self, name: &str, source: &str) -> Result<Saved, Refusal> {
        let file = self.path.join(format!("{name}{ENDING}"));
        if self.is_there(name) {
            return Err(taken(name).with_present(self.read(name).ok()));
        }
        single::create(&file, source.as_bytes()).map_err(|error| match error.kind() {
            io::ErrorKind::AlreadyExists => taken(name).with_present(self.read(name).ok()),
            _ => cannot_write(name, &error),
        })?;
        Ok(saved(name, source))
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
            return Err(Refusal::said(
                StatusCode::FORBIDDEN,
                Message::new("refused-link"),
                format!("{name}{ENDING}"),
            ));
        }
        if !real.is_file() {
            return Err(missing(name));
        }
        Ok(real)
    }
}

/// Its title, or its name where it has none.
fn title(text: &PatternText) -> String {
    match Written::of(&text.source).get("title") {
        Some(EditValue::Text(title)) if !title.is_empty() => title,
        _ => text.name.clone(),
    }
}

/// What a text amounts to. It tells changes from each other; it is no defence against forgery.
pub(crate) fn hash(text: &str) -> String {
    let mut hasher = DefaultHasher::new();
    text.hash(&mut hasher);
    format!("{:016x}{:08x}", hasher.finish(), text.len())
}

fn saved(name: &str, source: &str) -> Saved {
    Saved { name: name.to_owned(), hash: hash(source), problems: Vec::new() }
}

fn missing(name: &str) -> Refusal {
    Refusal::said(StatusCode::NOT_FOUND, Message::new("refused-missing"), format!("{name}{ENDING}"))
}

fn gone(name: &str) -> Refusal {
    Refusal::said(StatusCode::CONFLICT, Message::new("refused-gone"), format!("{name}{ENDING}"))
}

fn changed(name: &str) -> Refusal {
    Refusal::said(StatusCode::CONFLICT, Message::new("refused-changed"), format!("{name}{ENDING}"))
}

fn taken(name: &str) -> Refusal {
    Refusal::said(StatusCode::CONFLICT, Message::new("refused-taken"), format!("{name}{ENDING}"))
}

fn cannot_read(name: &str, error: &io::Error) -> Refusal {
    match error.kind() {
        io::ErrorKind::NotFound => missing(name),
        _ => unreadable(&format!("{name}{ENDING}"), error),
    }
}

fn unreadable(place: &str, error: &io::Error) -> Refusal {
    Refusal::said(
        StatusCode::INTERNAL_SERVER_ERROR,
        Message::new("refused-unreadable").with("said", Value::Name(error.to_string())),
        place,
    )
}

/// A file that may not be changed.
fn left(name: &str, why: Message) -> Refusal {
    Refusal::said(StatusCode::FORBIDDEN, why, format!("{name}{ENDING}"))
}

fn cannot_write(name: &str, error: &io::Error) -> Refusal {
    Refusal::said(
        StatusCode::INTERNAL_SERVER_ERROR,
        Message::new("refused-unwritten").with("said", Value::Name(fault::reason(error))),
        format!("{name}{ENDING}"),
    )
}
