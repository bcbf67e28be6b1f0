//! What the templates read: the basket as finished texts, in the reader's language and units.

mod card;
pub(crate) mod demonstration;
mod facts;
mod materials;
pub(crate) mod notes;
mod reasons;
mod record;
mod steps;
mod weaving;

use std::collections::BTreeMap;

use basket::message::Value;
use basket::{Basket, Grade};
use serde::Serialize;

use crate::figures::{Drawn, Figure, Piece};
use crate::labels::labels;
use crate::paper::{Margin, TEMPLATE_MARGIN};
use crate::scribe::Scribe;

/// The whole of it, as it stands in `data.json` for a template.
#[derive(Serialize)]
pub(crate) struct SheetData<'a> {
    lang: &'static str,
    paper: &'static str,
    template_margin: Margin,
    title: &'a str,
    stop: bool,
    labels: BTreeMap<&'static str, String>,
    summary: String,
    facts: Vec<facts::Fact>,
    findings: Vec<FindingLine>,
    cuts: Vec<materials::CutLine>,
    supplies: Vec<materials::Supply>,
    soaks: Vec<materials::Soak>,
    tools: Vec<String>,
    steps: Vec<steps::StepLine>,
    courses: Vec<weaving::CourseLine>,
    weave_notes: Vec<String>,
    joins: Vec<basket::weave::Join>,
    checkpoints: Vec<weaving::Checkpoint>,
    choices: Vec<reasons::ChoiceLine>,
    candidates: Vec<reasons::CandidateLine>,
    record: Vec<facts::Fact>,
    card: card::Card,
    corrections: Vec<Correction>,
    own: Own,
    figures: BTreeMap<&'a str, &'a Figure>,
    pieces: &'a [Piece],
}

/// What is there because this maker asked for it.
#[derive(Serialize)]
pub(crate) struct Own {
    pub(crate) notes: BTreeMap<u32, Vec<notes::NoteLine>>,
    pub(crate) demonstration: demonstration::Plan,
}

#[derive(Serialize)]
struct FindingLine {
    grade: Grade,
    word: String,
    what: String,
    place: String,
    why: String,
    remedy: String,
}

/// What to tell the printer when a bar of 100 mm does not measure 100 mm.
#[derive(Serialize)]
struct Correction {
    measured: String,
    scale: String,
}

impl<'a> SheetData<'a> {
    pub(crate) fn new(basket: &'a Basket, scribe: &Scribe<'_>, drawn: &'a Drawn, own: Own) -> Self {
        Self {
            lang: scribe.words.language().tag(),
            paper: drawn.paper.template_name(),
            template_margin: TEMPLATE_MARGIN,
            title: &basket.title,
            stop: has_stop(basket),
            labels: labels(scribe),
            summary: facts::summary(basket, scribe),
            facts: facts::facts(basket, scribe),
            findings: basket.findings.iter().map(|finding| finding_line(finding, scribe)).collect(),
            cuts: materials::cuts(basket, scribe),
            supplies: materials::supplies(basket, scribe),
            soaks: materials::soaks(basket, scribe),
            tools: steps::tools(basket, scribe),
            steps: steps::steps(basket, scribe),
            courses: weaving::courses(basket, scribe),
            weave_notes: weaving::notes(basket, scribe),
            joins: weaving::joins(basket),
            checkpoints: weaving::checkpoints(basket, scribe),
            choices: reasons::choices(basket, scribe),
            candidates: reasons::candidates(basket, scribe),
            record: record::record(basket, scribe),
            card: card::card(basket, scribe),
            corrections: corrections(scribe),
            own,
            figures: drawn.figures.iter().map(|figure| (figure.name.as_str(), figure)).collect(),
            pieces: &drawn.pieces,
        }
    }
}

/// Whether the basket cannot be woven as written.
pub(crate) fn has_stop(basket: &Basket) -> bool {
    basket.findings.iter().any(|finding| finding.grade == Grade::Stop)
}

fn finding_line(finding: &basket::Finding, scribe: &Scribe<'_>) -> FindingLine {
    let text = scribe.words.finding(finding);
    FindingLine {
        grade: finding.grade,
        word: text.grade,
        what: text.what,
        place: text.place,
        why: text.why,
        remedy: text.remedy,
    }
}

fn corrections(scribe: &Scribe<'_>) -> Vec<Correction> {
    let number = |value, decimals| scribe.words.value(&Value::Number(value, decimals));
    let line = |millimetres: i32| {
        let measured = f64::from(millimetres);
        Correction {
            measured: format!("{} mm", number(measured, 0)),
            scale: format!("{} %", number(10_000.0 / measured, 1)),
        }
    };
    (94..=105).filter(|millimetres| *millimetres != 100).map(line).collect()
}
