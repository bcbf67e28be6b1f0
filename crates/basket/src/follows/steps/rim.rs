//! Ears, hoops, pins and lashing.

use super::stage::Stage;
use super::step::Step;
use super::step::{count, numbers};
use super::time;
use crate::basket::Basket;
use crate::fittings::{Ear, Ears, PinSet, Pins};
use crate::measure::Length;
use crate::message::{Message, Value};
use crate::pattern::{EarMaterial, EarPlacing, Every, LashingStyle, StepKind};
use crate::rim::Hoop;
use crate::term::Term;

pub(super) fn ears(basket: &Basket, ears: &Ears) -> Step {
    let [first, second] = &ears.each;
    let caution = match ears.material {
        EarMaterial::Brass => "caution-brass",
        EarMaterial::Oak => "caution-knife",
        EarMaterial::Bone => "caution-bone",
    };
    Step::new(StepKind::Ears, Stage::EarsSet)
        .say(
            Message::new("step-ears-text-make")
                .with("material", Value::Term(ears.material.term()))
                .with("length", ears.length)
                .with("width", ears.width)
                .with("thickness", ears.thickness),
        )
        .say(ear_place(ears.placing, first, second))
        .say(Message::new("step-ears-text-tail").with("tail", ears.tail).with("hole", ears.hole_height))
        .say_if(basket.handle.is_some(), || {
            Message::new("step-ears-text-measure")
                .with("girth", basket.body.rim().radius() * std::f64::consts::PI)
        })
        .work(2.0 * basket.hand.pace.ear)
        .tools(&["tool-saw", "tool-file", "tool-sandpaper", "tool-awl", "tool-ruler"])
        .cautions(&[caution])
}

fn ear_place(placing: EarPlacing, first: &Ear, second: &Ear) -> Message {
    let id = match placing {
        EarPlacing::OnStaves => "step-ears-text-on-staves",
        EarPlacing::StaveAndGap => "step-ears-text-stave-and-gap",
        EarPlacing::Shared => "step-ears-text-shared",
        EarPlacing::ByAngle => "step-ears-text-by-angle",
    };
    Message::new(id)
        .with("first", first.stave)
        .with("second", second.stave)
        .with("off_first", first.off_stave.abs())
        .with("off_second", second.off_stave.abs())
}

pub(super) fn hoops(basket: &Basket) -> Step {
    let rim = basket.body.rim();
    Step::new(StepKind::Rim, Stage::RimClamped)
        .say(hoop("step-rim-text-outer", &rim.outer))
        .say(hoop("step-rim-text-inner", &rim.inner))
        .say(Message::new("step-rim-text-scarf").with("lap", rim.outer.scarf.lap))
        .say(Message::new("step-rim-text-clamp").with("height", basket.body.weave.top_height))
        .say(Message::new("step-rim-text-dry"))
        .soak([&rim.outer.stock, &rim.inner.stock])
        .work(2.0 * basket.hand.pace.hoop)
        .wait(time::BENT_DRY)
        .tools(&["tool-bucket", "tool-knife", "tool-sandpaper", "tool-clamps", "tool-ruler"])
        .cautions(&["caution-knife", "caution-sanding-dust", "caution-wet-floor"])
}

fn hoop(id: &'static str, hoop: &Hoop) -> Message {
    Message::new(id)
        .with("stock", &hoop.stock)
        .with("length", hoop.cut)
        .with("from", hoop.scarf.from_stave)
        .with("to", hoop.scarf.to_stave)
}

pub(super) fn pins(basket: &Basket) -> Step {
    let (pins, pace) = (basket.body.pins(), &basket.hand.pace);
    let staves = basket.body.uprights().count;
    let where_to = match pins.every {
        Every::Stave => "step-pins-text-every-stave",
        Every::OtherStave => "step-pins-text-every-other",
    };
    let others = &pins.others;
    let first = pins.each().first().map_or(1, |(stave, _)| *stave);
    let mut step = Step::new(StepKind::Pins, Stage::Pinned)
        .say(Message::new("step-pins-text-trim"))
        .say(Message::new(where_to).with("pins", pins.count()).with("first", first));
    step.text.extend(uneven(pins, staves));
    step.text.extend(pins.ears.as_ref().map(ear_pins));
    step.say(Message::new("step-pins-text-drill").with("drill", others.drill).with("stack", others.stack))
        .say(
            Message::new("step-pins-text-clinch")
                .with("pin", &others.stock)
                .with("over", (others.length - others.stack).max(Length::ZERO)),
        )
        .work(f64::from(staves) * pace.trim + f64::from(pins.count()) * pace.pin)
        .tools(&["tool-shears", "tool-drill", "tool-scrap-wood", "tool-hammer", "tool-anvil", "tool-goggles"])
        .cautions(&["caution-drilling", "caution-peening"])
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
    [("step-pins-text-neighbours", pairs(u32::lt)), ("step-pins-text-apart", pairs(u32::gt))]
        .into_iter()
        .filter(|(_, pairs)| !pairs.is_empty())
        .map(|(id, pairs)| Message::new(id).with("pairs", Value::Name(pairs.join(", "))))
}

fn ear_pins(pins: &PinSet) -> Message {
    Message::new("step-pins-text-ears")
        .with("staves", numbers(pins.staves.iter().copied()))
        .with("pin", &pins.stock)
        .with("stack", pins.stack)
        .with("drill", pins.drill)
}

pub(super) fn lashing(basket: &Basket) -> Step {
    let lashing = basket.body.lashing();
    let fillers = basket.body.filler().map_or(0, |filler| filler.pieces.len());
    let style = match lashing.style {
        LashingStyle::Single => "step-lashing-text-single",
        LashingStyle::Crossed => "step-lashing-text-crossed",
    };
    let mut step = Step::new(StepKind::Lashing, Stage::Lashed);
    if let Some(filler) = basket.body.filler() {
        let text = Message::new("step-lashing-text-filler")
            .with("pieces", count(filler.pieces.len()))
            .with("stock", &filler.stock);
        step = step.say(text);
    }
    step.say(
        Message::new("step-lashing-text-start")
            .with("weaver", &lashing.weaver)
            .with("tail", lashing.tail)
            .with("strands", lashing.strands)
            .with("length", lashing.length),
    )
    .say(Message::new(style).with("every", Value::Term(lashing.every.term())).with("wraps", lashing.wraps))
    .say_if(!lashing.joins.is_empty(), || {
        Message::new("step-lashing-text-joins").with("staves", numbers(lashing.joins.iter().copied()))
    })
    .say(Message::new("step-lashing-text-end").with("tail", lashing.tail))
    .soak(std::iter::once(&lashing.weaver).chain(basket.body.filler().map(|filler| &filler.stock)))
    .work(f64::from(lashing.wraps) * basket.hand.pace.wrap + fillers as f64 * basket.hand.pace.filler)
    .tools(&["tool-bucket", "tool-shears", "tool-awl", "tool-clamps"])
    .cautions(&["caution-cane-edges"])
}
