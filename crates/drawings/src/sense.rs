//! Which way round the numbers of staves rise.

use basket::Basket;
use basket::pattern::Direction;

/// One where they rise clockwise seen from above, as on a basket whose weaver runs to the right; else one less than
/// nothing.
pub(crate) fn sense(basket: &Basket) -> f64 {
    match basket.body.weave.direction {
        Direction::Right => 1.0,
        Direction::Left => -1.0,
    }
}
