//! Whose hand a basket is worked out by, where the usual one is not meant.

use std::path::{Path, PathBuf};

use basket::{Draft, Hand};
use planning::records::{self, Compared, Learned, Record};
use words::Words;

use super::reading::{Read, words};
use super::workshop;
use crate::failure::Failure;
use crate::source::Origin;
use crate::{input, report, screen};

/// Records that a hand is learned from; without them the usual hand is meant.
#[derive(Debug, clap::Args)]
pub(super) struct OwnHand {
    /// Work with the hand that these records tell of: a file of them, or a store (see `stavewright hand`).
    #[arg(long = "hand", value_name = "FILE")]
    records: Option<PathBuf>,

    /// Only this maker's records of the hand.
    #[arg(long = "hand-of", value_name = "NAME", requires = "records")]
    who: Option<String>,
}

impl OwnHand {
    /// The hand, and what is to be said of it. It is said on every use: a figure of one's own never comes in
    /// unseen.
    pub(super) fn of(&self, read: &Read) -> Result<(Hand, String), Failure> {
        let Some(path) = &self.records else { return Ok((Hand::USUAL, String::new())) };
        let usual = read.draft_by(&Hand::USUAL);
        let words = words(&usual.basket);
        let learned = learned((path, self.who.as_deref()), &usual)?;
        let hand = learned.hand(&whose(self.who.as_deref(), &words));
        let own = read.draft_by(&hand);
        Ok((hand, report::hand::render(&learned, (&usual, &own), &words) + "\n"))
    }

    /// The draft by this hand; what is said of the hand is printed first, beside the answer.
    pub(super) fn draft(&self, read: Read) -> Result<Draft, Failure> {
        let (hand, said) = self.of(&read)?;
        screen::tell(&said);
        Ok(if self.records.is_some() { read.draft_by(&hand) } else { read.draft() })
    }
}

/// What is said to own the figures, where nobody is named.
pub(super) fn whose(who: Option<&str>, words: &Words) -> String {
    who.map_or_else(|| words.term("hand-own"), str::to_owned)
}

/// What records say of the hand that made this basket, all of them or one maker's.
pub(super) fn learned((path, who): (&Path, Option<&str>), usual: &Draft) -> Result<Learned, Failure> {
    let origin = Origin::of(path);
    let mut all = read(path)?;
    if workshop::is_store(path) {
        // A log holds the makings of all patterns.
        all.retain(|record| record.pattern == usual.basket.title);
    }
    let wanted = |record: &&Record| who.is_none() || record.who.as_deref() == who;
    let compared: Result<Vec<Compared>, _> =
        all.iter().filter(wanted).map(|record| Compared::of(record, usual)).collect();
    let compared = compared.map_err(|mismatch| {
        Failure::of_file(&origin, mismatch, "Take that record out, or name the pattern it is of.")
    })?;
    if compared.is_empty() {
        let help = "Write one down with [[record]]; `stavewright hand --help` shows how.";
        return Err(Failure::of_file(&origin, "there is no such record", help));
    }
    Ok(Learned::of(&compared))
}

fn read(path: &Path) -> Result<Vec<Record>, Failure> {
    if workshop::is_store(path) {
        return workshop::records_of(path);
    }
    let text = input::read(Origin::of(path))?;
    records::read(&text.content).map_err(|problems| Failure::Misread { text, problems })
}
