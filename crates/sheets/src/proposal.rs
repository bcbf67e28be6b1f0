//! The page with which a class is offered to a school or a convention: filled from the pattern, to be edited in
//! place.

use basket::Draft;
use basket::message::Value;
use serde::Serialize;
use words::Words;

use crate::data::facts;
use crate::error::SheetError;
use crate::figures::Figure;
use crate::front;
use crate::handout;
use crate::html;
use crate::paper::Paper;
use crate::press;
use crate::scribe::{Scribe, name};
use crate::templates::Templates;

/// What the page asks of the school or leaves to the teacher, in its order.
const FIELDS: [&str; 7] = ["teacher", "place", "dates", "students", "fee", "materials-fee", "brings-teacher"];

/// How a proposal is wanted.
#[derive(Clone, Debug, Default)]
pub struct Proposal {
    /// The paper in the printer.
    pub paper: Paper,
    /// For whom it is, in the teacher's own words; empty: as the pattern says, else left to be filled in.
    pub level: String,
    /// The templates of the sheets.
    pub templates: Templates,
}

#[derive(Serialize)]
struct Offer {
    about: String,
    size: Vec<facts::Fact>,
    level: String,
    hours: String,
    bring: Vec<String>,
    fields: Vec<String>,
}

impl Proposal {
    /// The page as HTML whose texts can be written over in the browser.
    ///
    /// # Errors
    /// [`SheetError::Template`] when the template is wrong.
    pub fn html(&self, draft: &Draft, words: &Words) -> Result<Vec<u8>, SheetError> {
        html::alone("proposal.html", &self.templates, &self.files(draft, words)?)
    }

    /// The page as PDF, with room to write in.
    ///
    /// # Errors
    /// [`SheetError::Template`] when the template is wrong.
    pub fn pdf(&self, draft: &Draft, words: &Words) -> Result<Vec<u8>, SheetError> {
        press::print("proposal", &self.templates, &self.files(draft, words)?)
    }

    /// The level in the teacher's own words, else the pattern's.
    fn level(&self, draft: &Draft, words: &Words) -> String {
        let of_pattern = || draft.pattern.level.map(|level| words.name(level));
        if self.level.is_empty() { of_pattern().unwrap_or_default() } else { self.level.clone() }
    }

    fn files(&self, draft: &Draft, words: &Words) -> Result<press::Files, SheetError> {
        let scribe = Scribe::new(words);
        let plate = drawings::stages::Plate::Cover;
        let cover =
            drawings::stages::unlettered(&draft.basket, words, plate).map(|drawing| Figure::of(&drawing));
        let figures: Vec<Figure> = cover.into_iter().collect();
        let offer = Offer {
            about: facts::summary(&draft.basket, &scribe),
            size: facts::size(&draft.basket, &scribe),
            level: self.level(draft, words),
            hours: hours(draft, &scribe),
            bring: handout::tools(&draft.steps, &scribe),
            fields: FIELDS.iter().map(|field| scribe.label(&format!("proposal-{field}"))).collect(),
        };
        front::files(draft, &scribe, (self.paper, &figures), offer)
    }
}

/// The work as the steps have it, for a practised hand and for a learner.
fn hours(draft: &Draft, scribe: &Scribe<'_>) -> String {
    let work: f64 = draft.steps.iter().map(|step| step.work_minutes).sum();
    let learner: f64 = draft.steps.iter().map(|step| step.learner_minutes).sum();
    let time = |minutes: f64| name(scribe.minutes((minutes / 30.0).ceil() * 30.0));
    let args: [(&str, Value); 2] = [("practised", time(work)), ("learner", time(learner))];
    scribe.text("proposal-hours-text", &args)
}
