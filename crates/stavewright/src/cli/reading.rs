//! What the commands that read a pattern have in common.

use std::path::{Path, PathBuf};

use basket::message::{Message, Value};
use basket::pattern::{Pattern, Units};
use basket::{Basket, Catalogue, Draft, Hand, assemble, cuts};
use clap::ValueEnum;
use clap::builder::{PossibleValuesParser, TypedValueParser};
use planning::class::Source;
use sheets::Photos;
use words::{Language, Words};

use crate::failure::Failure;
use crate::own::Own;
use crate::source::{Origin, Text};
use crate::store::STORE;
use crate::{drawn, input, photos, screen};

/// Where the pattern and its materials come from.
#[derive(Clone, Debug, clap::Args)]
pub(super) struct Reading {
    /// The pattern file; - reads standard input.
    pub(super) pattern: PathBuf,

    #[command(flatten)]
    shared: Shared,
}

/// How a pattern is read, whoever names it.
#[derive(Clone, Debug, clap::Args)]
pub(super) struct Shared {
    /// Units to print first, whatever the pattern is written in.
    #[arg(long, value_name = "UNITS")]
    units: Option<UnitsArg>,

    #[command(flatten)]
    speaking: Speaking,

    /// A file with your own materials; they stand before the catalogue's.
    #[arg(long, value_name = "FILE")]
    shelf: Option<PathBuf>,

    /// The store whose measures hold; none for that beside the pattern.
    #[arg(skip)]
    store: Option<PathBuf>,
}

/// The language of an answer.
#[derive(Clone, Debug, Default, clap::Args)]
pub(super) struct Speaking {
    /// Language of sheets and answers [default: the pattern's, else en].
    #[arg(long, value_name = "LANGUAGE", value_parser = languages())]
    language: Option<Language>,
}

fn languages() -> impl TypedValueParser<Value = Language> {
    PossibleValuesParser::new(Language::ALL.iter().map(|language| language.tag()))
        .map(|tag| Language::of(&tag).unwrap_or_default())
}

impl Speaking {
    /// Words for an answer about no pattern.
    pub(super) fn words(&self, units: Units) -> Words {
        Words::new(self.language.unwrap_or_default(), units)
    }
}

/// Units by the short names that makers type.
#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(super) enum UnitsArg {
    /// Inches and fractions.
    In,
    /// Millimetres.
    Mm,
}

impl From<UnitsArg> for Units {
    fn from(units: UnitsArg) -> Self {
        match units {
            UnitsArg::In => Self::Inches,
            UnitsArg::Mm => Self::Millimetres,
        }
    }
}

impl Reading {
    /// A pattern that another file names.
    pub(super) fn of(pattern: PathBuf, shared: &Shared) -> Self {
        Self { pattern, shared: shared.clone() }
    }

    /// A pattern that is read as it is written, for a reader of this language.
    pub(super) fn plain(pattern: PathBuf, speaking: &Speaking) -> Self {
        let shared = Shared { units: None, speaking: speaking.clone(), shelf: None, store: None };
        Self { pattern, shared }
    }

    /// The same with the measures of this store in the place of those beside the pattern.
    pub(super) fn measured_by(mut self, store: Option<&Path>) -> Self {
        self.shared.store = store.map(Path::to_owned);
        self
    }

    /// The pattern's file.
    pub(super) fn file(&self) -> &Path {
        &self.pattern
    }

    /// Reads the pattern; it is said which of its measures are the shelf's.
    pub(super) fn read(&self) -> Result<Read, Failure> {
        let (read, said) = self.read_and_say()?;
        screen::tell(&said);
        Ok(read)
    }

    /// Reads the pattern, and what is to be said of the shelf's measures: which hold, or why none do.
    pub(super) fn read_and_say(&self) -> Result<(Read, String), Failure> {
        let catalogue = catalogue(self.shared.shelf.as_deref())?;
        let origin = Origin::of(&self.pattern);
        let (own, unread) = match &self.shared.store {
            Some(store) => Own::of_store(store, &catalogue),
            None => Own::of_folder(origin.folder(), &catalogue),
        };
        let catalogue = own.catalogue(&catalogue);
        let (pattern, text) = self.understood(input::read(origin)?, &catalogue)?;
        let read = Read { pattern, text, catalogue };
        let said = if own == Own::default() { String::new() } else { self.of_shelf(unread, &read) };
        Ok((read, said))
    }

    fn of_shelf(&self, unread: Option<Message>, read: &Read) -> String {
        let basket = read.basket();
        let words = words(&basket);
        let said = match unread {
            Some(why) => {
                let beside = || Origin::of(&self.pattern).folder().join(STORE);
                let file = self.shared.store.clone().unwrap_or_else(beside).display().to_string();
                words.with("own-unread", &[("file", Value::Name(file)), ("why", why.into())])
            }
            None => match cuts::measured(&cuts::list(&basket)).as_slice() {
                [] => return String::new(),
                all => words.with("own-measures", &[("measures", Value::Name(words.measures(all)))]),
            },
        };
        screen::wrap(&said, "", "  ") + "\n"
    }

    /// Another text in the place of one that was read, with the same materials.
    pub(super) fn instead(&self, content: String, of: &Read) -> Result<Read, Failure> {
        let catalogue = of.catalogue.clone();
        let text = Text { origin: of.text.origin.clone(), content };
        let (pattern, text) = self.understood(text, &catalogue)?;
        Ok(Read { pattern, text, catalogue })
    }

    fn understood(&self, text: Text, catalogue: &Catalogue) -> Result<(Pattern, Text), Failure> {
        let mut pattern = match basket::pattern::read(&text.content, catalogue) {
            Ok(pattern) => pattern,
            Err(problems) => return Err(Failure::Misread { text, problems }),
        };
        pattern.language = self.shared.speaking.language.or(pattern.language);
        let readers = pattern.language.and_then(Language::units);
        if let Some(units) = self.shared.units.map(Units::from).or(readers) {
            pattern.units = units;
        }
        drawn::load(&mut pattern, Origin::of(&self.pattern).folder())?;
        Ok((pattern, text))
    }
}

/// A pattern that was read, with the materials that it may name.
pub(super) struct Read {
    pattern: Pattern,
    text: Text,
    catalogue: Catalogue,
}

impl Read {
    /// The pattern's text.
    pub(super) fn source(&self) -> &str {
        &self.text.content
    }

    /// What it says, and the materials that it may name.
    pub(super) fn said(&self) -> (&Pattern, &Catalogue) {
        (&self.pattern, &self.catalogue)
    }

    /// What the steps of a class are taken from, at the pace of a hand.
    pub(super) fn source_of_steps<'r>(&'r self, hand: &'r Hand) -> Source<'r> {
        Source { pattern: &self.pattern, catalogue: &self.catalogue, hand }
    }

    /// The basket alone, for those who draw it.
    pub(super) fn basket(&self) -> Basket {
        assemble(&self.pattern, &self.catalogue, &Hand::USUAL)
    }

    /// The photographs that the pattern's notes name.
    pub(super) fn photos(&self) -> Result<Photos, Failure> {
        photos::load(&self.pattern, &self.text)
    }

    /// The same as by a hand of its own.
    pub(super) fn draft_by(&self, hand: &Hand) -> Draft {
        Draft::of(self.pattern.clone(), &self.catalogue, hand)
    }

    /// The basket and all that follows from it. It is worked out anew: after a picture, whose exit status
    /// tells of a stop, that takes a hundredth of the picture's time.
    pub(super) fn draft(self) -> Draft {
        Draft::of(self.pattern, &self.catalogue, &Hand::USUAL)
    }
}

/// Words for the readers of a basket.
pub(super) fn words(basket: &Basket) -> Words {
    Words::new(basket.language.unwrap_or_default(), basket.units)
}

/// The catalogue, with the maker's own materials before it.
pub(super) fn catalogue(shelf: Option<&Path>) -> Result<Catalogue, Failure> {
    shelved(shelf).map(|(catalogue, _)| catalogue)
}

/// The same, with the text of the maker's own materials; it is empty where there are none.
pub(super) fn shelved(shelf: Option<&Path>) -> Result<(Catalogue, String), Failure> {
    let catalogue = Catalogue::built_in();
    let Some(shelf) = shelf else { return Ok((catalogue.clone(), String::new())) };
    let text = input::read(Origin::of(shelf))?;
    match catalogue.with_shelf(&text.content) {
        Ok(shelved) => Ok((shelved, text.content)),
        Err(problems) => Err(Failure::Misread { text, problems }),
    }
}
