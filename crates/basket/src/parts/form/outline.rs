//! Outlines seen from above: closed convex curves, walked counter-clockwise by a share of their length.

use std::f64::consts::TAU;

/// A place on an outline, in mm.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct OutlinePoint {
    /// Across and along, from the middle.
    pub point: [f64; 2],
    /// Away from the middle, square to the outline; of length 1.
    pub outward: [f64; 2],
    /// One over the radius of the curve here, in 1/mm.
    pub curvature: f64,
}

/// The shape of a mould's foot seen from above: closed, convex and smooth.
///
/// All other levels are outlines at a distance from it, which keep its normals. A curve at the distance
/// `d` outside any convex outline is `2πd` longer (Jakob Steiner, 1840), and its radius of curvature
/// is `d` larger; so an outline answers these few questions and everything round the wall follows.
pub trait Outline {
    /// Way once round, in mm.
    fn girth(&self) -> f64;
    /// The place so far round, as a share of the girth, never of an angle.
    fn at(&self, turn: f64) -> OutlinePoint;
    /// Its smallest radius of curvature, in mm.
    fn tightest(&self) -> f64;
    /// Its largest radius of curvature, in mm; infinite where a part of it is straight.
    fn flattest(&self) -> f64;
    /// How much less it encloses than a circle of its girth, in mm².
    fn short_of_circle(&self) -> f64;
}

/// A round outline.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Circle {
    /// Its radius, in mm.
    pub radius: f64,
}

impl Outline for Circle {
    fn girth(&self) -> f64 {
        TAU * self.radius
    }

    fn at(&self, turn: f64) -> OutlinePoint {
        let (sin, cos) = libm::sincos(turn * TAU);
        let curvature = if self.radius > 0.0 { 1.0 / self.radius } else { 0.0 };
        OutlinePoint { point: [self.radius * cos, self.radius * sin], outward: [cos, sin], curvature }
    }

    fn tightest(&self) -> f64 {
        self.radius
    }

    fn flattest(&self) -> f64 {
        self.radius
    }

    fn short_of_circle(&self) -> f64 {
        0.0
    }
}
