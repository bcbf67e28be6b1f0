//! A level of the wall: how far it reaches, and two places on it that face each other.

use std::f64::consts::{PI, TAU};

use super::across::Across;
use super::levels::Section;
use super::outline::{Outline as _, OutlinePoint};
use super::shape::Shape;
use crate::measure::{Angle, Length};
use crate::pattern::EarAxis;

/// Places at which the bend of a level is looked at where it follows no one place of its foot.
const PLACES: u32 = 1024;
/// How near to its axis a place has to lie to be its end, in mm.
const NEAR: f64 = 1e-6;
/// How far, in turns, an axis meets the outline at most from where it would meet a circle.
const ASIDE: f64 = 0.24;
/// Halvings by which the end of an axis is found: to a billionth of the round.
const HALVINGS: u32 = 32;

/// A curve round the wall at one height.
#[derive(Clone, Copy, Debug)]
pub struct Level<'a> {
    outline: &'a Shape,
    radius: Length,
    section: Section,
}

/// The straight way between two places of a level that face each other, or nearly.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Chord {
    /// Half its length.
    pub half: Length,
    /// How far it misses the middle of the wall.
    pub off_middle: Length,
    /// How far the second place is off from facing the first, seen from the middle.
    pub off_opposite: Angle,
}

impl<'a> Level<'a> {
    /// The level of this section and girth over 2π on a foot.
    pub(super) const fn new(outline: &'a Shape, section: Section, radius: Length) -> Self {
        Self { outline, radius, section }
    }
}

impl Level<'_> {
    /// Its girth over 2π.
    pub const fn radius(&self) -> Length {
        self.radius
    }

    /// Whether it is a circle.
    pub const fn is_round(&self) -> bool {
        self.outline.is_round()
    }

    /// Whether both halves along either axis are alike.
    pub fn is_even(&self) -> bool {
        self.outline.is_even()
    }

    /// The level at the same height that lies so far outside it all round.
    #[must_use]
    pub fn grown(self, by: Length) -> Self {
        Self { radius: self.radius + by, ..self }
    }

    /// How far it reaches from edge to edge.
    pub fn across(&self) -> Across {
        let round = self.radius * TAU / PI;
        if self.is_round() {
            return Across::round(round);
        }
        let [length, width] = self.outline.across();
        let foot = self.outline.girth() / PI;
        let Section { grown, swing } = self.section;
        let over = |across: f64, more: f64| {
            (round + Length::mm(grown * (across - foot) + 2.0 * more)).max(Length::ZERO)
        };
        Across { length: over(length, swing), width: over(width, -swing) }
    }

    /// Half of how far it reaches along an axis.
    pub fn reach(&self, axis: Option<EarAxis>) -> Length {
        if self.is_round() {
            return self.radius;
        }
        let across = self.across();
        (if axis == Some(EarAxis::Short) { across.width } else { across.length }) / 2.0
    }

    /// Where an axis meets it, as shares of the way round; the long one of a round wall where it begins.
    pub fn ends(&self, axis: Option<EarAxis>) -> [f64; 2] {
        let [x, y] = self.outline.across();
        let level = (axis == Some(EarAxis::Short)) == (x < y);
        let quarters = if self.is_round() || level { [0.0, 0.5] } else { [0.25, 0.75] };
        quarters.map(|turn| self.meets(turn))
    }

    /// Where the ray in this direction from the middle, given in turns, meets the outline.
    fn meets(&self, turn: f64) -> f64 {
        let (sin, cos) = libm::sincos(turn * TAU);
        let beside = |turn: f64| {
            let [x, y] = self.place(turn);
            cos * y - sin * x
        };
        if beside(turn).abs() < NEAR {
            return turn;
        }
        let (mut from, mut to) = (turn - ASIDE, turn + ASIDE);
        for _ in 0..HALVINGS {
            let middle = f64::midpoint(from, to);
            if beside(middle) < 0.0 { from = middle } else { to = middle }
        }
        f64::midpoint(from, to).rem_euclid(1.0)
    }

    /// A place on it, in mm from the middle.
    pub fn place(&self, turn: f64) -> [f64; 2] {
        self.of_foot(&self.outline.at(turn))
    }

    /// A place on it, with its direction and bend.
    pub fn at(&self, turn: f64) -> OutlinePoint {
        let foot = self.outline.at(turn);
        OutlinePoint {
            point: self.of_foot(&foot),
            outward: foot.outward,
            curvature: self.curvature_of(&foot),
        }
    }

    /// Where a place of the foot lies on it, in mm from the middle.
    pub fn of_foot(&self, at: &OutlinePoint) -> [f64; 2] {
        self.section.place(at, self.radius.to_mm(), self.foot())
    }

    /// One over the radius round it there, in 1/mm; zero where it has none.
    pub(super) fn curvature_of(&self, at: &OutlinePoint) -> f64 {
        if at.curvature <= 0.0 {
            return 0.0;
        }
        let stretch = self.section.stretch(at, self.radius.to_mm(), self.foot());
        if stretch > 0.0 { at.curvature / stretch } else { 0.0 }
    }

    /// How many times as long as at the foot a short way along it is where it bends least and where it bends most:
    /// along the sides and round the ends.
    pub fn stretched(&self) -> [f64; 2] {
        let out = self.radius.to_mm() - self.foot();
        if self.section == Section::EVEN {
            let radii = [self.outline.flattest(), self.outline.tightest()];
            return radii.map(|radius| (1.0 + out / radius.max(1e-6)).max(0.0));
        }
        let places = (0..PLACES).map(|number| self.outline.at(f64::from(number) / f64::from(PLACES)));
        let by_bend = |a: &OutlinePoint, b: &OutlinePoint| a.curvature.total_cmp(&b.curvature);
        let [flattest, tightest] = [places.clone().min_by(by_bend), places.max_by(by_bend)];
        let stretch = |at: &OutlinePoint| self.section.stretch(at, self.radius.to_mm(), self.foot()).max(0.0);
        [flattest, tightest].map(|at| at.as_ref().map_or(1.0, stretch))
    }

    /// How far its tangent in a direction lies from the middle, in mm, where that of the foot lies so far.
    pub fn toward(&self, foot: f64, angle: f64) -> f64 {
        let Section { grown, swing } = self.section;
        grown * foot + self.radius.to_mm() - grown * self.foot() + swing * libm::cos(2.0 * angle)
    }

    /// Way along it from its beginning to the place so far round, as a share of the foot's round.
    pub fn way_to(&self, turn: f64) -> f64 {
        let [x, y] = self.outline.at(turn).outward;
        let angle = libm::atan2(y, x).rem_euclid(TAU) + TAU * turn.floor();
        let Section { grown, swing } = self.section;
        let out = self.radius.to_mm() - grown * self.foot();
        grown * self.outline.girth() * turn + out * angle - 1.5 * swing * libm::sin(2.0 * angle)
    }

    /// Its smallest radius; zero where it comes to a point.
    pub fn tightest(&self) -> Length {
        let Section { grown, swing } = self.section;
        let out = self.radius.to_mm() - grown * self.foot();
        let least = if swing == 0.0 {
            grown * self.outline.tightest() + out
        } else {
            let places = (0..PLACES).map(|number| self.outline.at(f64::from(number) / f64::from(PLACES)));
            let bends = places.filter(|at| at.curvature > 0.0);
            let radius =
                |at: OutlinePoint| self.section.stretch(&at, self.radius.to_mm(), self.foot()) / at.curvature;
            bends.map(radius).fold(f64::INFINITY, f64::min)
        };
        Length::mm(least.max(0.0))
    }

    /// Girth of the foot over 2π.
    fn foot(&self) -> f64 {
        self.outline.girth() / TAU
    }

    /// The chord between two places that are, along it, so far from facing each other: an angle of a circle
    /// of its girth.
    pub fn chord(&self, turns: [f64; 2], off: Angle) -> Chord {
        if self.is_round() {
            let half = off.to_radians() / 2.0;
            return Chord {
                half: self.radius * libm::cos(half),
                off_middle: self.radius * libm::sin(half),
                off_opposite: off,
            };
        }
        let [first, second] = turns.map(|turn| self.place(turn));
        let length = libm::hypot(first[0] - second[0], first[1] - second[1]);
        let cross = first[0] * second[1] - first[1] * second[0];
        let dot = first[0] * second[0] + first[1] * second[1];
        Chord {
            half: Length::mm(length / 2.0),
            off_middle: Length::mm(cross.abs() / length.max(NEAR)),
            off_opposite: Angle::radians((PI - libm::atan2(cross, dot).abs()).max(0.0)),
        }
    }
}
