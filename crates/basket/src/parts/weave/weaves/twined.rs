//! Weavers twisted round each other: pairing and waling.

use std::ops::Range;

use super::answers::{Answers, Cell, Moves};
use super::over_under;
use crate::measure::Length;
use crate::pattern::{Direction, WeaveKind};
use crate::stock::Material;

/// Several weavers twisted round each stave in turn: two are pairing, three and more a wale. Each passes in
/// front of all staves of its repeat but one.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Twined {
    /// How many weavers.
    pub weavers: u32,
    /// Whether each round begins afresh (a step up), so that rings lie level.
    pub step_up: bool,
}

impl Twined {
    /// Staves that a weaver passes in front of.
    fn float(self) -> u32 {
        self.weavers() - 1
    }
}

impl Answers for Twined {
    fn cell(&self, row: u32, place: u32, count: u32) -> Cell {
        let weavers = self.weavers();
        let rounds = if self.step_up { 0 } else { u64::from(row) };
        let first = ((u64::from(place) + rounds * u64::from(count)) % u64::from(weavers)) as u32;
        Cell { outside: Some(first), inside: Some((first + 1) % weavers) }
    }
    fn period(&self) -> u32 {
        self.weavers()
    }
    fn rows(&self, _count: u32) -> u32 {
        self.weavers()
    }
    fn weavers(&self) -> u32 {
        self.weavers.max(2)
    }
    fn twined(&self) -> u32 {
        self.weavers()
    }
    fn rise(&self) -> u32 {
        u32::from(!self.step_up)
    }
    /// A round of pairing is 1.6 to 2.0 thicknesses of a round weaver high and one of a three-rod wale 2.3 to 2.6
    /// (common practice): over the weavers that lie on the outside of a stave, all but one, those that pass
    /// behind it wedge the round up by a share of their thickness. Wales of four and five rods are taken to
    /// be wedged up as one of three.
    fn climb(&self, weaver: &Material) -> Length {
        let wedge = if self.weavers() == 2 { 0.8 } else { 0.45 };
        weaver.width * f64::from(self.weavers() - 2) + weaver.thickness * wedge
    }
    fn outward(&self) -> f64 {
        over_under::share(f64::from(self.float()), 1.0)
    }
    fn kind(&self) -> WeaveKind {
        if self.weavers() == 2 { WeaveKind::Pairing } else { WeaveKind::Wale(self.weavers()) }
    }
    fn keys(&self, _direction: Direction) -> Vec<(&'static str, String)> {
        if self.step_up { vec![("step-up", "true".to_owned())] } else { Vec::new() }
    }
    fn moves(&self) -> Moves {
        Moves::Twined { over: self.float() }
    }
    fn work(&self) -> f64 {
        f64::from(self.weavers()) * 0.75 + if self.step_up { 1.0 } else { 0.0 }
    }
    /// A twined row holds by itself.
    fn holds(&self, _count: u32) -> bool {
        true
    }
    fn changes(&self, _row: u32, _begin: u32, count: u32) -> u32 {
        2 * count / self.weavers()
    }
    fn float_staves(&self, _rows: Range<u32>, _count: u32) -> u32 {
        self.float()
    }
    fn float_rows(&self, _rows: Range<u32>, _count: u32) -> u32 {
        1
    }
}
