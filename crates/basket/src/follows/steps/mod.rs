//! The making, step by step.

mod base;
mod body;
mod finish;
mod handle;
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
/// cut, bend, seal, base, staves, first rows, half, rest, dry, ears, rim, pins, lashing, handle, off, finish
/// ```
///
/// A fixed handle stands in the place of the ears.
/// ```text
/// dry, handle, rim
/// ```
pub fn list(basket: &Basket) -> Vec<Step> {
    let mut steps = Vec::from_iter(prepare::cut(basket));
    steps.extend(handle::bend(basket));
    steps.extend(base::seal(basket));
    steps.extend([base::mount(basket), prepare::staves(basket)]);
    steps.extend(body::steps(basket));
    steps.extend(basket.ears.as_ref().map(|ears| rim::ears(basket, ears)));
    steps.extend(handle::into_rim(basket));
    steps.extend([rim::hoops(basket), rim::pins(basket), rim::lashing(basket)]);
    steps.extend(handle::on_ears(basket));
    steps.extend([base::plug(basket), finish::finish(basket)]);
    for (step, number) in steps.iter_mut().zip(1..) {
        step.number = number;
    }
    steps
}
