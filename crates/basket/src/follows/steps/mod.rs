//! The making, step by step.

mod base;
mod body;
mod ears;
mod finish;
mod handle;
mod hoops;
mod lid;
mod prepare;
mod rim;
mod stage;
mod step;
mod time;

use crate::basket::Basket;
use crate::pattern::EarWay;
pub use stage::Stage;
pub use step::Step;

/// The making in order. Working times are rough (see the rules beside them); waiting times are the
/// least usual ones.
///
/// ```text
/// cut, bend, seal, base, staves, first rows, half, rest, dry, off the mould, rim, pins, lashing, handle, plug,
/// lid, finish
/// ```
///
/// Ears that run down as staves come before the staves; woven in, before the rest; pushed down, before the
/// rim, where the ends of a fixed handle are too. Hoops made as rings come before the basket is taken off the
/// mould. A rim that pins alone hold has no lashing.
pub fn list(basket: &Basket) -> Vec<Step> {
    let ears = |way| basket.ears.as_ref().filter(|ears| ears.way == way).map(|ears| ears::ears(basket, ears));
    let rings = basket.rings_are_made();
    let mut steps = Vec::from_iter(prepare::cut(basket));
    steps.extend(handle::bend(basket));
    steps.extend(base::seal(basket));
    steps.push(base::mount(basket));
    steps.extend(ears(EarWay::AsStave));
    steps.push(prepare::staves(basket));
    steps.extend(body::steps(basket));
    steps.extend(rings.then(|| hoops::rings(basket)));
    steps.push(hoops::off_mould(basket));
    steps.extend(ears(EarWay::PushedDown));
    steps.extend(handle::into_rim(basket));
    steps.extend([hoops::hoops(basket), rim::pins(basket)]);
    steps.extend(rim::lashing(basket));
    steps.extend(handle::on_ears(basket));
    steps.push(base::plug(basket));
    let reached = steps.last().map_or(Stage::Prepared, |step| step.stage);
    steps.extend(lid::steps(basket, reached, list));
    steps.push(finish::finish(basket));
    for (step, number) in steps.iter_mut().zip(1..) {
        step.number = number;
        step.learner_minutes = step.work_minutes * basket.hand.pace.learner;
    }
    steps
}
