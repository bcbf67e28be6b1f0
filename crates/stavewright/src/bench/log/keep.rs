//! The log, the hand that was taken up and the history of patterns, as the store of the folder keeps them.

use std::fs;
use std::io;

use axum::http::StatusCode;
use basket::Catalogue;
use basket::message::{Message, Value};
use planning::records::{self, Adopted, Record};
use sha2::{Digest, Sha256};
use words::Words;
use workshop::{Fault, Store};

use super::shown;
use crate::bench::api::{KeptPhoto, MakingLog, PastVersion};
use crate::bench::folder::Folder;
use crate::bench::refusal::Refusal;
use crate::photos::{self, Unfit};
use crate::single;
use crate::store::{STORE, in_folder};

/// What the name of a photograph of a making begins and ends with.
const PHOTO: [&str; 2] = ["making-", ".jpg"];

/// The log as it stands; an empty one where nothing was ever written down.
pub(crate) fn log(folder: &Folder, words: &Words) -> Result<MakingLog, Refusal> {
    let Some(store) = in_folder(folder.path()).map_err(|fault| refused(&fault))? else {
        return Ok(MakingLog::default());
    };
    let all = || -> Result<MakingLog, Fault> {
        let records = store.records()?;
        let mut makers: Vec<String> = records.iter().filter_map(|record| record.who.clone()).collect();
        makers.sort();
        makers.dedup();
        Ok(MakingLog {
            makings: records.iter().rev().map(|record| shown::making(record, words)).collect(),
            makers,
            adopted: store.adopted()?.map(|adopted| adopted.whose),
        })
    };
    all().map_err(|fault| refused(&fault))
}

/// Writes a making down. Its photographs have to be in the folder.
pub(crate) fn making(folder: &Folder, record: &Record) -> Result<(), Refusal> {
    for name in &record.photos {
        if !is_photo(name) || !folder.path().join(name).is_file() {
            return Err(said(StatusCode::NOT_FOUND, "record-photo-missing", name));
        }
    }
    let logged = open(folder).and_then(|mut store| store.log(std::slice::from_ref(record)));
    logged.map(drop).map_err(|fault| refused(&fault))
}

/// Forgets makings, and the photographs that no other making shows.
pub(crate) fn forget(folder: &Folder, numbers: &[u32]) -> Result<(), Refusal> {
    let gone = || -> Result<Vec<String>, Fault> {
        let mut store = open(folder)?;
        let (gone, left): (Vec<Record>, Vec<Record>) =
            store.records()?.into_iter().partition(|record| numbers.contains(&record.number));
        store.forget(numbers)?;
        let shown = |photo: &String| left.iter().any(|record| record.photos.contains(photo));
        Ok(gone.into_iter().flat_map(|record| record.photos).filter(|photo| !shown(photo)).collect())
    };
    for photo in gone().map_err(|fault| refused(&fault))?.iter().filter(|photo| is_photo(photo)) {
        match fs::remove_file(folder.path().join(photo)) {
            Err(error) if error.kind() != io::ErrorKind::NotFound => {
                return Err(said(StatusCode::INTERNAL_SERVER_ERROR, "record-photo-stays", photo));
            }
            _ => {}
        }
    }
    Ok(())
}

/// Makings as a file, of one maker or all.
pub(crate) fn export(folder: &Folder, who: Option<&str>) -> Result<Vec<u8>, Refusal> {
    let mut all = records_of(folder)?;
    all.retain(|record| who.is_none() || record.who.as_deref() == who);
    if all.is_empty() {
        return Err(said(StatusCode::NOT_FOUND, "record-none", who.unwrap_or_default()));
    }
    Ok(records::write(&all).into_bytes())
}

/// The makings as a file, and the texts of the patterns that they may be of.
pub(crate) fn material(folder: &Folder, catalogue: &Catalogue) -> Result<(String, Vec<String>), Refusal> {
    let records = records::write(&records_of(folder)?);
    let names = folder.list(catalogue)?;
    let sources = names.iter().filter_map(|pattern| Some(folder.read(&pattern.name).ok()?.source));
    Ok((records, sources.collect()))
}

/// Takes figures up, or goes back to the usual hand.
pub(crate) fn adopt(folder: &Folder, figures: Option<&Adopted>) -> Result<(), Refusal> {
    open(folder).and_then(|mut store| store.adopt(figures)).map_err(|fault| refused(&fault))
}

/// The figures that were taken up; none where there are none, or the store cannot say.
pub(crate) fn adopted(folder: &Folder) -> Option<Adopted> {
    in_folder(folder.path()).ok()??.adopted().ok()?
}

/// Keeps a photograph, upright; without place and time unless they are wanted. Its name follows from what it shows.
pub(crate) fn photo(folder: &Folder, bytes: Vec<u8>, with_all: bool) -> Result<KeptPhoto, Refusal> {
    let bytes = photos::upright(bytes, with_all).map_err(|unfit| {
        let id = match unfit {
            Unfit::Kind => "record-photo-kind",
            Unfit::Large => "record-photo-large",
            Unfit::Broken => "record-photo-broken",
        };
        said(StatusCode::UNPROCESSABLE_ENTITY, id, "")
    })?;
    let [begins, ends] = PHOTO;
    let sum = Sha256::digest(&bytes).iter().take(8).fold(0_u64, |sum, byte| sum << 8 | u64::from(*byte));
    let name = format!("{begins}{sum:016x}{ends}");
    match single::create(&folder.path().join(&name), &bytes) {
        Err(error) if error.kind() != io::ErrorKind::AlreadyExists => {
            Err(said(StatusCode::INTERNAL_SERVER_ERROR, "record-photo-unkept", &error.to_string()))
        }
        _ => Ok(KeptPhoto { name }),
    }
}

/// A photograph of a making.
pub(crate) fn shown_photo(folder: &Folder, name: &str) -> Result<Vec<u8>, Refusal> {
    let missing = || said(StatusCode::NOT_FOUND, "record-photo-missing", name);
    let file = folder.path().join(name);
    if !is_photo(name) || !file.symlink_metadata().is_ok_and(|about| about.is_file()) {
        return Err(missing());
    }
    fs::read(file).map_err(|_| missing())
}

/// What a pattern was before, the last first; nothing is said of the versions yet.
pub(crate) fn history(folder: &Folder, name: &str) -> Result<Vec<PastVersion>, Refusal> {
    let Some(store) = in_folder(folder.path()).map_err(|fault| refused(&fault))? else {
        return Ok(Vec::new());
    };
    let versions = store.versions(name).map_err(|fault| refused(&fault))?;
    let version = |version: workshop::Version| PastVersion {
        id: version.id,
        at: version.at,
        source: version.source,
        says: Vec::new(),
    };
    Ok(versions.into_iter().map(version).collect())
}

/// Keeps what a pattern was before it was saved, and what it is now. Why not, if it cannot be: the pattern is saved
/// all the same.
pub(crate) fn keep_version(folder: &Folder, name: &str, texts: &[&str]) -> Option<Message> {
    let kept = open(folder)
        .and_then(|mut store| texts.iter().try_for_each(|source| store.keep_version(name, source)));
    kept.err().map(|fault| Message::new("history-not-kept").with("said", Value::Name(fault.to_string())))
}

/// The history of a pattern goes with its new name; where it cannot, it stays under the old one.
pub(crate) fn rename(folder: &Folder, name: &str, to: &str) {
    if let Ok(Some(mut store)) = in_folder(folder.path()) {
        let _ = store.rename_versions(name, to);
    }
}

/// There is no making from which a hand could be learned.
pub(crate) fn nothing_to_learn_from() -> Refusal {
    said(StatusCode::NOT_FOUND, "record-none", "")
}

fn records_of(folder: &Folder) -> Result<Vec<Record>, Refusal> {
    let records =
        in_folder(folder.path()).and_then(|store| store.map_or(Ok(Vec::new()), |store| store.records()));
    records.map_err(|fault| refused(&fault))
}

fn is_photo(name: &str) -> bool {
    let [begins, ends] = PHOTO;
    let sum = name.strip_prefix(begins).and_then(|name| name.strip_suffix(ends));
    sum.is_some_and(|sum| sum.len() == 16 && sum.bytes().all(|byte| byte.is_ascii_hexdigit()))
}

/// The store, made where there is none yet.
fn open(folder: &Folder) -> Result<Store, Fault> {
    in_folder(folder.path())?.map_or_else(|| Store::open(&folder.path().join(STORE)), Ok)
}

fn refused(fault: &Fault) -> Refusal {
    said(StatusCode::CONFLICT, "record-store", &fault.to_string())
}

fn said(status: StatusCode, id: &'static str, typed: &str) -> Refusal {
    let message = Message::new(id).with("typed", Value::Name(typed.chars().take(200).collect()));
    Refusal::said(status, message, STORE)
}
