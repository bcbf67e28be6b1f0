//! The computed basket for other programs: `basket.json`, as documented in `docs/basket-json.md`.

use basket::base::Base;
use basket::choice::Choice;
use basket::findings::Place;
use basket::fittings::{Ears, Handle, Pins};
use basket::form::Mould;
use basket::lashing::{Filler, Lashing};
use basket::message::{Message, Value};
use basket::pattern::{Finish, Language, Note, Units};
use basket::rim::Rim;
use basket::steps::{Stage, Step};
use basket::weave::Weave;
use basket::{Basket, Finding, Grade};
use serde::Serialize;
use serde_json::{Value as Json, json};
use words::Words;

use crate::cuts::{self, CutRow};
use crate::error::SheetError;

/// Version of the format. It rises when a key goes away or changes its meaning.
const VERSION: u32 = 1;

/// The computed basket as it stands in `basket.json`.
#[derive(Serialize)]
pub struct BasketFile<'a> {
    format: &'static str,
    version: u32,
    title: &'a str,
    units: Units,
    language: Language,
    mould: &'a Mould,
    base: &'a Base,
    staves: Json,
    weave: &'a Weave,
    rim: &'a Rim,
    filler: &'a Option<Filler>,
    lashing: &'a Lashing,
    pins: &'a Pins,
    ears: &'a Option<Ears>,
    handle: &'a Option<Handle>,
    finish: Finish,
    choices: Vec<ChoiceEntry>,
    cuts: Vec<CutRow>,
    steps: Vec<StepEntry>,
    notes: Vec<NoteEntry<'a>>,
    /// The findings, heaviest first.
    pub findings: Vec<FindingEntry>,
}

#[derive(Serialize)]
struct ChoiceEntry {
    key: &'static str,
    value: Json,
    reason: String,
}

#[derive(Serialize)]
struct StepEntry {
    number: u32,
    title: String,
    text: Vec<String>,
    soak_minutes: Option<f64>,
    work_minutes: f64,
    wait_minutes: f64,
    tools: Vec<String>,
    cautions: Vec<String>,
    stage: Stage,
}

/// A note with the number of its step; none for a step that the basket has not.
#[derive(Serialize)]
struct NoteEntry<'a> {
    step: Option<u32>,
    text: Option<&'a str>,
    photo: Option<&'a str>,
    caption: Option<&'a str>,
}

/// A finding with its sentences.
#[derive(Serialize)]
pub struct FindingEntry {
    grade: Grade,
    code: &'static str,
    #[serde(rename = "where")]
    place: Place,
    place_text: String,
    what: String,
    measured: Json,
    limit: Json,
    remedy: String,
    remedy_text: String,
    why: String,
}

/// The computed basket, ready to be written as JSON, with all sentences in the reader's language.
///
/// # Errors
/// [`SheetError::Json`] when a number cannot be written.
pub fn basket_json<'a>(basket: &'a Basket, words: &Words) -> Result<BasketFile<'a>, SheetError> {
    Ok(BasketFile {
        format: "stavewright-basket",
        version: VERSION,
        title: &basket.title,
        units: basket.units,
        language: words.language(),
        mould: &basket.mould,
        base: basket.body.base(),
        staves: staves(basket, words)?,
        weave: &basket.body.weave,
        rim: basket.body.rim(),
        filler: basket.body.filler(),
        lashing: basket.body.lashing(),
        pins: basket.body.pins(),
        ears: &basket.ears,
        handle: &basket.handle,
        finish: basket.finish,
        choices: basket.choices.iter().map(|made| choice(made, words)).collect(),
        cuts: cuts::rows(basket, words),
        steps: basket.steps.iter().map(|made| step(made, words)).collect(),
        notes: basket.notes.iter().map(|made| note(made, &basket.steps)).collect(),
        findings: basket.findings.iter().map(|made| finding(made, words)).collect(),
    })
}

/// The staves, with the reasons of the candidates as sentences.
fn staves(basket: &Basket, words: &Words) -> Result<Json, SheetError> {
    let mut staves = serde_json::to_value(basket.body.staves())?;
    for (index, candidate) in basket.body.staves().candidates.iter().enumerate() {
        if let Some(entry) = staves.pointer_mut(&format!("/candidates/{index}/reasons")) {
            *entry = say_all(&candidate.reasons, words).into();
        }
    }
    Ok(staves)
}

fn say_all(messages: &[Message], words: &Words) -> Vec<String> {
    messages.iter().map(|message| words.say(message)).collect()
}

fn choice(choice: &Choice, words: &Words) -> ChoiceEntry {
    ChoiceEntry { key: choice.key, value: value(&choice.value), reason: words.say(&choice.reason) }
}

fn step(step: &Step, words: &Words) -> StepEntry {
    let terms = |ids: &[&'static str]| ids.iter().map(|id| words.term(id)).collect();
    StepEntry {
        number: step.number,
        title: words.say(&step.title),
        text: say_all(&step.text, words),
        soak_minutes: step.soak_minutes,
        work_minutes: step.work_minutes,
        wait_minutes: step.wait_minutes,
        tools: terms(&step.tools),
        cautions: terms(&step.cautions),
        stage: step.stage,
    }
}

fn note<'a>(note: &'a Note, steps: &[Step]) -> NoteEntry<'a> {
    let photo = note.photo.as_ref();
    NoteEntry {
        step: steps.iter().find(|step| step.title.id == note.step).map(|step| step.number),
        text: note.text.as_deref(),
        photo: photo.map(|photo| photo.path.as_str()),
        caption: photo.map(|photo| photo.caption.as_str()),
    }
}

fn finding(finding: &Finding, words: &Words) -> FindingEntry {
    let text = words.finding(finding);
    let changes = finding.remedies.iter().map(|remedy| format!("{} = {}", remedy.key, remedy.value));
    FindingEntry {
        grade: finding.grade,
        code: finding.code,
        place: finding.place,
        place_text: text.place,
        what: text.what,
        measured: value(&finding.measured),
        limit: value(&finding.limit),
        remedy: changes.collect::<Vec<_>>().join(" or "),
        remedy_text: text.remedy,
        why: text.why,
    }
}

/// A value with its unit as the key: `{"mm": 1.5}`.
fn value(value: &Value) -> Json {
    match value {
        Value::Length(length) => json!({ "mm": length }),
        Value::Span(from, to) => json!({ "mm": [from, to] }),
        Value::Angle(angle) => json!({ "deg": angle }),
        Value::Count(count) => json!({ "count": count }),
        Value::Number(number, _) => json!({ "number": number }),
        Value::Percent(share) => json!({ "share": share }),
        Value::Minutes(minutes) => json!({ "minutes": minutes }),
        Value::Name(name) | Value::Material(name) | Value::Colour(name) => json!({ "name": name }),
        Value::Term(term) => json!({ "term": term }),
        Value::Said(message) => json!({ "term": message.id }),
    }
}
