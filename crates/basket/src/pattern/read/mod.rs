//! From the text of a file to a pattern, or to the list of all that is wrong with it.

mod colours;
mod course;
mod ends;
pub mod fields;
mod fittings;
pub mod keys;
mod materials;
mod mould;
mod notes;
mod problem;
mod rim;
mod section;
mod text;
mod wall;
mod words;

use std::cell::RefCell;

use toml::Spanned;
use toml::de::{DeTable, Error};

use self::colours::Palette;
pub use self::problem::Problem;
use self::section::{Context, Section};
use crate::measure::Unit;
use crate::pattern::{Language, Pattern, Units};
use crate::stock::Catalogue;

/// The longest text that [`read`] accepts, in bytes.
pub const LONGEST_TEXT: usize = 1_000_000;

/// Reads a pattern.
///
/// Materials are looked up in the file's own `[materials]` first, then in the catalogue.
///
/// # Errors
/// Everything that is wrong with the text, in the order of the file.
pub fn read(text: &str, catalogue: &Catalogue) -> Result<Pattern, Vec<Problem>> {
    let table = open_file(text)?;
    let problems = RefCell::new(Vec::new());
    let context = Context { catalogue, unit: None, problems: &problems };
    let file = Section::open(context, "", table.get_ref(), 0..0, keys::PATTERN);
    let (units, unit) = units(&file);
    let file = file.with_context(Context { unit, ..context });
    let materials = materials::materials(&file);
    let shelf = catalogue.with(&materials);
    let file = file.with_context(Context { unit, catalogue: &shelf, problems: &problems });
    let pattern = whole(&file, units, materials);
    let problems = problems.take();
    match pattern {
        Some(pattern) if problems.is_empty() => Ok(pattern),
        _ => Err(in_file_order(problems)),
    }
}

/// The problems in the order of the file; of very many, the first ones and how many more there are.
fn in_file_order(mut problems: Vec<Problem>) -> Vec<Problem> {
    const MOST: usize = 50;
    problems.sort_by_key(|problem| problem.span.as_ref().map_or(0, |span| span.start));
    let more = problems.len().saturating_sub(MOST);
    if more > 0 {
        problems.truncate(MOST);
        let message = format!("{more} more problems are not shown");
        problems.push(Problem { message, span: None, help: Some("mend these first".to_owned()) });
    }
    problems
}

fn whole(file: &Section, units: Units, materials: Vec<crate::Material>) -> Option<Pattern> {
    if !file.has("title") {
        file.missing("title", r#"title = "…" with the name of the basket, at the top"#);
    }
    let title = file.title("title");
    let language = language(file);
    let mould = mould::mould(file);
    let base = mould::base(file);
    let palette = Palette::read(file);
    let staves = wall::staves(file, &palette);
    let weave = wall::weave(file, mould.as_ref(), &palette);
    let rim = rim::rim(file);
    let filler = rim::filler(file);
    let lashing = rim::lashing(file);
    let pins = rim::pins(file);
    let handle = fittings::handle(file);
    let ears =
        fittings::ears(file).or_else(|| handle.as_ref().map(|_| crate::pattern::EarsPattern::default()));
    let finish = fittings::finish(file);
    let notes = notes::notes(file);
    Some(Pattern {
        title: title?,
        units,
        language,
        mould: mould?,
        base,
        staves,
        weave,
        rim,
        filler,
        lashing,
        pins,
        ears,
        handle,
        finish,
        notes,
        materials,
    })
}

/// The file's units, and the unit of a bare number: none when the file does not say.
fn units(file: &Section) -> (Units, Option<Unit>) {
    let units = file.word("units", words::UNITS);
    // A wrong `units` is one problem; it should not become one more at every bare number.
    let unit = file.has("units").then(|| units.unwrap_or_default().unit());
    (units.unwrap_or_default(), unit)
}

fn language(file: &Section) -> Option<Language> {
    file.word("language", words::LANGUAGE)
}

/// The tree of a file whose text is in order.
fn open_file(text: &str) -> Result<Spanned<DeTable<'_>>, Vec<Problem>> {
    let whole_file = |message: &str, help: &str| {
        vec![Problem { message: message.to_owned(), span: None, help: Some(help.to_owned()) }]
    };
    if text.len() > LONGEST_TEXT {
        return Err(whole_file(
            "the file is larger than 1 MB",
            "a pattern is a few kilobytes: is this the right file?",
        ));
    }
    if text.trim().is_empty() {
        return Err(whole_file("the file is empty", "`stavewright new` writes a pattern to start from"));
    }
    let (table, errors) = DeTable::parse_recoverable(text);
    if errors.is_empty() {
        Ok(table)
    } else {
        Err(in_file_order(errors.iter().map(|error| syntax(text, error)).collect()))
    }
}

fn syntax(text: &str, error: &Error) -> Problem {
    let message = error.message().replace('\n', "; ");
    let span = error.span().map(|span| span.start.min(text.len())..span.end.min(text.len()));
    let help = "a line reads key = \"text\" or [section]; every quote and bracket is closed".to_owned();
    Problem { message: format!("this line cannot be read: {message}"), span, help: Some(help) }
}
