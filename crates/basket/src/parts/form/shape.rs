//! The shape of a mould's foot.

use super::arcs::Arcs;
use super::outline::{Circle, Outline, OutlinePoint};
use super::oval::Oval;
use crate::measure::Length;
use crate::pattern::{self, FootSize};

/// A mould's foot, seen from above.
#[derive(Clone, Debug, PartialEq)]
pub enum Shape {
    /// Round.
    Circle(Circle),
    /// An ellipse or a superellipse.
    Oval(Oval),
    /// Of lines and arcs: a rounded rectangle, a stadium, or a curve through points.
    Arcs(Arcs),
}

impl Shape {
    /// The shape that a pattern gives; none for a round one, whose size the side gives.
    pub fn of(pattern: &pattern::Outline) -> Option<Self> {
        let mm = |FootSize { length, width }: &FootSize| [length.to_mm(), width.to_mm()];
        Some(match pattern {
            pattern::Outline::Round => return None,
            pattern::Outline::Oval { size, fullness } => {
                Self::Oval(Oval::new(mm(size).map(|axis| axis / 2.0), power(*fullness)))
            }
            pattern::Outline::Stadium(size) => {
                Self::Arcs(Arcs::rectangle(mm(size), size.width.to_mm() / 2.0))
            }
            pattern::Outline::Rectangle { size, corner } => {
                Self::Arcs(Arcs::rectangle(mm(size), corner.to_mm()))
            }
            pattern::Outline::Traced(rays) => {
                let ends: Vec<[f64; 2]> = pattern::ray_ends(rays).map(|end| end.map(Length::to_mm)).collect();
                Self::Arcs(Arcs::through(&ends)?)
            }
        })
    }

    /// How far it reaches from edge to edge, along x and along y, in mm.
    pub fn across(&self) -> [f64; 2] {
        match self {
            Self::Circle(circle) => [2.0 * circle.radius; 2],
            Self::Oval(oval) => oval.across(),
            Self::Arcs(arcs) => arcs.across(),
        }
    }

    /// Whether it is a circle.
    pub const fn is_round(&self) -> bool {
        matches!(self, Self::Circle(_))
    }

    /// Whether both halves along either axis are alike: not where it was traced.
    pub fn is_even(&self) -> bool {
        match self {
            Self::Circle(_) | Self::Oval(_) => true,
            Self::Arcs(arcs) => arcs.is_even(),
        }
    }

    /// The same shape in the size that gives it this girth, in mm.
    #[must_use]
    pub fn of_girth(self, girth: f64) -> Self {
        let factor = if self.girth() > 0.0 { girth / self.girth() } else { 1.0 };
        match self {
            Self::Circle(_) => Self::Circle(Circle { radius: girth / std::f64::consts::TAU }),
            Self::Oval(oval) => Self::Oval(oval.scaled(factor)),
            Self::Arcs(arcs) => Self::Arcs(arcs.scaled(factor)),
        }
    }

    fn asked(&self) -> &dyn Outline {
        match self {
            Self::Circle(circle) => circle,
            Self::Oval(oval) => oval,
            Self::Arcs(arcs) => arcs,
        }
    }
}

impl Outline for Shape {
    fn girth(&self) -> f64 {
        self.asked().girth()
    }

    fn at(&self, turn: f64) -> OutlinePoint {
        self.asked().at(turn)
    }

    fn tightest(&self) -> f64 {
        self.asked().tightest()
    }

    fn flattest(&self) -> f64 {
        self.asked().flattest()
    }

    fn short_of_circle(&self) -> f64 {
        self.asked().short_of_circle()
    }
}

/// The power of the superellipse that fills so much of the way from an ellipse to its rectangle, measured
/// from the middle to the corner: it crosses the diagonal at `2^(−1/p)` of that way. An ellipse has exactly 2.
fn power(fullness: f64) -> f64 {
    if fullness <= 0.0 {
        return 2.0;
    }
    let ellipse = std::f64::consts::FRAC_1_SQRT_2;
    -1.0 / libm::log2(ellipse + fullness.clamp(0.0, 1.0) * (1.0 - ellipse)).min(-0.01)
}
