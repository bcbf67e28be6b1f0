//! The ways to set two ears opposite on a count of staves.

use std::f64::consts::TAU;

use crate::form::{Chord, Level};
use crate::measure::{Angle, Length};
use crate::pattern::{EarAxis, EarPlacing};

/// How near to a quarter of a pitch is one, in quarters.
const NEAR: f64 = 1e-9;

/// One ear.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Ear {
    /// Its middle, as a fraction of the way round.
    pub turn: f64,
    /// The nearest stave.
    pub stave: u32,
    /// How far its middle is off that stave's, along the rim; positive toward higher numbers.
    pub off_stave: Length,
    /// How far its middle is off the end of the axis on which ears stand; positive toward higher numbers.
    pub off_axis: Length,
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

/// Where ears may stand: a level of the wall, the count of its staves, and the axis, none of a round one.
#[derive(Clone, Copy)]
pub(super) struct Stand<'a> {
    pub(super) level: Level<'a>,
    pub(super) girth: Length,
    pub(super) count: u32,
    pub(super) axis: Option<EarAxis>,
}

impl Stand<'_> {
    /// Once round, in quarters of the staves' pitch.
    fn round(&self) -> f64 {
        4.0 * f64::from(self.count.max(1))
    }
}

/// Places of both ears, counted in quarters of the staves' pitch from the middle of stave 1.
pub(super) struct Places<'a> {
    stand: Stand<'a>,
    /// The ends of the axis.
    ends: [f64; 2],
    quarters: [f64; 2],
}

impl<'a> Places<'a> {
    pub(super) fn of(placing: EarPlacing, stand: Stand<'a>) -> Self {
        let round = stand.round();
        let ends = stand.level.ends(stand.axis).map(|turn| turn * round);
        let first = stave_near(ends[0]);
        let quarters = match placing {
            EarPlacing::OnStaves => ends.map(stave_near),
            // The gap that faces the first; on an even count, where a stave does, the one beside it.
            EarPlacing::StaveAndGap => [first, stave_near(first + ends[1] - ends[0] - 2.0) + 2.0],
            EarPlacing::ByAngle => ends,
            // On the short axis an odd count shares the error by itself.
            EarPlacing::Shared if (off_stave(ends[0]).abs() - 1.0).abs() < NEAR => ends,
            EarPlacing::Shared => ends.map(|end| end + 1.0),
        };
        Self { stand, ends, quarters: quarters.map(|place| place % round) }
    }

    /// Once round.
    fn round(&self) -> f64 {
        self.stand.round()
    }

    /// By how much each misses its end of the axis: the short way.
    fn off_ends(&self) -> [f64; 2] {
        let [first, second] = self.ends;
        let off = |place: f64, end: f64| {
            let turn = (place - end) / self.round();
            if turn.abs() > 0.5 { place - end - self.round() * turn.round() } else { place - end }
        };
        [off(self.quarters[0], first), off(self.quarters[1], second)]
    }

    /// Quarters of a pitch by which the second ear misses the place that faces the first.
    fn quarters_off_opposite(&self) -> f64 {
        let [first, second] = self.off_ends();
        (first - second).abs()
    }

    /// Quarters of a pitch from the farther ear to its stave.
    fn quarters_off_stave(&self) -> f64 {
        let [first, second] = self.quarters.map(|place| off_stave(place).abs());
        first.max(second)
    }

    /// By how much the second misses the place that faces the first, as an angle of a circle of the same girth.
    fn off_opposite(&self) -> Angle {
        Angle::radians(TAU * self.quarters_off_opposite() / self.round())
    }

    /// The same along the level.
    pub(super) fn off_opposite_rim(&self) -> Length {
        self.stand.level.radius() * self.off_opposite().to_radians()
    }

    pub(super) fn turns(&self) -> [f64; 2] {
        self.quarters.map(|place| place / self.round() % 1.0)
    }

    /// The straight way between them on a level.
    pub(super) fn chord(&self) -> Chord {
        self.stand.level.chord(self.turns(), self.off_opposite())
    }

    pub(super) fn each(&self) -> [Ear; 2] {
        let girth = self.stand.girth;
        let ear = |place: f64, off_axis: f64| {
            let off = off_stave(place);
            let index = ((place - off) / 4.0).round() as u32 % self.stand.count.max(1);
            Ear {
                turn: place / self.round() % 1.0,
                stave: index + 1,
                off_stave: girth * (off / self.round()),
                off_axis: girth * (off_axis / self.round()),
            }
        };
        let ([first, second], [first_off, second_off]) = (self.quarters, self.off_ends());
        [ear(first, first_off), ear(second, second_off)]
    }
}

/// The stave nearest to a place, in quarters; of two equally near ones the later.
fn stave_near(place: f64) -> f64 {
    libm::floor(place / 4.0 + 0.5) * 4.0
}

/// From the nearest stave's middle to a place in quarters: more than −2, to 2.
fn off_stave(place: f64) -> f64 {
    let beyond = place.rem_euclid(4.0);
    if beyond > 2.0 { beyond - 4.0 } else { beyond }
}

/// All ways of placing, least error first.
pub(super) fn options(stand: Stand<'_>) -> Vec<EarOption> {
    let ways = [EarPlacing::OnStaves, EarPlacing::StaveAndGap, EarPlacing::Shared, EarPlacing::ByAngle];
    let mut ways = ways.map(|placing| (placing, Places::of(placing, stand)));
    ways.sort_by(|(_, a), (_, b)| {
        let opposite = a.quarters_off_opposite().total_cmp(&b.quarters_off_opposite());
        opposite.then(a.quarters_off_stave().total_cmp(&b.quarters_off_stave()))
    });
    ways.iter()
        .map(|(placing, places)| EarOption {
            placing: *placing,
            off_opposite: places.chord().off_opposite,
            off_opposite_rim: stand.girth * (places.off_opposite().to_radians() / TAU),
            off_stave: stand.girth * (places.quarters_off_stave() / places.round()),
        })
        .collect()
}
