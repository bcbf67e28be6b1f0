//! The finish and the last look.

use super::stage::Stage;
use super::step::Step;
use super::time;
use crate::basket::Basket;
use crate::message::Message;
use crate::pattern::{Finish, StepKind};

pub(super) fn finish(basket: &Basket) -> Step {
    let step = Step::new(StepKind::Finish, Stage::Finished);
    let step = match basket.finish {
        Finish::None => step.say(Message::new("step-finish-text-none")).work(basket.hand.pace.coat),
        Finish::Shellac => shellac(step).work(2.0 * basket.hand.pace.coat).wait(time::SHELLAC_DRY),
        Finish::StainAndShellac => shellac(step.say(Message::new("step-finish-text-stain")))
            .work(3.0 * basket.hand.pace.coat)
            .wait(time::STAIN_DRY + time::SHELLAC_DRY)
            .cautions(&["caution-stain"]),
        Finish::Oil => step
            .say(Message::new("step-finish-text-oil"))
            .work(2.0 * basket.hand.pace.coat)
            .wait(time::OIL_DRY)
            .tools(&["tool-rag"])
            .cautions(&["caution-oily-rags"]),
    };
    step.say(Message::new("step-finish-text-check"))
        .cautions(&["caution-food"])
        .caution_if(basket.handle.is_some(), "caution-handle-load")
}

fn shellac(step: Step) -> Step {
    step.say(Message::new("step-finish-text-shellac"))
        .tools(&["tool-brush"])
        .cautions(&["caution-shellac", "caution-oily-rags"])
}
