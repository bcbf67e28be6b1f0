//! What a handle swings over, seen from above: where a place beside the line through its pivots lies.

use std::f64::consts::TAU;

use crate::form::{Level, Off};
use crate::measure::{Angle, Length};
use crate::uprights::short_way;

/// How near to the middle, in mm, and to an axis a handle stands whose four quarters are alike.
const NEAR: f64 = 1e-6;

/// The basket below a handle, seen from above.
#[derive(Clone, Debug)]
pub enum Plan {
    /// A round one.
    Round {
        /// How far the line through the pivots misses the middle.
        off_middle: Length,
    },
    /// One of another outline.
    Drawn(Box<Drawn>),
}

/// An outline with a handle over it, in mm from its middle.
#[derive(Clone, Debug)]
pub struct Drawn {
    rim: Off,
    /// Girth over 2π of the level on which the pivots stand; the wall below is taken to lie at an even distance from it.
    radius: f64,
    /// The middle between the pivots.
    middle: [f64; 2],
    /// From there toward the first; of length 1.
    along: [f64; 2],
    /// Where the pivots stand, as shares of the way round.
    turns: [f64; 2],
    /// Whether all four quarters about the handle are alike.
    even: bool,
}

impl Plan {
    /// The plan of a wall whose pivots stand on a level at these shares of its round; `off_middle` of a round
    /// one.
    pub fn of(level: &Level<'_>, turns: [f64; 2], off_middle: Length) -> Self {
        if level.is_round() {
            return Self::Round { off_middle };
        }
        let [first, second] = turns.map(|turn| level.place(turn));
        let middle = [f64::midpoint(first[0], second[0]), f64::midpoint(first[1], second[1])];
        let way = [first[0] - middle[0], first[1] - middle[1]];
        let half = libm::hypot(way[0], way[1]).max(NEAR);
        let along = way.map(|part| part / half);
        let central = libm::hypot(middle[0], middle[1]) < NEAR;
        let level_or_upright = (along[0] * along[1]).abs() < NEAR;
        let even = level.is_even() && central && level_or_upright;
        let (rim, radius) = (Off::of(&|turn| level.at(turn)), level.radius().to_mm());
        Self::Drawn(Box::new(Drawn { rim, radius, middle, along, turns, even }))
    }

    /// The sides on which a handle whose halves are alike meets different things.
    pub(super) fn sides(&self) -> Vec<Beside<'_>> {
        let all = [[1.0, 1.0], [1.0, -1.0], [-1.0, 1.0], [-1.0, -1.0]];
        let take = match self {
            Self::Round { off_middle } if *off_middle == Length::ZERO => 1,
            Self::Round { .. } => 2,
            Self::Drawn(drawn) => {
                if drawn.even {
                    1
                } else {
                    4
                }
            }
        };
        all.into_iter().take(take).map(|signs| Beside { plan: self, signs }).collect()
    }
}

/// One side of a handle.
#[derive(Clone, Copy)]
pub(super) struct Beside<'a> {
    plan: &'a Plan,
    /// To which side along the line through the pivots, and to which aside of it.
    signs: [f64; 2],
}

impl Beside<'_> {
    /// Girth over 2π of the level of the wall on which a place lies, so far along the line through the pivots
    /// and aside of it; in mm.
    pub(super) fn radius(&self, along: f64, aside: f64) -> f64 {
        match self.plan {
            Plan::Round { off_middle } => libm::hypot(along, aside + self.signs[1] * off_middle.to_mm()),
            Plan::Drawn(drawn) => drawn.radius + drawn.rim.distance(drawn.place(self.signs, along, aside)),
        }
    }

    /// How far round from the nearer pivot that is, as an angle of a circle of the same girth.
    pub(super) fn way_from_ear(&self, along: f64, aside: f64) -> Angle {
        match self.plan {
            Plan::Round { off_middle } => {
                let aside = aside + self.signs[1] * off_middle.to_mm();
                Angle::radians(libm::atan2(aside.abs(), along))
            }
            Plan::Drawn(drawn) => {
                let turn = drawn.rim.turn(drawn.place(self.signs, along, aside));
                let [first, second] = drawn.turns.map(|pivot| short_way(pivot, turn).abs());
                Angle::radians(first.min(second) * TAU)
            }
        }
    }
}

impl Drawn {
    fn place(&self, [forth, side]: [f64; 2], along: f64, aside: f64) -> [f64; 2] {
        let ([x, y], [along_x, along_y]) = (self.middle, self.along);
        let (along, aside) = (along * forth, aside * side);
        [x + along_x * along - along_y * aside, y + along_y * along + along_x * aside]
    }
}
