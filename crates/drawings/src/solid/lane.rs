//! Which part of a row's height each of its weavers takes up.

use basket::stock::Material;
use basket::weave::{Cell, Course};

/// The part of a row's height that a weaver takes up.
#[derive(Clone, Copy)]
pub(super) struct Band {
    pub(super) from: f32,
    pub(super) to: f32,
}

/// What a weaver takes of a row's height.
pub(super) struct Lane<'a> {
    /// Number of the weaver within its course, from 0.
    pub(super) weaver: u32,
    pub(super) stock: &'a Material,
    /// From where to where it lies, as shares of the row's height.
    pub(super) band: Band,
    /// How many weavers are twined in the row.
    pub(super) twined: u32,
    /// Width of all weavers that lie one above the other, in mm.
    pub(super) width: f32,
}

impl<'a> Lane<'a> {
    /// The weavers of a row (from 0 within its course): one, or several one above the other, or several
    /// twined.
    pub(super) fn of(course: &'a Course, row: u32) -> Vec<Self> {
        let whole = Band { from: 0.0, to: 1.0 };
        let width = |stock: &Material| stock.width.to_mm() as f32;
        let stock = |weaver: u32| {
            course.weavers.get(weaver as usize).map_or(&course.weaver, |amount| &amount.material)
        };
        let twined = course.fabric.twined();
        if twined > 1 {
            let lane = |weaver| {
                let width = width(stock(weaver)) * (twined - 1) as f32;
                Self { weaver, stock: stock(weaver), band: whole, twined, width }
            };
            return (0..twined).map(lane).collect();
        }
        let mut lying: Vec<u32> = (0..)
            .zip(&course.weavers)
            .filter(|(_, amount)| amount.lies_in(row))
            .map(|(weaver, _)| weaver)
            .collect();
        if lying.is_empty() {
            lying.push(0);
        }
        let all: f32 = lying.iter().map(|weaver| width(stock(*weaver))).sum();
        let mut below = 0.0;
        let lane = |weaver: u32| {
            let from = below / all.max(1e-6);
            below += width(stock(weaver));
            let band = Band { from, to: below / all.max(1e-6) };
            Self { weaver, stock: stock(weaver), band, twined: 1, width: all }
        };
        lying.into_iter().map(lane).collect()
    }
}

impl Lane<'_> {
    /// Where the weaver lies in a gap in which it changes sides. Weavers twined together pass each other
    /// there: the one going in below, the one coming out above.
    pub(super) fn crossing(&self, crosses: i8) -> Option<Band> {
        if self.twined < 2 || crosses == 0 {
            return None;
        }
        let share = 1.0 / self.twined.saturating_sub(1).max(2) as f32;
        Some(if crosses < 0 { Band { from: 0.0, to: share } } else { Band { from: 1.0 - share, to: 1.0 } })
    }

    /// Where the weaver lies at a stave. Of several twined outside a stave, the one that came out last
    /// lies uppermost and the one that goes in next lowest.
    pub(super) fn at(&self, cell: Cell) -> Band {
        if self.twined < 3 {
            return self.band;
        }
        let lanes = self.twined - 1;
        let phase = (self.weaver + self.twined - cell.outside.unwrap_or(0) % self.twined) % self.twined;
        let lane = match phase {
            0 => (lanes - 1) as f32,
            1 => (lanes - 1) as f32 / 2.0,
            _ => (phase - 2) as f32,
        };
        Band { from: lane / lanes as f32, to: (lane + 1.0) / lanes as f32 }
    }
}
