//! Cutting, the base on the mould, the staves in the groove.

use super::build::numbers;
use super::{Stage, Step, time};
use crate::assemble::Basket;
use crate::message::Message;
use crate::pattern::OvalSide;

pub(super) fn cut(basket: &Basket) -> Step {
    let staves = &basket.staves;
    let parts = &staves.length_parts;
    let all = staves.count.saturating_add(staves.spares);
    Step::new("step-cut", Stage::Prepared)
        .say(Message::new("step-cut-text-sort").with("stock", &staves.stock))
        .say(
            Message::new("step-cut-text-staves")
                .with("all", all)
                .with("count", staves.count)
                .with("spares", staves.spares)
                .with("length", staves.length),
        )
        .say(
            Message::new("step-cut-text-taper")
                .with("foot", staves.taper.foot)
                .with("width", staves.width)
                .with("above_foot", parts.groove + parts.turn + staves.taper.from),
        )
        .say(Message::new("step-cut-text-try").with("groove", basket.base.groove_depth))
        .work(f64::from(all) * time::SHAPE_STAVE)
        .tools(&["tool-ruler", "tool-shears", "tool-knife", "tool-sandpaper", "tool-stave-template"])
        .cautions(&["caution-rules", "caution-knife", "caution-sanding-dust", "caution-cane-edges"])
}

pub(super) fn base(basket: &Basket) -> Step {
    Step::new("step-base", Stage::BaseOnMould)
        .say(
            Message::new("step-base-text-screw")
                .with("diameter", basket.base.diameter)
                .with("hole", basket.base.screw_hole),
        )
        .say(
            Message::new("step-base-text-mark")
                .with("count", basket.staves.count)
                .with("quarters", numbers(quarters(basket))),
        )
        .work(time::MOUNT_BASE)
        .tools(&["tool-screwdriver", "tool-pencil", "tool-spacing-strip"])
}

/// The staves nearest to the quarters of the round. Marking them first halves the way over which
/// small errors add up (the spread of a sum of independent errors grows with the root of their number).
fn quarters(basket: &Basket) -> [u32; 4] {
    [0.0, 0.25, 0.5, 0.75].map(|turn| basket.staves.nearest(turn))
}

pub(super) fn staves(basket: &Basket) -> Step {
    let staves = &basket.staves;
    let face = match staves.oval_side {
        OvalSide::Out => "step-staves-text-face-out",
        OvalSide::In => "step-staves-text-face-in",
    };
    Step::new("step-staves", Stage::StavesSet)
        .say(Message::new("step-staves-text-soak").with("stock", &staves.stock))
        .say(
            Message::new("step-staves-text-set")
                .with("quarters", numbers(quarters(basket)))
                .with("count", staves.count)
                .with("depth", basket.base.groove_depth),
        )
        .say(Message::new(face))
        .say(Message::new("step-staves-text-count").with("count", staves.count))
        .say(Message::new("step-staves-text-band"))
        .soak([&staves.stock])
        .work(f64::from(staves.count) * time::SET_STAVE)
        .wait(time::STAVES_DRY)
        .tools(&["tool-bucket", "tool-towel", "tool-spray", "tool-band", "tool-spacing-strip"])
        .cautions(&["caution-wet-floor", "caution-water"])
}
