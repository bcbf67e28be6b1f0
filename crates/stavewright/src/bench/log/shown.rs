//! A making, as the page shows it.

use planning::records::Record;
use sheets::workshop::measured;
use words::Words;

use crate::bench::api::Making;

/// A making in words.
pub(super) fn making(record: &Record, words: &Words) -> Making {
    Making {
        number: record.number,
        pattern: record.pattern.clone(),
        made: record.made.map(|day| day.to_string()).unwrap_or_default(),
        who: record.who.clone().unwrap_or_default(),
        says: measured(record, words),
        went_wrong: record.went_wrong.clone().unwrap_or_default(),
        photos: record.photos.clone(),
    }
}
