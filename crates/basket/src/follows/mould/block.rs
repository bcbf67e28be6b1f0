//! A box with level and upright sides: what lies of a mould within it is one of its pieces.

use crate::measure::Length;

/// An axis of a mould.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Axis {
    /// Along its length.
    Length,
    /// Along its width.
    Width,
    /// Upward.
    Height,
}

impl Axis {
    pub(super) const ALL: [Self; 3] = [Self::Length, Self::Width, Self::Height];

    /// What of a place lies along it.
    pub fn of<T: Copy>(self, [x, y, z]: [T; 3]) -> T {
        match self {
            Self::Length => x,
            Self::Width => y,
            Self::Height => z,
        }
    }

    /// A place with another value along it.
    #[must_use]
    pub fn put<T>(self, [x, y, z]: [T; 3], value: T) -> [T; 3] {
        match self {
            Self::Length => [value, y, z],
            Self::Width => [x, value, z],
            Self::Height => [x, y, value],
        }
    }

    /// The other two, in the order in which a screw that is turned from the first to the second goes along this one.
    #[must_use]
    pub const fn others(self) -> [Self; 2] {
        match self {
            Self::Length => [Self::Width, Self::Height],
            Self::Width => [Self::Height, Self::Length],
            Self::Height => [Self::Length, Self::Width],
        }
    }
}

/// A box. Where it is not cut it reaches a little beyond the mould.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Block {
    /// Its least places along the length, along the width and up, from the middle of the foot.
    pub from: [Length; 3],
    /// Its greatest ones.
    pub to: [Length; 3],
}

impl Block {
    /// From where to where it reaches along an axis.
    pub fn side(&self, axis: Axis) -> [Length; 2] {
        [axis.of(self.from), axis.of(self.to)]
    }

    /// How far it reaches along each axis.
    pub(super) fn size(&self) -> [Length; 3] {
        Axis::ALL.map(|axis| {
            let [from, to] = self.side(axis);
            to - from
        })
    }

    /// The same with another reach along an axis.
    #[must_use]
    pub(super) fn with(&self, axis: Axis, [from, to]: [Length; 2]) -> Self {
        Self { from: axis.put(self.from, from), to: axis.put(self.to, to) }
    }

    /// Grown by this much on all sides.
    #[must_use]
    pub(super) fn grown(&self, by: Length) -> Self {
        Self { from: self.from.map(|side| side - by), to: self.to.map(|side| side + by) }
    }

    /// What both have in common along an axis; nothing where the second is not above the first.
    pub(super) fn shared(&self, other: &Self, axis: Axis) -> [Length; 2] {
        let ([from, to], [other_from, other_to]) = (self.side(axis), other.side(axis));
        [from.max(other_from), to.min(other_to)]
    }

    /// Whether a place in mm lies in it.
    pub(super) fn holds(&self, place: [f64; 3]) -> bool {
        Axis::ALL.into_iter().all(|axis| {
            let [from, to] = self.side(axis).map(Length::to_mm);
            (from..=to).contains(&axis.of(place))
        })
    }
}
