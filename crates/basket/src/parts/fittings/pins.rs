//! The pins through hoops and staves.

use super::pin_places::Round;
use super::{Ears, FORMED_HEAD};
use crate::making::Making;
use crate::measure::Length;
use crate::message::Message;
use crate::pattern::keys;
use crate::pattern::{Every, PinsPattern, Word};
use crate::rim::Rim;
use crate::stock::{Catalogue, Kind, Material};
use crate::uprights::Uprights;

/// The pins as computed.
#[derive(Clone, Debug, PartialEq)]
pub struct Pins {
    /// At each or every other stave.
    pub every: Every,
    /// The pins through hoops and staves.
    pub others: PinSet,
    /// The pins that hold the ears: each goes through hoop, ear, stave and hoop. None without ears.
    pub ears: Option<PinSet>,
    /// Whether these hold the ends of a fixed handle in the place of ears.
    pub of_handle: bool,
}

/// Pins that are alike.
#[derive(Clone, Debug, PartialEq)]
pub struct PinSet {
    /// The pin.
    pub stock: Material,
    /// The staves that it goes through, in order round the rim.
    pub staves: Vec<u32>,
    /// How many more to have at hand.
    pub spares: u32,
    /// Thickness to go through.
    pub stack: Length,
    /// Least length: the stack and enough to clinch.
    pub length_needed: Length,
    /// Length of the pin chosen.
    pub length: Length,
    /// Diameter of the hole to drill.
    pub drill: Length,
}

impl Pins {
    /// The pins of a rim. The stave of each ear is always pinned; between the ears every other stave is, or
    /// each, but none whose pin would come to the edge of an ear. Where steps of two do not come out,
    /// two neighbours are pinned at a scarf, where one pin more holds the lap. A rim that no lashing binds is
    /// pinned at each stave unless the pattern says otherwise.
    pub fn of(
        pattern: &PinsPattern,
        (rim, uprights, ears, is_lashed): (&Rim, &Uprights, Option<&Ears>, bool),
        making: &mut Making<'_>,
    ) -> Self {
        let usual = if is_lashed { Every::OtherStave } else { Every::Stave };
        let every = pattern.every.unwrap_or(usual);
        let stock = pattern.stock.clone().unwrap_or_else(|| choose_stock(rim.stack, making));
        let scarfs = [rim.outer.scarf.turn, rim.inner.scarf.turn];
        let round = Round { every, uprights, girth: rim.girth, ears, pin: stock.width, scarfs };
        let of_ear = |stave: &u32| ears.is_some_and(|ears| ears.each.iter().any(|ear| ear.stave == *stave));
        let (at_ears, staves): (Vec<u32>, Vec<u32>) = round.pinned().into_iter().partition(of_ear);
        let of_handle = ears.is_some_and(|ears| ears.of_handle);
        let ears = ears.map(|ears| {
            let stack = rim.stack + ears.blade(uprights.thickness);
            let stock = through_ear(&stock, stack, making.catalogue).clone();
            PinSet::of(stock, at_ears, stack).spares(1)
        });
        let spares = (staves.len() as u32).div_ceil(10).max(2);
        let pins =
            Self { every, others: PinSet::of(stock, staves, rim.stack).spares(spares), ears, of_handle };
        if pattern.every.is_none() {
            let uneven = pins.steps(uprights.count).into_iter().any(|(_, _, step)| step != 2);
            let id = match (is_lashed, uneven) {
                (false, _) => "choice-pins-every-alone",
                (true, true) => "choice-pins-every-odd",
                (true, false) => "choice-pins-every-even",
            };
            making.chose(keys::pins::EVERY.path, every.word(), Message::new(id));
        }
        pins
    }

    /// Pins that are alike, and those through the ears.
    pub fn sets(&self) -> impl Iterator<Item = &PinSet> {
        std::iter::once(&self.others).chain(&self.ears)
    }

    /// Each pinned stave and its pin, in order round the rim.
    pub fn each(&self) -> Vec<(u32, &PinSet)> {
        let of_set = |set| move |stave: &u32| (*stave, set);
        let mut each: Vec<(u32, &PinSet)> =
            self.sets().flat_map(|set: &PinSet| set.staves.iter().map(of_set(set))).collect();
        each.sort_unstable_by_key(|(stave, _)| *stave);
        each
    }

    /// How many there are in all.
    pub fn count(&self) -> u32 {
        self.sets().map(PinSet::count).sum()
    }

    /// The steps from each pinned stave to the next, round to the first: both staves, and how many of the
    /// basket's staves it is from one to the other.
    pub fn steps(&self, count: u32) -> Vec<(u32, u32, u32)> {
        let each = self.each();
        let next = each.iter().cycle().skip(1);
        let step = |((from, _), (to, _)): (&(u32, &PinSet), &(u32, &PinSet))| {
            let step = if to > from { to - from } else { (to + count).saturating_sub(*from) };
            (*from, *to, step)
        };
        each.iter().zip(next).map(step).collect()
    }
}

impl PinSet {
    fn of(stock: Material, staves: Vec<u32>, stack: Length) -> Self {
        let length_needed = length_needed(stack, stock.width);
        Self {
            staves,
            spares: 0,
            stack,
            length_needed,
            length: stock.length.unwrap_or(length_needed),
            drill: stock.width,
            stock,
        }
    }

    /// How many there are.
    pub fn count(&self) -> u32 {
        self.staves.len() as u32
    }

    fn spares(self, spares: u32) -> Self {
        Self { spares, ..self }
    }
}

/// The pin through an ear: the other pin where that is long enough, else the shortest that is.
fn through_ear<'m>(other: &'m Material, stack: Length, catalogue: &'m Catalogue) -> &'m Material {
    let reaches = other.length.is_none_or(|length| length >= length_needed(stack, other.width));
    let longer = || shortest(catalogue, stack).or_else(|| longest(catalogue));
    if reaches { other } else { longer().unwrap_or(other) }
}

/// Length of a pin that goes through `stack` and is clinched: the stack and 1.5 diameters (the rule
/// for rivet stock in a how-to article).
pub fn length_needed(stack: Length, diameter: Length) -> Length {
    stack + FORMED_HEAD * diameter
}

/// The shortest pin that goes through so much and can be clinched, of equals the thinnest, which splits a
/// stave least.
fn shortest(catalogue: &Catalogue, stack: Length) -> Option<&Material> {
    let reaches =
        |pin: &&Material| pin.length.is_some_and(|length| length >= length_needed(stack, pin.width));
    catalogue.of_kind(Kind::Pin).filter(reaches).min_by(|a, b| by_size(a, b))
}

fn longest(catalogue: &Catalogue) -> Option<&Material> {
    catalogue.of_kind(Kind::Pin).max_by(|a, b| by_size(a, b))
}

fn by_size(a: &Material, b: &Material) -> std::cmp::Ordering {
    let size = |pin: &Material| (pin.length.unwrap_or(Length::ZERO).to_mm(), pin.width.to_mm());
    let ((length_a, width_a), (length_b, width_b)) = (size(a), size(b));
    length_a.total_cmp(&length_b).then(width_a.total_cmp(&width_b))
}

fn choose_stock(stack: Length, making: &mut Making<'_>) -> Material {
    let catalogue = making.catalogue;
    let (stock, id) = if let Some(pin) = shortest(catalogue, stack) {
        (pin.clone(), "choice-pins-stock")
    } else if let Some(pin) = longest(catalogue) {
        (pin.clone(), "choice-pins-stock-short")
    } else {
        let (diameter, name) = (Length::mm(1.2), "brass pin 1.2 mm");
        (Material::bare(name, Kind::Pin, diameter, diameter), "choice-pins-stock-none")
    };
    let reason = Message::new(id).with("stack", stack).with("needed", length_needed(stack, stock.width));
    making.chose(keys::pins::STOCK.path, stock.name.clone(), reason);
    stock
}
