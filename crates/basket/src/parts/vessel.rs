//! One vessel: the body of a basket, or its lid.

use crate::measure::Length;
use crate::parts::base::Base;
use crate::parts::construction::Construction;
use crate::parts::edge::Edge;
use crate::parts::fittings::Pins;
use crate::parts::form::{Form, Level, Profile};
use crate::parts::lashing::{Filler, Lashing};
use crate::parts::neck::Neck;
use crate::parts::rim::Rim;
use crate::parts::staves::Staves;
use crate::parts::uprights::Uprights;
use crate::parts::weave::Weave;

/// One vessel as computed.
#[derive(Clone, Debug, PartialEq)]
pub struct Vessel {
    /// The shape of its wall.
    pub form: Form,
    /// Its uprights and floor.
    pub construction: Construction,
    /// Its weaving.
    pub weave: Weave,
    /// How its wall ends.
    pub edge: Edge,
}

impl Vessel {
    /// The side of its wall.
    pub const fn profile(&self) -> &Profile {
        &self.form.profile
    }

    /// What stands round its wall.
    pub fn uprights(&self) -> &Uprights {
        self.construction.uprights()
    }

    /// Its wooden base.
    pub fn base(&self) -> &Base {
        self.construction.base()
    }

    /// Its staves.
    pub fn staves(&self) -> &Staves {
        self.construction.staves()
    }

    /// Its hoops.
    pub fn rim(&self) -> &Rim {
        self.edge.rim()
    }

    /// The level in the middle of the rim whose girth over 2π is `radius`.
    pub fn rim_level(&self, radius: Length) -> Level<'_> {
        self.form.level(self.rim_height(), radius)
    }

    /// Height of the middle of the hoops above the foot.
    pub fn rim_height(&self) -> Length {
        let rim = self.rim();
        self.profile().at(rim.along + rim.height / 2.0).height
    }

    /// How many crossings of rows and uprights it has.
    pub fn crossings(&self) -> u64 {
        u64::from(self.weave.rows) * u64::from(self.uprights().count)
    }

    /// Its wall where it is narrowest.
    pub fn neck(&self) -> Neck {
        Neck::of(&self.form, self.uprights(), self.rim())
    }

    /// Its filler, if there is one.
    pub fn filler(&self) -> Option<&Filler> {
        self.edge.filler()
    }

    /// Its lashing, if there is one.
    pub fn lashing(&self) -> Option<&Lashing> {
        self.edge.lashing()
    }

    /// Its pins.
    pub fn pins(&self) -> &Pins {
        self.edge.pins()
    }
}
