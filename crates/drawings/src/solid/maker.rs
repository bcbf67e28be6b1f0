//! Makes the parts of a basket group by group, so that drawings of several stages can share them.

use std::sync::OnceLock;

use basket::steps::Stage;
use basket::{Basket, Length};

use super::stage::{self, Group};
use super::surface::Surface;
use super::{
    Detail, Part, PartKind, Solid, base, clamp, ear, handle, lashing, pin, rim, row, sagitta, stave,
};

/// Slack between the mould as drawn and the weavers on it, in mm.
const MOULD_SLACK: f32 = 0.1;

/// Makes parts at one detail.
pub(super) struct Maker<'a> {
    pub(super) basket: &'a Basket,
    pub(super) surface: Surface,
    pub(super) detail: Detail,
}

impl Maker<'_> {
    /// The parts of a group, numbers rising counter-clockwise; of the rows those up to a number.
    pub(super) fn make(&self, group: Group, rows: u32) -> Vec<Part> {
        let Self { basket, surface, detail } = self;
        let detail = *detail;
        let staves = |stage| {
            let shaves = if stage >= Stage::EarsSet { ear::shaves(basket) } else { Vec::new() };
            stave::staves(basket, surface, stage::tips(basket, stage), &shaves, detail)
        };
        match group {
            Group::Base => vec![base::base(basket, detail)],
            Group::Screw => vec![base::screw(basket, detail)],
            Group::Plug => vec![base::plug(basket, detail)],
            Group::Mould => {
                let behind = thickest_weaver(basket) + MOULD_SLACK + sagitta(detail);
                vec![base::mould(basket, surface, behind, detail)]
            }
            Group::StavesSet => staves(Stage::StavesSet),
            Group::StavesShaved => staves(Stage::EarsSet),
            Group::StavesTrimmed => staves(Stage::Pinned),
            Group::Band => vec![base::band(basket, surface, detail)],
            Group::Rows => row::rows(basket, surface, rows, packed(basket), detail),
            Group::Ears => ear::ears(basket, surface, detail),
            Group::Hoops => vec![rim::outer(basket, surface, detail), rim::inner(basket, surface, detail)],
            Group::Clamps => clamp::clamps(basket, surface),
            Group::Pins => pin::pins(basket, surface, detail),
            Group::Filler => rim::filler(basket, surface, detail),
            Group::Lashing => lashing::wraps(basket, surface, detail),
            Group::Handle => handle::handle(basket, surface, detail),
        }
    }
}

/// Share of its height to which the weaving is pressed down, so that the lashing finds room between
/// the last row and the rim.
fn packed(basket: &Basket) -> f32 {
    let top = basket.body.weave.top_along.to_mm() as f32;
    let room = lashing::height(basket);
    if top > 0.0 { (1.0 - room / top).max(0.5) } else { 1.0 }
}

fn thickest_weaver(basket: &Basket) -> f32 {
    let thickness = basket.body.weave.courses.iter().map(|course| course.weaver.thickness);
    thickness.fold(Length::ZERO, Length::max).to_mm() as f32
}

/// The parts of a basket at one detail, each made when it is first wanted.
pub(crate) struct Stock<'a> {
    maker: Maker<'a>,
    groups: [OnceLock<Vec<Part>>; Group::COUNT],
}

impl<'a> Stock<'a> {
    pub(crate) fn of(basket: &'a Basket, detail: Detail) -> Self {
        let maker = Maker { basket, surface: Surface::of(basket), detail };
        Self { maker, groups: std::array::from_fn(|_| OnceLock::new()) }
    }

    /// What exists at a stage: the same parts as in [`solid`](super::solid), apart from
    /// [`Part::turned`], which counts within a group.
    pub(crate) fn at(&self, stage: Stage) -> Vec<&Part> {
        let upto = stage::rows(self.maker.basket, stage);
        let woven = |part: &&Part| part.kind != PartKind::Row || part.number.is_some_and(|row| row <= upto);
        stage::groups(stage).flat_map(|group| self.group(group)).filter(woven).collect()
    }

    /// The tails of the lashing before they are cut: of its start and of its end.
    pub(crate) fn tails(&self) -> Vec<Part> {
        let Maker { basket, surface, .. } = &self.maker;
        Solid { parts: lashing::tails(basket, surface) }.mirrored().parts
    }

    fn group(&self, group: Group) -> &[Part] {
        self.groups[group as usize].get_or_init(|| {
            let parts = self.maker.make(group, self.maker.basket.body.weave.rows);
            Solid { parts }.mirrored().parts
        })
    }
}
