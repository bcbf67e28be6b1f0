//! The base: on the mould, off it again, plugged and sanded.

use super::stage::Stage;
use super::step::Step;
use super::step::numbers;
use super::time;
use crate::basket::Basket;
use crate::message::Message;
use crate::pattern::{MouldPieces, Ready, Rings, StepKind};

/// Sealing it before the weaving, where that is wanted and not done.
pub(super) fn seal(basket: &Basket) -> Option<Step> {
    let step = || {
        Step::new(StepKind::Seal, Stage::Prepared)
            .say(Message::new("step-seal-text-sand"))
            .say(Message::new("step-seal-text-coat"))
            .work(basket.hand.pace.coat)
            .wait(time::SHELLAC_DRY)
            .tools(&["tool-sandpaper", "tool-dust-mask", "tool-brush"])
            .cautions(&["caution-sanding-dust", "caution-shellac"])
    };
    (basket.body.base().sealed && !basket.ready.has(Ready::Base)).then(step)
}

pub(super) fn mount(basket: &Basket) -> Step {
    let (base, mould) = (basket.body.base(), basket.body.form.mould());
    let several = mould.pieces == MouldPieces::Several;
    let rings = match base.rings {
        Rings::None => None,
        Rings::Out => Some("step-base-text-rings-out"),
        Rings::In => Some("step-base-text-rings-in"),
    };
    let guard = if base.sealed { "step-base-text-guard" } else { "step-base-text-guard-bare" };
    let sand = !base.sealed && !basket.ready.has(Ready::Base);
    let mut step = Step::new(StepKind::Base, Stage::BaseOnMould)
        .say_if(sand, || Message::new("step-base-text-sand"))
        .say_if(several, || Message::new("step-base-text-pieces"))
        .say(
            Message::new("step-base-text-screw")
                .with("diameter", base.across())
                .with("hole", base.screw_hole),
        )
        .say_if(!base.across().is_round(), || Message::new("step-base-text-along"))
        .say_if(!base.strips.is_empty(), || {
            Message::new("step-base-text-strips")
                .with("woods", base.woods())
                .with("width", base.strip_width())
        });
    step.text.extend(rings.map(Message::new));
    step.say(Message::new(guard))
        .say(
            Message::new("step-base-text-mark")
                .with("count", basket.body.uprights().count)
                .with("quarters", numbers(basket.body.uprights().quarters())),
        )
        .work(basket.hand.pace.mount_base)
        .tools(&["tool-screwdriver", "tool-pencil", "tool-spacing-strip"])
        .tools(if several { &["tool-band"] } else { &[] })
        .tools(if sand { &["tool-sandpaper", "tool-dust-mask"] } else { &[] })
        .caution_if(sand, "caution-sanding-dust")
}

/// How the basket comes off its mould.
pub(super) fn lift(basket: &Basket) -> Message {
    basket.body.form.mould().core().map_or_else(
        || Message::new("step-off-text-screw"),
        |core| Message::new("step-off-text-pieces").with("core", core),
    )
}

pub(super) fn plug(basket: &Basket) -> Step {
    let on_ears = basket.handle.as_ref().is_some_and(|handle| handle.fixed().is_none());
    let is_lashed = basket.body.lashing().is_some();
    let stage = match (on_ears, is_lashed) {
        (true, _) => Stage::Handled,
        (false, true) => Stage::Lashed,
        (false, false) => Stage::Pinned,
    };
    Step::new(StepKind::Plug, stage)
        .say(Message::new("step-plug-text-lift"))
        .say(Message::new("step-plug-text-plug").with("diameter", basket.body.base().plug_diameter))
        .say(Message::new(match (basket.handle.is_some(), is_lashed) {
            (true, true) => "step-plug-text-sand-handle",
            (false, true) => "step-plug-text-sand",
            (true, false) => "step-plug-text-sand-handle-pinned",
            (false, false) => "step-plug-text-sand-pinned",
        }))
        .work(basket.hand.pace.off_mould * (1.0 - time::OFF))
        .wait(time::GLUE_DRY)
        .tools(&["tool-glue", "tool-mallet", "tool-saw", "tool-sandpaper", "tool-dust-mask"])
        .cautions(&["caution-glue", "caution-sanding-dust"])
}
