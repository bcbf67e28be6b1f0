//! The lid: a shallow vessel of its own, woven over its own mould, with its plaque down, and turned over. It drops
//! into the rim of the basket and lies there on a ledge, goes over the rim as a cap, or lies flush on it.
//!
//! All its levels are curves at an even distance from the basket's foot, so that the room between what goes in and
//! what it goes into is the same all round.

mod collar;
mod hinge;
mod ledge;
mod lift;
mod meets;
mod mould;
mod over;
mod rims;

pub use collar::{Collar, FLUSH};
pub use hinge::{Hinge, HingePlace};
pub(crate) use ledge::ledge_stock;
pub use ledge::{LEAST_OVERLAP, Ledge};
pub use lift::{KNOB, LOOP_HEIGHT, PEG};
pub(crate) use meets::Meets;
pub(crate) use mould::mould;
pub use over::{LEAST_DOWN, Over};
pub(crate) use rims::{edge, mouth};

use crate::form::{Across, BOARD, EDGE};
use crate::measure::Length;
use crate::parts::vessel::Vessel;
use crate::pattern::{LidFit, LidLift, LidWay, MouldForm, MouldPattern, Side};

/// The lid as computed.
#[derive(Clone, Debug, PartialEq)]
pub struct Lid {
    /// The lid itself, as it stands on its mould: plaque down.
    pub vessel: Vessel,
    /// The mould over which it is woven.
    pub mould: MouldPattern,
    /// What it sits on.
    pub seat: LidSeat,
    /// Room all round between what goes in and the opening; negative where it does not go in.
    pub clearance: Length,
    /// The room that is wanted.
    pub wanted: Length,
    /// The opening from edge to edge within a lashed rim: the basket's, or that of a cap.
    pub opening: Across,
    /// The lid over its lashed rim.
    pub across: Across,
    /// How far its top, with the plaque, lies above the top of the basket's rim.
    pub rises: Length,
    /// What one lifts it by.
    pub lift: LidLift,
    /// What it turns on, where it is fixed to the basket.
    pub hinge: Option<Hinge>,
}

/// What a lid sits on.
#[derive(Clone, Debug, PartialEq)]
pub enum LidSeat {
    /// A ledge within the basket's wall.
    Ledge(Ledge),
    /// The basket's rim, which the lid goes over.
    Over(Over),
    /// The basket's rim, within which a collar holds the lid.
    Collar(Collar),
}

impl LidSeat {
    /// How the lid sits.
    pub const fn fit(&self) -> LidFit {
        match self {
            Self::Ledge(_) => LidFit::DropIn,
            Self::Over(_) => LidFit::Cap,
            Self::Collar(_) => LidFit::Flush,
        }
    }
}

impl Lid {
    /// What it is woven over.
    pub const fn way(&self) -> LidWay {
        match self.mould.form {
            MouldForm::Drawn { side: Side::Board, .. } => LidWay::Flat,
            _ => LidWay::Mould,
        }
    }

    /// Level way from its plaque to the edge of its board, and how much its board rises on it: none where it is not woven flat.
    pub fn flat(&self) -> Option<[Length; 2]> {
        let rise = (self.vessel.form.height() - BOARD).max(Length::ZERO);
        let foot = self.vessel.profile().at(Length::ZERO).radius;
        (self.way() == LidWay::Flat)
            .then(|| [(self.vessel.profile().widest() - foot - EDGE).max(Length::ZERO), rise])
    }

    /// What goes into the opening, from edge to edge.
    pub fn goes_in(&self) -> Across {
        self.opening.grown(-self.clearance)
    }
}
