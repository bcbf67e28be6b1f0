//! All files that are written for one pattern.

use std::panic::resume_unwind;
use std::thread;

use basket::Draft;
use planning::samples::{Demonstration, Show};
use words::Words;

use crate::data::{SheetData, demonstration};
use crate::error::SheetError;
use crate::figures::{self, Figure};
use crate::handout::Source;
use crate::html;
use crate::paper::Paper;
use crate::photos::Photos;
use crate::press::{self, Files};
use crate::scribe::Scribe;
use crate::tables;
use crate::templates::Templates;
use crate::written::basket_json;

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

/// The sheets of a packet: name of the template and of the file.
pub const SHEETS: [(&str, &str); 6] = [
    ("handout", "handout.pdf"),
    ("teacher", "teacher.pdf"),
    ("maker", "maker.pdf"),
    ("bench-card", "bench-card.pdf"),
    ("templates", "templates.pdf"),
    ("demonstration", "demonstration.pdf"),
];

/// The pages of HTML in a packet: whose sections they tell, and the name of the file.
pub const PAGES: [(&str, &str); 2] = [("handout", "handout.html"), ("teacher", "teacher.html")];

/// The demonstration sheet as a page: template and file, which have one name.
const DEMONSTRATION: &str = "demonstration.html";

/// Sheets that are set when somebody asks for them and lie in no packet: template and file.
pub const ON_REQUEST: [(&str, &str); 1] = [("sale", "sale.pdf")];

/// Drawings of the sheets that also lie in the packet alone, for a book, a page or a poster: drawing and file.
const DRAWN: [(&str, &str); 2] = [("chart-outside.svg", "chart.svg"), ("stage-finished.svg", "picture.svg")];

/// Makes all files for one draft. Nothing is written: that is the caller's part.
///
/// `progress` is told the name of each sheet when its setting begins.
///
/// # Errors
/// [`SheetError`] when a template is wrong or data cannot be written.
pub fn packet(
    draft: &Draft,
    words: &Words,
    options: &Options,
    progress: &mut dyn FnMut(&str),
) -> Result<Vec<PacketFile>, SheetError> {
    let files = files(draft, words, options)?;
    let (sheets, pages) = thread::scope(|scope| {
        let pages = scope.spawn(|| PAGES.map(|(sheet, _)| html::page(sheet, &options.templates, &files)));
        let sheets = set(&files, options, progress);
        (sheets, pages.join().unwrap_or_else(|panic| resume_unwind(panic)))
    });
    let pdfs = sheets?.into_iter().zip(SHEETS);
    let mut packet: Vec<_> = pdfs.map(|(bytes, (_, name))| PacketFile { name, bytes }).collect();
    for (page, (_, name)) in pages.into_iter().zip(PAGES) {
        packet.push(PacketFile { name, bytes: page? });
    }
    let plan = html::alone(DEMONSTRATION, &options.templates, &files)?;
    packet.push(PacketFile { name: DEMONSTRATION, bytes: plan });
    packet.extend(data(draft, words)?);
    for (drawn, name) in DRAWN {
        packet.extend(files.get(drawn).map(|bytes| PacketFile { name, bytes: bytes.clone() }));
    }
    Ok(packet)
}

/// Sets one sheet by the name of its template in [`SHEETS`] or [`ON_REQUEST`], as a PDF.
///
/// # Errors
/// [`SheetError`] when there is no such template or it is wrong.
pub fn sheet(name: &str, draft: &Draft, words: &Words, options: &Options) -> Result<Vec<u8>, SheetError> {
    press::print(name, &options.templates, &files(draft, words, options)?)
}

/// Makes the files of the packet that need no sheet: cut lists, the computed basket, section and base.
///
/// # Errors
/// [`SheetError`] when data cannot be written.
pub fn data(draft: &Draft, words: &Words) -> Result<Vec<PacketFile>, SheetError> {
    let file = |name, bytes| PacketFile { name, bytes };
    Ok(vec![
        file("cuts.csv", tables::csv(draft, words)?),
        file("cuts.json", tables::json(draft, words)?),
        file("section.svg", figures::section_svg(&draft.basket, words).into_bytes()),
        file("base.svg", figures::base_svg(&draft.basket, words).into_bytes()),
        file("basket.json", serde_json::to_vec_pretty(&basket_json(draft, words))?),
    ])
}

/// Sets all sheets at once, in the order of [`SHEETS`].
fn set(files: &Files, options: &Options, progress: &mut dyn FnMut(&str)) -> Result<Vec<Vec<u8>>, SheetError> {
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
fn files(draft: &Draft, words: &Words, options: &Options) -> Result<Files, SheetError> {
    let scribe = Scribe::new(words);
    let mut drawn = figures::drawn(&draft.basket, &scribe, options.paper);
    let show = Demonstration::of(&draft.steps, &options.show);
    drawn.figures.push(Figure::of(&demonstration::picture(&show, words)));
    let written = basket_json(draft, words);
    let source = Source {
        draft,
        written: &written,
        scribe: &scribe,
        figures: &drawn.figures,
        photos: &options.photos,
    };
    let plan = demonstration::plan(draft, &show, &scribe);
    let data = SheetData::of(&source, &drawn, plan);
    let mut files = Files::from([("data.json".to_owned(), serde_json::to_vec(&data)?)]);
    files.extend(drawn.figures.iter().map(|figure| (figure.file.clone(), figure.svg.clone().into_bytes())));
    files.extend(options.photos.files());
    Ok(files)
}
