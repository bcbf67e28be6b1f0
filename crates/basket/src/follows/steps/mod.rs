//! The making, step by step.

mod body;
mod finish;
mod prepare;
mod rim;
mod stage;
mod step;
mod time;

use crate::basket::Basket;
pub use stage::Stage;
pub use step::Step;

/// The making in order. Working times are rough (see the rules beside them); waiting times are the
/// least usual ones.
///
/// ```text
/// cut, base, staves, first rows, half, rest, dry, ears, rim, pins, lashing, handle, off, finish
/// ```
pub fn list(basket: &Basket) -> Vec<Step> {
    let mut steps = Vec::from_iter(prepare::cut(basket));
    steps.extend([prepare::base(basket), prepare::staves(basket)]);
    steps.extend(body::steps(basket));
    steps.extend(basket.ears.as_ref().map(|ears| rim::ears(basket, ears)));
    steps.extend([rim::hoops(basket), rim::pins(basket), rim::lashing(basket)]);
    steps.extend(basket.handle.as_ref().map(|handle| rim::handle(basket, handle)));
    steps.extend([finish::off_mould(basket), finish::finish(basket)]);
    for (step, number) in steps.iter_mut().zip(1..) {
        step.number = number;
        step.learner_minutes = step.work_minutes * basket.hand.pace.learner;
    }
    steps
}
