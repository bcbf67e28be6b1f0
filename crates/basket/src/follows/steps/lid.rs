//! The lid: made like a basket of its own, then fitted.

use super::stage::Stage;
use super::step::Step;
use super::time::{BENT_DRY, GLUE_DRY};
use crate::basket::Basket;
use crate::message::Message;
use crate::parts::lid::Lid;
use crate::pattern::{LidLift, StepKind};
use crate::piece::Of;

/// Share of the work on a hoop that each ring of a ledge is: it is bent and glued, but not lashed (assumed).
const RING: f64 = 0.5;
/// Work of trying the lid in and fixing what lifts it, in minutes (assumed).
const FITTING: f64 = 20.0;

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
    }
    steps
}

fn fit(basket: &Basket, lid: &Lid) -> Step {
    let ledge = &lid.ledge;
    let rings = ledge.rings.len() as u32;
    let lift = match lid.lift {
        LidLift::Knob => "step-lid-text-knob",
        LidLift::Loop => "step-lid-text-loop",
        LidLift::None => "step-lid-text-plug",
    };
    Step::new(StepKind::Lid, Stage::Finished)
        .say(
            Message::new("step-lid-text-ledge")
                .with("rings", rings)
                .with("stock", &ledge.stock)
                .with("lap", ledge.lap)
                .with("inside", ledge.inside),
        )
        .say_if(rings > 1, || Message::new("step-lid-text-ledge-flat"))
        .say(Message::new("step-lid-text-ledge-fix").with("overlap", ledge.overlap))
        .say(Message::new(lift).with("hole", lid.vessel.base().screw_hole))
        .say(Message::new("step-lid-text-try").with("clearance", lid.clearance).with("rises", lid.rises))
        .say(Message::new("step-lid-text-alike"))
        .soak([&ledge.stock])
        .work(f64::from(rings) * RING * basket.hand.pace.hoop + FITTING)
        .wait(BENT_DRY.max(GLUE_DRY))
        .tools(&["tool-bucket", "tool-knife", "tool-glue", "tool-clamps", "tool-sandpaper", "tool-ruler"])
        .cautions(&["caution-knife", "caution-glue", "caution-sanding-dust"])
}
