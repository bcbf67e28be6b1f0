//! The log of what was made.

use basket::Length;
use basket::message::Value;
use planning::records::Record;
use words::Words;

use super::amount::Clerk;
use super::leaf::{Leaf, Section, Table};

/// What was measured of a making, in words.
pub fn measured(record: &Record, words: &Words) -> Vec<String> {
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
    said.chain(staves).collect()
}

/// The log of these makings to print, by number; of one maker, whose name it has then, or of all.
pub fn making_log(records: &[Record], who: Option<&str>, words: &Words) -> Leaf {
    let clerk = Clerk::new(words);
    let mut table = Table::new(clerk.head(&[
        "#makings-number",
        "makings-pattern",
        "makings-made",
        "makings-who",
        "makings-measured",
        "makings-wrong",
    ]));
    table.rows.extend(records.iter().map(|record| {
        vec![
            record.number.to_string(),
            record.pattern.clone(),
            record.made.map(|day| day.to_string()).unwrap_or_default(),
            record.who.clone().unwrap_or_default(),
            measured(record, words).join("; "),
            record.went_wrong.clone().unwrap_or_default(),
        ]
    }));
    let count = Value::Count(i64::try_from(records.len()).unwrap_or(i64::MAX));
    let section = Section {
        heading: clerk.text("makings", &[("count", count)]),
        table: Some(table),
        ..Section::default()
    };
    Leaf {
        title: who.map_or_else(|| clerk.label("makings-title"), str::to_owned),
        name: clerk.label("makings-log"),
        sections: vec![section],
    }
}
