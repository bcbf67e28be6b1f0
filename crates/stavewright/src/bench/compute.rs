//! From a pattern's text to a basket, for whoever asks the server.

use std::path::Path;

use basket::pattern::{Pattern, Units};
use basket::{Basket, Catalogue, Draft, Hand, assemble};
use words::{Language, Words};

use super::api::{Problem, UnitsWord};
use super::look::problems;
use super::refusal::Refusal;
use crate::drawn;

/// What the patterns of a bench may name.
#[derive(Clone, Copy)]
pub(crate) struct Shop<'a> {
    /// Where weaves drawn in files of their own lie; they are read from nowhere else.
    pub(crate) folder: &'a Path,
    /// The materials.
    pub(crate) catalogue: &'a Catalogue,
}

/// Reads a pattern and works it out whole.
pub(crate) fn draft(source: &str, shop: Shop<'_>) -> Result<Draft, Vec<Problem>> {
    Ok(Draft::of(read(source, shop)?, shop.catalogue, &Hand::USUAL))
}

/// Reads a pattern and computes its basket alone: for pictures, which ask for nothing that follows.
pub(crate) fn basket(source: &str, shop: Shop<'_>) -> Result<Basket, Vec<Problem>> {
    Ok(assemble(&read(source, shop)?, shop.catalogue, &Hand::USUAL))
}

fn read(source: &str, shop: Shop<'_>) -> Result<Pattern, Vec<Problem>> {
    let mut pattern =
        basket::pattern::read(source, shop.catalogue).map_err(|found| problems::of(source, &found))?;
    load_drawn(&mut pattern, shop.folder)?;
    Ok(pattern)
}

fn load_drawn(pattern: &mut Pattern, folder: &Path) -> Result<(), Vec<Problem>> {
    for (course, number) in pattern.weave.courses.iter().zip(1..) {
        let Some(name) = &course.chart_file else { continue };
        if !lies_in(folder, name) {
            let message = format!("`{name}` is not a file in the bench's folder");
            let help = "lay the drawn weave beside the pattern and write its name alone";
            return Err(vec![problems::at(number, message, help.to_owned())]);
        }
    }
    drawn::load(pattern, folder).map_err(|failure| {
        let (message, help) = failure.parts();
        let number = pattern.weave.courses.iter().zip(1..).find(|(course, _)| course.chart_file.is_some());
        vec![problems::at(number.map_or(1, |(_, number)| number), message, help)]
    })
}

/// Whether a name means a file directly in the folder, links followed.
fn lies_in(folder: &Path, name: &str) -> bool {
    let plain = !name.starts_with('.') && !name.contains(['/', '\\', '\0', ':']);
    let Ok(folder) = folder.canonicalize() else { return false };
    plain
        && folder
            .join(name)
            .canonicalize()
            .is_ok_and(|file| file.is_file() && file.parent() == Some(folder.as_path()))
}

/// The reader whom a request names. Units are those that it wants, else those of the language's
/// readers, else the pattern's own.
pub(crate) fn words(tag: Option<&str>, units: Option<UnitsWord>, own: Units) -> Result<Words, Refusal> {
    let language = language(tag)?;
    let units = units.map(Units::from).or(language.units()).unwrap_or(own);
    Ok(Words::new(language, units))
}

/// The language of a tag; English for none.
pub(crate) fn language(tag: Option<&str>) -> Result<Language, Refusal> {
    let Some(tag) = tag else { return Ok(Language::default()) };
    Language::of(tag).ok_or_else(|| {
        let known: Vec<&str> = Language::ALL.iter().map(|language| language.tag()).collect();
        let shown: String = tag.chars().take(20).collect();
        Refusal::senseless(
            format!("there are no texts in the language `{shown}`"),
            "language",
            format!("Ask for one of: {}.", known.join(", ")),
        )
    })
}

impl From<UnitsWord> for Units {
    fn from(units: UnitsWord) -> Self {
        match units {
            UnitsWord::In => Self::Inches,
            UnitsWord::Mm => Self::Millimetres,
        }
    }
}

impl From<Units> for UnitsWord {
    fn from(units: Units) -> Self {
        match units {
            Units::Inches => Self::In,
            Units::Millimetres => Self::Mm,
        }
    }
}
