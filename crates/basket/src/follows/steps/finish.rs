//! The finish and the last look.

use super::stage::Stage;
use super::step::Step;
use super::time;
use crate::basket::Basket;
use crate::message::Message;
use crate::pattern::{Finish, FinishPart, StepKind};

pub(super) fn finish(basket: &Basket) -> Step {
    let coat = basket.hand.pace.coat * share(basket);
    let step = Step::new(StepKind::Finish, Stage::Finished);
    let step = if basket.finish == Finish::None { step } else { places(step, basket) };
    let step = match basket.finish {
        Finish::None => step.say(Message::new("step-finish-text-none")).work(coat),
        Finish::Shellac => shellac(step).work(2.0 * coat).wait(time::SHELLAC_DRY),
        Finish::StainAndShellac => shellac(step.say(Message::new("step-finish-text-stain")))
            .work(3.0 * coat)
            .wait(time::STAIN_DRY + time::SHELLAC_DRY)
            .cautions(&["caution-stain"]),
        Finish::Oil => step
            .say(Message::new("step-finish-text-oil"))
            .work(2.0 * coat)
            .wait(time::OIL_DRY)
            .tools(&["tool-rag"])
            .cautions(&["caution-oily-rags"]),
        Finish::Varnish => step
            .say(Message::new("step-finish-text-varnish"))
            .work(2.0 * coat)
            .wait(time::VARNISH_DRY)
            .tools(&["tool-brush"])
            .cautions(&["caution-varnish", "caution-oily-rags"]),
    };
    let sign = match &basket.signature {
        Some(signature) => Message::new("step-finish-text-sign-as").with("signature", signature.clone()),
        None => Message::new("step-finish-text-sign"),
    };
    step.say(Message::new("step-finish-text-check"))
        .say(sign)
        .tools(&["tool-pen"])
        .cautions(&["caution-food"])
        .caution_if(basket.handle.is_some(), "caution-handle-load")
}

/// What the finish goes on, a sentence each.
fn places(step: Step, basket: &Basket) -> Step {
    if is_everywhere(basket) {
        return step.say(Message::new("step-finish-text-on-all"));
    }
    let on = |part: &FinishPart| {
        Message::new(match part {
            FinishPart::All => "step-finish-text-on-all",
            FinishPart::Handle => "step-finish-text-on-handle",
            FinishPart::Base => "step-finish-text-on-base",
            FinishPart::Rim if basket.body.lashing().is_none() => "step-finish-text-on-rim-pinned",
            FinishPart::Rim => "step-finish-text-on-rim",
        })
    };
    basket.finish_on.iter().map(on).fold(step, Step::say).say(Message::new("step-finish-text-nowhere-else"))
}

fn is_everywhere(basket: &Basket) -> bool {
    basket.finish_on.is_empty() || basket.finish_on.contains(&FinishPart::All)
}

/// How much of the work of a coat over everything there is: a part takes a third (assumed).
fn share(basket: &Basket) -> f64 {
    if is_everywhere(basket) { 1.0 } else { basket.finish_on.len() as f64 / 3.0 }
}

fn shellac(step: Step) -> Step {
    step.say(Message::new("step-finish-text-shellac"))
        .tools(&["tool-brush"])
        .cautions(&["caution-shellac", "caution-oily-rags"])
}
