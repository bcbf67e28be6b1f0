//! Pins and lashing.

use super::stage::Stage;
use super::step::Step;
use super::step::{count, numbers};
use crate::basket::Basket;
use crate::fittings::{PinSet, Pins};
use crate::measure::Length;
use crate::message::{Message, Value};
use crate::pattern::{Every, LashingStyle, StepKind};
use crate::term::Term;

/// How far the clipped end of a pin stands out, to be made a head (common practice).
const CLIPPED: Length = Length::inches(1.0 / 16.0);

pub(super) fn pins(basket: &Basket) -> Step {
    let (pins, pace) = (basket.body.pins(), &basket.hand.pace);
    let staves = basket.body.uprights().count;
    let where_to = match pins.every {
        Every::Stave => "step-pins-text-every-stave",
        Every::OtherStave => "step-pins-text-every-other",
    };
    let others = &pins.others;
    let is_alone = basket.body.lashing().is_none();
    let first = pins.each().first().map_or(1, |(stave, _)| *stave);
    let mut step = Step::new(StepKind::Pins, Stage::Pinned)
        .say(Message::new("step-pins-text-trim"))
        .say(Message::new(where_to).with("pins", pins.count()).with("first", first));
    step.text.extend(uneven(pins, staves));
    step.text.extend(pins.ears.as_ref().map(|set| ear_pins(set, pins.of_handle)));
    step.say(Message::new("step-pins-text-drill").with("drill", others.drill).with("stack", others.stack))
        .say(
            Message::new("step-pins-text-clinch")
                .with("pin", &others.stock)
                .with("over", (others.length - others.stack).max(Length::ZERO))
                .with("clip", CLIPPED),
        )
        .say_if(is_alone, || Message::new("step-pins-text-alone"))
        .work(f64::from(staves) * pace.trim + f64::from(pins.count()) * pace.pin)
        .tools(&["tool-shears", "tool-drill", "tool-scrap-wood", "tool-hammer", "tool-anvil", "tool-goggles"])
        .tools(if is_alone { &["tool-sandpaper", "tool-dust-mask"] } else { &[] })
        .cautions(&["caution-drilling", "caution-peening"])
        .caution_if(is_alone, "caution-sanding-dust")
}

/// Where pins stand nearer to each other than the usual step, and where farther apart.
fn uneven(pins: &Pins, staves: u32) -> impl Iterator<Item = Message> {
    let usual = match pins.every {
        Every::Stave => 1,
        Every::OtherStave => 2,
    };
    let pairs = |odd: fn(&u32, &u32) -> bool| -> Vec<String> {
        let steps = pins.steps(staves).into_iter().filter(|(_, _, step)| odd(step, &usual));
        steps.map(|(from, to, _)| format!("{from}–{to}")).collect()
    };
    let apart = if pins.of_handle { "step-pins-text-apart-ends" } else { "step-pins-text-apart" };
    [("step-pins-text-neighbours", pairs(u32::lt)), (apart, pairs(u32::gt))]
        .into_iter()
        .filter(|(_, pairs)| !pairs.is_empty())
        .map(|(id, pairs)| Message::new(id).with("pairs", Value::Name(pairs.join(", "))))
}

/// The pins through the ears, or through the ends of a fixed handle.
fn ear_pins(pins: &PinSet, of_handle: bool) -> Message {
    Message::new(if of_handle { "step-pins-text-ends" } else { "step-pins-text-ears" })
        .with("staves", numbers(pins.staves.iter().copied()))
        .with("pin", &pins.stock)
        .with("stack", pins.stack)
        .with("drill", pins.drill)
}

/// Nothing where pins alone hold the rim.
pub(super) fn lashing(basket: &Basket) -> Option<Step> {
    let lashing = basket.body.lashing()?;
    let fillers = basket.body.filler().map_or(0, |filler| filler.pieces.len());
    let style = match lashing.style {
        LashingStyle::Single => "step-lashing-text-single",
        LashingStyle::Crossed => "step-lashing-text-crossed",
    };
    let mut step = Step::new(StepKind::Lashing, Stage::Lashed);
    if let Some(filler) = basket.body.filler() {
        let id = match basket.in_rim() {
            Some(ends) if ends.of_handle => "step-lashing-text-filler-ends",
            Some(_) => "step-lashing-text-filler-ears",
            None => "step-lashing-text-filler",
        };
        let text = Message::new(id).with("pieces", count(filler.pieces.len())).with("stock", &filler.stock);
        step = step.say(text);
    }
    let step = step
        .say(
            Message::new("step-lashing-text-start")
                .with("weaver", &lashing.weaver)
                .with("strands", lashing.strands)
                .with("length", lashing.length),
        )
        .say(Message::new("step-lashing-text-tail").with("tail", lashing.tail))
        .say(
            Message::new(style).with("every", Value::Term(lashing.every.term())).with("wraps", lashing.wraps),
        )
        .say_if(!lashing.joins.is_empty(), || {
            Message::new("step-lashing-text-joins")
                .with("joins", count(lashing.joins.len()))
                .with("staves", numbers(lashing.joins.iter().copied()))
        })
        .say(Message::new("step-lashing-text-end").with("tail", lashing.tail))
        .soak(std::iter::once(&lashing.weaver).chain(basket.body.filler().map(|filler| &filler.stock)))
        .work(f64::from(lashing.wraps) * basket.hand.pace.wrap + fillers as f64 * basket.hand.pace.filler)
        .tools(&["tool-bucket", "tool-shears", "tool-awl", "tool-clamps"])
        .cautions(&["caution-cane-edges"]);
    Some(step)
}
