//! The cut list as tables for machines: `cuts.csv` and `cuts.json`.

use basket::Draft;
use serde::Serialize;
use words::Words;

use crate::error::SheetError;
use crate::written::{Cut, cuts};

/// Version of `cuts.json`. It rises when a key goes away or changes its meaning.
const VERSION: u32 = 3;

#[derive(Serialize)]
struct CutFile<'a> {
    format: &'static str,
    version: u32,
    title: &'a str,
    cuts: Vec<Cut>,
}

pub(crate) fn csv(draft: &Draft, words: &Words) -> Result<Vec<u8>, SheetError> {
    let mut writer = csv::Writer::from_writer(Vec::new());
    for cut in cuts(&draft.cuts, words) {
        writer.serialize(cut)?;
    }
    writer.into_inner().map_err(|error| SheetError::Csv(error.into_error().into()))
}

pub(crate) fn json(draft: &Draft, words: &Words) -> Result<Vec<u8>, SheetError> {
    let file = CutFile {
        format: "stavewright-cuts",
        version: VERSION,
        title: &draft.basket.title,
        cuts: cuts(&draft.cuts, words),
    };
    Ok(serde_json::to_vec_pretty(&file)?)
}
