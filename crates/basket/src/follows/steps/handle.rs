//! The handle.

use super::stage::Stage;
use super::step::Step;
use super::time;
use crate::basket::Basket;
use crate::fittings::{Fold, Handle};
use crate::message::{Message, Value};
use crate::pattern::{EarMaterial, StepKind};
use crate::term::Term;

pub(super) fn fit(basket: &Basket, handle: &Handle) -> Step {
    let fold = match handle.fold {
        Fold::OnWall { drop, .. } => Message::new("step-handle-text-on-wall").with("drop", drop),
        Fold::OnRim { .. } => Message::new("step-handle-text-on-rim").with("rests", handle.rests),
    };
    let bone = basket.ears.as_ref().is_some_and(|ears| ears.material == EarMaterial::Bone);
    Step::new(StepKind::Handle, Stage::Handled)
        .say(
            Message::new("step-handle-text-bend")
                .with("length", handle.cut)
                .with("width", handle.width)
                .with("thickness", handle.thickness)
                .with("curve", Value::Term(handle.curve.term()))
                .with("rise", handle.rise)
                .with("span", handle.half_span * 2.0),
        )
        .say(
            Message::new("step-handle-text-drill")
                .with("drill", handle.drill)
                .with("pivot", handle.pivot_height),
        )
        .say(
            Message::new("step-handle-text-rivet")
                .with("rivet", &handle.rivet)
                .with("length", handle.rivet_length)
                .with("grip", handle.grip),
        )
        .say(fold)
        .work(basket.hand.pace.bail + f64::from(handle.rivets) * basket.hand.pace.rivet)
        .wait(time::BENT_DRY)
        .tools(&["tool-knife", "tool-drill", "tool-scrap-wood", "tool-hammer", "tool-anvil", "tool-goggles"])
        .cautions(&["caution-knife", "caution-steam", "caution-drilling", "caution-peening"])
        .caution_if(bone, "caution-bone")
        .cautions(&["caution-handle-load"])
}
