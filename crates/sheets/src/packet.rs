//! All files that are written for one pattern.

use std::panic::resume_unwind;
use std::thread;

use basket::Basket;
use basket::demonstration::{Demonstration, Show};
use words::Words;

use crate::basket_json::basket_json;
use crate::cuts;
use crate::data::{Own, SheetData, demonstration, notes};
use crate::error::SheetError;
use crate::figures::{self, Figure};
use crate::html;
use crate::paper::Paper;
use crate::photos::Photos;
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
    /// The photographs that the pattern's notes name.
    pub photos: Photos,
    /// What the demonstration sheet plans for.
    pub show: Show,
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
pub const SHEETS: [(&str, &str); 4] = [
    ("handout", "handout.pdf"),
    ("bench-card", "bench-card.pdf"),
    ("templates", "templates.pdf"),
    ("demonstration", "demonstration.pdf"),
];

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
    let files = files(basket, words, options)?;
    let (sheets, page) = thread::scope(|scope| {
        let page = scope.spawn(|| html::handout(&options.templates, &files));
        let sheets = set(&files, options, progress);
        (sheets, page.join().unwrap_or_else(|panic| resume_unwind(panic)))
    });
    let pdfs = sheets?.into_iter().zip(SHEETS);
    let mut packet: Vec<_> = pdfs.map(|(sheet, (_, name))| PacketFile { name, bytes: sheet.pdf }).collect();
    packet.push(PacketFile { name: html::HANDOUT, bytes: page? });
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
    set(&files(basket, words, options)?, options, progress)
}

/// Sets all sheets at once.
fn set(files: &Files, options: &Options, progress: &mut dyn FnMut(&str)) -> Result<Vec<Sheet>, SheetError> {
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
fn files(basket: &Basket, words: &Words, options: &Options) -> Result<Files, SheetError> {
    let scribe = Scribe::new(words);
    let mut drawn = figures::drawn(basket, &scribe, options.paper);
    let demonstration = Demonstration::of(basket, &options.show);
    drawn.figures.push(Figure::of(&drawings::timeline(&demonstration, words)));
    let own = Own {
        notes: notes::notes(basket, &options.photos),
        demonstration: demonstration::plan(basket, &demonstration, &scribe),
    };
    let data = SheetData::new(basket, &scribe, &drawn, own);
    let mut files = Files::from([("data.json".to_owned(), serde_json::to_vec(&data)?)]);
    files.extend(drawn.figures.iter().map(|figure| (figure.file.clone(), figure.svg.clone().into_bytes())));
    files.extend(options.photos.files());
    Ok(files)
}
