//! The ways to set two ears opposite on a count of staves.

use std::f64::consts::TAU;

use crate::measure::{Angle, Length};
use crate::pattern::EarPlacing;

/// One ear.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Ear {
    /// Its middle, as a fraction of the way round.
    pub turn: f64,
    /// The nearest stave.
    pub stave: u32,
    /// How far its middle is off that stave's, along the rim; positive toward higher numbers.
    pub off_stave: Length,
}

/// What one way of placing would give.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct EarOption {
    /// The way.
    pub placing: EarPlacing,
    /// How far off opposite.
    pub off_opposite: Angle,
    /// The same along the rim.
    pub off_opposite_rim: Length,
    /// The larger distance of an ear's middle from its stave's.
    pub off_stave: Length,
}

impl Ear {
    /// The stave, of so many, on the side to which it is off its own.
    pub fn toward(&self, count: u32) -> u32 {
        beside(self.stave, self.off_stave < Length::ZERO, count)
    }
}

/// The neighbour of a stave, toward lower or higher numbers.
pub(super) fn beside(stave: u32, lower: bool, count: u32) -> u32 {
    match (lower, stave) {
        (true, 0 | 1) => count.max(1),
        (true, _) => stave - 1,
        (false, _) => stave % count.max(1) + 1,
    }
}

/// Places of both ears, counted in quarters of the staves' pitch from the middle of stave 1.
pub(super) struct Places {
    count: u64,
    quarters: [u64; 2],
}

impl Places {
    pub(super) fn of(placing: EarPlacing, count: u32) -> Self {
        let count = u64::from(count.max(1));
        let facing = 2 * count;
        let quarters = match placing {
            EarPlacing::OnStaves => [0, count.div_ceil(2) % count * 4],
            EarPlacing::StaveAndGap if count.is_multiple_of(2) => [0, facing + 2],
            EarPlacing::StaveAndGap | EarPlacing::ByAngle => [0, facing],
            EarPlacing::Shared => [1, facing + 1],
        };
        Self { count, quarters }
    }

    /// Quarters of a pitch by which the second ear misses the place that faces the first.
    fn quarters_off_opposite(&self) -> u64 {
        let [first, second] = self.quarters;
        (first + 2 * self.count).abs_diff(second)
    }

    /// Quarters of a pitch from the farther ear to its stave.
    fn quarters_off_stave(&self) -> u64 {
        let [first, second] = self.quarters.map(|place| quarters_from_stave(place).unsigned_abs());
        first.max(second)
    }

    pub(super) fn off_opposite(&self) -> Angle {
        Angle::radians(TAU * self.quarters_off_opposite() as f64 / (4 * self.count) as f64)
    }

    pub(super) fn each(&self, girth: Length) -> [Ear; 2] {
        let round = (4 * self.count) as f64;
        self.quarters.map(|place| {
            let off = quarters_from_stave(place);
            let index = place.saturating_add_signed(-off) / 4 % self.count;
            Ear {
                turn: place as f64 / round % 1.0,
                stave: index as u32 + 1,
                off_stave: girth * (off as f64 / round),
            }
        })
    }
}

/// From the nearest stave's middle to a place in quarters: −1 to 2.
fn quarters_from_stave(place: u64) -> i64 {
    match place % 4 {
        0 => 0,
        1 => 1,
        2 => 2,
        _ => -1,
    }
}

/// All ways of placing on a count of staves, least error first.
pub(super) fn options(count: u32, girth: Length) -> Vec<EarOption> {
    let ways = [EarPlacing::OnStaves, EarPlacing::StaveAndGap, EarPlacing::Shared, EarPlacing::ByAngle];
    let mut ways = ways.map(|placing| (placing, Places::of(placing, count)));
    ways.sort_by_key(|(_, places)| (places.quarters_off_opposite(), places.quarters_off_stave()));
    ways.iter()
        .map(|(placing, places)| EarOption {
            placing: *placing,
            off_opposite: places.off_opposite(),
            off_opposite_rim: girth * (places.off_opposite().to_radians() / TAU),
            off_stave: girth * (places.quarters_off_stave() as f64 / (4 * places.count) as f64),
        })
        .collect()
}
