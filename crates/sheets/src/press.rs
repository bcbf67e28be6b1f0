//! The press: sets a template and its files as a PDF, in memory, without network or clock.

use std::collections::{BTreeMap, HashMap};
use std::path::Path;
use std::sync::LazyLock;

use typst::diag::{FileError, FileResult, SourceDiagnostic};
use typst::foundations::{Bytes, Datetime, Duration, Smart};
use typst::syntax::{FileId, RootedPath, Source, VirtualPath, VirtualRoot};
use typst::text::{Font, FontBook};
use typst::utils::LazyHash;
use typst::{Library, LibraryExt, World, WorldExt};
use typst_kit::fonts::FontStore;
use typst_layout::PagedDocument;
use typst_pdf::{PdfOptions, PdfStandard, PdfStandards};

use crate::error::{Mistake, Position, SheetError};
use crate::templates::Templates;

/// A finished sheet.
#[derive(Clone, Debug)]
pub struct Sheet {
    /// Its name, such as `handout`.
    pub name: String,
    /// The PDF.
    pub pdf: Vec<u8>,
    /// How many pages it has.
    pub pages: usize,
}

/// Files that a template may read, by name: data as JSON, drawings as SVG.
pub type Files = BTreeMap<String, Vec<u8>>;

/// What every sheet shares: the typesetter's library and the fonts inside the program.
struct House {
    library: LazyHash<Library>,
    fonts: FontStore,
}

static HOUSE: LazyLock<House> = LazyLock::new(|| {
    let mut fonts = FontStore::new();
    fonts.extend(typst_kit::fonts::embedded());
    House { library: LazyHash::new(Library::default()), fonts }
});

/// Sets the template `NAME.typ` as a tagged PDF (PDF/UA-1, ISO 14289-1).
///
/// # Errors
/// [`SheetError::Template`] when the template is missing or wrong.
pub fn print(name: &str, templates: &Templates, files: &Files) -> Result<Sheet, SheetError> {
    let failed = |mistakes: Vec<Mistake>| SheetError::Template { sheet: name.to_owned(), mistakes };
    let main = format!("{name}.typ");
    if templates.text(&main).is_none() {
        return Err(failed(vec![Mistake::without_place(format!("there is no template `{main}`"))]));
    }
    let Some(main) = id(&main) else {
        return Err(failed(vec![Mistake::without_place(format!("`{main}` is no file name"))]));
    };
    let job = Job::new(main, templates, files);
    let document: PagedDocument =
        typst::compile(&job).output.map_err(|found| failed(job.mistakes(&found)))?;
    let standards = PdfStandards::new(&[PdfStandard::Ua_1])
        .map_err(|error| failed(vec![Mistake::without_place(error.message().to_string())]))?;
    let creator = Smart::Custom(Some(format!("Stavewright {}", env!("CARGO_PKG_VERSION"))));
    let options = PdfOptions { standards, creator, ..PdfOptions::default() };
    let pdf = typst_pdf::pdf(&document, &options).map_err(|found| failed(job.mistakes(&found)))?;
    Ok(Sheet { name: name.to_owned(), pdf, pages: document.pages().len() })
}

/// Forgets what earlier sheets left in the typesetter's memory and later ones did not use.
pub(crate) fn tidy() {
    typst::comemo::evict(4);
}

/// One sheet being set: its sources and files.
struct Job {
    main: FileId,
    sources: HashMap<FileId, Source>,
    files: HashMap<FileId, Bytes>,
}

impl Job {
    fn new(main: FileId, templates: &Templates, files: &Files) -> Self {
        let typst = templates
            .names()
            .filter(|name| Path::new(name).extension().is_some_and(|ending| ending == "typ"));
        let sources = typst.filter_map(|name| {
            let id = id(name)?;
            Some((id, Source::new(id, templates.text(name)?.to_owned())))
        });
        let files = files.iter().filter_map(|(name, bytes)| Some((id(name)?, Bytes::new(bytes.clone()))));
        Self { main, sources: sources.collect(), files: files.collect() }
    }

    fn mistakes(&self, found: &[SourceDiagnostic]) -> Vec<Mistake> {
        let mistake = |diagnostic: &SourceDiagnostic| Mistake {
            at: self.position(diagnostic),
            message: diagnostic.message.to_string(),
            hints: diagnostic.hints.iter().map(|hint| hint.v.to_string()).collect(),
        };
        found.iter().map(mistake).collect()
    }

    fn position(&self, diagnostic: &SourceDiagnostic) -> Option<Position> {
        let id = diagnostic.span.id()?;
        let start = self.range(diagnostic.span)?.start;
        let (line, column) = self.sources.get(&id)?.lines().byte_to_line_column(start)?;
        let file = id.get().vpath().get_without_slash().to_owned();
        Some(Position { file, line: line + 1, column: column + 1 })
    }
}

fn id(name: &str) -> Option<FileId> {
    Some(RootedPath::new(VirtualRoot::Project, VirtualPath::new(name).ok()?).intern())
}

fn not_found(id: FileId) -> FileError {
    FileError::NotFound(id.get().vpath().get_without_slash().into())
}

impl World for Job {
    fn library(&self) -> &LazyHash<Library> {
        &HOUSE.library
    }
    fn book(&self) -> &LazyHash<FontBook> {
        HOUSE.fonts.book()
    }
    fn main(&self) -> FileId {
        self.main
    }
    fn source(&self, id: FileId) -> FileResult<Source> {
        self.sources.get(&id).cloned().ok_or_else(|| not_found(id))
    }
    fn file(&self, id: FileId) -> FileResult<Bytes> {
        self.files.get(&id).cloned().ok_or_else(|| not_found(id))
    }
    fn font(&self, index: usize) -> Option<Font> {
        HOUSE.fonts.font(index)
    }
    fn today(&self, _: Option<Duration>) -> Option<Datetime> {
        None
    }
}
