//! The base: on the mould, off it again, plugged and sanded.

use super::stage::Stage;
use super::step::Step;
use super::step::numbers;
use super::time;
use crate::basket::Basket;
use crate::message::Message;
use crate::pattern::StepKind;

pub(super) fn mount(basket: &Basket) -> Step {
    Step::new(StepKind::Base, Stage::BaseOnMould)
        .say(
            Message::new("step-base-text-screw")
                .with("diameter", basket.body.base().diameter)
                .with("hole", basket.body.base().screw_hole),
        )
        .say(
            Message::new("step-base-text-mark")
                .with("count", basket.body.uprights().count)
                .with("quarters", numbers(quarters(basket))),
        )
        .work(basket.hand.pace.mount_base)
        .tools(&["tool-screwdriver", "tool-pencil", "tool-spacing-strip"])
}

/// The staves nearest to the quarters of the round. Marking them first halves the way over which
/// small errors add up (the spread of a sum of independent errors grows with the root of their number).
pub(super) fn quarters(basket: &Basket) -> [u32; 4] {
    [0.0, 0.25, 0.5, 0.75].map(|turn| basket.body.uprights().nearest(turn))
}

/// Taking the basket off its mould.
pub(super) fn lift() -> Message {
    Message::new("step-lift-text")
}

pub(super) fn plug(basket: &Basket) -> Step {
    let stage = if basket.handle.is_some() { Stage::Handled } else { Stage::Lashed };
    Step::new(StepKind::OffMould, stage)
        .say(Message::new("step-off-text-lift"))
        .say(Message::new("step-off-text-plug").with("diameter", basket.body.base().plug_diameter))
        .say(Message::new(if basket.handle.is_some() {
            "step-off-text-sand-handle"
        } else {
            "step-off-text-sand"
        }))
        .work(basket.hand.pace.off_mould)
        .wait(time::GLUE_DRY)
        .tools(&["tool-glue", "tool-mallet", "tool-sandpaper", "tool-dust-mask"])
        .cautions(&["caution-glue", "caution-sanding-dust"])
}
