//! The commands of the workshop, and what they have in common.

pub(super) mod backup;
pub(super) mod buy;
pub(super) mod cutting;
pub(super) mod history;
pub(super) mod kits;
pub(super) mod order;
pub(super) mod price;
pub(super) mod records;
pub(super) mod shelf;

mod book;
mod plan;
mod show;

use std::io::Read;
use std::path::{Path, PathBuf};

use basket::pattern::Units;
use planning::records::Record;
use rust_decimal::Decimal;
use words::{Language, Words};
use workshop::{Fault, Store};

use crate::failure::Failure;
use crate::store::STORE;

/// Where the store is.
#[derive(Debug, clap::Args)]
struct StoreArgs {
    /// The store with shelf, moulds and orders.
    #[arg(long, value_name = "FILE", default_value = STORE)]
    store: PathBuf,
}

impl StoreArgs {
    /// The store, made where there is none yet.
    fn open(&self) -> Result<Store, Failure> {
        open(&self.store)
    }

    /// The store, where another than the usual one is named.
    fn named(&self) -> Option<&Path> {
        Some(self.store.as_path()).filter(|store| *store != Path::new(STORE))
    }

    /// The store, if there is one.
    fn existing(&self) -> Result<Option<Store>, Failure> {
        if self.store.exists() || self.named().is_some() { self.open().map(Some) } else { Ok(None) }
    }
}

/// Whether a file is a store, by its first bytes (`SQLite`'s own documentation of its file format, §1.2).
pub(super) fn is_store(path: &Path) -> bool {
    const HEAD: &[u8; 16] = b"SQLite format 3\0";
    let mut head = [0; HEAD.len()];
    let read = std::fs::File::open(path).and_then(|mut file| file.read_exact(&mut head));
    read.is_ok() && &head == HEAD
}

/// The log of a store.
pub(super) fn records_of(path: &Path) -> Result<Vec<Record>, Failure> {
    open(path)?.records().map_err(|fault| failure(path, &fault))
}

/// Not below zero, as the kits file has it.
fn amount(text: &str) -> Result<Decimal, String> {
    let read = text.parse().ok().filter(|amount: &Decimal| !amount.is_sign_negative());
    read.ok_or_else(|| "write an amount such as 12.50".to_owned())
}

fn open(path: &Path) -> Result<Store, Failure> {
    Store::open(path).map_err(|fault| failure(path, &fault))
}

/// A fault of the store, with a way to mend it.
fn failure(path: &Path, fault: &Fault) -> Failure {
    let help = match fault {
        Fault::Newer { .. } => "Use the newer Stavewright; this file was left as it is.",
        Fault::NotAStore => "Name the store with --store; this file was left as it is.",
        Fault::Damaged(_) => {
            "Take the last backup, or what `stavewright shelf export` wrote; keep this file aside."
        }
        Fault::ReadOnly => "Allow writing to it, or name another with --store.",
        Fault::Full => "Make room on the disk and try again.",
        Fault::Busy => "Close the other program, or wait until it is done.",
        Fault::Unopened(_) => "Check that the folder exists and may be written to.",
        Fault::Unknown { what: "record", .. } => "`stavewright records` lists the log.",
        Fault::Unknown { what: "order", .. } => "`stavewright order` lists the orders.",
        Fault::Unknown { .. } => "`stavewright shelf` lists what there is; names are written exactly so.",
        Fault::TooFew { .. } => "Count again: `stavewright shelf count NAME NUMBER`.",
        Fault::Refused(_) | Fault::Row { .. } | Fault::Other(_) => "",
    };
    let words = Words::new(Language::English, Units::default());
    let said = match fault {
        Fault::Refused(what) => words.say(what),
        other => words.say(&other.message()),
    };
    Failure::plain(format!("{}: {said}", path.display()), help)
}
