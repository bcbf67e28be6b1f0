//! The hoops: made as rings, bent in place or bought; and the basket off its mould before they go on.

use super::base;
use super::stage::Stage;
use super::step::Step;
use super::time::{BENT_DRY, OFF};
use crate::basket::Basket;
use crate::message::Message;
use crate::pattern::{HoopWay, StepKind};
use crate::rim::Hoop;

/// Share of the work on a hoop that fitting and clamping it is (common practice).
const FIT: f64 = 0.2;

/// Hoops made as rings, while the basket stands on its mould.
pub(super) fn rings(basket: &Basket) -> Step {
    let rim = basket.body.rim();
    Step::new(StepKind::Rings, Stage::RingsMade)
        .say(
            Message::new("step-rings-text-cut")
                .with("outer", rim.outer.cut)
                .with("outer_stock", &rim.outer.stock)
                .with("inner", rim.inner.cut)
                .with("inner_stock", &rim.inner.stock),
        )
        .say(ring("step-rings-text-outer", &rim.outer))
        .say(ring("step-rings-text-inner", &rim.inner))
        .say(ring("step-rings-text-shave", &rim.outer))
        .say(Message::new("step-rings-text-glue"))
        .say(Message::new("step-rings-text-sand"))
        .soak([&rim.outer.stock, &rim.inner.stock])
        .work(2.0 * (1.0 - FIT) * basket.hand.pace.hoop)
        .wait(BENT_DRY)
        .tools(&[
            "tool-bucket",
            "tool-ruler",
            "tool-pencil",
            "tool-knife",
            "tool-glue",
            "tool-clamps",
            "tool-sandpaper",
        ])
        .cautions(&["caution-knife", "caution-glue", "caution-sanding-dust", "caution-wet-floor"])
}

fn ring(id: &'static str, hoop: &Hoop) -> Message {
    Message::new(id).with("lap", hoop.scarf.lap).with("across", hoop.across)
}

/// Off the mould, which leaves no room for what goes inside the wall.
pub(super) fn off_mould(basket: &Basket) -> Step {
    Step::new(StepKind::OffMould, Stage::OffMould)
        .say(base::lift(basket))
        .say(Message::new("step-off-text-look"))
        .work(basket.hand.pace.off_mould * OFF)
        .tools(&["tool-screwdriver"])
}

/// The hoops on their place and clamped.
pub(super) fn hoops(basket: &Basket) -> Step {
    match basket.body.rim().hoops {
        HoopWay::Bent => bent(basket),
        HoopWay::Rings if basket.rings_are_made() => {
            put_on(basket, ["step-rim-text-ring-outer", "step-rim-text-ring-inner"])
        }
        HoopWay::Rings => put_on(basket, ["step-rim-text-ready-outer", "step-rim-text-ready-inner"]),
        HoopWay::Bought => put_on(basket, ["step-rim-text-bought-outer", "step-rim-text-bought-inner"]),
    }
}

/// Rings slipped on, which need no time to dry.
fn put_on(basket: &Basket, [outer, inner]: [&'static str; 2]) -> Step {
    let rim = basket.body.rim();
    Step::new(StepKind::Rim, Stage::RimClamped)
        .say(hoop(outer, &rim.outer).with("height", basket.body.weave.top_height))
        .say(hoop(inner, &rim.inner))
        .say(Message::new(match basket.in_rim() {
            Some(ends) if ends.of_handle => "step-rim-text-ring-clamp-ends",
            Some(_) => "step-rim-text-ring-clamp-ears",
            None => "step-rim-text-ring-clamp",
        }))
        .work(2.0 * FIT * basket.hand.pace.hoop)
        .tools(&["tool-clamps", "tool-ruler"])
}

fn bent(basket: &Basket) -> Step {
    let rim = basket.body.rim();
    Step::new(StepKind::Rim, Stage::RimClamped)
        .say(hoop("step-rim-text-outer", &rim.outer))
        .say(hoop("step-rim-text-inner", &rim.inner))
        .say(Message::new("step-rim-text-scarf").with("lap", rim.outer.scarf.lap))
        .say(Message::new("step-rim-text-clamp").with("height", basket.body.weave.top_height))
        .say(Message::new("step-rim-text-dry"))
        .soak([&rim.outer.stock, &rim.inner.stock])
        .work(2.0 * basket.hand.pace.hoop)
        .wait(BENT_DRY)
        .tools(&["tool-bucket", "tool-knife", "tool-sandpaper", "tool-clamps", "tool-ruler"])
        .cautions(&["caution-knife", "caution-sanding-dust", "caution-wet-floor"])
}

fn hoop(id: &'static str, hoop: &Hoop) -> Message {
    Message::new(id)
        .with("stock", &hoop.stock)
        .with("length", hoop.cut)
        .with("across", hoop.across)
        .with("from", hoop.scarf.from_stave)
        .with("to", hoop.scarf.to_stave)
}
