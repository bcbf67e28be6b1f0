//! The handle: bent, set and riveted.

use super::stage::Stage;
use super::step::{Step, numbers};
use crate::basket::Basket;
use crate::fittings::{Bow, FixedHandle, Fold, Handle, Knobs, SwingHandle};
use crate::message::{Message, Value};
use crate::pattern::{EarAxis, EarMaterial, HandleJoint, HandleMade, Ready, StepKind};
use crate::term::Term;

/// Bending it, where the maker bends it and it is not done. It dries on its form while the basket is woven, so
/// that nobody waits for it.
pub(super) fn bend(basket: &Basket) -> Option<Step> {
    let bow = basket.bow().filter(|bow| !comes_bent(basket, bow))?;
    let layers = basket.swing().is_some_and(|swing| swing.joint == HandleJoint::Between);
    let shape = if layers { "step-bend-text-halves" } else { "step-bend-text-shape" };
    let step = Step::new(StepKind::Bend, Stage::Prepared)
        .say(
            Message::new(shape)
                .with("length", bow.cut)
                .with("width", bow.width)
                .with("thickness", bow.thickness)
                .with("half", bow.thickness / 2.0),
        )
        .say(bent(bow, "step-bend-text-bend"))
        .say(Message::new("step-bend-text-dry"))
        .work(basket.hand.pace.bail)
        .tools(&[
            "tool-knife",
            "tool-sandpaper",
            "tool-steam",
            "tool-bending-form",
            "tool-clamps",
            "tool-dust-mask",
        ])
        .cautions(&["caution-knife", "caution-steam", "caution-sanding-dust"]);
    Some(if layers { step.tools(&["tool-glue"]).cautions(&["caution-glue"]) } else { step })
}

/// Whether it is bent before the making begins.
fn comes_bent(basket: &Basket, bow: &Bow) -> bool {
    bow.made == HandleMade::Bought || basket.ready.has(Ready::Handle)
}

/// What a bow measures when it is bent.
fn bent(bow: &Bow, id: &'static str) -> Message {
    Message::new(id)
        .with("curve", Value::Term(bow.curve.term()))
        .with("span", bow.half_span * 2.0)
        .with("rise", bow.rise)
        .with("width", bow.width)
        .with("thickness", bow.thickness)
}

/// Putting ends of a fixed handle into the rim, before the hoops go on.
pub(super) fn into_rim(basket: &Basket) -> Option<Step> {
    basket.handle.as_ref()?.fixed().map(|fixed| set(basket, fixed))
}

/// Putting a handle on the ears.
pub(super) fn on_ears(basket: &Basket) -> Option<Step> {
    match basket.handle.as_ref()? {
        Handle::Swing(swing) => Some(fit(basket, swing)),
        Handle::Knobs(knobs) => Some(self::knobs(basket, knobs)),
        Handle::Fixed(_) => None,
    }
}

fn fit(basket: &Basket, handle: &SwingHandle) -> Step {
    let joint = match handle.joint {
        HandleJoint::Outside => "step-handle-text-outside",
        HandleJoint::Slot => "step-handle-text-slot",
        HandleJoint::Between => "step-handle-text-between",
    };
    let fold = match handle.fold {
        Fold::OnWall { drop, .. } => Message::new("step-handle-text-on-wall").with("drop", drop),
        Fold::OnRim { .. } => Message::new("step-handle-text-on-rim").with("rests", handle.rests),
    };
    let slotted = handle.joint == HandleJoint::Slot;
    let fitting = if slotted { 2.0 } else { 1.0 };
    let rivets = &handle.rivets;
    let step = Step::new(StepKind::Handle, Stage::Handled)
        .say_if(comes_bent(basket, &handle.bow), || bent(&handle.bow, "step-handle-text-bought"))
        .say(
            Message::new(joint)
                .with("end", handle.bow.beyond())
                .with("slot", handle.slot.unwrap_or_default()),
        )
        .say(
            Message::new("step-handle-text-mark")
                .with("pivot", handle.pivot_height)
                .with("shows", handle.shows.max(crate::Length::ZERO)),
        )
        .say(Message::new("step-handle-text-drill").with("drill", rivets.drill))
        .say(
            Message::new(if handle.joint == HandleJoint::Outside {
                "step-handle-text-rivet"
            } else {
                "step-handle-text-rivet-through"
            })
            .with("rivet", &rivets.stock)
            .with("length", rivets.length)
            .with("grip", rivets.grip),
        )
        .say(Message::new("step-handle-text-clip").with("over", rivets.length - rivets.grip))
        .say(fold)
        .work(f64::from(rivets.count) * fitting * basket.hand.pace.rivet)
        .tools(RIVETING)
        .tools(if slotted { &["tool-saw", "tool-file"] } else { &[] });
    riveting_cautions(basket, step).cautions(&["caution-handle-load"])
}

fn knobs(basket: &Basket, knobs: &Knobs) -> Step {
    let rivets = &knobs.rivets;
    let step = Step::new(StepKind::Handle, Stage::Handled)
        .say(
            Message::new("step-handle-text-knobs")
                .with("width", knobs.diameter)
                .with("length", knobs.length)
                .with("pivot", knobs.pivot_height),
        )
        .say(Message::new("step-handle-text-knob-drill").with("drill", rivets.drill))
        .say(
            Message::new("step-handle-text-knob-rivet")
                .with("rivet", &rivets.stock)
                .with("length", rivets.length)
                .with("grip", rivets.grip),
        )
        .say(Message::new("step-handle-text-knob-clip").with("over", rivets.length - rivets.grip))
        .work(f64::from(rivets.count) * basket.hand.pace.rivet)
        .tools(RIVETING);
    riveting_cautions(basket, step).cautions(&["caution-handle-load"])
}

const RIVETING: &[&str] = &[
    "tool-ruler",
    "tool-drill",
    "tool-scrap-wood",
    "tool-shears",
    "tool-hammer",
    "tool-anvil",
    "tool-goggles",
];

fn riveting_cautions(basket: &Basket, step: Step) -> Step {
    let material = basket.ears.as_ref().map(|ears| ears.material);
    step.cautions(&["caution-drilling", "caution-peening"])
        .caution_if(material == Some(EarMaterial::Bone), "caution-bone")
}

fn set(basket: &Basket, handle: &FixedHandle) -> Step {
    let [first, second] = &handle.ends.each;
    let staves = numbers([first.stave, second.stave]);
    let rim = basket.body.rim();
    let is_lashed = basket.body.lashing().is_some();
    let held = if is_lashed { "step-handle-text-held" } else { "step-handle-text-held-pinned" };
    Step::new(StepKind::Handle, Stage::EarsSet)
        .say_if(comes_bent(basket, &handle.bow), || bent(&handle.bow, "step-handle-text-bought-fixed"))
        .say(
            Message::new("step-handle-text-ends")
                .with("leg", handle.leg)
                .with("rim", rim.height)
                .with("thickness", handle.ends.blade(basket.body.uprights().thickness)),
        )
        .say(
            Message::new("step-handle-text-into")
                .with("first", first.stave)
                .with("second", second.stave)
                .with("tail", handle.ends.tail),
        )
        .say_if(handle.ends.axis == Some(EarAxis::Long), || Message::new("step-handle-text-long"))
        .say_if(handle.ends.axis == Some(EarAxis::Short), || Message::new("step-handle-text-short"))
        .say_if(handle.ends.off_opposite_rim.abs() > crate::Length::mm(0.5), || {
            Message::new("step-handle-text-off").with("off", handle.ends.off_opposite_rim.abs())
        })
        .say(Message::new("step-handle-text-level").with("rise", handle.bow.rise))
        .say(Message::new(held).with("staves", staves))
        .work(2.0 * basket.hand.pace.ear)
        .tools(&["tool-knife", "tool-sandpaper", "tool-awl", "tool-ruler", "tool-clamps"])
        .cautions(&["caution-knife", "caution-handle-load"])
}
