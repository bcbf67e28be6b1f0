//! Classes with their kits, what they take and what they cost: for the commands and for the bench, which differ in
//! where patterns and shelf are read.

mod book;
mod class;
mod price;

use std::ops::ControlFlow;

use basket::{Draft, Length};
use planning::buying::{Lot, Offer, Purchase, Terms, Timing, buy, needs};
use planning::cutting::Progress;
use words::Words;
use workshop::Item;

pub(crate) use book::{Booking, bought, cut};
pub(crate) use class::{PlannedClass, Reading, of_order};
pub(crate) use price::Worked;

use crate::failure::Failure;
use crate::kits_file::KitsFile;

/// Told how far a search is; it may break it off.
pub(crate) type Watch<'w> = dyn FnMut(Progress) -> ControlFlow<()> + 'w;

/// Classes that were read, with the shelf as it stands.
pub(crate) struct Planned {
    pub(crate) classes: Vec<PlannedClass>,
    shelf: Vec<Lot>,
    offers: Vec<Offer>,
    pub(crate) words: Words,
}

impl Planned {
    /// These classes, told in these words.
    pub(crate) fn of(classes: Vec<PlannedClass>, items: &[Item], words: Words) -> Self {
        let (shelf, offers) =
            (items.iter().map(Item::lot).collect(), items.iter().filter_map(Item::offer).collect());
        Self { classes, shelf, offers, words }
    }

    /// Names of the classes, together.
    pub(crate) fn title(&self) -> String {
        self.classes.iter().map(|class| class.file.title.as_str()).collect::<Vec<_>>().join(", ")
    }

    /// The currency of the first class that names one.
    pub(crate) fn currency(&self) -> String {
        let named = self.classes.iter().map(|class| &class.file.price.currency).find(|name| !name.is_empty());
        named.cloned().unwrap_or_default()
    }

    /// The first draft, whose paper the sheets are set on.
    pub(crate) fn first(&self) -> Option<&Draft> {
        self.classes.iter().flat_map(|class| &class.drafts).next()
    }

    /// What all classes take together, from the shelf first. `watch` may break the search off.
    pub(crate) fn purchases(&self, watch: &mut Watch<'_>) -> Result<Vec<Purchase>, Failure> {
        self.bought_for(&self.classes, &self.shelf, watch)
    }

    /// What one class takes when all of it is bought anew: what it costs.
    pub(crate) fn anew(&self, class: &PlannedClass, watch: &mut Watch<'_>) -> Result<Vec<Purchase>, Failure> {
        self.bought_for(std::slice::from_ref(class), &[], watch)
    }

    fn bought_for(
        &self,
        classes: &[PlannedClass],
        shelf: &[Lot],
        watch: &mut Watch<'_>,
    ) -> Result<Vec<Purchase>, Failure> {
        let earliest = classes.iter().filter_map(|class| Some((class.file.needed?, &class.file)));
        let timing = earliest.min_by_key(|(day, _)| *day).map(|(needed, file)| Timing {
            needed,
            delivery_days: file.delivery_days,
            dye_days: file.dye_days,
        });
        let kerfs: Vec<Length> = classes.iter().map(|class| kerf(&class.file)).collect::<Result<_, _>>()?;
        let kerf = kerfs.into_iter().fold(Length::ZERO, Length::max);
        let terms = Terms { shelf, offers: &self.offers, kerf, timing };
        Ok(buy(&needs(classes.iter().map(|class| &class.kits)), &terms, watch))
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
