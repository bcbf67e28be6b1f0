//! The making, step by step.

mod body;
mod ears;
mod finish;
mod hoops;
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
/// cut, base, staves, first rows, half, rest, dry, off the mould, rim, pins, lashing, handle, plug, finish
/// ```
///
/// Ears that run down as staves come before the staves; woven in, before the rest; pushed down, before the
/// rim. Hoops made as rings come before the basket is taken off the mould.
pub fn list(basket: &Basket) -> Vec<Step> {
    let ears = |way| basket.ears.as_ref().filter(|ears| ears.way == way).map(|ears| ears::ears(basket, ears));
    let rings = basket.rings_are_made();
    let mut steps = Vec::from_iter(prepare::cut(basket));
    steps.push(prepare::base(basket));
    steps.extend(ears(EarWay::AsStave));
    steps.push(prepare::staves(basket));
    steps.extend(body::steps(basket));
    steps.extend(rings.then(|| hoops::rings(basket)));
    steps.push(hoops::off_mould(basket));
    steps.extend(ears(EarWay::PushedDown));
    steps.extend([hoops::hoops(basket), rim::pins(basket), rim::lashing(basket)]);
    steps.extend(basket.handle.as_ref().map(|handle| rim::handle(basket, handle)));
    steps.extend([finish::plug(basket), finish::finish(basket)]);
    for (step, number) in steps.iter_mut().zip(1..) {
        step.number = number;
    }
    steps
}
