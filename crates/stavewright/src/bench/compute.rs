//! From a pattern's text to a basket, for whoever asks the server.

use std::path::Path;

use basket::pattern::{Pattern, Units, keys};
use basket::{Basket, Catalogue, Draft, Hand, assemble};
use sheets::{Paper, Photos};
use words::{Language, Words};

use super::api::{PaperWord, Problem, UnitsWord};
use super::folder::Folder;
use super::look::problems;
use super::refusal::Refusal;
use crate::failure::Failure;
use crate::own::Own;
use crate::source::{Origin, Text};
use crate::{drawn, photos};

/// What the patterns of a bench may name.
#[derive(Clone, Copy)]
pub(crate) struct Shop<'a> {
    /// Where drawn weaves and photographs lie; they are read from nowhere else. This process stands in it,
    /// so that what is said of a file never tells where the folder is.
    pub(crate) folder: &'a Folder,
    /// The materials, with what the maker measured.
    pub(crate) catalogue: &'a Catalogue,
    /// What of them is the shelf's.
    pub(crate) own: &'a Own,
    /// The hand by which baskets are worked out.
    pub(crate) hand: &'a Hand,
    /// Whether a pattern may name any file of the folder, or only those that a pattern there names: a guest
    /// sees the patterns that are offered and learns nothing of other files.
    pub(crate) any_file: bool,
}

impl Shop<'_> {
    fn may_name(&self, file: &str) -> bool {
        self.any_file || self.folder.has_pattern_with(file, self.catalogue)
    }
}

/// Reads a pattern and works it out whole.
pub(crate) fn draft(source: &str, shop: Shop<'_>) -> Result<Draft, Vec<Problem>> {
    Ok(Draft::of(read(source, shop)?, shop.catalogue, shop.hand))
}

/// The same for a glance while a hand moves.
pub(crate) fn at_a_glance(source: &str, shop: Shop<'_>) -> Result<Draft, Vec<Problem>> {
    Ok(Draft::at_a_glance(read(source, shop)?, shop.catalogue, shop.hand))
}

/// Reads a pattern and computes its basket alone: for pictures, which ask for nothing that follows.
pub(crate) fn basket(source: &str, shop: Shop<'_>) -> Result<Basket, Vec<Problem>> {
    Ok(assemble(&read(source, shop)?, shop.catalogue, shop.hand))
}

/// The pattern itself beside its basket.
pub(crate) fn pattern_and_basket(source: &str, shop: Shop<'_>) -> Result<(Pattern, Basket), Vec<Problem>> {
    let pattern = read(source, shop)?;
    let basket = assemble(&pattern, shop.catalogue, shop.hand);
    Ok((pattern, basket))
}

/// Reads a pattern, with the weaves that it has drawn.
pub(crate) fn read(source: &str, shop: Shop<'_>) -> Result<Pattern, Vec<Problem>> {
    let mut pattern =
        basket::pattern::read(source, shop.catalogue).map_err(|found| problems::of(source, &found))?;
    load_drawn(&mut pattern, shop)?;
    Ok(pattern)
}

fn load_drawn(pattern: &mut Pattern, shop: Shop<'_>) -> Result<(), Vec<Problem>> {
    for (course, number) in pattern.weave.courses.iter().zip(1..) {
        let Some(name) = &course.chart_file else { continue };
        if !shop.may_name(name) || !lies_in(shop.folder.path(), name) {
            let message = format!("`{name}` is not a file in the bench's folder");
            let help = "lay the drawn weave beside the pattern and write its name alone";
            return Err(vec![problems::at(number, message, help.to_owned())]);
        }
    }
    drawn::load(pattern, Path::new("")).map_err(|failure| {
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

/// The photographs that a pattern's notes name, from the folder and from nowhere else.
pub(crate) fn photographs(source: &str, pattern: &Pattern, shop: Shop<'_>) -> Result<Photos, Refusal> {
    let named = pattern.notes.iter().filter_map(|note| note.photo.as_ref());
    for photo in named {
        if !shop.may_name(&photo.path) {
            let what = format!("no pattern of this bench names the photo `{}`", photo.path);
            return Err(Refusal::senseless(
                what,
                keys::note::PHOTO.path,
                "Guests may use the photos of the patterns that are offered; leave this one out.",
            ));
        }
    }
    let text = Text { origin: Origin::File("pattern.toml".into()), content: source.to_owned() };
    photos::load(pattern, &text).map_err(|failure| match failure {
        Failure::Misread { problems: found, .. } => Refusal::misread(problems::of(source, &found)),
        other => {
            let (what, help) = other.parts();
            Refusal::senseless(what, keys::note::PHOTO.path, help)
        }
    })
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

/// The paper that is asked for, else that of the readers of these words.
pub(crate) fn paper(asked: Option<PaperWord>, words: &Words) -> Paper {
    match (asked, words.units()) {
        (Some(PaperWord::Letter), _) | (None, Units::Inches) => Paper::Letter,
        (Some(PaperWord::A4), _) | (None, Units::Millimetres) => Paper::A4,
    }
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
