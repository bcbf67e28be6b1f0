//! Cutting, and the staves in the groove.

use super::stage::Stage;
use super::step::Step;
use super::step::{count, numbers};
use super::time;
use crate::basket::Basket;
use crate::message::{Message, Value};
use crate::parts::staves::Group;
use crate::pattern::{OvalSide, Ready, StepKind};

/// Cutting and shaping the staves; nothing where they lie ready tapered.
pub(super) fn cut(basket: &Basket) -> Option<Step> {
    let (staves, ready) = (basket.body.staves(), &basket.ready);
    if ready.has(Ready::StavesTapered) {
        return None;
    }
    let parts = &staves.length_parts;
    let all = f64::from(basket.staves_to_cut().saturating_add(staves.spares));
    let step = Step::new(StepKind::Cut, Stage::Prepared);
    let step = if ready.has(Ready::StavesCut) {
        step.say(count_of(basket, "step-cut-text-ready")).work(all * basket.hand.pace.taper_stave)
    } else {
        let each = if is_grouped(basket) { "step-cut-text-staves-groups" } else { "step-cut-text-staves" };
        step.say(Message::new("step-cut-text-sort").with("stock", &staves.stock))
            .say(count_of(basket, each))
            .say_all(groups(basket, "step-cut-text-group"))
            .work(all * basket.hand.pace.shape_stave)
            .tools(&["tool-shears"])
    };
    let [shape, fit] = if staves.taper.is_of(staves.uprights.width) {
        ["step-cut-text-taper", "step-cut-text-try"]
    } else {
        ["step-cut-text-full", "step-cut-text-try-full"]
    };
    let step = step
        .say(
            Message::new(shape)
                .with("foot", staves.taper.foot)
                .with("width", staves.uprights.width)
                .with("above_foot", parts.groove + parts.turn + staves.taper.from),
        )
        .say(Message::new(fit).with("groove", basket.body.base().groove_depth))
        .tools(&["tool-ruler", "tool-knife", "tool-sandpaper", "tool-stave-template"])
        .cautions(&["caution-rules", "caution-knife", "caution-sanding-dust", "caution-cane-edges"]);
    Some(step)
}

/// Whether staves are cut to more than one measure.
fn is_grouped(basket: &Basket) -> bool {
    basket.body.staves().groups.len() > 1
}

/// A sentence for each group of staves that are cut alike; none where all are.
fn groups(basket: &Basket, id: &'static str) -> Vec<Message> {
    let left_out = basket.staves_left_out();
    let group = |group: &Group| {
        let numbers: Vec<u32> =
            group.numbers.iter().copied().filter(|number| !left_out.contains(number)).collect();
        Message::new(id)
            .with("group", group.name.as_str())
            .with("count", count(numbers.len() + group.spares as usize))
            .with("staves", Value::runs(&numbers))
            .with("spares", group.spares)
            .with("length", group.length)
            .with("width", group.width)
    };
    let groups = basket.body.staves().groups.iter();
    groups.filter(|_| is_grouped(basket)).map(group).collect()
}

/// How many staves there are, and how long they are.
fn count_of(basket: &Basket, id: &'static str) -> Message {
    let staves = basket.body.staves();
    Message::new(id)
        .with("all", basket.staves_to_cut().saturating_add(staves.spares))
        .with("count", basket.staves_to_cut())
        .with("spares", staves.spares)
        .with("length", staves.length)
}

/// How the staves stand at the tight ends of a foot that is not round.
fn ends(basket: &Basket) -> Message {
    let rim = basket.body.rim();
    let uprights = basket.body.uprights();
    if !uprights.paths.is_empty() {
        let most = uprights.most_lean();
        let leaning = uprights.numbers_of(|path| path.lean.to_radians().abs() > most.to_radians() / 2.0);
        return Message::new("step-staves-text-lean")
            .with("staves", Value::runs(&leaning))
            .with("lean", most);
    }
    let [sides, ends] = basket.body.uprights().gaps_between(&basket.body.form, rim.along);
    Message::new("step-staves-text-ends").with("sides", sides).with("ends", ends)
}

pub(super) fn staves(basket: &Basket) -> Step {
    let staves = basket.body.staves();
    let face = match staves.oval_side {
        OvalSide::Out => "step-staves-text-face-out",
        OvalSide::In => "step-staves-text-face-in",
    };
    let leans = !staves.uprights.paths.is_empty();
    Step::new(StepKind::Staves, Stage::StavesSet)
        .say_if(basket.ready.has(Ready::StavesTapered), || count_of(basket, "step-staves-text-ready"))
        .say(Message::new("step-staves-text-soak").with("stock", &staves.stock))
        .say(
            Message::new(if leans { "step-staves-text-set-lean" } else { "step-staves-text-set" })
                .with("quarters", numbers(basket.body.uprights().quarters()))
                .with("count", staves.uprights.count)
                .with("depth", basket.body.base().groove_depth),
        )
        .say_all(groups(basket, "step-staves-text-group"))
        .say_if(!basket.body.form.outline.is_round(), || ends(basket))
        .say(Message::new(face))
        .say(Message::new("step-staves-text-count").with("count", staves.uprights.count))
        .say(Message::new(if leans { "step-staves-text-band-lean" } else { "step-staves-text-band" }))
        .soak([&staves.stock])
        .work(f64::from(staves.uprights.count) * basket.hand.pace.set_stave)
        .wait(time::STAVES_DRY)
        .tools(&["tool-bucket", "tool-towel", "tool-spray", "tool-band", "tool-spacing-strip"])
        .cautions(&["caution-wet-floor", "caution-water"])
}
