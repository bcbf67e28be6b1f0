//! The parts of a basket, kept so that drawings of several stages can share them.

use std::sync::OnceLock;

use basket::Basket;
use basket::steps::Stage;

use super::cover::{self, LidPose};
use super::detail::{Detail, Simplified};
use super::maker::Maker;
use super::part::{Part, Solid};
use super::stage::{self, PartGroup};

/// The parts of a basket at one detail, each made when it is first wanted.
pub(crate) struct PartCache<'a> {
    maker: Maker<'a>,
    groups: [OnceLock<Vec<Part>>; PartGroup::COUNT],
    lids: [OnceLock<Vec<Part>>; LidPose::ALL.len()],
}

impl<'a> PartCache<'a> {
    pub(crate) fn of(basket: &'a Basket, detail: Detail) -> Self {
        Self {
            maker: Maker::of(basket, detail),
            groups: std::array::from_fn(|_| OnceLock::new()),
            lids: std::array::from_fn(|_| OnceLock::new()),
        }
    }

    /// How its parts differ from what was asked for.
    pub(crate) fn simplified(&self) -> Option<Simplified> {
        self.maker.simplified
    }

    /// The lid as it is shown; nothing where there is none.
    pub(crate) fn lid(&self, pose: LidPose) -> Vec<&Part> {
        self.lids[pose as usize].get_or_init(|| cover::parts(&self.maker, pose)).iter().collect()
    }

    /// What exists at a stage, without the lid: the same parts as in [`solid`](super::solid), apart from
    /// [`Part::turned`], which counts within a group.
    pub(crate) fn at(&self, stage: Stage) -> Vec<&Part> {
        let upto = self.maker.basket.rows_at(stage);
        let woven = |part: &&Part| part.row().is_none_or(|row| row <= upto);
        stage::groups(self.maker.basket, stage).flat_map(|group| self.group(group)).filter(woven).collect()
    }

    /// The tails of the lashing before they are cut: of its start and of its end.
    pub(crate) fn tails(&self) -> Vec<Part> {
        Solid { parts: self.maker.outlined(self.maker.tails()), simplified: None }
            .woven(self.maker.basket)
            .parts
    }

    fn group(&self, group: PartGroup) -> &[Part] {
        self.groups[group as usize].get_or_init(|| {
            let parts = self.maker.make(group, self.maker.basket.body.weave.rows);
            Solid { parts, simplified: None }.woven(self.maker.basket).parts
        })
    }
}
