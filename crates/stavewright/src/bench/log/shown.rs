//! A making, as the page shows it.

use basket::Length;
use basket::message::Value;
use planning::records::Record;
use words::Words;

use crate::bench::api::Making;

/// A making in words.
pub(super) fn making(record: &Record, words: &Words) -> Making {
    let length = |length: Option<Length>| length.map(|length| Value::Name(words.both(length)));
    let count = |count: u32| Value::Count(i64::from(count));
    let minutes: f64 = record.minutes.iter().map(|(_, minutes)| minutes).sum();
    let said = [
        ("record-says-work", (minutes > 0.0).then_some(Value::Minutes(minutes))),
        ("record-says-rows", record.rows.map(count)),
        ("record-says-weaver", record.weaver.map(|weaver| Value::Name(words.run(weaver)))),
        ("record-says-wet", length(record.wet)),
        ("record-says-dry", length(record.dry)),
        ("record-says-girth-wet", length(record.girth_wet)),
        ("record-says-girth-dry", length(record.girth_dry)),
        ("record-says-wood", record.wood.clone().map(Value::Name)),
        ("record-says-learner", record.learner.then_some(Value::Count(1))),
    ];
    let said = said.into_iter().filter_map(|(id, value)| Some(words.with(id, &[("value", value?)])));
    let staves = record.staves.map(|(staves, spoilt)| {
        words.with("record-says-staves", &[("value", count(staves)), ("spoilt", count(spoilt))])
    });
    Making {
        number: record.number,
        pattern: record.pattern.clone(),
        made: record.made.map(|day| day.to_string()).unwrap_or_default(),
        who: record.who.clone().unwrap_or_default(),
        says: said.chain(staves).collect(),
        went_wrong: record.went_wrong.clone().unwrap_or_default(),
        photos: record.photos.clone(),
    }
}
