//! What all drawings of the making of a basket share.

use basket::Basket;
use words::Words;

use crate::solid::{Detail, PartCache};

/// What all drawings of a basket share.
pub(super) struct Studio<'a> {
    pub(super) basket: &'a Basket,
    pub(super) words: &'a Words,
    /// Whether parts are named in the drawings.
    pub(super) lettered: bool,
    /// The parts as small drawings of the whole show them.
    pub(super) far: PartCache<'a>,
    /// The parts as seen from close by, or large on a cover.
    pub(super) near: PartCache<'a>,
}

impl<'a> Studio<'a> {
    pub(super) fn of(basket: &'a Basket, words: &'a Words) -> Self {
        let [far, near] = [Detail::Column, Detail::Full].map(|detail| PartCache::of(basket, detail));
        Self { basket, words, lettered: true, far, near }
    }
}
