//! A pattern written in another size, with its comments kept.

use std::path::Path;

use basket::pattern::Units;
use basket::sizes::{Change, across, changes};
use basket::{Draft, Length};
use toml_edit::DocumentMut;

use crate::bench::{Edit, edit, value_of};
use crate::cli::reading::{Read, Reading};
use crate::failure::Failure;
use crate::input;
use crate::source::Origin;

/// One size, written and worked out.
pub(super) struct Written {
    /// What it is called, such as `5 in`.
    pub(super) name: String,
    /// Name of its file.
    pub(super) file: String,
    /// Its text.
    pub(super) text: String,
    /// Its mould at the top.
    pub(super) across: Length,
    pub(super) draft: Draft,
    pub(super) changes: Vec<Change>,
}

impl Written {
    /// The pattern over its own mould in this size.
    pub(super) fn scaled(reading: &Reading, read: &Read, to: Length) -> Result<Self, Failure> {
        let (pattern, catalogue) = read.said();
        let changed = changes(pattern, to, catalogue);
        let text = applied(read.source(), &changed)?;
        Self::of(reading, read, &text, changed)
    }

    /// The pattern over the mould of another one.
    pub(super) fn over(reading: &Reading, read: &Read, path: &Path) -> Result<Self, Failure> {
        let (pattern, catalogue) = read.said();
        let other = input::read(Origin::of(path))?;
        let theirs = match basket::pattern::read(&other.content, catalogue) {
            Ok(theirs) => theirs,
            Err(problems) => return Err(Failure::Misread { text: other, problems }),
        };
        if theirs.units != pattern.units {
            let what = "its units differ from the pattern's, and bare numbers of its mould would be misread";
            return Err(Failure::of_file(&other.origin, what, "Write both patterns in the same units."));
        }
        let of_mould = |change: &Change| change.key.starts_with("mould.");
        let mut changed = changes(pattern, across(&theirs.mould), catalogue);
        changed.retain(|change| !of_mould(change));
        let text = with_mould(&applied(read.source(), &changed)?, &other.content).ok_or_else(|| {
            Failure::of_file(&other.origin, "its mould cannot be taken over", "Write [mould] there.")
        })?;
        let stem = path.file_stem().unwrap_or_default().to_string_lossy().into_owned();
        let value = Some(stem);
        changed.insert(0, Change { key: "mould".to_owned(), value, why: "sizes-why-mould" });
        Self::of(reading, read, &text, changed)
    }

    fn of(reading: &Reading, read: &Read, text: &str, mut changes: Vec<Change>) -> Result<Self, Failure> {
        let (pattern, _) = read.said();
        let size = across(&reading.instead(text.to_owned(), read)?.said().0.mould);
        let name = named(size, pattern.units);
        let title = format!("{}, {name}", pattern.title);
        let titled = Change {
            key: "title".to_owned(),
            value: Some(toml_edit::Value::from(title).to_string().trim().to_owned()),
            why: "sizes-why-title",
        };
        let text = applied(text, std::slice::from_ref(&titled))?;
        changes.push(titled);
        let draft = reading.instead(text.clone(), read)?.draft();
        let file = format!("{}.toml", name.replace(['/', ' '], "-"));
        Ok(Self { file, across: size, draft, changes, text, name })
    }
}

fn named(size: Length, units: Units) -> String {
    use basket::measure::Printing;
    size.print(match units {
        Units::Inches => Printing::Inches { denominator: 8 },
        Units::Millimetres => Printing::Millimetres { step: 1.0 },
    })
}

fn applied(text: &str, changes: &[Change]) -> Result<String, Failure> {
    let edits: Vec<Edit> = changes.iter().filter_map(one).collect();
    edit(text, &edits).map_err(|refusal| {
        let fault = refusal.fault();
        Failure::plain(fault.what.clone(), fault.how_to_mend.clone())
    })
}

fn one(change: &Change) -> Option<Edit> {
    let path = change.key.clone();
    match &change.value {
        Some(value) => Some(Edit::Set { path, value: value_of(value)? }),
        None => Some(Edit::Remove { path }),
    }
}

/// A text with another one's `[mould]` in the place of its own.
fn with_mould(text: &str, other: &str) -> Option<String> {
    let mut own: DocumentMut = text.parse().ok()?;
    let other: DocumentMut = other.parse().ok()?;
    let place = own.get("mould").and_then(toml_edit::Item::as_table).and_then(toml_edit::Table::position);
    let mut mould = other.get("mould")?.clone();
    if let (Some(table), Some(place)) = (mould.as_table_mut(), place) {
        table.set_position(Some(place));
    }
    own.insert("mould", mould);
    Some(own.to_string())
}
