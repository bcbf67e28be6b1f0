//! A class that was planned, as data, as PDF and as a calendar file.

mod calendar;
mod picture;
mod refused;
mod samples;
mod teller;
mod written;

pub use calendar::calendar;
pub use samples::SamplePlan;
pub use teller::{Moment, StudentStep};
pub use written::{ClassPlan, SessionPlan, StudentPlan, class_plan};

use basket::Draft;
use drawings::Drawing;
use planning::class::Answer;
use words::Words;

use crate::error::SheetError;
use crate::figures::Figure;
use crate::front;
use crate::paper::Paper;
use crate::press;
use crate::scribe::Scribe;
use crate::templates::Templates;

/// Who does what when, as pictures; none where there is no plan.
pub fn class_pictures(answer: &Answer, words: &Words) -> Vec<Drawing> {
    picture::pictures(answer, words)
}

/// The plan as PDF: whether it fits, who does what when, a page a session for the teacher, a card a student.
///
/// # Errors
/// [`SheetError::Template`] when the template is wrong.
pub fn class_sheet(
    (draft, answer): (&Draft, &Answer),
    words: &Words,
    paper: Paper,
    templates: &Templates,
) -> Result<Vec<u8>, SheetError> {
    let scribe = Scribe::new(words);
    let plan = class_plan(draft, answer, words);
    let figures: Vec<Figure> = picture::pictures(answer, words).iter().map(Figure::of).collect();
    press::print("class", templates, &front::files(draft, &scribe, (paper, &figures), plan)?)
}
