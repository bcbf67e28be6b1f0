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
    let mut guarded = csv::Writer::from_writer(Vec::new());
    for row in rows {
        guarded.write_record(row.iter().map(|cell| guarded_cell(cell)))?;
    }
    whole(guarded)
}

fn whole(writer: csv::Writer<Vec<u8>>) -> Result<Vec<u8>, SheetError> {
    writer.into_inner().map_err(|error| SheetError::Csv(error.into_error().into()))
}

/// A cell that no spreadsheet takes for a formula: one that begins as a formula may, or with an
/// apostrophe, has an apostrophe put before it. So a program gets the exact text back by taking one
/// apostrophe off whatever begins with one. The signs are those of OWASP's page on CSV injection.
fn guarded_cell(cell: &str) -> String {
    const FIRST: [char; 12] =
        ['\'', '=', '+', '-', '@', '\t', '\r', '\n', '\u{ff1d}', '\u{ff0b}', '\u{ff0d}', '\u{ff20}'];
    if cell.starts_with(FIRST) { format!("'{cell}") } else { cell.to_owned() }
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
