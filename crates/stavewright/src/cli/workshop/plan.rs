//! From kits files to kits and purchases.

use std::ops::ControlFlow;
use std::path::{Path, PathBuf};
use std::time::{Duration, Instant};

use basket::pattern::{AllReady, Ready, Units, Word};
use basket::{Catalogue, Colour, Draft, Hand, Length};
use planning::buying::{Lot, Offer, Purchase, Terms, Timing, buy, needs};
use planning::kits::{Kits, Student};
use words::Words;

use super::StoreArgs;
use super::failure;
use crate::cli::reading::{Speaking, UnitsArg};
use crate::failure::Failure;
use crate::kits_file::{self, Group, KitsFile};
use crate::progress::Progress;
use crate::source::{Origin, Text};
use crate::{drawn, input};

/// Seconds for all searches together, where nobody says otherwise.
pub(super) const SECONDS: u64 = 20;
/// The same as a duration.
pub(super) const LIMIT: Duration = Duration::from_secs(SECONDS);

/// Which classes, and with what shelf.
#[derive(Debug, clap::Args)]
pub(super) struct Planning {
    /// Kits files: who is in a class, and what each makes.
    #[arg(required = true)]
    files: Vec<PathBuf>,

    #[command(flatten)]
    pub(super) store: StoreArgs,

    /// Units to print first [default: the first pattern's].
    #[arg(long, value_name = "UNITS")]
    units: Option<UnitsArg>,

    #[command(flatten)]
    speaking: Speaking,
}

/// Classes that were read, with the shelf as it stands.
pub(super) struct Planned {
    pub(super) classes: Vec<PlannedClass>,
    shelf: Vec<Lot>,
    offers: Vec<Offer>,
    pub(super) words: Words,
}

/// One class with its kits.
pub(super) struct PlannedClass {
    pub(super) file: KitsFile,
    /// A draft for each group of students.
    pub(super) drafts: Vec<Draft>,
    pub(super) kits: Kits,
}

impl Planning {
    pub(super) fn read(&self) -> Result<Planned, Failure> {
        let store = self.store.existing()?;
        let of_store = |fault| failure(&self.store.store, &fault);
        let (items, catalogue) = match &store {
            Some(store) => {
                (store.items().map_err(of_store)?, store.catalogue(Catalogue::built_in()).map_err(of_store)?)
            }
            None => (Vec::new(), Catalogue::built_in().clone()),
        };
        let names = self.speaking.words(Units::default());
        let classes: Vec<PlannedClass> =
            self.files.iter().map(|path| class(path, &catalogue, &names)).collect::<Result<_, _>>()?;
        let first = classes.iter().flat_map(|class| &class.drafts).next();
        let units = self.units.map(Units::from).or(first.map(|draft| draft.basket.units)).unwrap_or_default();
        Ok(Planned {
            classes,
            shelf: items.iter().map(workshop::Item::lot).collect(),
            offers: items.iter().filter_map(workshop::Item::offer).collect(),
            words: self.speaking.words(units),
        })
    }
}

impl Planned {
    /// Names of the classes, together.
    pub(super) fn title(&self) -> String {
        self.classes.iter().map(|class| class.file.title.as_str()).collect::<Vec<_>>().join(", ")
    }

    /// The currency of the first class that names one.
    pub(super) fn currency(&self) -> String {
        let named = self.classes.iter().map(|class| &class.file.price.currency).find(|name| !name.is_empty());
        named.cloned().unwrap_or_default()
    }

    /// The first draft, whose paper the sheets are set on.
    pub(super) fn first(&self) -> Option<&Draft> {
        self.classes.iter().flat_map(|class| &class.drafts).next()
    }

    /// What all classes take together, from the shelf or all bought anew; the searches end after this time.
    pub(super) fn purchases(&self, from_shelf: bool, limit: Duration) -> Result<Vec<Purchase>, Failure> {
        let (began, progress) = (Instant::now(), Progress::begin());
        let mut watch = |so_far: planning::cutting::Progress| {
            progress.say(&format!("planning: {} found, {} at least", so_far.cost, so_far.bound));
            if began.elapsed() < limit { ControlFlow::Continue(()) } else { ControlFlow::Break(()) }
        };
        let earliest = self.classes.iter().filter_map(|class| Some((class.file.needed?, &class.file)));
        let timing = earliest.min_by_key(|(day, _)| *day).map(|(needed, file)| Timing {
            needed,
            delivery_days: file.delivery_days,
            dye_days: file.dye_days,
        });
        let kerfs: Vec<Length> =
            self.classes.iter().map(|class| kerf(&class.file)).collect::<Result<_, _>>()?;
        let kerf = kerfs.into_iter().fold(Length::ZERO, Length::max);
        let shelf = if from_shelf { self.shelf.as_slice() } else { &[] };
        let terms = Terms { shelf, offers: &self.offers, kerf, timing };
        Ok(buy(&needs(self.classes.iter().map(|class| &class.kits)), &terms, &mut watch))
    }
}

fn kerf(file: &KitsFile) -> Result<Length, Failure> {
    let Some(text) = &file.kerf else { return Ok(Length::ZERO) };
    let wrong = |what: String| Failure::plain(format!("kerf = \"{text}\": {what}"), "Write it as \"1 mm\".");
    let kerf = Length::parse(text, None).map_err(|error| wrong(error.to_string()))?;
    if (0.0..=50.0).contains(&kerf.to_mm()) {
        Ok(kerf)
    } else {
        Err(wrong("a cut takes 0 to 50 mm".to_owned()))
    }
}

fn class(path: &Path, catalogue: &Catalogue, words: &Words) -> Result<PlannedClass, Failure> {
    let text = input::read(Origin::of(path))?;
    let file = kits_file::parse(&text)?;
    let drafts: Vec<Draft> =
        file.students.iter().map(|group| draft(group, &text, catalogue)).collect::<Result<_, _>>()?;
    let mut students: Vec<Student> = Vec::new();
    for (group, draft) in file.students.iter().zip(&drafts) {
        let colours = group
            .colours
            .iter()
            .map(|(from, to)| Ok((from.clone(), colour(to, &text)?)))
            .collect::<Result<_, Failure>>()?;
        for _ in 0..group.count {
            let number = students.len() as u32 + 1;
            let name = group.name.clone().filter(|_| group.count == 1);
            let name = name.unwrap_or_else(|| words.with("workshop-student", &[("number", number.into())]));
            students.push(Student { name, draft, colours: std::collections::BTreeMap::clone(&colours) });
        }
    }
    let kits = Kits::of(&students, &Hand::USUAL);
    Ok(PlannedClass { file, drafts, kits })
}

fn colour(name: &str, text: &Text) -> Result<Colour, Failure> {
    let found = Colour::built_in(name).or_else(|| Colour::hex(name, name));
    found.ok_or_else(|| {
        let known: Vec<&str> = basket::colour::BUILT_IN.iter().map(|(name, _)| *name).collect();
        let what = format!("there is no colour `{name}`");
        Failure::of_file(&text.origin, what, format!("Colours are {}, or #rrggbb.", known.join(", ")))
    })
}

fn draft(group: &Group, text: &Text, catalogue: &Catalogue) -> Result<Draft, Failure> {
    let origin = Origin::File(text.origin.folder().join(&group.pattern));
    let written = input::read(origin.clone())?;
    let mut pattern = basket::pattern::read(&written.content, catalogue)
        .map_err(|problems| Failure::Misread { text: written, problems })?;
    drawn::load(&mut pattern, origin.folder())?;
    if let Some(ready) = &group.ready {
        pattern.ready =
            AllReady::of(ready.iter().map(|word| prepared(word, text)).collect::<Result<_, _>>()?);
    }
    Ok(Draft::of(pattern, catalogue, &Hand::USUAL))
}

fn prepared(word: &str, text: &Text) -> Result<Ready, Failure> {
    let found = Ready::ALL.iter().copied().find(|ready| ready.word() == word);
    found.ok_or_else(|| {
        let known: Vec<&str> = Ready::ALL.iter().map(|ready| ready.word()).collect();
        let what = format!("ready: there is no `{word}`");
        Failure::of_file(&text.origin, what, format!("What can be ready: {}.", known.join(", ")))
    })
}
