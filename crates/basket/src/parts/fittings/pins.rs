//! The pins through hoops and staves.

use super::pin_places::Round;
use super::{Ears, FORMED_HEAD};
use crate::making::Making;
use crate::measure::Length;
use crate::message::Message;
use crate::pattern::{Every, PinsPattern};
use crate::rim::Rim;
use crate::stock::{Catalogue, Kind, Material};
use crate::uprights::Uprights;

/// The pins as computed.
#[derive(Clone, Debug, PartialEq)]
pub struct Pins {
    /// The pin.
    pub stock: Material,
    /// At each or every other stave.
    pub every: Every,
    /// The staves that are pinned, in order round the rim; those of the ears among them.
    pub staves: Vec<u32>,
    /// How many, those at the ears among them.
    pub count: u32,
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
    /// The pins through the ears; none without ears.
    pub ears: Option<EarPins>,
}

/// The pins that hold the ears: each goes through hoop, ear, stave and hoop.
#[derive(Clone, Debug, PartialEq)]
pub struct EarPins {
    /// The pin; the same as elsewhere where that is long enough.
    pub stock: Material,
    /// The staves of the ears, in order round the rim.
    pub staves: Vec<u32>,
    /// How many.
    pub count: u32,
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
    /// two neighbours are pinned at a scarf, where one pin more holds the lap.
    pub fn of(
        pattern: &PinsPattern,
        (rim, uprights, ears): (&Rim, &Uprights, Option<&Ears>),
        making: &mut Making<'_>,
    ) -> Self {
        let every = pattern.every.unwrap_or(Every::OtherStave);
        let stock = pattern.stock.clone().unwrap_or_else(|| choose_stock(rim.stack, making));
        let scarfs = [rim.outer.scarf.turn, rim.inner.scarf.turn];
        let round = Round { every, uprights, girth: rim.girth, ears, pin: stock.width, scarfs };
        let staves = round.pinned();
        let count = staves.len() as u32;
        let ears = ears.map(|ears| EarPins::of(&stock, (rim, uprights, ears), making.catalogue));
        let others = count - ears.as_ref().map_or(0, |ears| ears.count);
        let length_needed = length_needed(rim.stack, stock.width);
        let pins = Self {
            every,
            staves,
            count,
            spares: others.div_ceil(10).max(2),
            stack: rim.stack,
            length_needed,
            length: stock.length.unwrap_or(length_needed),
            drill: stock.width,
            ears,
            stock,
        };
        if pattern.every.is_none() {
            let uneven = pins.steps(uprights.count).any(|(_, _, step)| step != 2);
            let id = if uneven { "choice-pins-every-odd" } else { "choice-pins-every-even" };
            making.chose("pins.every", "other-stave", Message::new(id));
        }
        pins
    }

    /// The steps from each pinned stave to the next, round to the first: both staves, and how many of the
    /// basket's staves it is from one to the other.
    pub fn steps(&self, count: u32) -> impl Iterator<Item = (u32, u32, u32)> + '_ {
        let next = self.staves.iter().cycle().skip(1);
        self.staves.iter().zip(next).map(move |(from, to)| {
            let step = if to > from { to - from } else { (to + count).saturating_sub(*from) };
            (*from, *to, step)
        })
    }
}

impl EarPins {
    /// The pins of ears on a rim whose other pins are of this stock.
    fn of(other: &Material, (rim, uprights, ears): (&Rim, &Uprights, &Ears), catalogue: &Catalogue) -> Self {
        let stack = rim.stack + ears.blade(uprights.thickness);
        let long_enough =
            |pin: &Material| pin.length.is_none_or(|length| length >= length_needed(stack, pin.width));
        let stock = if long_enough(other) {
            other
        } else {
            shortest(catalogue, stack).or_else(|| longest(catalogue)).unwrap_or(other)
        };
        let mut staves: Vec<u32> = ears.each.iter().map(|ear| ear.stave).collect();
        staves.sort_unstable();
        staves.dedup();
        let length_needed = length_needed(stack, stock.width);
        Self {
            count: staves.len() as u32,
            staves,
            spares: 1,
            stack,
            length_needed,
            length: stock.length.unwrap_or(length_needed),
            drill: stock.width,
            stock: stock.clone(),
        }
    }
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
    making.chose("pins.stock", stock.name.clone(), reason);
    stock
}
