//! The bend of a stave at its foot: one curve from the groove of the base onto the wall.
//!
//! A stave leaves the groove level and comes to lie on the wall, which runs up from the mould's foot at an
//! angle `φ` from level. Where there is room, it takes one bend. An arc of radius `R` touches both the
//! level and the line that the stave's middle keeps on the wall, half its thickness `t` outside the mould;
//! it must have turned before the stave passes the mould's foot and begin no sooner than at the edge of
//! the base, so with the *rise* from the groove's middle to the mould's foot and the *run* from the base's
//! edge out to it
//!
//! `R ≤ (rise − (t/2) cos φ)/(1 − cos φ)` and `R ≤ (run sin φ + t/2 − rise cos φ)/(1 − cos φ)`.
//!
//! Where that is tighter than the stock stands, the stave takes the least radius that it stands, bends
//! further than the wall leans, swings back on the same radius and touches the wall as low as it can; where
//! that is at the mould's foot, it takes the largest radius that brings it there (see the module `swing`).
//! Derived here.

mod curve;
mod swing;

use std::f64::consts::FRAC_PI_2;

use self::curve::{Curve, On};
use self::swing::Foot;
use super::formulas::bend_strain;
use crate::base::Base;
use crate::form::{Profile, Spot};
use crate::measure::{Angle, Length};
use crate::stock::Material;

/// Strain `t/(2R)` at which soaked stock is bent where nothing is known of it: on a radius of two
/// thicknesses, measured to its middle (from memory: soaked and thinned reed is bent over edges of 1.5 to 2
/// thicknesses, a strain of 0.2 to 0.25; a bent test piece is better).
pub const USUAL_BEND_LIMIT: f64 = 0.25;
/// A stave may stand this much further off the mould than one that lies on it before anybody sees more than
/// the turn of the foot (common practice: 1/8 in; the first rows follow it).
pub const UNSEEN: Length = Length::inches(1.0 / 8.0);
/// The tightest radius that is drawn, in mm, and the largest.
const RADII: (f64, f64) = (1e-3, 1e5);
/// Places below the touch at which the stand-off is measured.
const MEASURED: u32 = 32;

/// The bend of a stave from the groove onto the wall.
#[derive(Clone, Debug, PartialEq)]
pub struct Bend {
    /// Radius of the stave's middle in the bend, and in the bend back where there is one.
    pub radius: Length,
    /// Least radius that the stock stands. The bend is tighter only where no curve of that radius comes
    /// to lie on the wall.
    pub least_radius: Length,
    /// Strain of the outer face in the bend, `t/(2R)`.
    pub strain: f64,
    /// Whether one bend fits; else the stave swings out and back.
    pub is_single: bool,
    /// Where the stave comes to lie on the wall, along the mould.
    pub touch: Length,
    /// Way from the edge of the base to there, along the stave's middle.
    pub way: Length,
    /// How much further than on the wall the stave stands off the mould below the touch, at most.
    pub stand_off: Length,
    thickness: Length,
    curve: Curve,
}

/// A place on the middle of a stave.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BendPoint {
    /// Way from the edge of the base, along the stave's middle.
    pub way: Length,
    /// Distance from the basket's axis.
    pub radius: Length,
    /// Height above the mould's foot.
    pub height: Length,
    /// Lean outward from upright of the direction in which the stave runs on.
    pub lean: Angle,
}

impl Bend {
    /// The bend of a stave of this stock. Figures that make no mould or base give a finite bend too.
    pub fn of(profile: &Profile, base: &Base, stock: &Material) -> Self {
        let foot = Foot::of(profile, base, stock.thickness);
        let thickness = foot.thickness();
        let known = stock.over_an_edge().or(stock.bend_limit).filter(|limit| *limit > 0.0);
        let limit = known.unwrap_or(USUAL_BEND_LIMIT).clamp(1e-4, 1.0);
        let (tightest, widest) = RADII;
        let least = (thickness.to_mm() / (2.0 * limit)).clamp(tightest, widest);
        let solved = foot.solve(least);
        let radius = Length::mm(solved.radius);
        let mut bend = Self {
            radius,
            least_radius: Length::mm(least),
            strain: bend_strain(thickness, radius),
            is_single: solved.is_single,
            touch: Length::mm(solved.touch),
            way: Length::mm(solved.curve.length()),
            stand_off: Length::ZERO,
            thickness,
            curve: solved.curve,
        };
        let places = (0..MEASURED).map(|step| bend.touch * (f64::from(step) / f64::from(MEASURED)));
        let furthest =
            places.map(|along| bend.stand_off_at(profile.at(along))).fold(Length::ZERO, Length::max);
        bend.stand_off = (furthest - thickness / 2.0).max(Length::ZERO);
        bend
    }

    /// Thickness of the stave.
    pub const fn thickness(&self) -> Length {
        self.thickness
    }

    /// What the bend adds to the length of a stave whose wall is measured along the mould: the way to the
    /// touch less the mould's own way there. A place below the touch that lies so far `along` has the way
    /// `along + added`.
    pub fn added(&self) -> Length {
        self.way - self.touch
    }

    /// The place so far from the edge of the base along the stave's middle: level in the groove before it,
    /// straight on beyond the touch.
    pub fn at(&self, way: Length) -> BendPoint {
        self.curve.at(way.to_mm()).into()
    }

    /// Places from the edge of the base to the touch, so close that the chords between them stay within
    /// the tolerance of the curve.
    pub fn points(&self, tolerance: Length) -> impl Iterator<Item = BendPoint> + '_ {
        self.curve.places(tolerance.to_mm()).map(BendPoint::from)
    }

    /// How far the stave's middle stands off the mould, square to it, at a place on its side: half a
    /// thickness from the touch upward.
    pub fn stand_off_at(&self, spot: Spot) -> Length {
        if spot.along >= self.touch {
            return self.thickness / 2.0;
        }
        let (sin, cos) = libm::sincos(spot.lean.to_radians());
        let place = (spot.radius.to_mm(), spot.height.to_mm());
        let square = self.curve.in_direction(place, (cos, -sin));
        Length::mm(square.unwrap_or_else(|| self.curve.outside(place).abs()))
    }
}

impl From<On> for BendPoint {
    fn from(on: On) -> Self {
        Self {
            way: Length::mm(on.way),
            radius: Length::mm(on.point.0),
            height: Length::mm(on.point.1),
            lean: Angle::radians(FRAC_PI_2 - on.heading),
        }
    }
}
