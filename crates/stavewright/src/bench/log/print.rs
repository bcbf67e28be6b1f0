//! The log, and the card of one making, to print.

use axum::http::StatusCode;
use basket::message::{Message, Value};
use basket::pattern::Units;
use basket::{Draft, Hand};
use planning::records::{self, Record};
use serde::{Deserialize, Serialize};
use sheets::workshop::making_log;
use sheets::{Card, Provenance, Templates};

use super::keep::said;
use crate::bench::compute::{self, Shop};
use crate::bench::refusal::Refusal;

/// What is to be printed of makings.
#[derive(Debug, Serialize, Deserialize)]
pub(crate) struct Printed {
    /// The makings, as a file of records.
    pub(crate) records: String,
    /// The texts of the patterns that they may be of.
    pub(crate) sources: Vec<String>,
    /// The making whose card it is; none for the log.
    pub(crate) number: Option<u32>,
    /// Only makings of this maker.
    pub(crate) who: Option<String>,
    /// Language of the sheet.
    pub(crate) language: Option<String>,
}

/// The sheet as PDF.
pub(crate) fn print(printed: &Printed, shop: Shop<'_>) -> Result<Vec<u8>, Refusal> {
    let mut makings = records::read(&printed.records).map_err(|_| Refusal::broken())?;
    let who = printed.who.as_deref();
    makings.retain(|record| who.is_none() || record.who.as_deref() == who);
    makings.retain(|record| printed.number.is_none_or(|number| record.number == number));
    match (makings.as_slice(), printed.number) {
        ([], _) => Err(said(StatusCode::NOT_FOUND, "record-none", who.unwrap_or_default())),
        ([making, ..], Some(_)) => card(making, printed, shop),
        (makings, None) => {
            let words = compute::words(printed.language.as_deref(), None, Units::default())?;
            let leaf = making_log(makings, who, &words);
            leaf.pdf(&words, compute::paper(None, &words), &Templates::default())
                .map_err(|error| unset(&error))
        }
    }
}

/// Where a basket comes from; its pattern has to be in the folder still.
fn card(making: &Record, printed: &Printed, shop: Shop<'_>) -> Result<Vec<u8>, Refusal> {
    let usual = Shop { hand: &Hand::USUAL, ..shop };
    let mut drafts = printed.sources.iter().filter_map(|source| compute::draft(source, usual).ok());
    let draft: Draft = drafts
        .rfind(|draft| draft.basket.title == making.pattern)
        .ok_or_else(|| said(StatusCode::NOT_FOUND, "record-pattern-missing", &making.pattern))?;
    let words = compute::words(printed.language.as_deref(), None, draft.pattern.units)?;
    let of = Provenance {
        number: making.number.to_string(),
        made: making.made.map(|day| day.to_string()).unwrap_or_default(),
        wood: making.wood.clone().unwrap_or_default(),
        maker: making.who.clone().unwrap_or_default(),
    };
    let card = Card { paper: compute::paper(None, &words), templates: Templates::default() };
    card.provenance(&draft, &of, &words).map_err(|error| unset(&error))
}

fn unset(error: &dyn std::error::Error) -> Refusal {
    let message = Message::new("record-unset").with("said", Value::Name(error.to_string()));
    Refusal::said(StatusCode::INTERNAL_SERVER_ERROR, message, "the sheets")
}
