//! Records as they are typed in from paper, and written out again.

use basket::measure::LengthError;
use basket::pattern::{Problem, StepKind, Word};
use basket::{Length, limits};
use jiff::civil::Date;
use serde::{Deserialize, Deserializer, Serialize, Serializer};
use std::collections::BTreeMap;
use toml::Spanned;

use super::record::Record;

/// What is typed in a field of a record; a name, a wood or what went wrong has room enough in it.
const MOST_SIGNS: usize = 2000;
/// Photographs of one making.
const MOST_PHOTOS: usize = 50;

#[derive(Default, Deserialize, Serialize)]
#[serde(deny_unknown_fields)]
struct File {
    #[serde(default)]
    record: Vec<Raw>,
}

#[derive(Default, Deserialize, Serialize)]
#[serde(deny_unknown_fields, rename_all = "kebab-case")]
struct Raw {
    #[serde(default, skip_serializing_if = "is_none")]
    number: u32,
    pattern: String,
    #[serde(skip_serializing_if = "Option::is_none")]
    version: Option<String>,
    #[serde(skip_serializing_if = "Option::is_none")]
    made: Option<Spanned<String>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    who: Option<Spanned<String>>,
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    learner: bool,
    #[serde(skip_serializing_if = "Option::is_none")]
    weaver: Option<Spanned<String>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    rows: Option<u32>,
    #[serde(skip_serializing_if = "Option::is_none")]
    wet: Option<Spanned<String>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    dry: Option<Spanned<String>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    girth_wet: Option<Spanned<String>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    girth_dry: Option<Spanned<String>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    staves: Option<u32>,
    #[serde(default, skip_serializing_if = "is_none")]
    spoilt: u32,
    #[serde(skip_serializing_if = "Option::is_none")]
    wood: Option<Spanned<String>>,
    #[serde(skip_serializing_if = "Option::is_none")]
    went_wrong: Option<Spanned<String>>,
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    photos: Vec<Spanned<String>>,
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    minutes: BTreeMap<Spanned<String>, Spanned<f64>>,
}

#[allow(clippy::trivially_copy_pass_by_ref, reason = "serde hands the field over so")]
fn is_none(count: &u32) -> bool {
    *count == 0
}

/// Reads a file of records, `[[record]]` each.
///
/// # Errors
/// What is wrong with it, with its place; a wrong or unknown key alone.
pub fn read(text: &str) -> Result<Vec<Record>, Vec<Problem>> {
    let alone = |message: String, span, help: &str| {
        vec![Problem { message, span, help: Some(help.to_owned()), fault: None }]
    };
    if text.len() > limits::PATTERN_BYTES {
        return Err(alone(
            "the file is larger than 1 MB".to_owned(),
            None,
            "a record takes some hundred bytes",
        ));
    }
    let file: File = toml::from_str(text).map_err(|error| {
        let help = "`stavewright hand --help` shows a record with every key";
        alone(error.message().replace('\n', "; "), error.span(), help)
    })?;
    let mut problems = Vec::new();
    let records = file.record.into_iter().map(|raw| raw.record(&mut problems)).collect();
    problems.sort_by_key(|problem| problem.span.as_ref().map_or(0, |span| span.start));
    if problems.is_empty() { Ok(records) } else { Err(problems) }
}

/// Records as a file that [`read`] reads; empty where the text cannot be made, which no record causes.
pub fn write(records: &[Record]) -> String {
    toml::to_string(&File { record: records.iter().map(Raw::of).collect() }).unwrap_or_default()
}

impl Serialize for Record {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        Raw::of(self).serialize(serializer)
    }
}

/// From TOML alone, whose reader knows places.
impl<'de> Deserialize<'de> for Record {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        let mut problems = Vec::new();
        let record = Raw::deserialize(deserializer)?.record(&mut problems);
        match problems.into_iter().next() {
            Some(problem) => Err(serde::de::Error::custom(problem.message)),
            None => Ok(record),
        }
    }
}

impl Raw {
    fn of(record: &Record) -> Self {
        let text = |text: &Option<String>| text.clone().map(|text| Spanned::new(0..0, text));
        let length = |length: Option<Length>| {
            length.map(|length| Spanned::new(0..0, format!("{} mm", length.to_mm())))
        };
        let minutes = record
            .minutes
            .iter()
            .map(|(kind, minutes)| (Spanned::new(0..0, key(*kind)), Spanned::new(0..0, *minutes)));
        Self {
            number: record.number,
            pattern: record.pattern.clone(),
            version: record.version.clone(),
            made: record.made.map(|day| Spanned::new(0..0, day.to_string())),
            who: text(&record.who),
            learner: record.learner,
            minutes: minutes.collect(),
            weaver: length(record.weaver),
            rows: record.rows,
            wet: length(record.wet),
            dry: length(record.dry),
            girth_wet: length(record.girth_wet),
            girth_dry: length(record.girth_dry),
            staves: record.staves.map(|(staves, _)| staves),
            spoilt: record.staves.map_or(0, |(_, spoilt)| spoilt),
            wood: text(&record.wood),
            went_wrong: text(&record.went_wrong),
            photos: record.photos.iter().map(|photo| Spanned::new(0..0, photo.clone())).collect(),
        }
    }

    fn record(self, problems: &mut Vec<Problem>) -> Record {
        let mut minutes = Vec::new();
        for (step, took) in self.minutes {
            match step_of(&step, &took) {
                Ok(of) => minutes.push(of),
                Err(problem) => problems.push(problem),
            }
        }
        if self.photos.len() > MOST_PHOTOS {
            let span = self.photos.get(MOST_PHOTOS).map(Spanned::span);
            let message = format!("a making has at most {MOST_PHOTOS} photographs");
            let help = Some("name the best of them".to_owned());
            problems.push(Problem { message, span, help, fault: None });
        }
        let mut length = |written: Option<Spanned<String>>| length(&written?, problems);
        let (weaver, wet, dry) = (length(self.weaver), length(self.wet), length(self.dry));
        let (girth_wet, girth_dry) = (length(self.girth_wet), length(self.girth_dry));
        let mut text = |written| text(written?, problems);
        Record {
            number: self.number,
            pattern: self.pattern,
            version: self.version,
            who: text(self.who),
            wood: text(self.wood),
            went_wrong: text(self.went_wrong),
            photos: self.photos.into_iter().filter_map(|photo| text(Some(photo))).collect(),
            made: self.made.and_then(|written| day(&written, problems)),
            learner: self.learner,
            minutes,
            weaver,
            rows: self.rows,
            wet,
            dry,
            girth_wet,
            girth_dry,
            staves: self.staves.map(|staves| (staves, self.spoilt)),
        }
    }
}

/// The word of a step as a key, such as `first-rows`; with its blank it may be written too.
pub fn key(kind: StepKind) -> String {
    kind.word().replace(' ', "-")
}

/// A step and how long it took.
fn step_of(step: &Spanned<String>, took: &Spanned<f64>) -> Result<(StepKind, f64), Problem> {
    let kind = StepKind::ALL.iter().find(|kind| key(**kind) == step.get_ref().replace(' ', "-")).copied();
    let kind = kind.ok_or_else(|| {
        let all: Vec<String> = StepKind::ALL.iter().map(|kind| key(*kind)).collect();
        let help = format!("write one of {}", all.join(", "));
        Problem {
            message: format!("\"{}\" is no step", step.get_ref()),
            span: Some(step.span()),
            help: Some(help),
            fault: None,
        }
    })?;
    let minutes = *took.get_ref();
    if minutes > 0.0 && minutes < 100_000.0 {
        return Ok((kind, minutes));
    }
    Err(Problem {
        message: format!("a step does not take {minutes} minutes"),
        span: Some(took.span()),
        help: Some("write the minutes of work, or leave the step out".to_owned()),
        fault: None,
    })
}

fn length(written: &Spanned<String>, problems: &mut Vec<Problem>) -> Option<Length> {
    match Length::parse(written.get_ref(), None) {
        Ok(length) if length > Length::ZERO => return Some(length),
        Ok(_) => {
            problems.push(wrong(written, "a length is more than nothing".to_owned(), "measure it again"));
        }
        Err(error) => problems.push(wrong(written, error.to_string(), &LengthError::help(&error))),
    }
    None
}

fn text(written: Spanned<String>, problems: &mut Vec<Problem>) -> Option<String> {
    if written.get_ref().chars().count() > MOST_SIGNS {
        let message = format!("a text has at most {MOST_SIGNS} signs");
        problems.push(wrong(&written, message, "say it shorter"));
        return None;
    }
    Some(written.into_inner()).filter(|text| !text.trim().is_empty())
}

fn day(written: &Spanned<String>, problems: &mut Vec<Problem>) -> Option<Date> {
    let read = written.get_ref().parse();
    if read.is_err() {
        let message = format!("\"{}\" is no day", written.get_ref());
        problems.push(wrong(written, message, "write it as \"2027-04-11\""));
    }
    read.ok()
}

fn wrong(written: &Spanned<String>, message: String, help: &str) -> Problem {
    Problem { message, span: Some(written.span()), help: Some(help.to_owned()), fault: None }
}
