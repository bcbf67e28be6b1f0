//! A mould glued up from boards: what each board has to hold.

use super::Form;
use crate::measure::{Angle, Length};

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

/// One board of a mould. Its outlines are the mould's own at a distance, known by the radius of their level: girth
/// over 2π.
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

impl Form {
    /// The boards of this thickness that make the mould, from the foot upward; the last one may be thinner. The
    /// lowest stays whole: it takes the screw.
    pub fn layers(&self, board: Length) -> Vec<Layer> {
        let height = self.height();
        let count = (height / board.max(Length::mm(1.0)) - 1e-9).ceil().clamp(0.0, f64::from(MOST)) as u32;
        let faces = |number: u32| [number - 1, number].map(|face| (board * f64::from(face)).min(height));
        let reach = |number: u32| {
            let [from, to] = faces(number.clamp(1, count));
            let radius = |look: u32| {
                let up = from + (to - from) * (f64::from(look) / f64::from(LOOKS - 1));
                self.profile.at(self.profile.along_at_height(up)).radius
            };
            let all = || (0..LOOKS).map(radius);
            [all().fold(self.profile.widest(), Length::min), all().fold(Length::ZERO, Length::max)]
        };
        let tightest = self.tightest(Length::ZERO, Length::ZERO);
        let foot = self.girth_base() / std::f64::consts::TAU;
        (1..=count)
            .map(|number| {
                let [from, to] = faces(number);
                let radius = |up: Length| self.profile.at(self.profile.along_at_height(up)).radius;
                // Each ring has to lie on its neighbours.
                let near = [number - 1, number, number + 1].map(|near| reach(near)[0]);
                let hole = near.into_iter().fold(self.profile.widest(), Length::min) - WALL;
                // An outline so far inside must not come to a point at its ends.
                let open = hole * 2.0 >= LEAST_HOLE && foot - hole < tightest && number > 1;
                let lean = libm::atan2((radius(to) - radius(from)).to_mm(), (to - from).to_mm());
                Layer {
                    number,
                    from,
                    to,
                    blank: reach(number)[1] + ALLOWANCE,
                    faces: [radius(from), radius(to)],
                    hole: open.then_some(hole),
                    bevel: Angle::radians(lean),
                }
            })
            .collect()
    }
}
