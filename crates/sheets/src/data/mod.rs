//! What the templates read: the basket's figures, the handout section by section, and finished texts in
//! the reader's language and units.

mod card;
pub(crate) mod demonstration;
pub(crate) mod facts;
mod sale;

use std::collections::BTreeMap;

use basket::message::Value;
use serde::Serialize;

use crate::figures::{Drawn, Figure, Piece};
use crate::handout::{Reader, Section, Source};
use crate::labels::labels;
use crate::paper::{Margin, TEMPLATE_MARGIN};
use crate::scribe::Scribe;
use crate::written::BasketFile;

/// The whole of it, as it stands in `data.json` for a template.
#[derive(Serialize)]
pub(crate) struct SheetData<'a> {
    lang: &'static str,
    paper: &'static str,
    template_margin: Margin,
    title: &'a str,
    stop: bool,
    labels: BTreeMap<&'static str, String>,
    /// All figures, as in `basket.json`.
    basket: &'a BasketFile,
    summary: String,
    facts: Vec<facts::Fact>,
    /// The student's handout, the teacher's and the maker's sheet, section by section.
    handout: Vec<Section<'a>>,
    teacher: Vec<Section<'a>>,
    maker: Vec<Section<'a>>,
    sale: sale::TitlePage<'a>,
    card: card::Card,
    corrections: Vec<Correction>,
    demonstration: demonstration::Plan,
    figures: BTreeMap<&'a str, &'a Figure>,
    pieces: &'a [Piece],
}

/// What to tell the printer when a bar of 100 mm does not measure 100 mm.
#[derive(Serialize)]
struct Correction {
    measured: String,
    scale: String,
}

impl<'a> SheetData<'a> {
    pub(crate) fn of(source: &Source<'a>, drawn: &'a Drawn, demonstration: demonstration::Plan) -> Self {
        let Source { draft, written, scribe, .. } = *source;
        let Drawn { paper, figures, pieces } = drawn;
        Self {
            lang: scribe.words.language().tag(),
            paper: paper.template_name(),
            template_margin: TEMPLATE_MARGIN,
            title: &draft.basket.title,
            stop: draft.stops(),
            labels: labels(scribe),
            basket: written,
            summary: facts::summary(&draft.basket, scribe),
            facts: facts::facts(draft, scribe),
            handout: source.told(Reader::Student),
            teacher: source.told(Reader::Teacher),
            maker: source.told(Reader::Maker),
            sale: sale::TitlePage::of(draft),
            card: card::card(&draft.basket, scribe),
            corrections: corrections(scribe),
            demonstration,
            figures: figures.iter().map(|figure| (figure.name.as_str(), figure)).collect(),
            pieces,
        }
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
