//! All files that are written for one pattern.

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
    pub name: String,
    /// What is in it.
    pub bytes: Vec<u8>,
}

/// The sheets, by the names of their templates.
pub const SHEETS: [&str; 3] = ["handout", "bench-card", "templates"];

/// Makes all files for one basket. Nothing is written: that is the caller's part.
///
/// `progress` is told the name of each file when it is ready.
///
/// # Errors
/// [`SheetError`] when a template is wrong or data cannot be written.
pub fn packet(
    basket: &Basket,
    words: &Words,
    options: &Options,
    progress: &mut dyn FnMut(&str),
) -> Result<Vec<PacketFile>, SheetError> {
    let mut packet = Vec::new();
    let mut ready = |name: &str, bytes: Vec<u8>| {
        progress(name);
        packet.push(PacketFile { name: name.to_owned(), bytes });
    };
    for sheet in sheets(basket, words, options)? {
        ready(&format!("{}.pdf", sheet.name), sheet.pdf);
    }
    ready("cuts.csv", cuts::csv(basket, words)?);
    ready("cuts.json", cuts::json(basket, words)?);
    ready("basket.json", basket_json(basket, words)?);
    ready("section.svg", figures::section_svg(basket, words).into_bytes());
    ready("base.svg", figures::base_svg(basket, words).into_bytes());
    Ok(packet)
}

/// Makes the sheets alone.
///
/// # Errors
/// [`SheetError::Template`] when a template is wrong.
pub fn sheets(basket: &Basket, words: &Words, options: &Options) -> Result<Vec<Sheet>, SheetError> {
    let files = files(basket, words, options.paper)?;
    let files = &files;
    let sheets: Vec<_> = thread::scope(|scope| {
        let set = |name| scope.spawn(move || press::print(name, &options.templates, files));
        let running: Vec<_> = SHEETS.map(set).into();
        running.into_iter().map(|sheet| sheet.join().unwrap_or_else(|panic| std::panic::resume_unwind(panic))).collect()
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
