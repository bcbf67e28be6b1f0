//! How a wall ends at the top.

use crate::parts::fittings::Pins;
use crate::parts::lashing::{Filler, Lashing};
use crate::parts::rim::Rim;

/// The upper end of a wall. Nobody else matches on it.
#[derive(Clone, Debug, PartialEq)]
pub enum Edge {
    /// A split rim of two hoops, pinned and, as a rule, lashed.
    Rim {
        /// The hoops.
        rim: Rim,
        /// The filler over the tips, if there is one.
        filler: Option<Filler>,
        /// The lashing, if there is one.
        lashing: Option<Lashing>,
        /// The pins.
        pins: Pins,
    },
}

impl Edge {
    /// The hoops.
    pub fn rim(&self) -> &Rim {
        let Self::Rim { rim, .. } = self;
        rim
    }

    /// The filler, if there is one.
    pub fn filler(&self) -> Option<&Filler> {
        let Self::Rim { filler, .. } = self;
        filler.as_ref()
    }

    /// The lashing, if there is one.
    pub fn lashing(&self) -> Option<&Lashing> {
        let Self::Rim { lashing, .. } = self;
        lashing.as_ref()
    }

    /// The pins.
    pub fn pins(&self) -> &Pins {
        let Self::Rim { pins, .. } = self;
        pins
    }
}
