//! The pieces that a mould is made in.

use super::apart::{Apart, Stuck};
use super::split::{Room, Split, TooSmall};
use crate::basket::Basket;
use crate::pattern::MouldPieces;

/// A mould in pieces.
#[derive(Clone, Debug, PartialEq)]
pub struct Pieces {
    /// The printer's room, where they are printed.
    pub room: Option<Room>,
    /// How it comes apart, where its pattern says so.
    pub apart: Option<Apart>,
    /// Its pieces: core and segments, each cut further where the printer has no room for it.
    pub split: Split,
}

/// Why a mould cannot be made in pieces.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum NoPieces {
    /// It would be too many.
    TooSmall(TooSmall),
    /// It does not come apart.
    Stuck(Stuck),
}

impl Pieces {
    /// The pieces in which the mould of a basket is made for a printer of this room; none where it is made whole.
    ///
    /// # Errors
    /// [`NoPieces`] where there are too many, or where they would not come out of the basket.
    pub fn of(basket: &Basket, room: Option<Room>) -> Result<Option<Self>, NoPieces> {
        let several = basket.body.form.mould().pieces == MouldPieces::Several;
        let apart = several.then(|| Apart::of(basket)).transpose().map_err(NoPieces::Stuck)?;
        if apart.is_none() && room.is_none() {
            return Ok(None);
        }
        let split = Split::of(basket, room, apart.as_ref()).map_err(NoPieces::TooSmall)?;
        Ok(Some(Self { room, apart, split }))
    }
}
