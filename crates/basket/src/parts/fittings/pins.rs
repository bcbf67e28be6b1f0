//! The pins through hoops and staves.

use serde::Serialize;

use crate::choice::Choice;
use crate::fittings::FORMED_HEAD;
use crate::measure::Length;
use crate::message::{Message, Value};
use crate::pattern::{Every, PinsPattern};
use crate::rim::Rim;
use crate::staves::Staves;
use crate::stock::{self, Catalogue, Kind, Material};

/// The pins as computed.
#[derive(Clone, Debug, PartialEq, Serialize)]
pub struct Pins {
    /// The pin.
    #[serde(serialize_with = "stock::name_only")]
    pub stock: Material,
    /// At each or every other stave.
    pub every: Every,
    /// The staves that are pinned, in order round the rim.
    pub staves: Vec<u32>,
    /// How many.
    pub count: u32,
    /// How many more to have at hand.
    pub spares: u32,
    /// Thickness to go through.
    #[serde(rename = "stack_mm")]
    pub stack: Length,
    /// Least length: the stack and enough to clinch.
    #[serde(rename = "length_needed_mm")]
    pub length_needed: Length,
    /// Length of the pin chosen.
    #[serde(rename = "length_mm")]
    pub length: Length,
    /// Diameter of the hole to drill.
    #[serde(rename = "drill_mm")]
    pub drill: Length,
    /// What happens where the round of pins closes.
    pub meeting: PinMeeting,
}

/// What happens where the round of pins closes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[serde(rename_all = "snake_case")]
pub enum PinMeeting {
    /// The spacing comes out even.
    Even,
    /// These two neighbours are both pinned.
    Neighbours(u32, u32),
}

impl Pins {
    /// The pins of a rim. On an odd count with every other stave pinned, the two neighbours that are
    /// both pinned stand at the outer hoop's scarf, where one pin more holds the lap.
    pub fn of(
        pattern: &PinsPattern,
        catalogue: &Catalogue,
        rim: &Rim,
        staves: &Staves,
        choices: &mut Vec<Choice>,
    ) -> Self {
        let every = pattern.every.unwrap_or_else(|| choose_every(staves.uprights.count, choices));
        let stock = pattern.stock.clone().unwrap_or_else(|| choose_stock(catalogue, rim.stack, choices));
        let (pinned, meeting) = places(every, staves.uprights.count, rim.outer.scarf.turn);
        let count = u32::try_from(pinned.len()).unwrap_or(u32::MAX);
        let length_needed = length_needed(rim.stack, stock.width);
        Self {
            every,
            staves: pinned,
            count,
            spares: count.div_ceil(10).max(2),
            stack: rim.stack,
            length_needed,
            length: stock.length.unwrap_or(length_needed),
            drill: stock.width,
            meeting,
            stock,
        }
    }
}

/// Length of a pin that goes through `stack` and is clinched: the stack and 1.5 diameters (the rule
/// for rivet stock in a how-to article).
pub fn length_needed(stack: Length, diameter: Length) -> Length {
    stack + FORMED_HEAD * diameter
}

/// The pinned staves in order of number, and what happens where the round closes.
fn places(every: Every, count: u32, scarf_turn: f64) -> (Vec<u32>, PinMeeting) {
    if every == Every::Stave || count < 3 {
        return ((1..=count).collect(), PinMeeting::Even);
    }
    if count.is_multiple_of(2) {
        return ((1..=count).step_by(2).collect(), PinMeeting::Even);
    }
    let before = (scarf_turn.rem_euclid(1.0) * f64::from(count)) as u32 % count;
    let after = (before + 1) % count;
    let step = |index: u32| ((u64::from(after) + 2 * u64::from(index)) % u64::from(count)) as u32 + 1;
    let mut pinned: Vec<u32> = (0..count.div_ceil(2)).map(step).collect();
    pinned.sort_unstable();
    (pinned, PinMeeting::Neighbours(before + 1, after + 1))
}

/// The shortest pin that is long enough (of equals the thinnest, which splits a stave least), else
/// the longest.
fn choose_stock(catalogue: &Catalogue, stack: Length, choices: &mut Vec<Choice>) -> Material {
    let pins = || catalogue.of_kind(Kind::Pin);
    let size = |pin: &Material| (pin.length.unwrap_or(Length::ZERO).to_mm(), pin.width.to_mm());
    let order = |a: &&Material, b: &&Material| {
        let ((length_a, width_a), (length_b, width_b)) = (size(a), size(b));
        length_a.total_cmp(&length_b).then(width_a.total_cmp(&width_b))
    };
    let long_enough =
        |pin: &&Material| pin.length.is_some_and(|length| length >= length_needed(stack, pin.width));
    let (stock, id) = if let Some(pin) = pins().filter(long_enough).min_by(order) {
        (pin.clone(), "choice-pins-stock")
    } else if let Some(pin) = pins().max_by(order) {
        (pin.clone(), "choice-pins-stock-short")
    } else {
        let (diameter, name) = (Length::mm(1.2), "brass pin 1.2 mm");
        (Material::bare(name, Kind::Pin, diameter, diameter), "choice-pins-stock-none")
    };
    choices.push(Choice {
        key: "pins.stock",
        value: Value::Name(stock.name.clone()),
        reason: Message::new(id).with("stack", stack).with("needed", length_needed(stack, stock.width)),
    });
    stock
}

fn choose_every(count: u32, choices: &mut Vec<Choice>) -> Every {
    let id = if count % 2 == 1 { "choice-pins-every-odd" } else { "choice-pins-every-even" };
    choices.push(Choice { key: "pins.every", value: "other-stave".into(), reason: Message::new(id) });
    Every::OtherStave
}
