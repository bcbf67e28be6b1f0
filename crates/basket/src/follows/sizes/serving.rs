//! The size in which an outer basket serves, where the next smaller one does not go in.

use super::{Nest, across};
use crate::basket::Basket;
use crate::draft::Draft;
use crate::measure::Length;
use crate::pattern::Units;

/// How often a larger mould is tried.
const TRIES: u32 = 6;

/// The least size of the outer mould that was found in which a basket goes with the room that is wanted; none where
/// none was. `outer` is the size in which it does not, with how it stands there; `scaled` makes another.
///
/// # Errors
/// What `scaled` says.
pub fn serving<E>(
    inner: &Basket,
    (outer, nest): (Length, Nest),
    wanted: Length,
    mut scaled: impl FnMut(Length) -> Result<Draft, E>,
) -> Result<Option<Length>, E> {
    let (mut to, mut room) = (outer, nest.room);
    for _ in 0..TRIES {
        to += ((wanted - room) * 2.0).max(Length::mm(1.0));
        let tried = scaled(to)?;
        let nest = Nest::of(inner, &tried.basket);
        if nest.fits(wanted) {
            return Ok(Some(across(&tried.pattern.mould)));
        }
        room = nest.room;
    }
    Ok(None)
}

/// A size to the mark by which a maker measures a mould: 1/8 in, or a millimetre.
pub fn to_the_mark(size: Length, units: Units) -> Length {
    let mark = match units {
        Units::Inches => Length::inches(1.0 / 8.0),
        Units::Millimetres => Length::mm(1.0),
    };
    mark * (size / mark - 1e-6).ceil()
}
