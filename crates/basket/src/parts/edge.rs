//! How a wall ends at the top.

use crate::parts::fittings::Pins;
use crate::parts::lashing::{Filler, Lashing};
use crate::parts::rim::Rim;

/// The upper end of a wall. Nobody else matches on it.
#[derive(Clone, Debug, PartialEq)]
pub enum Edge {
    /// A split rim of two hoops, pinned and lashed.
    Rim {
        /// The hoops.
        rim: Rim,
        /// The filler over the tips, if there is one.
        filler: Option<Filler>,
        /// The lashing.
        lashing: Lashing,
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

    /// The lashing.
    pub fn lashing(&self) -> &Lashing {
        let Self::Rim { lashing, .. } = self;
        lashing
    }

    /// The pins.
    pub fn pins(&self) -> &Pins {
        let Self::Rim { pins, .. } = self;
        pins
    }
}
