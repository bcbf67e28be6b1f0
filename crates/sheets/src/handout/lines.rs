//! A step and its notes as a template sees them.

use serde::Serialize;

use crate::written;

/// A step with what the sheets add to it.
#[derive(Serialize)]
pub(crate) struct StepLine<'a> {
    #[serde(flatten)]
    pub(super) step: &'a written::Step,
    pub(super) times: Vec<String>,
    /// Cautions that no earlier step gave.
    pub(super) mind: Vec<String>,
    /// Where those that hold here too were given, or nothing.
    pub(super) mind_again: String,
    /// Names of its drawings.
    pub(super) plates: Vec<String>,
    pub(super) notes: Vec<NoteLine>,
}

/// A note of the maker.
#[derive(Serialize)]
pub(crate) struct NoteLine {
    pub(super) text: Vec<String>,
    pub(super) photo: Option<PhotoLine>,
}

#[derive(Serialize)]
pub(crate) struct PhotoLine {
    pub(super) file: String,
    pub(super) caption: String,
}
