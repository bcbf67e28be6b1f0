//! How uprights and floor are made. Nobody else matches on the construction; each part of the program
//! that has to know it says so in an `impl` of its own beside its subject.

use crate::parts::base::Base;
use crate::parts::staves::Staves;
use crate::parts::uprights::Uprights;

/// What makes uprights and floor.
#[derive(Clone, Debug, PartialEq)]
pub enum Construction {
    /// Staves stand in the groove of a wooden base, over a mould.
    Moulded {
        /// The base.
        base: Base,
        /// The staves.
        staves: Staves,
    },
}

impl Construction {
    /// What stands round the wall.
    pub fn uprights(&self) -> &Uprights {
        let Self::Moulded { staves, .. } = self;
        &staves.uprights
    }

    /// The wooden base.
    pub fn base(&self) -> &Base {
        let Self::Moulded { base, .. } = self;
        base
    }

    /// The staves.
    pub fn staves(&self) -> &Staves {
        let Self::Moulded { staves, .. } = self;
        staves
    }
}
