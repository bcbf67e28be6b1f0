//! Makes the parts of a basket, group by group.

use basket::Basket;
use basket::steps::Stage;

use super::detail::{Detail, Simplified};
use super::part::{Part, Solid};
use super::stage::{self, PartGroup};
use super::surface::Surface;

/// Makes parts at one detail. How each is made stands in the file of its kind.
pub(super) struct Maker<'a> {
    pub(super) basket: &'a Basket,
    pub(super) surface: Surface,
    pub(super) detail: Detail,
    /// How it differs from what was asked for.
    pub(super) simplified: Option<Simplified>,
}

impl Maker<'_> {
    /// What exists at a stage, without a lid.
    pub(super) fn at(&self, stage: Stage) -> Solid {
        let mut solid = Solid { parts: Vec::new(), simplified: self.simplified };
        for group in stage::groups(self.basket, stage) {
            solid.extend(self.make(group, self.basket.rows_at(stage)));
        }
        solid.woven(self.basket)
    }

    /// The parts of a group, numbers rising counter-clockwise; of the rows those up to a number.
    pub(super) fn make(&self, group: PartGroup, rows: u32) -> Vec<Part> {
        let parts = match group {
            PartGroup::Base => vec![self.base()],
            PartGroup::Screw => vec![self.screw()],
            PartGroup::Plug => vec![self.plug()],
            PartGroup::Mould => vec![self.mould()],
            PartGroup::StavesSet => self.staves(Stage::StavesSet, &[]),
            PartGroup::StavesShaved => self.staves(Stage::RimClamped, &self.shaves()),
            PartGroup::StavesTrimmed => self.staves(Stage::Pinned, &self.shaves()),
            PartGroup::Band => vec![self.band(0.0)],
            PartGroup::BandOnRows => vec![self.band(self.thickest_weaver())],
            PartGroup::Rows => self.rows(rows),
            PartGroup::Ears => self.ears(),
            // They lie beside the mould.
            PartGroup::RingsReady => return self.rings_ready(),
            PartGroup::Hoops => vec![self.outer_hoop(), self.inner_hoop()],
            PartGroup::Clamps => self.clamps(),
            PartGroup::Pins => self.pins(),
            PartGroup::Filler => self.filler(),
            PartGroup::Lashing => self.wraps(),
            PartGroup::Handle => self.handle(),
        };
        self.outlined(parts)
    }

    /// Share of its height to which the weaving is pressed down, so that the lashing finds room between
    /// the last row and the rim.
    pub(super) fn packed(&self) -> f32 {
        let top = self.basket.body.weave.top_along.to_mm() as f32;
        let room = self.lashing_height();
        if top > 0.0 { (1.0 - room / top).max(0.5) } else { 1.0 }
    }
}
