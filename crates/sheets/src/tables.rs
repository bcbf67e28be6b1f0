//! The cut list as tables for machines: `cuts.csv` and `cuts.json`.

use basket::Draft;
use planning::cells::guarded;
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
    let mut plain = csv::Writer::from_writer(Vec::new());
    for cut in cuts(&draft.cuts, words) {
        plain.serialize(cut)?;
    }
    let plain = whole(plain)?;
    let records = csv::ReaderBuilder::new().has_headers(false).from_reader(&*plain).into_records();
    let rows: Vec<Vec<String>> = records
        .map(|record| Ok(record?.iter().map(str::to_owned).collect()))
        .collect::<Result<_, csv::Error>>()?;
    guarded_csv(&rows)
}

/// Rows as CSV in which no cell is taken for a formula.
pub(crate) fn guarded_csv(rows: &[Vec<String>]) -> Result<Vec<u8>, SheetError> {
    let mut table = csv::Writer::from_writer(Vec::new());
    for row in rows {
        table.write_record(row.iter().map(|cell| guarded(cell).into_owned()))?;
    }
    whole(table)
}

fn whole(writer: csv::Writer<Vec<u8>>) -> Result<Vec<u8>, SheetError> {
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
