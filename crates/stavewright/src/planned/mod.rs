//! Classes with their kits, what they take and what they cost: for the commands and for the bench, which differ in
//! where patterns and shelf are read.

mod book;
mod class;
mod price;

use std::ops::ControlFlow;

use basket::{Draft, Length};
use planning::buying::{Due, Lot, Offer, Purchase, Terms, buy, needs};
use planning::cutting::Progress;
use words::Words;
use workshop::Item;

pub(crate) use book::{Booking, bought, cut};
pub(crate) use class::{PlannedClass, Reading, of_order};
pub(crate) use price::Worked;

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

    /// Names of the classes, together, in the order in which they need their material.
    pub(crate) fn title(&self) -> String {
        in_order(&self.classes)
            .into_iter()
            .map(|class| class.file.title.as_str())
            .collect::<Vec<_>>()
            .join(", ")
    }

    /// Until when the material of each class and order is ordered that says when it needs it, the first one first.
    pub(crate) fn due(&self) -> Vec<Due> {
        let one = |class: &PlannedClass| Some(Due::of(&class.file.title, &class.kits, class.file.timing()?));
        in_order(&self.classes).into_iter().filter_map(one).collect()
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
    pub(crate) fn purchases(&self, watch: &mut Watch<'_>) -> Vec<Purchase> {
        self.bought_for(&self.classes, &self.shelf, watch)
    }

    /// What one class takes when all of it is bought anew: what it costs.
    pub(crate) fn anew(&self, class: &PlannedClass, watch: &mut Watch<'_>) -> Vec<Purchase> {
        self.bought_for(std::slice::from_ref(class), &[], watch)
    }

    fn bought_for(&self, classes: &[PlannedClass], shelf: &[Lot], watch: &mut Watch<'_>) -> Vec<Purchase> {
        let kerf = classes.iter().map(|class| class.file.kerf).fold(Length::ZERO, Length::max);
        let all = in_order(classes).into_iter().map(|class| (&class.kits, class.file.timing()));
        buy(&needs(all), &Terms { shelf, offers: &self.offers, kerf }, watch)
    }
}

/// The first that needs its material first; those that do not say when stand last, as they came.
fn in_order(classes: &[PlannedClass]) -> Vec<&PlannedClass> {
    let mut all: Vec<&PlannedClass> = classes.iter().collect();
    all.sort_by_key(|class| (class.file.needed.is_none(), class.file.needed));
    all
}
