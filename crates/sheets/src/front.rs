//! What a sheet that stands by itself gives its template beside its own part.

use std::collections::BTreeMap;

use basket::Draft;
use serde::Serialize;

use crate::error::SheetError;
use crate::figures::Figure;
use crate::labels::labels;
use crate::paper::Paper;
use crate::press::Files;
use crate::scribe::Scribe;

/// The data of such a sheet; what is told in it alone stands under `own`.
#[derive(Serialize)]
struct Front<'a, T: Serialize> {
    lang: &'static str,
    paper: &'static str,
    title: &'a str,
    stop: bool,
    labels: BTreeMap<&'static str, String>,
    figures: BTreeMap<&'a str, &'a Figure>,
    own: T,
}

/// What such a sheet is about.
pub(crate) struct About<'a> {
    /// Its title.
    pub(crate) title: &'a str,
    /// Whether every page is marked, because a finding says stop.
    pub(crate) stop: bool,
}

impl<'a> From<&'a Draft> for About<'a> {
    fn from(draft: &'a Draft) -> Self {
        Self { title: &draft.basket.title, stop: draft.stops() }
    }
}

/// The files that its templates read: `data.json` and its drawings.
pub(crate) fn files<'a>(
    about: impl Into<About<'a>>,
    scribe: &Scribe<'_>,
    (paper, figures): (Paper, &[Figure]),
    own: impl Serialize,
) -> Result<Files, SheetError> {
    let About { title, stop } = about.into();
    let front = Front {
        lang: scribe.words.language().tag(),
        paper: paper.template_name(),
        title,
        stop,
        labels: labels(scribe),
        figures: figures.iter().map(|figure| (figure.name.as_str(), figure)).collect(),
        own,
    };
    let mut files = Files::from([("data.json".to_owned(), serde_json::to_vec(&front)?)]);
    files.extend(figures.iter().map(|figure| (figure.file.clone(), figure.svg.clone().into_bytes())));
    Ok(files)
}
