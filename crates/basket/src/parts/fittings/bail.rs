//! The curve of a bail between its pivots, at the middle of its thickness.

use std::f64::consts::{FRAC_PI_2, PI};

use crate::measure::Length;
use crate::pattern::BailCurve;

/// Keeps divisions by a length finite.
const LEAST: f64 = 1e-6;

/// A bail between two pivots on one level.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Bail {
    /// Half a circle on this half span.
    Semicircle {
        /// Half the distance between the pivots.
        half_span: Length,
    },
    /// Two corner arcs joined by a flatter one.
    ThreeCentred(ThreeCentred),
    /// Half an ellipse.
    HalfEllipse {
        /// Half the distance between the pivots.
        half_span: Length,
        /// Rise of the middle above the pivots.
        rise: Length,
    },
}

/// Two corner arcs of radius `corner` that leave the pivots upright, joined by an arc of radius
/// `crown` whose centre lies `sunk` below the pivots.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ThreeCentred {
    half_span: Length,
    rise: Length,
    corner: Length,
    /// `k = ((a − r)² − (b − r)²) / 2(b − r)`.
    sunk: Length,
    /// `R = k + b`.
    crown: Length,
    /// Angle over which each corner turns: `β = atan2(k, a − r)`.
    corner_angle: f64,
}

impl ThreeCentred {
    /// The curve, or none unless `0 < corner < rise ≤ half span`.
    fn new(half_span: Length, rise: Length, corner: Length) -> Option<Self> {
        let fits = corner > Length::ZERO && corner < rise && rise <= half_span;
        let (a, b, r) = (half_span.to_mm(), rise.to_mm(), corner.to_mm());
        let sunk = ((a - r) * (a - r) - (b - r) * (b - r)) / (2.0 * (b - r));
        (fits && sunk.is_finite()).then_some(Self {
            half_span,
            rise,
            corner,
            sunk: Length::mm(sunk),
            crown: Length::mm(sunk + b),
            corner_angle: libm::atan2(sunk, a - r),
        })
    }

    fn length(&self) -> Length {
        2.0 * self.corner_angle * self.corner + (PI - 2.0 * self.corner_angle) * self.crown
    }

    fn point(&self, direction: f64) -> (Length, Length) {
        let (sin, cos) = libm::sincos(direction);
        if direction < self.corner_angle {
            (self.half_span - self.corner + self.corner * cos, self.corner * sin)
        } else {
            (self.crown * cos, self.crown * sin - self.sunk)
        }
    }
}

impl Bail {
    /// A bail of this curve; none for a three-centred one unless `0 < corner < rise ≤ half span`.
    /// A semicircle rises by its half span, whatever `rise` says.
    pub fn new(curve: BailCurve, half_span: Length, rise: Length, corner: Length) -> Option<Self> {
        match curve {
            BailCurve::Semicircle => Some(Self::Semicircle { half_span }),
            BailCurve::ThreeCentred => ThreeCentred::new(half_span, rise, corner).map(Self::ThreeCentred),
            BailCurve::HalfEllipse => Some(Self::HalfEllipse { half_span, rise }),
        }
    }

    /// Which curve it is.
    pub fn curve(&self) -> BailCurve {
        match self {
            Self::Semicircle { .. } => BailCurve::Semicircle,
            Self::ThreeCentred(_) => BailCurve::ThreeCentred,
            Self::HalfEllipse { .. } => BailCurve::HalfEllipse,
        }
    }

    /// Half the distance between the pivots.
    pub fn half_span(&self) -> Length {
        match self {
            Self::Semicircle { half_span } | Self::HalfEllipse { half_span, .. } => *half_span,
            Self::ThreeCentred(curve) => curve.half_span,
        }
    }

    /// Rise of the middle above the pivots.
    pub fn rise(&self) -> Length {
        match self {
            Self::Semicircle { half_span } => *half_span,
            Self::ThreeCentred(curve) => curve.rise,
            Self::HalfEllipse { rise, .. } => *rise,
        }
    }

    /// Radius of the corners of a three-centred bail.
    pub fn corner(&self) -> Option<Length> {
        match self {
            Self::ThreeCentred(curve) => Some(curve.corner),
            _ => None,
        }
    }

    /// Length between the pivots: `πa`; `2rβ + R(π − 2β)`; half an ellipse's perimeter.
    pub fn length(&self) -> Length {
        match self {
            Self::Semicircle { half_span } => PI * *half_span,
            Self::ThreeCentred(curve) => curve.length(),
            Self::HalfEllipse { half_span, rise } => half_ellipse(*half_span, *rise),
        }
    }

    /// Radius of its tightest bend.
    pub fn tightest(&self) -> Length {
        match self {
            Self::Semicircle { half_span } => *half_span,
            Self::ThreeCentred(curve) => curve.corner.min(curve.crown),
            Self::HalfEllipse { half_span, rise } => {
                let (short, long) = (half_span.min(*rise), half_span.max(*rise));
                short * (short / long.max(Length::mm(LEAST)))
            }
        }
    }

    /// A place on its half, from the pivot (share 0) to the middle (share 1): distance from the middle
    /// line of the basket, and distance from the line through the pivots.
    pub fn point(&self, share: f64) -> (Length, Length) {
        let direction = share * FRAC_PI_2;
        match self {
            Self::ThreeCentred(curve) => curve.point(direction),
            _ => (self.half_span() * libm::cos(direction), self.rise() * libm::sin(direction)),
        }
    }

    /// The direction square to it there, away from the inside of the bend, in the plane of
    /// [`point`](Self::point); of length 1.
    pub fn outward(&self, share: f64) -> (f64, f64) {
        let (sin, cos) = libm::sincos(share * FRAC_PI_2);
        let Self::HalfEllipse { half_span, rise } = self else { return (cos, sin) };
        let (across, away) = (rise.to_mm() * cos, half_span.to_mm() * sin);
        let length = libm::hypot(across, away);
        if length > LEAST { (across / length, away / length) } else { (cos, sin) }
    }
}

/// Half the perimeter of an ellipse with these half axes, by Gauss's arithmetic-geometric mean:
/// `π(a² − Σ 2^(n−1) c_n²) / AGM(a, b)` with `c_0² = a² − b²`.
fn half_ellipse(one: Length, other: Length) -> Length {
    let (mut a, mut b) = (one.max(other).to_mm(), one.min(other).to_mm());
    if b <= a * 1e-9 {
        return Length::mm(2.0 * a);
    }
    let mut squares = a * a - (a * a - b * b) / 2.0;
    let mut weight = 1.0;
    // The mean doubles its digits at each step: six do for any ratio that matters, forty for all.
    for _ in 0..40 {
        let c = (a - b) / 2.0;
        (a, b) = (f64::midpoint(a, b), (a * b).sqrt());
        squares -= weight * c * c;
        weight *= 2.0;
        if c <= a * 1e-16 {
            break;
        }
    }
    Length::mm(PI * squares / a)
}
