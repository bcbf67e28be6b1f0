//! Records that were typed in from paper.

use basket::measure::LengthError;
use basket::pattern::{Problem, StepKind, Word};
use basket::{Length, limits};
use serde::Deserialize;
use std::collections::BTreeMap;
use toml::Spanned;

use super::record::Record;

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    #[serde(default)]
    record: Vec<Raw>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields, rename_all = "kebab-case")]
struct Raw {
    number: u32,
    pattern: String,
    who: Option<String>,
    #[serde(default)]
    learner: bool,
    #[serde(default)]
    minutes: BTreeMap<Spanned<String>, Spanned<f64>>,
    weaver: Option<Spanned<String>>,
    rows: Option<u32>,
    wet: Option<Spanned<String>>,
    dry: Option<Spanned<String>>,
    staves: Option<u32>,
    #[serde(default)]
    spoilt: u32,
    went_wrong: Option<String>,
}

/// Reads a file of records, `[[record]]` each.
///
/// # Errors
/// What is wrong with it, with its place; a wrong or unknown key alone.
pub fn read(text: &str) -> Result<Vec<Record>, Vec<Problem>> {
    let alone =
        |message: String, span, help: &str| vec![Problem { message, span, help: Some(help.to_owned()) }];
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
    let records = file.record.into_iter().map(|raw| record(raw, &mut problems)).collect();
    problems.sort_by_key(|problem| problem.span.as_ref().map_or(0, |span| span.start));
    if problems.is_empty() { Ok(records) } else { Err(problems) }
}

fn record(raw: Raw, problems: &mut Vec<Problem>) -> Record {
    let mut minutes = Vec::new();
    for (step, took) in raw.minutes {
        let kind = StepKind::ALL.iter().find(|kind| kind.word() == step.get_ref()).copied();
        let took_minutes = *took.get_ref();
        match kind {
            None => {
                let all: Vec<&str> = StepKind::ALL.iter().map(|kind| kind.word()).collect();
                problems.push(Problem {
                    message: format!("\"{}\" is no step", step.get_ref()),
                    span: Some(step.span()),
                    help: Some(format!("write one of {}", all.join(", "))),
                });
            }
            Some(_) if !(took_minutes > 0.0 && took_minutes < 100_000.0) => problems.push(Problem {
                message: format!("a step does not take {took_minutes} minutes"),
                span: Some(took.span()),
                help: Some("write the minutes of work, or leave the step out".to_owned()),
            }),
            Some(kind) => minutes.push((kind, took_minutes)),
        }
    }
    let mut length = |written: Option<Spanned<String>>| {
        let written = written?;
        let read = Length::parse(written.get_ref(), None);
        match read {
            Ok(length) if length > Length::ZERO => Some(length),
            Ok(_) => {
                problems.push(wrong(
                    &written,
                    "a length is more than nothing".to_owned(),
                    "measure it again",
                ));
                None
            }
            Err(error) => {
                let help = LengthError::help(&error);
                problems.push(wrong(&written, error.to_string(), &help));
                None
            }
        }
    };
    let (weaver, wet, dry) = (length(raw.weaver), length(raw.wet), length(raw.dry));
    Record {
        number: raw.number,
        pattern: raw.pattern,
        who: raw.who,
        learner: raw.learner,
        minutes,
        weaver,
        rows: raw.rows,
        wet,
        dry,
        staves: raw.staves.map(|staves| (staves, raw.spoilt)),
        went_wrong: raw.went_wrong,
    }
}

fn wrong(written: &Spanned<String>, message: String, help: &str) -> Problem {
    Problem { message, span: Some(written.span()), help: Some(help.to_owned()) }
}
