//! The plug, sanding and the finish.

use super::stage::Stage;
use super::step::Step;
use super::time;
use super::time::OFF;
use crate::basket::Basket;
use crate::message::Message;
use crate::pattern::{Finish, StepKind};

pub(super) fn plug(basket: &Basket) -> Step {
    let stage = if basket.handle.is_some() { Stage::Handled } else { Stage::Lashed };
    Step::new(StepKind::Plug, stage)
        .say(Message::new("step-off-text-lift"))
        .say(Message::new("step-off-text-plug").with("diameter", basket.body.base().plug_diameter))
        .say(Message::new(if basket.handle.is_some() {
            "step-off-text-sand-handle"
        } else {
            "step-off-text-sand"
        }))
        .work(basket.hand.pace.off_mould * (1.0 - OFF))
        .wait(time::GLUE_DRY)
        .tools(&["tool-glue", "tool-mallet", "tool-sandpaper", "tool-dust-mask"])
        .cautions(&["caution-glue", "caution-sanding-dust"])
}

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
