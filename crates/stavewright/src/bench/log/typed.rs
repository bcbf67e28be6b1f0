//! A making as it is typed, and what can be typed of a pattern.

use axum::http::StatusCode;
use basket::message::{Message, Value};
use basket::pattern::StepKind;
use basket::{Draft, Hand, Length};
use planning::records::{Compared, Mismatch, Record, key};
use serde::{Deserialize, Serialize};
use words::Words;

use crate::bench::api::{MakingForm, MakingStep, MakingText};
use crate::bench::compute::{self, Shop};
use crate::bench::refusal::Refusal;
use crate::packet;

/// A making as it was typed, with the text of its pattern.
#[derive(Debug, Serialize, Deserialize)]
pub(crate) struct Typed {
    /// The pattern's text.
    pub(crate) source: String,
    /// The making; none to ask what can be typed.
    pub(crate) making: Option<MakingText>,
    /// Language of the answer.
    pub(crate) language: Option<String>,
}

/// What can be written down of a pattern's making.
pub(crate) fn form(typed: &Typed, shop: Shop<'_>) -> Result<MakingForm, Refusal> {
    let draft = usual(&typed.source, shop)?;
    let words = compute::words(typed.language.as_deref(), None, draft.pattern.units)?;
    let basket = &draft.basket;
    let steps = draft.steps.iter().filter(|step| step.work_minutes > 0.0);
    Ok(MakingForm {
        title: basket.title.clone(),
        steps: steps
            .map(|step| MakingStep {
                step: key(step.kind),
                label: words.name(step.kind),
                planned: words.value(&Value::Minutes(step.work_minutes)),
            })
            .collect(),
        rows: basket.body.weave.rows.to_string(),
        weaver: words.run(basket.body.weave.length),
        staves: basket.body.uprights().count.to_string(),
    })
}

/// The record of what was typed: read, and held beside its pattern.
pub(crate) fn read(typed: &Typed, shop: Shop<'_>) -> Result<Record, Refusal> {
    // A worker's answer is told before it leaves.
    let language = compute::language(typed.language.as_deref())?;
    held(typed, shop).map_err(|refusal| refusal.told(language))
}

fn held(typed: &Typed, shop: Shop<'_>) -> Result<Record, Refusal> {
    let draft = usual(&typed.source, shop)?;
    let making = typed.making.clone().unwrap_or_default();
    let record = Record {
        pattern: draft.basket.title.clone(),
        version: Some(packet::version(&typed.source)),
        ..record(&making)?
    };
    if record.is_blank() {
        return Err(senseless(Message::new("record-blank")));
    }
    Compared::of(&record, &draft).map_err(|mismatch| {
        let words = compute::words(typed.language.as_deref(), None, draft.pattern.units);
        senseless(mismatched(&mismatch, words.as_ref().ok()))
    })?;
    Ok(record)
}

fn usual(source: &str, shop: Shop<'_>) -> Result<Draft, Refusal> {
    compute::draft(source, Shop { hand: &Hand::USUAL, ..shop }).map_err(Refusal::misread)
}

fn mismatched(mismatch: &Mismatch, words: Option<&Words>) -> Message {
    match mismatch {
        Mismatch::OtherPattern { of, title, .. } => Message::new("record-other-pattern")
            .with("of", Value::Name(of.clone()))
            .with("title", Value::Name(title.clone())),
        Mismatch::Unlikely { figure, times, .. } => {
            let name = words.map(|words| words.term(&format!("hand-{}", figure.word())));
            Message::new("record-unlikely")
                .with("figure", Value::Name(name.unwrap_or_default()))
                .with("times", Value::Name(times.clone()))
        }
    }
}

fn record(making: &MakingText) -> Result<Record, Refusal> {
    let text = |typed: &str| Some(typed.trim().to_owned()).filter(|typed| !typed.is_empty());
    let made = text(&making.made).map(|day| day.parse().map_err(|_| wrong("record-no-day", &day)));
    let staves = count(&making.staves)?;
    let spoilt = count(&making.spoilt)?.unwrap_or(0);
    if staves.is_some_and(|staves| spoilt > staves) {
        return Err(wrong("record-too-many-spoilt", &making.spoilt));
    }
    Ok(Record {
        made: made.transpose()?,
        who: text(&making.who),
        learner: making.learner,
        minutes: minutes(making)?,
        weaver: length(&making.weaver)?,
        rows: count(&making.rows)?,
        wet: length(&making.wet)?,
        dry: length(&making.dry)?,
        girth_wet: length(&making.girth_wet)?,
        girth_dry: length(&making.girth_dry)?,
        staves: staves.map(|staves| (staves, spoilt)),
        wood: text(&making.wood),
        went_wrong: text(&making.went_wrong),
        photos: making.photos.clone(),
        ..Record::default()
    })
}

fn minutes(making: &MakingText) -> Result<Vec<(StepKind, f64)>, Refusal> {
    use basket::pattern::Word;
    let mut all = Vec::new();
    for typed in making.minutes.iter().filter(|typed| !typed.minutes.trim().is_empty()) {
        let kind = StepKind::ALL.iter().find(|kind| key(**kind) == typed.step).copied();
        let kind = kind.ok_or_else(|| wrong("record-no-step", &typed.step))?;
        let minutes = typed.minutes.trim().replace(',', ".").parse::<f64>().ok();
        let minutes = minutes.filter(|minutes| *minutes > 0.0 && *minutes < 100_000.0);
        all.push((kind, minutes.ok_or_else(|| wrong("record-no-minutes", &typed.minutes))?));
    }
    Ok(all)
}

fn length(typed: &str) -> Result<Option<Length>, Refusal> {
    if typed.trim().is_empty() {
        return Ok(None);
    }
    let read = Length::parse(typed, None).ok().filter(|length| *length > Length::ZERO);
    read.map(Some).ok_or_else(|| wrong("workshop-no-length", typed))
}

fn count(typed: &str) -> Result<Option<u32>, Refusal> {
    let typed = typed.trim();
    if typed.is_empty() {
        return Ok(None);
    }
    let read = typed.parse().ok().filter(|count: &u32| *count < 100_000);
    read.map(Some).ok_or_else(|| wrong("record-no-count", typed))
}

fn wrong(id: &'static str, typed: &str) -> Refusal {
    senseless(Message::new(id).with("typed", Value::Name(typed.chars().take(60).collect())))
}

fn senseless(message: Message) -> Refusal {
    Refusal::said(StatusCode::UNPROCESSABLE_ENTITY, message, "the record")
}
