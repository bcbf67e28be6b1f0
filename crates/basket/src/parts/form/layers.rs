//! A mould glued up from boards: what each board has to hold.

use super::{Form, Level};
use crate::measure::{Angle, Length};
use crate::pattern::EarAxis;

/// Heights of a board at which the side is looked at.
const LOOKS: u32 = 17;
/// Wood that is left to be turned or planed away all round (common practice: 1/8 in).
const ALLOWANCE: Length = Length::inches(0.125);
/// Thickness of wall that a hollow mould keeps behind its surface (common practice: 1 1/4 in).
const WALL: Length = Length::inches(1.25);
/// A hole smaller than this across is not worth its saw cut.
const LEAST_HOLE: Length = Length::inches(1.5);
/// More boards than this are no mould.
const MOST: u32 = 500;

/// One board of a mould. Its outlines are levels of the mould, known by their height and radius: girth over 2π.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Layer {
    /// Counted from the foot.
    pub number: u32,
    /// Height of its lower face above the foot.
    pub from: Length,
    /// Height of its upper face.
    pub to: Length,
    /// Radius of its blank, with what is turned away.
    pub blank: Length,
    /// Radius of the finished surface at its lower and at its upper face.
    pub faces: [Length; 2],
    /// Radius of the hole that may be sawn out; none where it stays whole.
    pub hole: Option<Length>,
    /// How far its edge leans out on the whole: the bevel of a saw that cuts it.
    pub bevel: Angle,
}

impl Layer {
    /// Height and radius of the larger of its faces.
    pub fn larger(&self) -> (Length, Length) {
        let [low, high] = self.faces;
        if high > low { (self.to, high) } else { (self.from, low) }
    }

    /// Height whose level gives the shape of its blank, and the radius of that.
    pub fn blank_level(&self) -> (Length, Length) {
        (self.larger().0, self.blank)
    }

    /// Height whose level gives the shape of its hole, and the radius of that: the narrower of its faces.
    pub fn hole_level(&self) -> Option<(Length, Length)> {
        let [low, high] = self.faces;
        self.hole.map(|hole| (if high < low { self.to } else { self.from }, hole))
    }
}

impl Form {
    /// The boards of this thickness that make the mould, from the foot upward; the last one may be thinner. The
    /// lowest stays whole: it takes the screw.
    pub fn layers(&self, board: Length) -> Vec<Layer> {
        let height = self.height();
        let count = (height / board.max(Length::mm(1.0)) - 1e-9).ceil().clamp(0.0, f64::from(MOST)) as u32;
        let faces = |number: u32| [number - 1, number].map(|face| (board * f64::from(face)).min(height));
        (1..=count)
            .map(|number| {
                let [from, to] = faces(number);
                let [low, high] = [from, to].map(|up| self.level_up(up));
                let [smaller, larger] = if high.radius() > low.radius() { [low, high] } else { [high, low] };
                let looks = |number: u32| {
                    let [from, to] = faces(number.clamp(1, count));
                    (0..LOOKS).map(move |look| from + (to - from) * (f64::from(look) / f64::from(LOOKS - 1)))
                };
                let beyond = |up: Length, than: &Level<'_>| beyond(&self.level_up(up), than);
                let most = looks(number).flat_map(|up| beyond(up, &larger)).fold(Length::ZERO, Length::max);
                // Each ring has to lie on its neighbours.
                let near = [number - 1, number, number + 1].into_iter().flat_map(looks);
                let least = near.flat_map(|up| beyond(up, &smaller)).fold(Length::ZERO, Length::min);
                let hole = smaller.grown(least - WALL);
                // An outline so far inside must not come to a point at its ends.
                let open = hole.radius() * 2.0 >= LEAST_HOLE && hole.tightest() > Length::ZERO && number > 1;
                let lean = libm::atan2((high.radius() - low.radius()).to_mm(), (to - from).to_mm());
                Layer {
                    number,
                    from,
                    to,
                    blank: larger.radius() + most + ALLOWANCE,
                    faces: [low, high].map(|face| face.radius()),
                    hole: open.then_some(hole.radius()),
                    bevel: Angle::radians(lean),
                }
            })
            .collect()
    }

    /// Its own level at a height.
    fn level_up(&self, height: Length) -> Level<'_> {
        self.level_at(self.profile.along_at_height(height))
    }
}

/// How far a level reaches beyond another, along both axes.
fn beyond(level: &Level<'_>, than: &Level<'_>) -> [Length; 2] {
    [EarAxis::Long, EarAxis::Short].map(|axis| level.reach(Some(axis)) - than.reach(Some(axis)))
}
