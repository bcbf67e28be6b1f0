//! How a lid meets its basket: what is measured on both, and what it sits on.

use super::rims::{edge, mouth};
use super::{Collar, Hinge, Ledge, Lid, LidSeat, Over};
use crate::measure::Length;
use crate::message::Message;
use crate::parts::vessel::Vessel;
use crate::pattern::{LidFit, LidHinge, LidLift, MouldPattern};
use crate::stock::Material;

/// How a lid meets its basket.
pub(crate) struct Meets<'a> {
    /// How it is to sit.
    pub(crate) fit: LidFit,
    /// The basket's own vessel.
    pub(crate) body: &'a Vessel,
    /// The room that is wanted between them.
    pub(crate) clearance: Length,
}

impl Meets<'_> {
    /// Girths over 2π: what the lid is measured by, and what that should be.
    pub(crate) fn measured(&self, lid: &Vessel) -> [Length; 2] {
        match self.fit {
            LidFit::DropIn => [edge(lid), mouth(self.body) - self.clearance],
            LidFit::Cap => [mouth(lid), Over::of(self.body, lid).widest(self.body) + self.clearance],
            LidFit::Flush => [edge(lid), edge(self.body)],
        }
    }

    /// Why its mould is as large as it is.
    pub(crate) fn reason(&self) -> Message {
        let across = |radius: Length| self.body.rim_level(radius).across();
        let (id, of) = match self.fit {
            LidFit::DropIn => ("choice-lid-across", mouth(self.body)),
            LidFit::Cap => ("choice-lid-across-cap", edge(self.body)),
            LidFit::Flush => ("choice-lid-across-flush", edge(self.body)),
        };
        Message::new(id).with("mouth", across(of))
    }

    /// The lid, from its vessel: with the stock of what holds it, its hinge and its lift.
    pub(crate) fn lid(
        &self,
        (vessel, mould): (Vessel, MouldPattern),
        (stock, hinge, lift): (Material, Option<LidHinge>, LidLift),
    ) -> Lid {
        let body = self.body;
        let across = |radius: Length| body.rim_level(radius).across();
        let (own, inside) = (edge(&vessel), mouth(body));
        let top = vessel.profile().at(vessel.rim().along + vessel.rim().height).height;
        let high = top + vessel.base().thickness;
        let (seat, goes_in, opening, rises) = match self.fit {
            LidFit::DropIn => {
                let ledge = Ledge::of(body, stock, own, inside - own);
                (LidSeat::Ledge(ledge), own, inside, high - body.rim().height)
            }
            LidFit::Cap => {
                let over = Over::of(body, &vessel);
                let (widest, down) = (over.widest(body), over.down);
                (LidSeat::Over(over), widest, mouth(&vessel), high - down)
            }
            LidFit::Flush => {
                let (collar, outside) = Collar::of(body, &vessel, stock, self.clearance);
                (LidSeat::Collar(collar), outside, inside, high)
            }
        };
        Lid {
            seat,
            clearance: opening - goes_in,
            wanted: self.clearance,
            opening: across(opening),
            across: across(own),
            rises,
            lift,
            hinge: hinge.and_then(|at| Hinge::of(at, body, &vessel)),
            mould,
            vessel,
        }
    }
}
