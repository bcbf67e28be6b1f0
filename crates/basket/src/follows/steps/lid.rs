//! The lid: made like a basket of its own, then fitted.

use super::stage::Stage;
use super::step::Step;
use super::time::{BENT_DRY, GLUE_DRY};
use crate::basket::Basket;
use crate::message::Message;
use crate::parts::lid::{Collar, HingePlace, Ledge, Lid, LidSeat};
use crate::pattern::{LidLift, LidWay, StepKind};
use crate::piece::Of;

/// Share of the work on a hoop that each ring of a ledge is: it is bent and glued, but not lashed (assumed).
const RING: f64 = 0.5;
/// Work of trying the lid in and fixing what lifts it, in minutes (assumed).
const FITTING: f64 = 20.0;

/// What is said of a basket, and in its place of a lid: it has a plaque and no base.
const OWN: [(&str, &str); 21] = [
    ("step-seal-text-sand", "step-lid-own-seal-text-sand"),
    ("step-base-text-sand", "step-lid-own-base-text-sand"),
    ("step-base-text-screw", "step-lid-own-base-text-screw"),
    ("step-base-text-along", "step-lid-own-base-text-along"),
    ("step-base-text-strips", "step-lid-own-base-text-strips"),
    ("step-base-text-guard", "step-lid-own-base-text-guard"),
    ("step-base-text-mark", "step-lid-own-base-text-mark"),
    ("step-cut-text-staves", "step-lid-own-cut-text-staves"),
    ("step-staves-text-ends", "step-lid-own-staves-text-ends"),
    ("step-staves-text-band", "step-lid-own-staves-text-band"),
    ("step-first-text-start", "step-lid-own-first-text-start"),
    ("step-first-text-direction", "step-lid-own-first-text-direction"),
    ("step-first-text-direction-left", "step-lid-own-first-text-direction-left"),
    ("step-first-text-hardest", "step-lid-own-first-text-hardest"),
    ("step-dry-text-wait", "step-lid-own-dry-text-wait"),
    ("step-dry-text-pack", "step-lid-own-dry-text-pack"),
    ("step-off-text-screw", "step-lid-own-off-text-screw"),
    ("step-cut-text-ready", "step-lid-own-cut-text-ready"),
    ("step-staves-text-ready", "step-lid-own-staves-text-ready"),
    ("step-first-text-weave", "step-lid-own-first-text-weave"),
    ("step-rings-text-glue", "step-lid-own-rings-text-glue"),
];

/// What is said in their place of a lid that is woven flat on a board.
const FLAT: [(&str, &str); 7] = [
    ("step-base-text-screw", "step-lid-flat-base-text-screw"),
    ("step-staves-text-band", "step-lid-flat-staves-text-band"),
    ("step-first-text-start", "step-lid-flat-first-text-start"),
    ("step-dry-text-wait", "step-lid-flat-dry-text-wait"),
    ("step-dry-text-pack", "step-lid-flat-dry-text-pack"),
    ("step-half-text-weave", "step-lid-flat-half-text-weave"),
    ("step-rest-text-weave", "step-lid-flat-rest-text-weave"),
];

/// Its steps, as `of` any basket, after those of the basket and before the finish, which goes on both.
pub(super) fn steps(basket: &Basket, at: Stage, of: fn(&Basket) -> Vec<Step>) -> Vec<Step> {
    let (Some(lid), Some(alone)) = (basket.lid.as_ref(), basket.lid_alone()) else { return Vec::new() };
    let own = of(&alone).into_iter();
    let mut steps: Vec<Step> = own
        .filter(|step| !matches!(step.kind, StepKind::Plug | StepKind::Finish))
        .chain([fit(basket, lid)])
        .collect();
    for step in &mut steps {
        (step.of, step.stage) = (Of::Lid, at);
        for said in &mut step.text {
            let is_it = |(of_body, _): &&(&str, &'static str)| *of_body == said.id;
            let flat = FLAT.iter().filter(|_| lid.way() == LidWay::Flat).find(is_it);
            said.id = flat.or_else(|| OWN.iter().find(is_it)).map_or(said.id, |(_, own)| own);
        }
    }
    steps
}

fn fit(basket: &Basket, lid: &Lid) -> Step {
    let lift = match lid.lift {
        LidLift::Knob => "step-lid-text-knob",
        LidLift::Loop => "step-lid-text-loop",
        LidLift::None => "step-lid-text-plug",
    };
    let step = Step::new(StepKind::Lid, Stage::Finished);
    let (step, rings) = match &lid.seat {
        LidSeat::Ledge(ledge) => (self::ledge(step, ledge), ledge.rings.len() as u32),
        LidSeat::Over(_) => (step, 0),
        LidSeat::Collar(collar) => (self::collar(step, collar), 1),
    };
    let step = step.say(Message::new(lift).with("hole", lid.vessel.base().screw_hole)).say(tried(lid));
    let step = hinged(step, lid).say(Message::new("step-lid-text-alike"));
    let wait = if rings > 0 { BENT_DRY.max(GLUE_DRY) } else { GLUE_DRY };
    step.work(f64::from(rings) * RING * basket.hand.pace.hoop + FITTING)
        .wait(wait)
        .tools(&["tool-bucket", "tool-knife", "tool-glue", "tool-clamps", "tool-sandpaper", "tool-ruler"])
        .cautions(&["caution-knife", "caution-glue", "caution-sanding-dust"])
}

fn ledge(step: Step, ledge: &Ledge) -> Step {
    let rings = ledge.rings.len() as u32;
    step.say(
        Message::new("step-lid-text-ledge")
            .with("rings", rings)
            .with("stock", &ledge.stock)
            .with("lap", ledge.lap)
            .with("inside", ledge.inside),
    )
    .say_if(rings > 1, || Message::new("step-lid-text-ledge-flat"))
    .say(Message::new("step-lid-text-ledge-fix").with("overlap", ledge.overlap))
    .soak([&ledge.stock])
}

fn collar(step: Step, collar: &Collar) -> Step {
    step.say(
        Message::new("step-lid-text-collar")
            .with("stock", &collar.stock)
            .with("lap", collar.lap)
            .with("outside", collar.outside),
    )
    .say(Message::new("step-lid-text-collar-fix").with("down", collar.down))
    .soak([&collar.stock])
}

/// How it should go on.
fn tried(lid: &Lid) -> Message {
    let said = match &lid.seat {
        LidSeat::Ledge(_) => Message::new("step-lid-text-try"),
        LidSeat::Over(over) => Message::new("step-lid-text-try-cap").with("down", over.down),
        LidSeat::Collar(_) => Message::new("step-lid-text-try-flush"),
    };
    said.with("clearance", lid.clearance).with("rises", lid.rises)
}

/// Where hinge and latch go.
fn hinged(step: Step, lid: &Lid) -> Step {
    let Some(hinge) = &lid.hinge else { return step };
    let place = |id: &'static str, place: HingePlace| {
        let [from, to] = place.body;
        let [lid_from, lid_to] = place.lid;
        Message::new(id).with("from", from).with("to", to).with("lid-from", lid_from).with("lid-to", lid_to)
    };
    let [first, second] = hinge.loops;
    step.say(Message::new("step-lid-text-hinge").with("apart", hinge.apart))
        .say(place("step-lid-text-hinge-loop", first))
        .say(place("step-lid-text-hinge-loop", second))
        .say(place("step-lid-text-latch", hinge.latch))
}
