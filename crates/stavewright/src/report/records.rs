//! The log of what was made.

use std::fmt::Write;

use basket::message::Value;
use basket::pattern::Word;
use basket::{Draft, Length};
use planning::records::Record;
use words::{Language, Words};

use super::table::{Set, table};
use crate::screen;

const LOG: [(&str, Set); 6] = [
    ("No.", Set::Figures),
    ("Pattern", Set::Words),
    ("Made", Set::Words),
    ("Who", Set::Words),
    ("Work", Set::Figures),
    ("What went wrong", Set::Words),
];

/// The whole log.
pub(crate) fn log(records: &[Record]) -> String {
    if records.is_empty() {
        return "Nothing is logged yet. `stavewright records log` does so.\n".to_owned();
    }
    let words = Words::new(Language::English, basket::pattern::Units::Inches);
    table(&LOG, records.iter().map(|record| row(record, &words)))
}

fn row(record: &Record, words: &Words) -> Vec<String> {
    let minutes: f64 = record.minutes.iter().map(|(_, minutes)| minutes).sum();
    vec![
        record.number.to_string(),
        record.pattern.clone(),
        record.made.map(|day| day.to_string()).unwrap_or_default(),
        record.who.clone().unwrap_or_default(),
        if minutes > 0.0 { words.value(&Value::Minutes(minutes)) } else { String::new() },
        record.went_wrong.clone().unwrap_or_default(),
    ]
}

/// One record, a line each of what was written down.
pub(crate) fn one(record: &Record) -> String {
    let words = Words::new(Language::English, basket::pattern::Units::Inches);
    let length = |length: Option<Length>| length.map(|length| words.both(length));
    let minutes = record.minutes.iter().map(|(kind, minutes)| format!("{} {minutes}", kind.word()));
    let minutes = minutes.collect::<Vec<_>>().join(", ");
    let staves = record.staves.map(|(staves, spoilt)| format!("{staves}, of which {spoilt} spoilt"));
    let lines = [
        ("Number", Some(record.number.to_string())),
        ("Pattern", Some(record.pattern.clone())),
        ("Version", record.version.clone()),
        ("Made", record.made.map(|day| day.to_string())),
        ("Who", record.who.clone()),
        ("Learner", record.learner.then(|| "yes".to_owned())),
        ("Wood", record.wood.clone()),
        ("Minutes", Some(minutes).filter(|minutes| !minutes.is_empty())),
        ("Weaver", record.weaver.map(|weaver| words.run(weaver))),
        ("Rows", record.rows.map(|rows| rows.to_string())),
        ("Height wet", length(record.wet)),
        ("Height dry", length(record.dry)),
        ("Girth wet", length(record.girth_wet)),
        ("Girth dry", length(record.girth_dry)),
        ("Staves", staves),
        ("Went wrong", record.went_wrong.clone()),
        ("Photographs", Some(record.photos.join(", ")).filter(|photos| !photos.is_empty())),
    ];
    let told = lines.into_iter().filter_map(|(label, text)| Some((label, text?)));
    told.map(|(label, text)| super::entry(label, screen::HEADING, 12, &text)).collect()
}

/// An empty record of a basket: every line is a comment until it is filled in, with what was planned.
pub(crate) fn form(draft: &Draft, words: &Words) -> String {
    let (weave, uprights) = (&draft.basket.body.weave, draft.basket.body.uprights());
    let mut said = "# Take the # away before a line, and write what was measured. What was not\n\
                    # measured stays as it is.\n\
                    [[record]]\n"
        .to_owned();
    let _ = writeln!(said, "pattern = {}", toml::Value::from(draft.basket.title.clone()));
    let rows = [
        ("made = \"2027-04-11\"", String::new()),
        ("who = \"student 3\"", "a name need not be given".to_owned()),
        ("learner = true", String::new()),
        ("weaver = \"0 ft\"", format!("taken, less what was left over; planned {}", words.run(weave.length))),
        ("rows = 0", format!("planned {}", weave.rows)),
        ("wet = \"0 in\"", "height of the weaving along the wall, still wet".to_owned()),
        ("dry = \"0 in\"", "the same, dried and packed".to_owned()),
        ("girth-wet = \"0 in\"", "round the weaving where it is widest".to_owned()),
        ("girth-dry = \"0 in\"", "the same, dried".to_owned()),
        ("staves = 0", format!("made in all; planned {} and spares", uprights.count)),
        ("spoilt = 0", "of them".to_owned()),
        ("wood = \"ash\"", String::new()),
        ("went-wrong = \"\"", String::new()),
        ("photos = [\"rim.jpg\"]", "files beside the store".to_owned()),
    ];
    for (line, note) in rows {
        let _ = if note.is_empty() {
            writeln!(said, "# {line}")
        } else {
            writeln!(said, "# {line:<24}  # {note}")
        };
    }
    said.push_str("[record.minutes]            # of work, waiting not counted\n");
    for step in draft.steps.iter().filter(|step| step.work_minutes > 0.0) {
        let line = format!("{} = 0", planning::records::key(step.kind));
        let _ = writeln!(said, "# {line:<24}  # planned {}", words.value(&Value::Minutes(step.work_minutes)));
    }
    said
}
