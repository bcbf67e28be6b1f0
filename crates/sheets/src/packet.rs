//! All files that are written for one pattern.

use std::panic::resume_unwind;
use std::thread;

use basket::Basket;
use words::Words;

use crate::basket_json::basket_json;
use crate::cuts;
use crate::data::SheetData;
use crate::error::SheetError;
use crate::figures;
use crate::paper::Paper;
use crate::press::{self, Files, Sheet};
use crate::scribe::Scribe;
use crate::templates::Templates;

/// How the packet is wanted.
#[derive(Clone, Debug, Default)]
pub struct Options {
    /// The paper in the printer.
    pub paper: Paper,
    /// The templates of the sheets.
    pub templates: Templates,
}

/// One file of the packet.
#[derive(Clone, Debug)]
pub struct PacketFile {
    /// Its name, such as `handout.pdf`.
    pub name: &'static str,
    /// What is in it.
    pub bytes: Vec<u8>,
}

/// The sheets: name of the template and of the file.
pub const SHEETS: [(&str, &str); 3] =
    [("handout", "handout.pdf"), ("bench-card", "bench-card.pdf"), ("templates", "templates.pdf")];

/// Makes all files for one basket. Nothing is written: that is the caller's part.
///
/// `progress` is told the name of each sheet when its setting begins.
///
/// # Errors
/// [`SheetError`] when a template is wrong or data cannot be written.
pub fn packet(
    basket: &Basket,
    words: &Words,
    options: &Options,
    progress: &mut dyn FnMut(&str),
) -> Result<Vec<PacketFile>, SheetError> {
    let sheets = sheets(basket, words, options, progress)?;
    let pdfs = sheets.into_iter().zip(SHEETS);
    let mut packet: Vec<_> = pdfs.map(|(sheet, (_, name))| PacketFile { name, bytes: sheet.pdf }).collect();
    packet.extend(data(basket, words)?);
    Ok(packet)
}

/// Makes the files of the packet that are no sheets: cut lists, the computed basket, drawings.
///
/// # Errors
/// [`SheetError`] when data cannot be written.
pub fn data(basket: &Basket, words: &Words) -> Result<Vec<PacketFile>, SheetError> {
    let file = |name, bytes| PacketFile { name, bytes };
    Ok(vec![
        file("cuts.csv", cuts::csv(basket, words)?),
        file("cuts.json", cuts::json(basket, words)?),
        file("section.svg", figures::section_svg(basket, words).into_bytes()),
        file("base.svg", figures::base_svg(basket, words).into_bytes()),
        file("basket.json", serde_json::to_vec_pretty(&basket_json(basket, words)?)?),
    ])
}

/// Makes the sheets alone, in the order of [`SHEETS`].
///
/// # Errors
/// [`SheetError::Template`] when a template is wrong.
pub fn sheets(
    basket: &Basket,
    words: &Words,
    options: &Options,
    progress: &mut dyn FnMut(&str),
) -> Result<Vec<Sheet>, SheetError> {
    let files = files(basket, words, options.paper)?;
    let files = &files;
    let sheets: Vec<_> = thread::scope(|scope| {
        let running = SHEETS.map(|(template, name)| {
            progress(name);
            scope.spawn(move || press::print(template, &options.templates, files))
        });
        running.map(|sheet| sheet.join().unwrap_or_else(|panic| resume_unwind(panic))).into()
    });
    press::tidy();
    sheets.into_iter().collect()
}

/// The data and the drawings that the templates read.
fn files(basket: &Basket, words: &Words, paper: Paper) -> Result<Files, SheetError> {
    let scribe = Scribe::new(words);
    let (figures, pieces) = figures::figures(basket, &scribe, paper);
    let data = SheetData::new(basket, &scribe, paper, &figures, &pieces);
    let mut files = Files::from([("data.json".to_owned(), serde_json::to_vec(&data)?)]);
    files.extend(figures.iter().map(|figure| (figure.file.clone(), figure.svg.clone().into_bytes())));
    Ok(files)
}
