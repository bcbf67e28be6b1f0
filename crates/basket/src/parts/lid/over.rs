//! How a cap sits: over the rim of its basket, its wall inside on the rim's upper edge.

use super::rims::edge;
use crate::measure::Length;
use crate::parts::vessel::Vessel;

/// How far a cap reaches down over the rim at least (common practice: 1/4 in).
pub const LEAST_DOWN: Length = Length::inches(0.25);
/// Halvings by which the place is found where a cap rests: to a millionth of its wall.
const HALVINGS: u32 = 20;
/// Places of the basket's wall that are looked at below its rim.
const LOOKS: u32 = 32;

/// Where a cap rests on the rim, and how far it goes over it.
#[derive(Clone, Debug, PartialEq)]
pub struct Over {
    /// Where the rim touches the cap's wall inside, along that wall.
    pub along: Length,
    /// How far the cap's rim reaches down from there.
    pub down: Length,
}

impl Over {
    /// A cap on the rim of a basket. Weavers touch the form, so that the form is the inner face of the wall.
    pub(crate) fn of(body: &Vessel, lid: &Vessel) -> Self {
        let edge = edge(body);
        let wall = lid.profile();
        let rim = lid.rim();
        let (mut from, mut to) = (Length::ZERO, rim.along);
        for _ in 0..HALVINGS {
            let middle = (from + to) / 2.0;
            if wall.at(middle).radius < edge { from = middle } else { to = middle }
        }
        let down = wall.at(rim.along + rim.height).height - wall.at(from).height;
        Self { along: from, down }
    }

    /// Girth over 2π of all that a cap goes over: the lashed rim, and the wall below it where that is wider.
    pub(crate) fn widest(&self, body: &Vessel) -> Length {
        let (rim, uprights) = (body.rim(), body.uprights());
        let weavers = body.weave.courses.iter().flat_map(|course| &course.weavers);
        let weaver = weavers.map(|weaver| weaver.material.thickness).fold(Length::ZERO, Length::max);
        let top = body.profile().at(rim.along + rim.height).height;
        let wall =
            (0..=LOOKS).map(|look| body.profile().at(rim.along * (f64::from(look) / f64::from(LOOKS))));
        let covered = wall.filter(|spot| top - spot.height <= self.down);
        let outside = |along: Length| uprights.standing.at(along) + uprights.thickness + weaver;
        covered.map(|spot| spot.radius + outside(spot.along)).fold(edge(body), Length::max)
    }
}
