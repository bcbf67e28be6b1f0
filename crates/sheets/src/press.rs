//! The press: sets a template and its files as a PDF, in memory, without network or clock.

use std::collections::{BTreeMap, HashMap};
use std::path::Path;
use std::sync::LazyLock;

use basket::limits::PAGES;
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

/// Files that a template may read, by name: data as JSON, drawings as SVG.
pub(crate) type Files = BTreeMap<String, Vec<u8>>;

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
pub(crate) fn print(name: &str, templates: &Templates, files: &Files) -> Result<Vec<u8>, SheetError> {
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
    let pages = document.pages().len();
    if pages > PAGES {
        return Err(failed(vec![Mistake::without_place(format!(
            "it has {pages} pages; at most {PAGES} are printed"
        ))]));
    }
    let standards = PdfStandards::new(&[PdfStandard::Ua_1])
        .map_err(|error| failed(vec![Mistake::without_place(error.message().to_string())]))?;
    let creator = Smart::Custom(Some(format!("Stavewright {}", env!("CARGO_PKG_VERSION"))));
    let options = PdfOptions { standards, creator, ..PdfOptions::default() };
    typst_pdf::pdf(&document, &options).map_err(|found| failed(job.mistakes(&found)))
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

#[cfg(test)]
mod tests {
    use super::*;

    const DATA: &[u8] = br#"{ "title": "A basket", "lang": "en", "stop": false, "labels": {},
        "figures": { "dot": { "file": "dot.svg" } } }"#;
    const DOT: &[u8] = br#"<svg xmlns="http://www.w3.org/2000/svg" width="2mm" height="2mm"/>"#;

    /// The bench card from a teacher's own template.
    fn with_template(text: &str) -> Result<Vec<u8>, SheetError> {
        with(&Templates::default().with("bench-card.typ", text))
    }

    fn with(templates: &Templates) -> Result<Vec<u8>, SheetError> {
        let files = [("data.json", DATA), ("dot.svg", DOT)];
        let files = files.map(|(name, bytes)| (name.to_owned(), bytes.to_vec()));
        print("bench-card", templates, &Files::from(files))
    }

    /// How many pages a PDF has.
    fn pages(pdf: &[u8]) -> usize {
        lopdf::Document::load_mem(pdf).expect("lopdf opens it").get_pages().len()
    }

    #[test]
    fn own_template_takes_the_place_of_the_built_in() {
        let own =
            "#import \"house.typ\": *\n#show: house.with(\"own card\")\nOur own card.\n#pagebreak()\nMore.";
        let pdf = with_template(own).expect("the template is fine");
        assert_eq!(pages(&pdf), 2);
    }

    #[test]
    fn mistake_points_into_the_template() {
        let error = with_template("#import \"house.typ\": *\n= Card\nü #nonsense").expect_err("it is wrong");
        let SheetError::Template { sheet, mistakes } = &error else { panic!("{error}") };
        assert_eq!(sheet, "bench-card");
        let at = mistakes[0].at.as_ref().expect("a place");
        assert_eq!((at.file.as_str(), at.line, at.column), ("bench-card.typ", 3, 4));
        assert!(error.to_string().contains("bench-card.typ:3:4: unknown variable: nonsense"), "{error}");
    }

    #[test]
    fn files_outside_cannot_be_read() {
        let error = with_template("#read(\"/etc/passwd\")").expect_err("there is no such file");
        assert!(error.to_string().contains("bench-card.typ:1:"), "{error}");
        let error = with_template("#import \"@preview/x:1.0.0\": y").expect_err("there is no such package");
        assert!(error.to_string().contains("bench-card.typ:1:"), "{error}");
    }

    #[test]
    fn drawing_without_text_is_refused() {
        let show = |text: &str| {
            let image = format!("#image(data.figures.dot.file{text})");
            with_template(&format!("#import \"house.typ\": *\n#show: house.with(\"x\")\n{image}"))
        };
        let error = show("").expect_err("PDF/UA-1 asks for a text");
        assert!(error.to_string().contains("bench-card.typ:3:"), "{error}");
        assert!(show(", alt: \"a dot\"").is_ok());
    }

    #[test]
    fn a_template_without_an_end_is_refused_at_its_loop() {
        for (text, says) in [
            ("= Card\n#while true { [x] }", "bench-card.typ:2:"),
            ("#let again(x) = again(x + 1)\n#again(0)", "maximum function call depth exceeded"),
            ("#for _ in range(600) { pagebreak() }", "601 pages; at most 500"),
        ] {
            let error = with_template(text).expect_err("it has no end").to_string();
            assert!(error.contains(says), "{error}");
        }
    }

    #[test]
    fn mistakes_carry_the_typesetters_hint() {
        let error = with_template("#let a = 1\n#a-b").expect_err("it is wrong");
        let said = error.to_string();
        assert!(said.contains("bench-card.typ:2:2") && said.contains("hint: "), "{said}");
    }

    #[test]
    fn mistake_in_a_file_that_a_template_imports_is_found_there() {
        let templates = Templates::default()
            .with("own-notes.typ", "#let own-notes(step) = {\n  step.nothing\n}")
            .with("bench-card.typ", "#import \"own-notes.typ\": own-notes\n#own-notes((:))");
        let error = with(&templates).expect_err("it is wrong");
        assert!(error.to_string().contains("own-notes.typ:2:"), "{error}");
    }
}
